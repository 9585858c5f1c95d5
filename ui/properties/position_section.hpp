// Where the chosen elements stand in plan, by number: the way to move that needs no dragging. Several keep their own
// place in the other direction; one entry is one step.
#pragma once

#include "ui/properties/section.hpp"

namespace sumpwright::ui::properties
{

class PositionSection : public Section
{
    Q_OBJECT

public:
    explicit PositionSection(Chosen chosen, QWidget* parent = nullptr);

private:
    void addPlaceRow(const QString& label, units::Length plan::Point::*along);
    void addTurnRow();
};

} // namespace sumpwright::ui::properties
