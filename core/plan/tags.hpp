// Tags: T1 fish tank, S1 sump, B1 bed, ST1 settler, P1 pump, R1 run, J1 tee, V1 valve, W1 wall, D1 door, PS1 post,
// PP1 power point; I1, L1, O1 for ports inside their vessel. The lowest free number is given.
#pragma once

#include <set>
#include <string>
#include <string_view>

#include "core/plan/plan.hpp"

namespace sumpwright::plan
{

std::string_view tagPrefix(VesselKind kind);
std::string_view tagPrefix(PortKind kind);
std::string_view tagPrefix(FixtureKind kind);

using Tags = std::set<std::string, std::less<>>;
Tags tagsOf(const Plan& plan); // of elements and valves; ports have their own per vessel
Tags portTagsOf(const Vessel& vessel);
// The lowest free number from `from` on after the prefix, entered into `taken`.
std::string freeTag(Tags& taken, std::string_view prefix, int from = 1);

} // namespace sumpwright::plan
