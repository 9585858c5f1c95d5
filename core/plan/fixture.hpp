// Fixture: what the building brings along - wall, door, post, power point.
#pragma once

#include <string>

#include "core/base/id.hpp"
#include "core/plan/point.hpp"

namespace sumpwright::plan
{

enum class FixtureKind { wall, door, post, powerPoint };

struct Fixture {
    base::Id id;
    std::string tag;
    FixtureKind kind = FixtureKind::wall;
    Point from;                              // wall and door: one end of the centre line; post, power point: the centre
    Point to;                                // wall and door: the other end; otherwise equal to from
    units::Length size = units::metres(0.1); // wall and door: thickness; post: side
    units::Length height = units::metres(2.4);            // wall, post: height; door: clear height
    units::Elevation level = units::elevationMetres(0.0); // underside; power point: its centre
    std::string extra;

    friend bool operator==(const Fixture&, const Fixture&) = default;
};

} // namespace sumpwright::plan
