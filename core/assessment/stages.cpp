#include "core/assessment/stages.hpp"

#include "core/assessment/own_catalogue.hpp"
#include "core/assessment/pumping.hpp"
#include "core/assessment/service.hpp"
#include "core/assessment/site.hpp"
#include "core/assessment/water_and_flow.hpp"

namespace sumpwright::assessment
{

std::string_view nameOf(StageName stage)
{
    switch (stage) {
    case StageName::site:
        return "site";
    case StageName::pipework:
        return "pipework";
    case StageName::basins:
        return "basins";
    case StageName::circuits:
        return "circuits";
    case StageName::pumpStop:
        return "pump-stop";
    case StageName::water:
        return "water";
    case StageName::flow:
        return "flow";
    case StageName::sumps:
        return "sumps";
    case StageName::pumps:
        return "pumps";
    case StageName::season:
        return "season";
    case StageName::headPaths:
        return "head-paths";
    case StageName::service:
        return "service";
    case StageName::floor:
        return "floor";
    }
    return "";
}

// Equal parts keep the catalogue, so that no stage runs for a copy of them.
const Stages::Shared<catalogue::Catalogue>& Stages::tablesFor(const plan::Plan& plan)
{
    const bool same = m_tables && (plan.ownParts == m_ownParts || *plan.ownParts == *m_ownParts);
    if (!same)
        m_tables = withOwnParts(m_catalogue, *plan.ownParts);
    m_ownParts = plan.ownParts;
    return m_tables;
}

Assessment Stages::assess(const plan::Plan& plan)
{
    Assessment result;
    result.plan = plan;
    result.catalogue = tablesFor(plan);
    result.site = m_site.get({plan.site->designWater, plan.site->altitude},
                             [](const SiteInput& in) { return siteResultOf(in.water, in.altitude); });
    const auto pipework = m_pipework.get(
        {plan.runs, plan.tees, plan.pumps, plan.vessels, plan.site->pipeCondition, result.catalogue}, pipeworkOf);
    const auto basins = m_basins.get({plan.vessels, pipework}, [this](const BasinInput& in) {
        return basinsOf(in.vessels, *in.pipework, *m_catalogue);
    });
    const auto circuits = m_circuits.get({pipework, basins, result.site->viscosity}, [](const CircuitInput& in) {
        return solveCircuits(in.pipework, *in.basins, in.viscosity);
    });
    const StopInput running{pipework, basins, circuits};
    const auto stopped =
        m_stopped.get(running, [](const StopInput& in) { return stopPumps(*in.pipework, *in.basins, *in.circuits); });
    result.water = m_water.get({running, stopped}, [](const StoppedInput& in) {
        return waterResultOf(*in.running.pipework, *in.running.basins, *in.running.circuits, *in.stopped);
    });
    result.sumps = m_sumps.get({running, stopped}, [](const StoppedInput& in) {
        return sumpResultsOf(*in.running.pipework, *in.running.basins, *in.running.circuits, *in.stopped);
    });
    result.flow =
        m_flow.get({pipework, circuits}, [](const FlowInput& in) { return flowResultOf(*in.pipework, *in.circuits); });
    result.pumps =
        m_pumps.get({{pipework, circuits}, result.site->density, plan.site->powerPrice}, [](const PumpInput& in) {
            return pumpResultsOf(*in.flow.pipework, *in.flow.circuits, in.density, in.price);
        });
    const plan::Site& site = *plan.site;
    result.season =
        m_season.get({pipework, basins, yearsWaterOf(site.designWater, site.coldestWater, site.warmestWater)},
                     [](const SeasonInput& in) { return seasonOf(*in.pipework, *in.basins, in.water); });
    result.headPaths = m_headPaths.get({pipework, circuits},
                                       [](const FlowInput& in) { return headPathsOf(*in.pipework, *in.circuits); });
    result.service = m_service.get({pipework, basins, result.water}, [](const ServiceInput& in) {
        return serviceResultOf(*in.pipework, *in.basins, *in.water);
    });
    result.floor =
        m_floor.get({plan.vessels, plan.floor, plan.site->floorUse, m_catalogue, result.water}, floorResultOf);
    return result;
}

std::uint64_t Stages::runsOf(StageName stage) const
{
    switch (stage) {
    case StageName::site:
        return m_site.runs();
    case StageName::pipework:
        return m_pipework.runs();
    case StageName::basins:
        return m_basins.runs();
    case StageName::circuits:
        return m_circuits.runs();
    case StageName::pumpStop:
        return m_stopped.runs();
    case StageName::water:
        return m_water.runs();
    case StageName::flow:
        return m_flow.runs();
    case StageName::sumps:
        return m_sumps.runs();
    case StageName::pumps:
        return m_pumps.runs();
    case StageName::season:
        return m_season.runs();
    case StageName::headPaths:
        return m_headPaths.runs();
    case StageName::service:
        return m_service.runs();
    case StageName::floor:
        return m_floor.runs();
    }
    return 0;
}

} // namespace sumpwright::assessment
