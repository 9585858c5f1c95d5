// The worksheets, one function a file: what each asks, answers and computes.
#pragma once

#include "core/worksheets/worksheet.hpp"

namespace sumpwright::worksheets
{

Worksheet waterProperties();
Worksheet frictionFactor();
Worksheet pipeFriction();
Worksheet fittingLoss();
Worksheet pumpDuty();
Worksheet pumpEnergy();
Worksheet overflowLevel();
Worksheet overflowCapacity();
Worksheet sideOutlet();
Worksheet slopingDrain();
Worksheet tankEmptying();
Worksheet vesselMass();
Worksheet pipeFlow();
Worksheet pipeContent();
Worksheet boreChange();
Worksheet flowFactor();
Worksheet sumK();
Worksheet gradeLine();
Worksheet staticLift();
Worksheet pumpHead();
Worksheet flowBalance();
Worksheet vesselWater();
Worksheet sumpLevel();
Worksheet pumpStop();
Worksheet waterTotal();
Worksheet loadTotal();
Worksheet liveLoad();
Worksheet airPressure();

} // namespace sumpwright::worksheets
