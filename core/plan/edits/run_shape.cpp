#include "core/plan/edits/run_shape.hpp"

#include <algorithm>
#include <cmath>

#include "core/plan/limits.hpp"
#include "core/plan/tidy.hpp"

namespace sumpwright::plan
{

namespace
{

constexpr double samePlace = 1e-6; // m

double legLength(const Vertex& a, const Vertex& b)
{
    return std::hypot(units::inMetres(b.at.x - a.at.x), units::inMetres(b.at.y - a.at.y),
                      units::inMetres(b.level) - units::inMetres(a.level));
}

double drop(const Vertex& from, const Vertex& to) { return units::inMetres(to.level) - units::inMetres(from.level); }

// Index of the vertex before the vertical leg that takes up a lift of the first vertex; the count when there is none.
std::size_t takingUp(const std::vector<Vertex>& vertices, double lift)
{
    std::size_t first = vertices.size();
    for (std::size_t i = 0; i + 1 < vertices.size(); ++i) {
        if (!sameInPlan(vertices[i], vertices[i + 1]))
            continue;
        const double now = drop(vertices[i], vertices[i + 1]);
        if ((now - lift) * now > 0.0 && std::abs(now - lift) >= units::inMetres(limits::leastLeg))
            return i;
        if (first == vertices.size())
            first = i;
    }
    return first;
}

void carryLevel(std::vector<Vertex>& vertices, units::Elevation level)
{
    const double lift = units::inMetres(level) - units::inMetres(vertices.front().level);
    const std::size_t last = takingUp(vertices, lift);
    if (last < vertices.size())
        for (std::size_t i = 1; i <= last; ++i)
            vertices[i].level = tidy(units::elevationMetres(units::inMetres(vertices[i].level) + lift));
    vertices.front().level = level;
}

void carryPlace(std::vector<Vertex>& vertices, Point at, bool farEndOpen)
{
    std::size_t stack = 1;
    while (stack < vertices.size() && sameInPlan(vertices.front(), vertices[stack]))
        ++stack;
    if (stack == vertices.size() && !farEndOpen &&
        units::inMetres(distanceBetween(vertices.front().at, at)) > samePlace) {
        Vertex end = vertices.back();
        end.bendFittingId.clear();
        end.lossCoefficient.reset();
        vertices.push_back(end);
    }
    for (std::size_t i = 0; i < stack; ++i)
        vertices[i].at = at;
}

} // namespace

std::vector<double> reaches(const std::vector<Vertex>& vertices)
{
    std::vector<double> reach;
    for (std::size_t i = 0; i < vertices.size(); ++i)
        reach.push_back(i == 0 ? 0.0 : reach.back() + legLength(vertices[i - 1], vertices[i]));
    return reach;
}

bool sameInPlan(const Vertex& a, const Vertex& b) { return units::inMetres(distanceBetween(a.at, b.at)) <= samePlace; }

Run reversed(Run run)
{
    std::swap(run.from, run.to);
    std::reverse(run.vertices.begin(), run.vertices.end());
    for (Valve& valve : run.valves)
        valve.station = tidyRatio(1.0 - valve.station);
    std::reverse(run.valves.begin(), run.valves.end());
    return run;
}

KeptVertices allKept(std::size_t count)
{
    KeptVertices kept;
    for (std::size_t i = 0; i < count; ++i)
        kept.emplace_back(i, i);
    return kept;
}

void keepStations(const Run& before, Run& after, const KeptVertices& kept)
{
    if (after.valves.empty() || kept.empty())
        return;
    const std::vector<double> was = reaches(before.vertices);
    const std::vector<double> now = reaches(after.vertices);
    for (Valve& valve : after.valves) {
        const double at = valve.station * was.back();
        double moved = now[kept.front().second];
        for (std::size_t i = 0; i + 1 < kept.size(); ++i) {
            const double begin = was[kept[i].first];
            const double stretch = was[kept[i + 1].first] - begin;
            if (at < begin)
                break;
            const double share = stretch > 0.0 ? std::min(1.0, (at - begin) / stretch) : 0.0;
            moved = now[kept[i].second] + share * (now[kept[i + 1].second] - now[kept[i].second]);
        }
        valve.station = now.back() > 0.0 ? std::clamp(tidyRatio(moved / now.back()), 0.0, 1.0) : 0.0;
    }
}

void sortValves(Run& run)
{
    std::sort(run.valves.begin(), run.valves.end(), [](const Valve& a, const Valve& b) {
        return a.station != b.station ? a.station < b.station : a.id < b.id;
    });
}

void carryEnd(Run& run, RunSide side, const Vertex& to)
{
    const Run before = run;
    const bool farEndOpen = std::holds_alternative<OpenEnd>(endOf(run, otherSide(side)));
    std::vector<Vertex>& vertices = run.vertices;
    if (side == RunSide::to)
        std::reverse(vertices.begin(), vertices.end());
    carryLevel(vertices, to.level);
    carryPlace(vertices, to.at, farEndOpen);
    if (side == RunSide::to)
        std::reverse(vertices.begin(), vertices.end());
    const std::size_t added = side == RunSide::to ? vertices.size() - before.vertices.size() : 0;
    KeptVertices kept = allKept(before.vertices.size());
    for (auto& pair : kept)
        pair.second += added;
    keepStations(before, run, kept);
}

void dropZeroLegs(Run& run)
{
    std::vector<Vertex>& vertices = run.vertices;
    const double least = units::inMetres(limits::leastLeg);
    for (std::size_t i = 1; i + 1 < vertices.size();) {
        if (legLength(vertices[i - 1], vertices[i]) < least || legLength(vertices[i], vertices[i + 1]) < least)
            vertices.erase(vertices.begin() + static_cast<std::ptrdiff_t>(i));
        else
            ++i;
    }
}

} // namespace sumpwright::plan
