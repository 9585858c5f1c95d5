// Properties of fresh water at one atmosphere, by temperature.
// Units SI. Valid 0 to 40 degC; outside that the answer is a refusal, never a guess.
// Sources: density Tanaka et al. 2001 (the CIPM formula); dynamic viscosity IAPWS SR6-08 (liquid water at 0.1 MPa);
// vapour pressure IAPWS IF97, region 4. Keys: tanaka-2001, iapws-sr6-08, iapws-if97.
#pragma once

#include "core/base/outcome.hpp"
#include "core/units/measures.hpp"

namespace sumpwright::nature
{

constexpr units::Temperature coldestWater = units::celsius(0.0);
constexpr units::Temperature warmestWater = units::celsius(40.0);

struct WaterProperties {
    units::Density density;
    units::DynamicViscosity dynamicViscosity;
    units::KinematicViscosity kinematicViscosity;
    units::Pressure vapourPressure; // absolute, over a flat surface
};

// Refusal: "nature.water-temperature-out-of-range", place "temperature".
base::Outcome<WaterProperties> waterAt(units::Temperature temperature);

} // namespace sumpwright::nature
