#include "core/design/outlet.hpp"

namespace sumpwright::design
{

std::vector<Outlet> outletsOf(const plan::Plan& plan)
{
    std::vector<Outlet> outlets;
    for (const auto& run : plan.runs) {
        if (run->service != plan::Service::pressure)
            continue;
        for (const plan::RunSide side : {plan::RunSide::from, plan::RunSide::to}) {
            const auto* end = std::get_if<plan::PortEnd>(&plan::endOf(*run, side));
            const plan::Vessel* vessel = end ? plan.vessels.find(end->vessel) : nullptr;
            const plan::Port* port = vessel ? plan::findPort(*vessel, end->port) : nullptr;
            if (port && port->kind == plan::PortKind::inlet)
                outlets.push_back(
                    {{vessel->id, port->id}, run->id, side, port->targetFlow, vessel->kind == plan::VesselKind::sump});
        }
    }
    return outlets;
}

units::Flow wantedFlow(const std::vector<Outlet>& outlets)
{
    units::Flow sum;
    for (const Outlet& outlet : outlets)
        sum += outlet.target.value_or(units::Flow());
    return sum;
}

std::optional<units::Flow> flowOf(const Outlet& outlet, const assessment::FlowResult& flow,
                                  assessment::RunningState state)
{
    const assessment::RunResult* run = assessment::find(flow.runs, outlet.run);
    if (!run || !run->flow[state])
        return std::nullopt;
    const units::Flow along = run->flow[state]->flow;
    return outlet.side == plan::RunSide::to ? along : -along;
}

} // namespace sumpwright::design
