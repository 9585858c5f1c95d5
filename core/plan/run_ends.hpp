// Run ends: which side, what is met there, and who meets a port, a pump or a tee.
#pragma once

#include <map>
#include <optional>
#include <vector>

#include "core/plan/plan.hpp"

namespace sumpwright::plan
{

enum class RunSide { from, to };
inline RunSide otherSide(RunSide side) { return side == RunSide::from ? RunSide::to : RunSide::from; }
const RunEnd& endOf(const Run& run, RunSide side);
RunEnd& endOf(Run& run, RunSide side);

// Place of a pump in plan.
Point placeOf(const Vessel& vessel, const Pump& pump);
// Place and level an end has by what it meets; nothing for an open end and for what the plan does not have.
std::optional<Vertex> placeOf(const Plan& plan, const RunEnd& end);

// The run that meets this port or pump; null when none.
const Run* runAtPort(const Plan& plan, base::Id vessel, base::Id port);
const Run* runAtPump(const Plan& plan, base::Id pump);

struct Meeting {
    base::Id run;
    RunSide side = RunSide::from;
    friend bool operator==(const Meeting&, const Meeting&) = default;
};
std::vector<Meeting> meetingsAt(const Plan& plan, base::Id tee);
// All tees at once; a tee without runs is not in it.
using Meetings = std::map<base::Id, std::vector<Meeting>>;
Meetings meetingsAtTees(const Plan& plan);

} // namespace sumpwright::plan
