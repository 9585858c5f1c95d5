#include "core/space/passages.hpp"

#include <algorithm>

#include "core/space/prism.hpp"
#include "core/space/vec.hpp"

namespace sumpwright::space
{
namespace
{

const units::Length pitAround = units::metres(0.15); // a pit is dug that much larger than its vessel

units::Length lengthBetween(const Spot& a, const Spot& b) { return units::metres((Vec(b) - Vec(a)).length()); }

int crossings(const Inside& part)
{
    const auto wall = [](Face face) { return face == Face::side || face == Face::bottom ? 1 : 0; };
    return wall(part.in()) + wall(part.out());
}

// Shares of a leg at which it goes into a pit or out of one, with both ends; ascending.
std::vector<double> cutsOf(const Spot& a, const Spot& b, const std::vector<Prism>& pits)
{
    std::vector<double> cuts{0.0, 1.0};
    for (const Prism& pit : pits)
        if (const auto part = pit.partOf(a, b)) {
            cuts.push_back(part->from());
            cuts.push_back(part->to());
        }
    std::sort(cuts.begin(), cuts.end());
    return cuts;
}

bool inAny(const std::vector<Prism>& pits, const Spot& a, const Spot& b, double share)
{
    return std::any_of(pits.begin(), pits.end(), [&](const Prism& pit) {
        const auto part = pit.partOf(a, b);
        return part && share > part->from() && share < part->to();
    });
}

void keepWorst(std::optional<Beyond>& worst, const Spot& at, units::Length by)
{
    if (by > touching && (!worst || by > worst->by))
        worst = Beyond{at, by};
}

} // namespace

std::optional<Passage> passageThrough(const PipeBody& body, const Outline& vessel)
{
    int allowed = 0, made = 0;
    for (const Joint& end : body.ends)
        allowed += end.owner == vessel.id ? 1 : 0;
    if (allowed == 0)
        return passageThrough(body, vessel, std::max(body.radius - touching, units::Length()));
    const Prism prism(vessel, units::Length());
    Passage passage{body.spots.front(), {}};
    for (std::size_t i = 1; i < body.spots.size(); ++i)
        if (const auto part = prism.partOf(body.spots[i - 1], body.spots[i])) {
            if (made <= allowed && made + crossings(*part) > allowed)
                passage.at = placeOn(body.spots[i - 1], body.spots[i], part->from());
            made += crossings(*part);
            passage.length += lengthBetween(body.spots[i - 1], body.spots[i]) * (part->to() - part->from());
        }
    return made > allowed ? std::optional(passage) : std::nullopt;
}

std::optional<Passage> passageThrough(const PipeBody& body, const Outline& fixture, units::Length around)
{
    if (!meet(boxOf(body), fixture, around))
        return std::nullopt;
    const Prism prism(fixture, around);
    std::optional<Passage> passage;
    for (std::size_t i = 1; i < body.spots.size(); ++i)
        if (const auto part = prism.partOf(body.spots[i - 1], body.spots[i])) {
            if (!passage)
                passage = Passage{placeOn(body.spots[i - 1], body.spots[i], part->from()), {}};
            passage->length += lengthBetween(body.spots[i - 1], body.spots[i]) * (part->to() - part->from());
        }
    return passage;
}

std::optional<Beyond> aboveCeiling(const PipeBody& body, const plan::Floor& floor)
{
    std::optional<Beyond> worst;
    if (floor.clearHeight)
        for (const Spot& spot : body.spots) {
            const units::Length by = spot.level + body.radius - (plan::levelAt(floor, spot.at) + *floor.clearHeight);
            if (by > touching && plan::inside(floor, spot.at))
                keepWorst(worst, spot, by);
        }
    return worst;
}

std::optional<Beyond> belowFloor(const PipeBody& body, const plan::Floor& floor, const std::vector<Outline>& vessels)
{
    if (std::none_of(body.spots.begin(), body.spots.end(), [&](const Spot& spot) {
            return plan::levelAt(floor, spot.at) - (spot.level - body.radius) > touching;
        }))
        return std::nullopt; // floor and legs are straight: nothing lies deeper between
    const Box box = boxOf(body);
    std::vector<Prism> pits;
    for (const Outline& vessel : vessels)
        if (meet(box, vessel, pitAround + body.radius) &&
            vessel.base < plan::levelAt(floor, vessel.corners.front()) - touching)
            pits.emplace_back(vessel, vessel.base, vessel.top + units::metres(1.0), pitAround + body.radius);
    std::optional<Beyond> worst;
    for (std::size_t i = 1; i < body.spots.size(); ++i) {
        const Spot &a = body.spots[i - 1], &b = body.spots[i];
        const std::vector<double> cuts = cutsOf(a, b, pits);
        for (std::size_t k = 1; k < cuts.size(); ++k) {
            if (cuts[k] <= cuts[k - 1] || inAny(pits, a, b, (cuts[k - 1] + cuts[k]) / 2.0))
                continue;
            for (const double share : {cuts[k - 1], cuts[k]})
                if (const Spot spot = placeOn(a, b, share); plan::inside(floor, spot.at))
                    keepWorst(worst, spot, plan::levelAt(floor, spot.at) - (spot.level - body.radius));
        }
    }
    return worst;
}

} // namespace sumpwright::space
