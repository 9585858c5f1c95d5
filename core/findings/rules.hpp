// Rules: every check a plan is held to, one rule a file. A rule reads the plan and its results and tells findings; it
// computes nothing of its own that a result already tells.
#pragma once

#include <string_view>
#include <vector>

#include "core/assessment/assessment.hpp"
#include "core/findings/situation.hpp"

namespace sumpwright::findings
{

using assessment::Finding;
using assessment::Severity;

struct Rule {
    std::string_view id;     // of the findings it tells, e.g. "run.velocity-high"
    std::string_view mend;   // id of the advice it gives; empty where nothing is to be mended
    std::string_view source; // key in the table of sources, or "common-practice": no source
    void (*tell)(const Situation& situation, const Rule& rule, std::vector<Finding>& findings);
};

// In the order in which findings of one severity are listed.
const std::vector<const Rule*>& allRules();

assessment::Findings findingsOf(const Assessment& assessment);

// A finding of a rule, to be given its value and limit.
Finding findingOf(const Rule& rule, Severity severity, std::vector<base::Id> elements);

} // namespace sumpwright::findings
