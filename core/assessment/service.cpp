#include "core/assessment/service.hpp"

#include <algorithm>
#include <map>
#include <set>

#include "core/assessment/service_zones.hpp"
#include "core/assessment/states.hpp"

namespace sumpwright::assessment
{
namespace
{

class Round
{
public:
    Round(const Pipework& pipework, const std::vector<Basin>& basins, const WaterResult& water)
        : m_pipework(pipework), m_basins(basins), m_water(water), m_zones(pipework)
    {
    }

    ServiceResult run()
    {
        std::map<base::Id, std::set<std::size_t>> zonesOf; // beds and pumps to the zones that meet them
        std::map<base::Id, units::Elevation> connection;   // the lowest of them
        for (std::size_t z = 0; z < m_zones.all().size(); ++z)
            for (const ZoneEnd& at : m_zones.all()[z].ends) {
                if (at.end.kind == EndKind::vessel && !isBed(at.end.element))
                    continue;
                zonesOf[at.end.element].insert(z);
                const units::Elevation level = levelOf(at);
                const auto [known, added] = connection.try_emplace(at.end.element, level);
                known->second = added ? level : std::min(known->second, level);
            }
        for (const auto& [id, zones] : zonesOf)
            m_result.elements.push_back(serviceOf(id, zones, connection.at(id)));
        for (std::size_t i = 0; i < m_pipework.runs.size(); ++i) {
            const DrawnRun& run = m_pipework.runs[i];
            if (run.service == plan::Service::pressure && run.length > longRun)
                m_result.elements.push_back(serviceOf(run.id, {m_zones.ofLongestPiece(i)}, lowestLevel(run)));
        }
        std::sort(m_result.elements.begin(), m_result.elements.end(),
                  [](const Service& a, const Service& b) { return a.id < b.id; });
        return std::move(m_result);
    }

private:
    bool isBed(base::Id vessel) const
    {
        const std::size_t at = indexOf(m_basins, vessel);
        return at < m_basins.size() &&
               (m_basins[at].kind == plan::VesselKind::mediaBed || m_basins[at].kind == plan::VesselKind::raftBed);
    }

    bool isPump(base::Id id) const
    {
        return std::any_of(m_pipework.pumps.begin(), m_pipework.pumps.end(),
                           [id](const DrawnPump& pump) { return pump.id == id; });
    }

    static units::Elevation lowestLevel(const DrawnRun& run)
    {
        units::Elevation lowest = run.from.level;
        for (const Stretch& stretch : run.stretches)
            lowest = std::min({lowest, stretch.start, stretch.end});
        return lowest;
    }

    units::Elevation levelOf(const ZoneEnd& at) const
    {
        if (at.end.kind == EndKind::vessel)
            return at.end.level;
        for (const DrawnPump& pump : m_pipework.pumps)
            if (pump.id == at.end.element)
                return pump.outletLevel;
        return at.end.level;
    }

    base::Id vesselOf(const ZoneEnd& at) const
    {
        if (at.end.kind == EndKind::vessel)
            return at.end.element;
        for (const DrawnPump& pump : m_pipework.pumps)
            if (pump.id == at.end.element)
                return pump.vessel;
        return {};
    }

    // The water that stands over a mouth while the pump stands still; none where it does not.
    std::optional<units::Elevation> standsOver(const ZoneEnd& at) const
    {
        const VesselResult* vessel = find(m_water.vessels, vesselOf(at));
        if (!vessel)
            return std::nullopt;
        const auto& stopped = vessel->water[WaterState::pumpStopped];
        const auto& water = stopped ? stopped : vessel->water[WaterState::runningMost];
        return water && water->level > levelOf(at) ? std::optional(water->level) : std::nullopt;
    }

    // Pumps, and water over mouths of other vessels, reach what they are joined to.
    bool reached(const Zone& zone, base::Id id) const
    {
        return std::any_of(zone.ends.begin(), zone.ends.end(), [&](const ZoneEnd& at) {
            return at.end.element != id && (at.end.kind == EndKind::pump || standsOver(at));
        });
    }

    // What a vessel gives off through a mouth under water, down to where the pipe is opened.
    units::Volume outOfVessel(const ZoneEnd& at, units::Elevation opened) const
    {
        const auto level = standsOver(at);
        const std::size_t basin = indexOf(m_basins, vesselOf(at));
        if (!level || basin >= m_basins.size() || m_basins[basin].fault)
            return units::Volume();
        units::Elevation stop = std::max(opened, levelOf(at));
        for (const BasinInlet& inlet : m_basins[basin].inlets)
            if (inlet.port == at.end.port && inlet.ventLevel)
                stop = std::max(stop, *inlet.ventLevel);
        return *level > stop ? volumeAt(m_basins[basin], *level) - volumeAt(m_basins[basin], stop) : units::Volume();
    }

    // What the pipes of a zone give off, worked out once for all that open them at one level.
    std::size_t pipeWater(std::size_t zone, units::Elevation opened)
    {
        const auto [at, added] = m_pipeWater.try_emplace({zone, units::inMetres(opened)}, m_result.pipeWaters.size());
        if (!added)
            return at->second;
        std::vector<ServicePart>& parts = m_result.pipeWaters.emplace_back();
        for (const ZonePiece& piece : m_zones.all()[zone].pieces) {
            const DrawnRun& run = m_pipework.runs[piece.run];
            const units::Volume volume = contentAbove(run, piece.from, piece.to, opened);
            if (volume <= units::Volume())
                continue;
            if (!parts.empty() && parts.back().element == run.id)
                parts.back().volume += volume;
            else
                parts.push_back({run.id, volume});
        }
        return at->second;
    }

    void addWater(Service& service, std::size_t zone)
    {
        service.pipes.push_back(pipeWater(zone, service.openedAt));
        for (const ServicePart& part : m_result.pipeWaters[service.pipes.back()])
            service.comesOut += part.volume;
        std::set<base::Id> emptied;
        for (const ZoneEnd& end : m_zones.all()[zone].ends) {
            if (end.end.element == service.id || !emptied.insert(vesselOf(end)).second)
                continue;
            if (const units::Volume volume = outOfVessel(end, service.openedAt); volume > units::Volume()) {
                service.vessels.push_back({vesselOf(end), volume});
                service.comesOut += volume;
            }
        }
    }

    Service serviceOf(base::Id id, const std::set<std::size_t>& zones, units::Elevation connection)
    {
        Service service;
        service.id = id;
        service.openedAt = connection;
        service.shutOff = service.comesApart = true;
        std::optional<units::Elevation> lowestValve;
        for (const std::size_t z : zones) {
            const Zone& zone = m_zones.all()[z];
            service.shutOff = service.shutOff && !reached(zone, id);
            service.comesApart = service.comesApart && zone.hasUnion;
            for (const ZoneValve& valve : zone.valves) {
                service.valves.push_back(valve.valve);
                lowestValve = lowestValve ? std::min(*lowestValve, valve.level) : valve.level;
            }
        }
        // A pump shut off by the valves of its outlets only is taken out at its own connection: all runs back there.
        const bool behindOwnValve = std::all_of(zones.begin(), zones.end(), [&](std::size_t z) {
            return !isPump(id) || m_zones.all()[z].pieces.size() == 1;
        });
        if (service.shutOff && lowestValve && behindOwnValve)
            service.openedAt = *lowestValve;
        std::sort(service.valves.begin(), service.valves.end());
        service.valves.erase(std::unique(service.valves.begin(), service.valves.end()), service.valves.end());
        for (const std::size_t z : zones)
            addWater(service, z);
        return service;
    }

    const Pipework& m_pipework;
    const std::vector<Basin>& m_basins;
    const WaterResult& m_water;
    Zones m_zones;
    ServiceResult m_result;
    std::map<std::pair<std::size_t, double>, std::size_t> m_pipeWater; // index by zone and metres of level
};

} // namespace

ServiceResult serviceResultOf(const Pipework& pipework, const std::vector<Basin>& basins, const WaterResult& water)
{
    return Round(pipework, basins, water).run();
}

} // namespace sumpwright::assessment
