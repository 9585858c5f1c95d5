// Levels of vessels - base, rim, the one entry that fixes the water of the whole plan in the sump - and what the water
// does there.
#pragma once

#include "ui/properties/section.hpp"

namespace sumpwright::ui::properties
{

class VesselLevelsSection : public Section
{
    Q_OBJECT

public:
    // sumps: all that are chosen are sumps.
    VesselLevelsSection(Chosen chosen, bool sumps, QWidget* parent = nullptr);

private:
    void addRunningLevelRow();
    void addWaterResult(assessment::RunningState state);
    void addInflowResult(assessment::RunningState state);
    void addPumpStopResult();
};

} // namespace sumpwright::ui::properties
