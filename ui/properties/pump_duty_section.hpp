// What one pump does: duty point in both running states, power, energy.
#pragma once

#include "ui/properties/section.hpp"

namespace sumpwright::ui::properties
{

class PumpDutySection : public Section
{
    Q_OBJECT

public:
    explicit PumpDutySection(Chosen chosen, QWidget* parent = nullptr);

private:
    void addDuty(assessment::RunningState state);
    void addPower();
};

} // namespace sumpwright::ui::properties
