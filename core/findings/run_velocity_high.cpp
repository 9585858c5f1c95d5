#include <algorithm>

#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

constexpr units::Velocity noisy = units::metresPerSecond(1.5);
constexpr units::Velocity fast = units::metresPerSecond(2.0);

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    for (const assessment::RunResult& run : situation.results().flow->runs) {
        units::Velocity fastest;
        for (const auto& flow : run.flow.values)
            if (flow && flow->losses)
                fastest = std::max(fastest, flow->losses->velocity);
        if (fastest <= noisy)
            continue;
        findings.push_back(findingOf(rule, fastest > fast ? Severity::warning : Severity::note, {run.id}));
        findings.back().value = fastest;
        findings.back().limit = fastest > fast ? fast : noisy;
    }
}

} // namespace

const Rule runVelocityHigh{"run.velocity-high", "larger-pipe", "common-practice", tell};

} // namespace sumpwright::findings
