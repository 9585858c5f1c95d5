#include "core/findings/reach.hpp"

#include <algorithm>
#include <cmath>

namespace sumpwright::findings
{
namespace
{

constexpr units::Length shoulder = units::metres(0.2); // half the width a standing person takes
constexpr int directions = 32;
constexpr double step = 0.05; // m

std::vector<Outline> obstaclesNear(const Situation& situation, plan::Point place, units::Length reach)
{
    std::vector<Outline> near;
    const units::Length far = reach + shoulder;
    const auto take = [&](const Outline& outline) {
        if (place.x - far <= outline.high.x && place.x + far >= outline.low.x && place.y - far <= outline.high.y &&
            place.y + far >= outline.low.y)
            near.push_back(outline);
    };
    for (const Outline& vessel : situation.outlines())
        take(vessel);
    for (const auto& fixture : situation.plan().fixtures)
        if (fixture->kind == plan::FixtureKind::wall || fixture->kind == plan::FixtureKind::post)
            take(footprintOf(*fixture));
    return near;
}

} // namespace

bool withinReach(const Situation& situation, plan::Point place, units::Length reach)
{
    const plan::Floor& floor = *situation.plan().floor;
    const std::vector<Outline> obstacles = obstaclesNear(situation, place, reach);
    const auto standable = [&](plan::Point at) {
        return plan::inside(floor, at) && std::all_of(obstacles.begin(), obstacles.end(), [at](const Outline& outline) {
                   return gapTo(outline, at) >= shoulder;
               });
    };
    for (double distance = units::inMetres(reach); distance > 0.0; distance -= step)
        for (int i = 0; i < directions; ++i) {
            const double angle = 2.0 * units::pi * i / directions;
            const plan::Point away{units::metres(distance * std::cos(angle)),
                                   units::metres(distance * std::sin(angle))};
            if (standable(place + away))
                return true;
        }
    return standable(place);
}

void tellIfFar(const Situation& situation, const Rule& rule, plan::Point place, std::vector<base::Id> elements,
               std::vector<Finding>& findings)
{
    const units::Length reach = situation.plan().site->clearances.reach;
    if (situation.plan().floor->outline.size() < 3 || withinReach(situation, place, reach))
        return;
    findings.push_back(findingOf(rule, Severity::warning, std::move(elements)));
    findings.back().limit = reach;
}

} // namespace sumpwright::findings
