#include "core/assessment/tee_legs.hpp"

#include <algorithm>
#include <cmath>
#include <deque>
#include <map>
#include <unordered_map>

namespace sumpwright::assessment
{
namespace
{

constexpr int unreached = -1;

base::Id teeAt(const plan::RunEnd& end)
{
    const auto* tee = std::get_if<plan::TeeEnd>(&end);
    return tee ? tee->tee : base::Id{};
}

std::array<double, 3> directionFrom(const plan::Run& run, std::size_t end)
{
    const std::size_t count = run.vertices.size();
    if (count == 0)
        return {};
    const plan::Vertex& start = end == 0 ? run.vertices.front() : run.vertices.back();
    for (std::size_t step = 1; step < count; ++step) {
        const plan::Vertex& next = run.vertices[end == 0 ? step : count - 1 - step];
        const std::array<double, 3> way{units::inMetres(next.at.x - start.at.x),
                                        units::inMetres(next.at.y - start.at.y),
                                        units::inMetres(next.level) - units::inMetres(start.level)};
        const double length = std::hypot(way[0], way[1], way[2]);
        if (length > 0.0)
            return {way[0] / length, way[1] / length, way[2] / length};
    }
    return {};
}

// Steps from the nearest pump along pressure runs, by tee.
std::unordered_map<base::Id, int> stepsFromPump(const std::vector<RunEnds>& runs)
{
    std::unordered_map<base::Id, std::vector<base::Id>> neighbours;
    std::deque<base::Id> front;
    std::unordered_map<base::Id, int> steps;
    for (const RunEnds& ends : runs) {
        if (ends.run->service != plan::Service::pressure)
            continue;
        const base::Id a = teeAt(ends.run->from), b = teeAt(ends.run->to);
        if (a.valid() && b.valid()) {
            neighbours[a].push_back(b);
            neighbours[b].push_back(a);
        }
        const bool fromPump = std::holds_alternative<plan::PumpEnd>(ends.run->from);
        const bool toPump = std::holds_alternative<plan::PumpEnd>(ends.run->to);
        const base::Id first = fromPump ? b : toPump ? a : base::Id{};
        if (first.valid() && steps.try_emplace(first, 0).second)
            front.push_back(first);
    }
    while (!front.empty()) {
        const base::Id tee = front.front();
        front.pop_front();
        const int next = steps.at(tee) + 1;
        const auto found = neighbours.find(tee);
        if (found == neighbours.end())
            continue;
        for (const base::Id neighbour : found->second)
            if (steps.try_emplace(neighbour, next).second)
                front.push_back(neighbour);
    }
    return steps;
}

int stepsOf(const plan::RunEnd& end, const std::unordered_map<base::Id, int>& steps)
{
    if (std::holds_alternative<plan::PumpEnd>(end))
        return -2; // nearer than any tee
    const auto found = steps.find(teeAt(end));
    return found == steps.end() ? unreached : found->second;
}

// Does the water come to this end's tee along this run?
bool comesIn(const plan::Run& run, std::size_t end, const std::unordered_map<base::Id, int>& steps)
{
    const plan::RunEnd& here = end == 0 ? run.from : run.to;
    const plan::RunEnd& far = end == 0 ? run.to : run.from;
    const int own = run.service == plan::Service::pressure ? stepsOf(here, steps) : unreached;
    const bool farTold = std::holds_alternative<plan::TeeEnd>(far) || std::holds_alternative<plan::PumpEnd>(far);
    if (own != unreached && farTold) {
        const int other = stepsOf(far, steps);
        if (other != own)
            return other < own;
    }
    if (own != unreached && !farTold)
        return false; // leads to a vessel or an open end
    return end == 1;  // as drawn
}

void addLeg(std::map<base::Id, std::vector<TeeLeg>>& legs, const std::vector<RunEnds>& runs, std::size_t index,
            std::size_t end, const std::unordered_map<base::Id, int>& steps)
{
    const plan::Run& run = *runs[index].run;
    const auto* tee = std::get_if<plan::TeeEnd>(end == 0 ? &run.from : &run.to);
    if (!tee)
        return;
    TeeLeg leg;
    leg.run = index;
    leg.end = end;
    leg.away = directionFrom(run, end);
    leg.bore = runs[index].bore;
    leg.incoming = comesIn(run, end, steps);
    leg.lossCoefficient = tee->lossCoefficient;
    legs[tee->tee].push_back(leg);
}

double cosineOf(const TeeLeg& a, const TeeLeg& b)
{
    return a.away[0] * b.away[0] + a.away[1] * b.away[1] + a.away[2] * b.away[2];
}

} // namespace

std::vector<TeeLegs> teeLegsOf(const std::vector<RunEnds>& runs)
{
    const auto steps = stepsFromPump(runs);
    std::map<base::Id, std::vector<TeeLeg>> byTee;
    for (std::size_t index = 0; index < runs.size(); ++index) {
        addLeg(byTee, runs, index, 0, steps);
        addLeg(byTee, runs, index, 1, steps);
    }
    std::vector<TeeLegs> all;
    for (auto& [tee, legs] : byTee)
        all.push_back({tee, std::move(legs)});
    return all;
}

std::vector<LegPart> partsOf(const std::vector<TeeLeg>& legs)
{
    std::vector<LegPart> parts(legs.size(), LegPart::branch);
    if (legs.size() < 2)
        return std::vector<LegPart>(legs.size(), LegPart::single);
    std::size_t first = 0, second = 1;
    for (std::size_t a = 0; a < legs.size(); ++a)
        for (std::size_t b = a + 1; b < legs.size(); ++b)
            if (cosineOf(legs[a], legs[b]) < cosineOf(legs[first], legs[second]) - 1e-9) {
                first = a;
                second = b;
            }
    const auto incoming = std::count_if(legs.begin(), legs.end(), [](const TeeLeg& leg) { return leg.incoming; });
    const auto outgoing = static_cast<std::ptrdiff_t>(legs.size()) - incoming;
    const bool dividing = incoming == 1;
    const bool joining = !dividing && outgoing == 1;
    std::size_t single = legs.size();
    for (std::size_t i = 0; i < legs.size(); ++i)
        if ((dividing && legs[i].incoming) || (joining && !legs[i].incoming))
            single = i;
    for (std::size_t i = 0; i < legs.size(); ++i) {
        const bool inLine = i == first || i == second;
        const bool pairedWithSingle = single == legs.size() || single == first || single == second;
        if (i == single)
            parts[i] = LegPart::single;
        else if (inLine && pairedWithSingle)
            parts[i] = LegPart::straight;
    }
    return parts;
}

units::Angle turnBetween(const TeeLeg& a, const TeeLeg& b)
{
    const auto &u = a.away, &v = b.away;
    const double cross = std::hypot(u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]);
    return units::radians(std::atan2(cross, -cosineOf(a, b)));
}

} // namespace sumpwright::assessment
