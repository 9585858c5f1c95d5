#include "core/findings/each_rule.hpp"
#include "core/hydraulics/submergence.hpp"

namespace sumpwright::findings
{
namespace
{

// The inlet of a submersible is not drawn; its size is taken as the bore of the run that leaves it.
std::optional<units::Length> inletOf(const Situation& situation, base::Id pump)
{
    for (const Meeting& meeting : situation.meetingsAt(pump))
        if (const auto* run = assessment::find(situation.results().flow->runs, meeting.run->id);
            run && run->bore > units::Length())
            return run->bore;
    return std::nullopt;
}

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    for (const assessment::SumpResult& sump : situation.results().sumps->sumps) {
        if (!sump.cover)
            continue;
        for (const assessment::PumpCover& cover : *sump.cover) {
            const auto* pump = assessment::find(situation.results().pumps->pumps, cover.pump);
            const auto inlet = inletOf(situation, cover.pump);
            if (!pump || !pump->duty[RunningState::least] || !inlet)
                continue;
            const units::Length needed = hydraulics::submergenceNeeded(*inlet, pump->duty[RunningState::least]->flow);
            if (cover.depth >= needed)
                continue;
            findings.push_back(findingOf(rule, Severity::note, {cover.pump, sump.id}));
            findings.back().value = cover.depth;
            findings.back().limit = needed;
        }
    }
}

} // namespace

// With every bed at its flood level the water is too shallow to keep a swirl from drawing air down to the inlet.
const Rule pumpSwirl{"pump.swirl", "deeper-water-or-plate", "hi-9-8", tell};

} // namespace sumpwright::findings
