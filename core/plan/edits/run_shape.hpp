// The shape of a run under change: turned round, its end carried along, its valves kept where they sit.
#pragma once

#include <cstddef>
#include <utility>
#include <vector>

#include "core/plan/run_ends.hpp"

namespace sumpwright::plan
{

// True length from the start to each vertex, metres.
std::vector<double> reaches(const std::vector<Vertex>& vertices);
// One vertex straight above the other.
bool sameInPlan(const Vertex& a, const Vertex& b);

Run reversed(Run run);

// Which vertex before is which after, rising in both.
using KeptVertices = std::vector<std::pair<std::size_t, std::size_t>>;
KeptVertices allKept(std::size_t count);
// Gives every valve the station that keeps its share of the stretch between two kept vertices.
void keepStations(const Run& before, Run& after, const KeptVertices& kept);
void sortValves(Run& run);

// Brings an end to another place and level. Vertices straight above and below it come along; a change of level is
// taken up by the first vertical leg that keeps its direction, else by the first vertical leg, else by the first leg.
void carryEnd(Run& run, RunSide side, const Vertex& to);
// Takes out inner vertices that fell onto a neighbour.
void dropZeroLegs(Run& run);

} // namespace sumpwright::plan
