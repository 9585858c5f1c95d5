#include "core/assessment/basin.hpp"

#include <algorithm>

#include "core/assessment/rows.hpp"

namespace sumpwright::assessment
{
namespace
{

void takeMedium(Basin& basin, const plan::Vessel& vessel, const catalogue::Catalogue& catalogue)
{
    if (!vessel.medium)
        return;
    const catalogue::Medium* row = rowOf(catalogue.media(), vessel.medium->mediumId);
    if (row)
        basin.layers.push_back({vessel.medium->depth, row->porosity.typical});
    else
        basin.fault = Reason{"medium-unknown", "the medium \"" + vessel.medium->mediumId + "\" is not in the catalogue",
                             vessel.id};
}

Basin basinOf(const plan::Vessel& vessel, const catalogue::Catalogue& catalogue)
{
    Basin basin;
    basin.id = vessel.id;
    basin.kind = vessel.kind;
    basin.plan = plan::insideArea(vessel);
    basin.bottom = plan::insideBottom(vessel);
    basin.rim = plan::rimLevel(vessel);
    if (basin.isSump())
        basin.entry = vessel.runningLevel;
    takeMedium(basin, vessel, catalogue);
    for (const plan::Port& port : vessel.ports) {
        const units::Length bore = port.bore.value_or(units::Length());
        const double open = port.openFraction.value_or(1.0);
        switch (port.kind) {
        case plan::PortKind::inlet:
            basin.inlets.push_back({port.id, port.level, port.ventLevel});
            break;
        case plan::PortKind::lip:
            basin.outlets.push_back({port.id, false, port.level, bore, open, port.level, port.drainLevel, {}, true});
            break;
        case plan::PortKind::sideOutlet:
            basin.outlets.push_back({port.id, true, port.level, bore, open, port.level, {}, {}, true});
            break;
        }
    }
    const bool sound = basin.plan > units::Area() && basin.rim > basin.bottom &&
                       water::UprightVessel::make(basin.plan, basin.layers).ok();
    if (!sound && !basin.fault)
        basin.fault = Reason{"vessel-shape", "the vessel's sizes leave no room for water", vessel.id};
    return basin;
}

void lead(std::vector<Basin>& basins, const Pipework& pipework, std::size_t run, const DrawnEnd& end, bool forward)
{
    if (end.kind != EndKind::vessel)
        return;
    const std::size_t at = indexOf(basins, end.element);
    if (at == basins.size())
        return;
    const DrawnRun& drawn = pipework.runs[run];
    for (BasinOutlet& outlet : basins[at].outlets) {
        if (outlet.port != end.port)
            continue;
        if (outlet.bore <= units::Length())
            outlet.bore = drawn.bore;
        if (drawn.service != plan::Service::gravity || outlet.run)
            continue;
        outlet.run = run;
        outlet.runsForward = forward;
        outlet.holds = highestCentre(drawn) - 0.5 * drawn.bore;
    }
}

} // namespace

bool operator==(const Basin& a, const Basin& b)
{
    const auto sameLayer = [](const water::PorousLayer& x, const water::PorousLayer& y) {
        return x.top == y.top && x.porosity == y.porosity;
    };
    return a.id == b.id && a.kind == b.kind && a.plan == b.plan && a.bottom == b.bottom && a.rim == b.rim &&
           a.outlets == b.outlets && a.inlets == b.inlets && a.entry == b.entry && a.fault == b.fault &&
           std::equal(a.layers.begin(), a.layers.end(), b.layers.begin(), b.layers.end(), sameLayer);
}

water::UprightVessel shapeOf(const Basin& basin)
{
    return std::move(water::UprightVessel::make(basin.plan, basin.layers)).value();
}

units::Volume volumeAt(const Basin& basin, units::Elevation level)
{
    return shapeOf(basin).waterAt(level - basin.bottom);
}

units::Elevation levelOf(const Basin& basin, units::Volume volume)
{
    return basin.bottom + shapeOf(basin).depthOf(volume);
}

std::vector<Basin> basinsOf(const plan::Table<plan::Vessel>& vessels, const Pipework& pipework,
                            const catalogue::Catalogue& catalogue)
{
    std::vector<Basin> basins;
    for (const auto& vessel : vessels)
        basins.push_back(basinOf(*vessel, catalogue));
    for (std::size_t run = 0; run < pipework.runs.size(); ++run) {
        lead(basins, pipework, run, pipework.runs[run].from, true);
        lead(basins, pipework, run, pipework.runs[run].to, false);
    }
    for (Basin& basin : basins) {
        // A valve that is shut, and a hole in the wall that nothing leads away from, let nothing out.
        std::erase_if(basin.outlets, [&pipework](const BasinOutlet& outlet) {
            return outlet.run ? pipework.runs[*outlet.run].shut : outlet.side;
        });
        for (BasinOutlet& outlet : basin.outlets) {
            if (outlet.side)
                outlet.lip = outlet.lip - 0.5 * outlet.bore;
            outlet.holds = outlet.run ? std::max(outlet.holds, outlet.lip) : outlet.lip;
        }
        std::stable_sort(basin.outlets.begin(), basin.outlets.end(),
                         [](const BasinOutlet& a, const BasinOutlet& b) { return a.holds < b.holds; });
    }
    return basins;
}

std::size_t indexOf(const std::vector<Basin>& basins, base::Id id)
{
    const auto at = std::lower_bound(basins.begin(), basins.end(), id,
                                     [](const Basin& basin, base::Id key) { return basin.id < key; });
    return at != basins.end() && at->id == id ? static_cast<std::size_t>(at - basins.begin()) : basins.size();
}

} // namespace sumpwright::assessment
