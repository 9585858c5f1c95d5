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
Worksheet vesselMass();

} // namespace sumpwright::worksheets
