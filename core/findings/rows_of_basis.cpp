#include "core/findings/rows_of_basis.hpp"

#include <map>
#include <string>

#include "core/assessment/rows.hpp"
#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

using Users = std::map<std::string, std::vector<base::Id>>; // name of a row to the elements that use it

void note(std::vector<base::Id>& elements, base::Id element)
{
    if (elements.empty() || elements.back() != element)
        elements.push_back(element);
}

} // namespace

void tellRowsOfBasis(catalogue::Basis basis, const Situation& situation, const Rule& rule,
                     std::vector<Finding>& findings)
{
    Users users;
    const auto use = [&](const auto* row, base::Id element) {
        if (row && row->provenance.basis == basis)
            note(users[row->name], element);
    };
    for (const auto& run : situation.plan().runs)
        use(assessment::rowOf(situation.catalogue().pipes(), run->pipeId), run->id);
    for (const assessment::RunResult& run : situation.results().flow->runs)
        for (const assessment::FittingLoss& loss : run.fittings)
            use(assessment::rowOf(situation.catalogue().fittings(), loss.fittingId), run.id);
    for (const auto& pump : situation.plan().pumps)
        use(assessment::rowOf(situation.catalogue().pumps(), pump->modelId), pump->id);
    for (const auto& vessel : situation.plan().vessels)
        if (vessel->medium)
            use(assessment::rowOf(situation.catalogue().media(), vessel->medium->mediumId), vessel->id);
    for (auto& [name, elements] : users) {
        findings.push_back(findingOf(rule, Severity::note, std::move(elements)));
        findings.back().subject = name;
    }
}

} // namespace sumpwright::findings
