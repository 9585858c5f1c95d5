// What the two ends of one run are led to, chosen from a list: connecting without dragging.
#pragma once

#include "core/plan/edits/target.hpp"
#include "ui/properties/section.hpp"

namespace sumpwright::ui::properties
{

class RunEndsSection : public Section
{
    Q_OBJECT

public:
    explicit RunEndsSection(Chosen chosen, QWidget* parent = nullptr);

private:
    void addEndRow(const QString& label, plan::RunSide side);
};

} // namespace sumpwright::ui::properties
