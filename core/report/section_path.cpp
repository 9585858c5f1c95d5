#include "core/report/section_path.hpp"

#include <algorithm>

#include "core/findings/least_fall.hpp"
#include "core/plan/run_ends.hpp"
#include "core/report/cut.hpp"

namespace sumpwright::report
{

namespace
{

constexpr units::Length sameLevel = units::millimetres(1.0); // as the rule that finds runs that rise

std::vector<plan::Point> downstream(const plan::Run& run, bool forward)
{
    std::vector<plan::Point> line;
    for (const plan::Vertex& vertex : run.vertices)
        line.push_back(vertex.at);
    if (!forward)
        std::reverse(line.begin(), line.end());
    return line;
}

std::vector<Fall> fallsOf(const SectionRun& run)
{
    std::vector<Fall> falls;
    for (std::size_t i = 0; i + 1 < run.centre.size(); ++i) {
        const ProfilePoint &a = run.centre[i], &b = run.centre[i + 1];
        Fall fall{i, b.along - a.along, a.level - b.level, a.level - run.pipe.bore / 2.0,
                  b.level - run.pipe.bore / 2.0};
        if (fall.length < sameLevel)
            continue;
        const units::Length wanting = findings::leastFall * fall.length - fall.drop;
        if (fall.drop < -sameLevel)
            fall.verdict = FallVerdict::rises;
        else if (wanting > sameLevel && fall.drop < findings::enoughFall)
            fall.verdict = FallVerdict::little;
        if (fall.verdict != FallVerdict::falls)
            fall.missing = wanting;
        falls.push_back(fall);
    }
    return falls;
}

class Unrolling
{
public:
    Unrolling(const plan::Plan& plan, const assessment::Assessment* results, const catalogue::Catalogue* catalogue,
              WaterWay way)
        : m_plan(plan), m_results(results), m_sizes(catalogue), m_bores(boresAtPorts(plan, m_sizes))
    {
        m_path.way = std::move(way);
    }

    SectionPath unrolled()
    {
        const WaterWay& way = m_path.way;
        const plan::Pump& pump = *m_plan.pumps.find(way.choice.pump);
        const plan::Vessel& source = *m_plan.vessels.find(way.source);
        m_path.pump = {pump.id,          source.id,   pump.tag, units::Length(), plan::insideBottom(source),
                       pump.outletLevel, pump.running};
        addSource(source, plan::placeOf(source, pump));
        addRuns(way.lift);
        for (std::size_t i = 0; i < way.stops.size(); ++i) {
            addStop(way.stops[i], i == 0 ? way.lift : way.stops[i - 1].onward);
            addRuns(way.stops[i].onward);
        }
        tellDrowned();
        measure();
        return std::move(m_path);
    }

private:
    // Places of a chain of runs in plan, from its start on.
    std::vector<plan::Point> lineOf(const std::vector<WayRun>& runs) const
    {
        std::vector<plan::Point> line;
        for (const WayRun& each : runs)
            for (const plan::Point& place : downstream(*m_plan.runs.find(each.run), each.forward))
                line.push_back(place);
        return line;
    }

    void addRuns(const std::vector<WayRun>& runs)
    {
        for (const WayRun& each : runs) {
            const plan::Run& run = *m_plan.runs.find(each.run);
            SectionRun drawn{run.id, run.tag, run.service, each.forward, m_sizes.of(run), {}, {}, {}};
            const std::size_t count = run.vertices.size();
            for (std::size_t i = 0; i < count; ++i) {
                const std::size_t vertex = each.forward ? i : count - 1 - i;
                if (i > 0)
                    m_along += plan::distanceBetween(run.vertices[vertex].at,
                                                     run.vertices[each.forward ? vertex - 1 : vertex + 1].at);
                drawn.centre.push_back({m_along, run.vertices[vertex].level});
                m_path.floor.push_back({m_along, plan::levelAt(*m_plan.floor, run.vertices[vertex].at)});
                drawn.vertices.push_back(vertex);
            }
            if (run.service == plan::Service::gravity)
                drawn.falls = fallsOf(drawn);
            m_path.runs.push_back(std::move(drawn));
        }
    }

    SectionVessel cut(const plan::Vessel& vessel) const
    {
        SectionVessel drawn{profileOf(m_plan, vessel, m_results, m_bores), {}, {}, false, std::nullopt};
        drawn.profile.ports.clear();
        drawn.again = std::any_of(m_path.vessels.begin(), m_path.vessels.end(),
                                  [&](const SectionVessel& other) { return other.profile.id == vessel.id; });
        return drawn;
    }

    // Stands for the legs of the stand: one near each side, so wide as the cut is.
    void finish(SectionVessel drawn)
    {
        VesselProfile& profile = drawn.profile;
        if (profile.stand && *profile.stand != plan::StandKind::flat &&
            profile.right - profile.left > 2.0 * profile.padSide)
            profile.legs = {profile.left + profile.padSide / 2.0, profile.right - profile.padSide / 2.0};
        m_path.vessels.push_back(std::move(drawn));
    }

    void addSource(const plan::Vessel& vessel, plan::Point pump)
    {
        SectionVessel drawn = cut(vessel);
        const auto outline = plan::outlineOf(vessel);
        const std::vector<plan::Point> line = lineOf(m_path.way.lift);
        const plan::Point onward = firstLeg(line, longAxis(vessel));
        drawn.profile.left = -reachAlong(outline, pump, {-onward.x, -onward.y});
        drawn.profile.right = reachAlongLine(outline, line, onward);
        finish(std::move(drawn));
    }

    void addStop(const WayStop& stop, const std::vector<WayRun>& before)
    {
        const plan::Vessel& vessel = *m_plan.vessels.find(stop.vessel);
        SectionVessel drawn = cut(vessel);
        drawn.enteredBy = stop.enteredBy;
        drawn.leftBy = stop.leftBy;
        const auto outline = plan::outlineOf(vessel);
        const plan::Port& inlet = *plan::findPort(vessel, stop.enteredBy);
        const plan::Point entered = plan::placeOf(vessel, inlet);
        const plan::Port* outlet = plan::findPort(vessel, stop.leftBy);
        const plan::Point left = outlet ? plan::placeOf(vessel, *outlet) : entered;
        std::vector<plan::Point> back = lineOf(before);
        std::reverse(back.begin(), back.end());
        const plan::Point through = firstLeg({entered, left}, longAxis(vessel));
        drawn.profile.left = m_along - reachAlongLine(outline, back, {-through.x, -through.y});
        drawn.profile.ports.push_back(onWay(drawn.profile.id, inlet));
        if (outlet) {
            m_along += plan::distanceBetween(entered, left);
            drawn.profile.ports.push_back(onWay(drawn.profile.id, *outlet));
            drawn.profile.right = m_along + reachAlongLine(outline, lineOf(stop.onward), through);
        } else {
            const plan::Point incoming = firstLeg(back, {-through.x, -through.y});
            drawn.profile.right = m_along + reachAlong(outline, entered, {-incoming.x, -incoming.y});
        }
        finish(std::move(drawn));
    }

    PortProfile onWay(base::Id vessel, const plan::Port& port) const
    {
        const auto all = profileOf(m_plan, *m_plan.vessels.find(vessel), nullptr, m_bores).ports;
        PortProfile found =
            *std::find_if(all.begin(), all.end(), [&](const PortProfile& p) { return p.id == port.id; });
        found.along = m_along;
        return found;
    }

    static plan::Point firstLeg(const std::vector<plan::Point>& line, plan::Point otherwise)
    {
        for (std::size_t i = 1; i < line.size(); ++i)
            if (plan::distanceBetween(line[i], line[i - 1]) >= units::millimetres(1.0))
                return line[i] - line[i - 1];
        return otherwise;
    }
    static plan::Point longAxis(const plan::Vessel& vessel)
    {
        const plan::RectangleShape frame = plan::frameOf(vessel.shape);
        const bool along = frame.length >= frame.width;
        return plan::turned({units::metres(along ? 1.0 : 0.0), units::metres(along ? 0.0 : 1.0)}, vessel.turn);
    }

    void tellDrowned()
    {
        for (std::size_t i = 2; i < m_path.vessels.size(); ++i) {
            const SectionVessel& above = m_path.vessels[i - 1];
            SectionVessel& here = m_path.vessels[i];
            const auto outlet = std::find_if(above.profile.ports.begin(), above.profile.ports.end(),
                                             [&](const PortProfile& port) { return port.id == above.leftBy; });
            if (outlet == above.profile.ports.end())
                continue;
            for (const auto& level : {here.profile.water.least, here.profile.water.most})
                if (level && *level > outlet->level + here.drowns.value_or(units::Length()))
                    here.drowns = *level - outlet->level;
        }
    }

    void measure()
    {
        ProfilePoint low{m_path.vessels.front().profile.left, m_path.vessels.front().profile.base};
        ProfilePoint high = low;
        const auto take = [&](units::Length along, units::Elevation level) {
            low = {std::min(low.along, along), std::min(low.level, level)};
            high = {std::max(high.along, along), std::max(high.level, level)};
        };
        for (const SectionVessel& vessel : m_path.vessels) {
            take(vessel.profile.left, std::min(vessel.profile.base, vessel.profile.floor));
            take(vessel.profile.right, vessel.profile.rim);
        }
        for (const SectionRun& run : m_path.runs)
            for (const ProfilePoint& point : run.centre) {
                take(point.along, point.level);
                if (!m_path.highest || point.level > m_path.highest->level)
                    m_path.highest = point;
            }
        m_path.low = low;
        m_path.high = high;
        m_path.floor.insert(m_path.floor.begin(), {low.along, m_path.floor.front().level});
        m_path.floor.push_back({high.along, m_path.floor.back().level});
    }

    const plan::Plan& m_plan;
    const assessment::Assessment* m_results;
    PipeSizes m_sizes;
    BoresAtPorts m_bores;
    units::Length m_along; // where the way is
    SectionPath m_path;
};

} // namespace

std::optional<SectionPath> sectionOf(const plan::Plan& plan, const assessment::Assessment* results,
                                     const catalogue::Catalogue* catalogue, const WayChoice& choice)
{
    auto way = wayOf(plan, results, choice);
    if (!way)
        return std::nullopt;
    return Unrolling(plan, results, catalogue, std::move(*way)).unrolled();
}

} // namespace sumpwright::report
