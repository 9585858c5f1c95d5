// What one pump does: duty point in both running states and at both ends of the year, power, energy.
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
    void addSeason(assessment::YearEnd end);
    void addPower();
};

} // namespace sumpwright::ui::properties
