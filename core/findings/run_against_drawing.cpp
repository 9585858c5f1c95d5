#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    for (const assessment::RunResult& result : situation.results().flow->runs) {
        const plan::Run* run = situation.plan().runs.find(result.id);
        const auto& flow = result.flow[RunningState::least];
        if (!run || run->service != plan::Service::pressure || !flow || flow->flow >= units::Flow())
            continue;
        if (std::holds_alternative<plan::TeeEnd>(run->from) || std::holds_alternative<plan::TeeEnd>(run->to))
            findings.push_back(findingOf(rule, Severity::note, {run->id}));
    }
}

} // namespace

// K of a tee depends on the ways its water comes and goes, which are taken from the drawing.
const Rule runAgainstDrawing{"run.against-drawing", "turn-run", "crane-tp410", tell};

} // namespace sumpwright::findings
