// The person's own parts: put in, taken out, imported. A part that is in use stays; the refusal says where.
#pragma once

#include <string>

#include "core/plan/edits/edit.hpp"
#include "core/plan/own_parts.hpp"

namespace sumpwright::plan
{

// Adds the part, or replaces the one of its kind with the same id. Refusal "plan.own-kind" where a part of another kind
// has the id, and those of check.
Edit putOwnPart(OwnPipe pipe);
Edit putOwnPart(OwnFitting fitting);
Edit putOwnPart(OwnPump pump);
// All of them in one step: those with an id that is there replace it, the others are added.
Edit importOwnParts(OwnParts parts);
// Refusals: "plan.own-in-use" (what: the tags of all that use it), "plan.no-such-part".
Edit removeOwnPart(std::string id);

// Tags of the runs and pumps that use an own part or a row of the catalogue, in the plan's order.
std::vector<std::string> usersOf(const Plan& plan, std::string_view partId);

} // namespace sumpwright::plan
