#include <algorithm>
#include <optional>

#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

// Water runs from lips and outlets to inlets, however the run was drawn.
bool runsBackward(const Situation& situation, const plan::Run& run)
{
    const auto kindAt = [&](const plan::RunEnd& end) -> std::optional<plan::PortKind> {
        const auto* at = std::get_if<plan::PortEnd>(&end);
        const plan::Vessel* vessel = at ? situation.plan().vessels.find(at->vessel) : nullptr;
        const plan::Port* port = vessel ? plan::findPort(*vessel, at->port) : nullptr;
        return port ? std::optional(port->kind) : std::nullopt;
    };
    const auto from = kindAt(run.from), to = kindAt(run.to);
    const bool fromGives = from && *from != plan::PortKind::inlet, toGives = to && *to != plan::PortKind::inlet;
    return !fromGives && (toGives || from == plan::PortKind::inlet);
}

units::Length largestRise(const plan::Run& run, bool backward)
{
    units::Length most;
    const std::size_t count = run.vertices.size();
    const auto level = [&](std::size_t i) { return run.vertices[backward ? count - 1 - i : i].level; };
    units::Elevation lowest = level(0);
    for (std::size_t i = 1; i < count; ++i) {
        most = std::max(most, level(i) - lowest);
        lowest = std::min(lowest, level(i));
    }
    return most;
}

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    for (const auto& run : situation.plan().runs) {
        if (run->service != plan::Service::gravity || run->vertices.size() < 2)
            continue;
        const units::Length rise = largestRise(*run, runsBackward(situation, *run));
        if (rise <= units::millimetres(1.0))
            continue;
        findings.push_back(findingOf(rule, Severity::warning, {run->id}));
        findings.back().value = rise;
    }
}

} // namespace

// Behind a rise water and dirt stay in the pipe, and the level upstream stands as high as the rise.
const Rule gravityRises{"gravity.rises", "give-fall", "common-practice", tell};

} // namespace sumpwright::findings
