#include "core/report/elevation.hpp"

#include <algorithm>
#include <limits>

#include "core/plan/legs.hpp"
#include "core/plan/run_ends.hpp"

namespace sumpwright::report
{

namespace
{

struct Extent {
    units::Length low = units::metres(std::numeric_limits<double>::max());
    units::Length high = units::metres(std::numeric_limits<double>::lowest());
    void take(units::Length value)
    {
        low = std::min(low, value);
        high = std::max(high, value);
    }
};

template <class Points> std::pair<Extent, Extent> extentOf(const Points& points)
{
    std::pair<Extent, Extent> extent;
    for (const plan::Point& point : points) {
        extent.first.take(point.x);
        extent.second.take(point.y);
    }
    return extent;
}

VesselProfile projected(const plan::Plan& plan, const plan::Vessel& vessel, const Extent& x,
                        const assessment::Assessment* results, const BoresAtPorts& bores)
{
    VesselProfile profile = profileOf(plan, vessel, results, bores);
    profile.left = x.low;
    profile.right = x.high;
    for (const plan::Point& offset : plan::legOffsets(vessel))
        profile.legs.push_back((vessel.centre + plan::turned(offset, vessel.turn)).x);
    for (std::size_t i = 0; i < vessel.ports.size(); ++i)
        profile.ports[i].along = plan::placeOf(vessel, vessel.ports[i]).x;
    return profile;
}

// By the nearest place of each.
struct Standing {
    units::Length near;
    base::Id id;
};

void addVessels(FrontElevation& elevation, const plan::Plan& plan, const assessment::Assessment* results,
                PipeSizes& sizes, std::vector<Standing>& standing)
{
    const BoresAtPorts bores = boresAtPorts(plan, sizes);
    for (const auto& vessel : plan.vessels) {
        const auto [x, y] = extentOf(plan::outlineOf(*vessel));
        standing.push_back({y.low, vessel->id});
        elevation.vessels.push_back(projected(plan, *vessel, x, results, bores));
    }
}

void addPipes(FrontElevation& elevation, const plan::Plan& plan, PipeSizes& sizes, std::vector<Standing>& standing)
{
    for (const auto& run : plan.runs) {
        RunProfile profile{run->id, run->tag, run->service, sizes.of(*run), {}};
        Extent y;
        for (const plan::Vertex& vertex : run->vertices) {
            profile.centre.push_back({vertex.at.x, vertex.level});
            y.take(vertex.at.y);
        }
        standing.push_back({y.low, run->id});
        elevation.runs.push_back(std::move(profile));
    }
    for (const auto& tee : plan.tees)
        elevation.tees.push_back({tee->id, {tee->at.x, tee->level}});
    for (const auto& pump : plan.pumps)
        if (const plan::Vessel* home = plan.vessels.find(pump->vessel))
            elevation.pumps.push_back({pump->id, home->id, pump->tag, plan::placeOf(*home, *pump).x,
                                       plan::insideBottom(*home), pump->outletLevel, pump->running});
}

FixtureProfile projected(const plan::Fixture& fixture)
{
    FixtureProfile profile{
        fixture.id,    fixture.kind, std::min(fixture.from.x, fixture.to.x), std::max(fixture.from.x, fixture.to.x),
        fixture.level, fixture.level};
    if (fixture.kind == plan::FixtureKind::powerPoint)
        return profile;
    profile.top = fixture.level + fixture.height;
    const units::Length length = plan::distanceBetween(fixture.from, fixture.to);
    // Of a wall the thickness shows as far as it stands across the view.
    const double across =
        length > units::Length() ? units::inMetres(fixture.to.y - fixture.from.y) / units::inMetres(length) : 1.0;
    const units::Length half = fixture.size / 2.0 * (across < 0.0 ? -across : across);
    profile.left -= half;
    profile.right += half;
    return profile;
}

void addBuilding(FrontElevation& elevation, const plan::Plan& plan)
{
    for (const auto& fixture : plan.fixtures)
        elevation.fixtures.push_back(projected(*fixture));
    const plan::Floor& floor = *plan.floor;
    if (floor.outline.empty())
        return;
    const auto [x, y] = extentOf(floor.outline);
    elevation.floor = {{x.low, plan::levelAt(floor, {x.low, y.low})}, {x.high, plan::levelAt(floor, {x.high, y.low})}};
}

void putInOrder(FrontElevation& elevation, std::vector<Standing> standing)
{
    std::stable_sort(standing.begin(), standing.end(),
                     [](const Standing& a, const Standing& b) { return a.near > b.near; });
    std::unordered_map<base::Id, std::size_t> place;
    for (const Standing& each : standing) {
        place.emplace(each.id, place.size());
        elevation.order.push_back(each.id);
    }
    std::sort(elevation.vessels.begin(), elevation.vessels.end(),
              [&](const VesselProfile& a, const VesselProfile& b) { return place.at(a.id) < place.at(b.id); });
}

void measure(FrontElevation& elevation)
{
    Extent x, z;
    const auto take = [&](units::Length along, units::Elevation level) {
        x.take(along);
        z.take(units::aboveDatum(level));
    };
    for (const VesselProfile& vessel : elevation.vessels) {
        take(vessel.left, vessel.base);
        take(vessel.right, vessel.rim);
        take(vessel.left, vessel.floor);
    }
    for (const RunProfile& run : elevation.runs)
        for (const ProfilePoint& point : run.centre)
            take(point.along, point.level);
    if (elevation.floor) {
        take(elevation.floor->first.along, elevation.floor->first.level);
        take(elevation.floor->second.along, elevation.floor->second.level);
    }
    if (x.low > x.high)
        return;
    elevation.low = {x.low, units::elevationAt(z.low)};
    elevation.high = {x.high, units::elevationAt(z.high)};
}

} // namespace

FrontElevation elevationOf(const plan::Plan& plan, const assessment::Assessment* results,
                           const catalogue::Catalogue* catalogue)
{
    FrontElevation elevation;
    PipeSizes sizes(catalogue);
    std::vector<Standing> standing;
    addVessels(elevation, plan, results, sizes, standing);
    addPipes(elevation, plan, sizes, standing);
    putInOrder(elevation, std::move(standing));
    addBuilding(elevation, plan);
    measure(elevation);
    return elevation;
}

} // namespace sumpwright::report
