#include <map>
#include <string>

#include "core/assessment/rows.hpp"
#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    std::map<std::string, std::vector<base::Id>> runsByRow;
    for (const assessment::RunResult& run : situation.results().flow->runs)
        for (const assessment::FittingLoss& loss : run.fittings) {
            const auto* row = loss.basis == assessment::LossBasis::overridden
                                  ? nullptr
                                  : assessment::rowOf(situation.catalogue().fittings(), loss.fittingId);
            const bool within =
                !row || run.bore <= units::Length() || (run.bore >= row->defaultKFrom && run.bore <= row->defaultKTo);
            std::vector<base::Id>* runs = within ? nullptr : &runsByRow[loss.fittingId];
            if (runs && (runs->empty() || runs->back() != run.id))
                runs->push_back(run.id);
        }
    for (auto& [id, runs] : runsByRow) {
        findings.push_back(findingOf(rule, Severity::note, std::move(runs)));
        findings.back().subject = assessment::rowOf(situation.catalogue().fittings(), id)->name;
        findings.back().limit = assessment::rowOf(situation.catalogue().fittings(), id)->defaultKTo;
    }
}

} // namespace

// A loss coefficient used for a bore its row does not hold for.
const Rule catalogueOutOfRange{"catalogue.out-of-range", "enter-loss", "fitting-defaults", tell};

} // namespace sumpwright::findings
