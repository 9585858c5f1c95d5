#include <map>
#include <string>

#include "core/assessment/rows.hpp"
#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

using Users = std::map<std::string, std::vector<base::Id>>; // name of a row to the elements that use it

template <class Row> void note(Users& users, const Row* row, base::Id element)
{
    if (!row || row->provenance.basis != catalogue::Basis::Own)
        return;
    std::vector<base::Id>& elements = users[row->name];
    if (elements.empty() || elements.back() != element)
        elements.push_back(element);
}

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    Users users;
    for (const auto& run : situation.plan().runs)
        note(users, assessment::rowOf(situation.catalogue().pipes(), run->pipeId), run->id);
    for (const assessment::RunResult& run : situation.results().flow->runs)
        for (const assessment::FittingLoss& loss : run.fittings)
            note(users, assessment::rowOf(situation.catalogue().fittings(), loss.fittingId), run.id);
    for (const auto& pump : situation.plan().pumps)
        note(users, assessment::rowOf(situation.catalogue().pumps(), pump->modelId), pump->id);
    for (auto& [name, elements] : users) {
        findings.push_back(findingOf(rule, Severity::note, std::move(elements)));
        findings.back().subject = name;
    }
}

} // namespace

// Parts the person typed in or imported: nothing printed stands behind them.
const Rule catalogueOwn{"catalogue.own", "", "own-part", tell};

} // namespace sumpwright::findings
