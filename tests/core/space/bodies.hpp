// Pipes as bodies in plain metres, for tests.
#pragma once

#include <initializer_list>

#include "core/space/pipe_body.hpp"
#include "tests/support/drawn_plan.hpp"

namespace sumpwright::test
{

inline space::Spot spot(Place place)
{
    return {{units::metres(place.x), units::metres(place.y)}, units::elevationMetres(place.z)};
}

inline space::PipeBody pipe(std::uint64_t id, double radius, std::initializer_list<Place> places, Id from = {},
                            Id to = {})
{
    space::PipeBody body;
    body.run = Id{id};
    body.radius = units::metres(radius);
    for (const Place& place : places)
        body.spots.push_back(spot(place));
    body.ends = {space::Joint{from, {}}, space::Joint{to, {}}};
    return body;
}

} // namespace sumpwright::test
