// Water and air at the site. Valid 0-40 degC water; air after ISO 2533, needs the altitude.
#pragma once

#include "core/assessment/stage.hpp"
#include "core/units/measures.hpp"

namespace sumpwright::assessment
{

struct SiteResult {
    units::Temperature water;
    Stage<units::Density> density;
    Stage<units::KinematicViscosity> viscosity;
    Stage<units::Pressure> vapourPressure;
    Stage<units::Pressure> airPressure; // not computed: altitude missing

    friend bool operator==(const SiteResult&, const SiteResult&) = default;
};

} // namespace sumpwright::assessment
