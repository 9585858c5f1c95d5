// check: what must hold in every plan, whether it was drawn, edited or read from a file.
//
// Numbers finite and in range (levels within 100 m of the datum, places within 1 km of the origin, walls thinner than
// half the vessel, lips below the rim ...), references that exist and are of the right kind, tags and ids unique,
// run ends within half a millimetre of their port, pump or tee, tees with two run ends or more. An edit that would
// break one is refused with the same refusal.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/base/outcome.hpp"
#include "core/plan/plan.hpp"

namespace sumpwright::plan
{

struct Fault {
    base::Id element;      // none: site, floor, underlay
    std::string part;      // "site", "floor", "underlay", "vessel", "run" ...
    std::string key;       // inside the element as the file names it: "wall_height", "ports/1/level"
    base::Refusal refusal; // place: tag and property, for the person
};

std::vector<Fault> check(const Plan& plan);
// The first fault among what `after` changed; what was faulty before and is untouched does not count.
std::optional<Fault> firstNewFault(const Plan& before, const Plan& after);

} // namespace sumpwright::plan
