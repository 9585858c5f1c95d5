// Shape and outside sizes of vessels, and their wall. Several vessels keep what is not entered.
#pragma once

#include "ui/properties/section.hpp"

namespace sumpwright::ui::properties
{

class VesselSizeSection : public Section
{
    Q_OBJECT

public:
    explicit VesselSizeSection(Chosen chosen, QWidget* parent = nullptr);

private:
    void addShapeRow();
    EntryField* addDiameterRow();
    EntryField* addSideRow(const QString& label, units::Length plan::RectangleShape::*side);
    void addWallRows();
};

} // namespace sumpwright::ui::properties
