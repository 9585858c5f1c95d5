// The checks of one element by itself, without the rest of the plan.
#pragma once

#include "core/plan/fault_finder.hpp"

namespace sumpwright::plan
{

void checkSite(const Site& site, FaultFinder& faults);
void checkFloor(const Floor& floor, FaultFinder& faults);
void checkUnderlay(const Underlay& underlay, FaultFinder& faults);
void checkFixture(const Fixture& fixture, FaultFinder& faults);
void checkVessel(const Vessel& vessel, FaultFinder& faults);
void checkPump(const Pump& pump, FaultFinder& faults);
// Of a pump or an own part; `key` as the file names the list of points.
void checkPumpCurve(const std::string& key, const std::vector<CurvePoint>& curve, bool twoNumbers, FaultFinder& faults);
void checkOwnParts(const OwnParts& parts, FaultFinder& faults);
void checkTee(const Tee& tee, FaultFinder& faults);
void checkRun(const Run& run, FaultFinder& faults);
void checkNote(const Note& note, FaultFinder& faults);
void checkDimension(const DimensionLine& dimension, FaultFinder& faults);

// Whether an offset from the centre lies within the vessel's outline, with the end tolerance.
bool withinOutline(const Vessel& vessel, Point offset);

} // namespace sumpwright::plan
