// Passages: where runs go through what stands in their way: vessels, walls, posts, doorways, the ceiling, the floor.
// A pipe that bites less than 5 mm into a body only touches it. Lengths in m, levels of the pipe's centre line unless
// said.
#pragma once

#include <optional>

#include "core/space/outline.hpp"
#include "core/space/pipe_body.hpp"

namespace sumpwright::space
{

inline const units::Length touching = units::millimetres(5.0);

struct Passage {
    Spot at;              // where the run first goes in
    units::Length length; // of the pipe inside, all together
};

// Through the wall, the bottom or the body of a vessel. A run may go through wall or bottom once for each of its ends
// that meets a port of this vessel or a pump in it, and over the rim as it likes.
std::optional<Passage> passageThrough(const PipeBody& body, const Outline& vessel);
// Through a wall, a post or a doorway.
std::optional<Passage> passageThrough(const PipeBody& body, const Outline& fixture, units::Length around);

// The place where the top of a pipe stands highest over a ceiling `clearHeight` above the floor, and by how much.
struct Beyond {
    Spot at;
    units::Length by;
};
std::optional<Beyond> aboveCeiling(const PipeBody& body, const plan::Floor& floor);
// Where the bottom of a pipe lies deepest below the floor, away from vessels that are let into it.
std::optional<Beyond> belowFloor(const PipeBody& body, const plan::Floor& floor, const std::vector<Outline>& vessels);

} // namespace sumpwright::space
