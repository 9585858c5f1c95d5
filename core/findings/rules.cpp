#include "core/findings/rules.hpp"

#include <algorithm>

namespace sumpwright::findings
{

Finding findingOf(const Rule& rule, Severity severity, std::vector<base::Id> elements)
{
    Finding finding;
    finding.id = rule.id;
    finding.severity = severity;
    finding.elements = std::move(elements);
    finding.source = rule.source;
    finding.mend = rule.mend;
    return finding;
}

const std::vector<Rule>& allRules()
{
    static const std::vector<Rule> rules;
    return rules;
}

assessment::Findings findingsOf(const Assessment& assessment)
{
    assessment::Findings findings;
    for (const Rule& rule : allRules())
        rule.tell(assessment, rule, findings.list);
    std::stable_sort(findings.list.begin(), findings.list.end(),
                     [](const Finding& a, const Finding& b) { return a.severity < b.severity; });
    return findings;
}

} // namespace sumpwright::findings
