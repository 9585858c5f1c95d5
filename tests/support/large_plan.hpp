// LargePlan: an invented yard of 12 fish tanks, 100 media beds and one sump, joined by exactly 1 000 runs and fed by
// one pump; valid by plan::check and solved by the assessment. For measuring speed and for tests at full size.
//
// Ten rows of ten beds; every bed is fed through a spray pipe with three or four mouths, tees between them, and drains
// through a bell siphon into its row's collector. All numbers in metres; the same plan on every call.
#pragma once

#include <vector>

#include "core/plan/plan.hpp"

namespace sumpwright::test
{

struct LargePlan {
    plan::Plan plan;
    base::Id sump, pump, riser;
    std::vector<base::Id> tanks, beds;
    base::Id valveRun, valve; // a ball valve on the feed of the bed in the middle
    base::Id middleBed;
};

LargePlan largePlan();

} // namespace sumpwright::test
