// Checks of site, floor, fixtures, notes, dimension lines and underlay.
#include <algorithm>
#include <cmath>

#include "core/plan/check_elements.hpp"
#include "core/plan/limits.hpp"

namespace sumpwright::plan
{

namespace
{

// Twice the signed area of a triangle: left turn positive.
double cross(Point a, Point b, Point c)
{
    return units::inMetres(b.x - a.x) * units::inMetres(c.y - a.y) -
           units::inMetres(b.y - a.y) * units::inMetres(c.x - a.x);
}

bool edgesCross(Point a, Point b, Point c, Point d)
{
    return cross(a, b, c) * cross(a, b, d) < 0.0 && cross(c, d, a) * cross(c, d, b) < 0.0;
}

void checkOutline(const Floor& floor, FaultFinder& faults)
{
    const auto& corners = floor.outline;
    if (corners.empty())
        return;
    if (corners.size() < 3 || corners.size() > limits::mostVertices)
        return faults.fault("outline", "plan.corner-count", std::to_string(corners.size()) + " corners", "3 to 1000");
    double twiceArea = 0.0;
    for (std::size_t i = 0; i < corners.size(); ++i) {
        if (!faults.place("outline", corners[i]))
            return;
        twiceArea += cross({}, corners[i], corners[(i + 1) % corners.size()]);
    }
    for (std::size_t i = 0; i < corners.size(); ++i)
        for (std::size_t j = i + 1; j < corners.size(); ++j)
            if (edgesCross(corners[i], corners[(i + 1) % corners.size()], corners[j],
                           corners[(j + 1) % corners.size()]))
                return faults.fault("outline", "plan.outline-crosses", "the outline crosses itself",
                                    "corners in their order around the floor");
    if (std::abs(twiceArea) < 2e-2)
        return faults.fault("outline", "plan.outline-flat", "the outline has no area", "corners around an area");
    if (twiceArea < 0.0)
        faults.fault("outline", "plan.outline-clockwise", "the corners run clockwise", "counter-clockwise corners");
}

bool hasTwoEnds(FixtureKind kind) { return kind == FixtureKind::wall || kind == FixtureKind::door; }

// Kept beside the plan's file: a name, or folders below the plan's own, never a way out of it.
bool staysBeside(const std::string& fileName)
{
    if (fileName.front() == '/' || fileName.find('\\') != std::string::npos)
        return false;
    return ("/" + fileName + "/").find("/../") == std::string::npos;
}

} // namespace

void checkSite(const Site& site, FaultFinder& faults)
{
    faults.at({}, "site", {});
    faults.words("name", site.name, limits::longestText, false);
    faults.words("client", site.client, limits::longestText, false);
    faults.words("designer", site.designer, limits::longestText, false);
    faults.words("floor_use", site.floorUse, limits::longestTag, false);
    if (site.altitude)
        faults.within("altitude", *site.altitude, units::metres(-500.0), units::metres(6000.0));
    const units::Temperature freezing = units::celsius(0.0);
    const units::Temperature hot = units::celsius(40.0);
    faults.within("design_water", site.designWater, freezing, hot);
    if (site.coldestWater)
        faults.within("coldest_water", *site.coldestWater, freezing, hot);
    if (site.warmestWater && faults.within("warmest_water", *site.warmestWater, freezing, hot) && site.coldestWater &&
        *site.warmestWater < *site.coldestWater)
        faults.fault("warmest_water", "plan.water-range", "the warmest water is colder than the coldest",
                     "a temperature of at least " + units::format(*site.coldestWater) + ", or a lower coldest one");
    faults.within("design_air", site.designAir, units::celsius(-60.0), units::celsius(60.0));
    const auto capital = [](char letter) { return letter >= 'A' && letter <= 'Z'; };
    if (site.currency.size() != 3 || !std::all_of(site.currency.begin(), site.currency.end(), capital))
        faults.fault("currency", "plan.currency", "'" + site.currency + "' is no currency code",
                     "three capital letters, e.g. EUR");
    if (site.powerPrice &&
        (!std::isfinite(units::inSi(*site.powerPrice)) || units::inCurrencyPerKilowattHour(*site.powerPrice) < 0.0 ||
         units::inCurrencyPerKilowattHour(*site.powerPrice) > 1e9))
        faults.fault("power_price", "plan.out-of-range", "a price that is negative or no number", "a price per kWh");
    faults.within("north", site.north, units::degrees(-360.0), units::degrees(360.0));
    const units::Length none = units::metres(0.0);
    const units::Length wide = units::metres(10.0);
    faults.within("aisle_width", site.clearances.aisle, none, wide);
    faults.within("reach", site.clearances.reach, none, wide);
    faults.within("headroom", site.clearances.headroom, none, wide);
    faults.within("door_margin", site.clearances.doorMargin, none, wide);
}

void checkFloor(const Floor& floor, FaultFinder& faults)
{
    faults.at({}, "floor", {});
    checkOutline(floor, faults);
    faults.level("level", floor.level);
    faults.within("fall", floor.fall, units::metresPerMetre(0.0), units::metresPerMetre(0.5));
    faults.within("fall_direction", floor.fallDirection, units::degrees(-360.0), units::degrees(360.0));
    if (floor.drainPoint)
        faults.place("drain_point", *floor.drainPoint);
    if (floor.clearHeight)
        faults.size("clear_height", *floor.clearHeight);
    if (floor.thickness)
        faults.within("thickness", *floor.thickness, units::millimetres(1.0), units::metres(10.0));
}

void checkUnderlay(const Underlay& underlay, FaultFinder& faults)
{
    faults.at({}, "underlay", {});
    faults.words("file", underlay.fileName, 1000, true);
    if (!underlay.fileName.empty() && !staysBeside(underlay.fileName))
        faults.fault("file", "plan.underlay-elsewhere", "'" + underlay.fileName + "' does not lie beside the plan",
                     "a file in the plan's folder");
    faults.place("corner", underlay.corner);
    faults.within("pixel_size", underlay.pixelSize, units::metres(1e-6), units::metres(10.0));
    faults.within("turn", underlay.turn, units::degrees(-360.0), units::degrees(360.0));
    faults.ratio("opacity", underlay.opacity, 0.01, 1.0);
}

void checkFixture(const Fixture& fixture, FaultFinder& faults)
{
    faults.at(fixture.id, "fixture", fixture.tag);
    faults.words("tag", fixture.tag, limits::longestTag, true);
    const bool sound = faults.place("from", fixture.from) && faults.place("to", fixture.to);
    if (sound && hasTwoEnds(fixture.kind) && distanceBetween(fixture.from, fixture.to) < limits::leastSize)
        faults.fault("to", "plan.no-length", "both ends lie at one place", "two places apart");
    if (sound && !hasTwoEnds(fixture.kind) && fixture.from != fixture.to)
        faults.fault("to", "plan.two-places", "a post or power point with two places", "one place");
    faults.size("size", fixture.size);
    faults.size("height", fixture.height);
    faults.level("level", fixture.level);
}

void checkNote(const Note& note, FaultFinder& faults)
{
    faults.at(note.id, "note", "note");
    faults.place("at", note.at);
    faults.words("text", note.text, limits::longestText, true, true);
}

void checkDimension(const DimensionLine& dimension, FaultFinder& faults)
{
    faults.at(dimension.id, "dimension", "dimension line");
    if (faults.place("from", dimension.from) && faults.place("to", dimension.to) &&
        distanceBetween(dimension.from, dimension.to) < limits::leastLeg)
        faults.fault("to", "plan.no-length", "both ends lie at one place", "two places apart");
    faults.within("offset", dimension.offset, -limits::largestSize, limits::largestSize);
}

} // namespace sumpwright::plan
