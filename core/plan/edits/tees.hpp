// Tees come and go with the runs that meet in them: splitting a run makes one, taking the last branch away joins what
// is left.
#pragma once

#include <optional>

#include "core/plan/edits/draft.hpp"
#include "core/plan/run_ends.hpp"

namespace sumpwright::plan
{

struct Split {
    base::Id tee;
    base::Id first;   // half before the tee; the run itself where its end tee was taken
    base::Id second;  // half after it
    units::Length at; // from the start
};
// The longer half keeps id, tag and undrawn fittings; valves and vertices stay on the half they lie on.
Split splitRun(Draft& draft, base::Id run, double station);

// Whether two run ends at a tee can become one run: two runs, one pipe, one service, not two pumps.
bool canJoin(const Draft& draft, const Meeting& a, const Meeting& b);
void joinRuns(Draft& draft, base::Id tee, const Meeting& a, const Meeting& b);
void openEnd(Draft& draft, const Meeting& meeting);
// Takes a tee out: the straightest pair is joined, other ends become open.
void dissolveTee(Draft& draft, base::Id tee);
// Looks after tees that have lost run ends in this edit.
void mendTees(Draft& draft);

} // namespace sumpwright::plan
