#include "core/space/high_points.hpp"

#include <algorithm>
#include <cmath>

#include "core/space/vec.hpp"

namespace sumpwright::space
{
namespace
{

const units::Length worthSaying = units::millimetres(20.0);

} // namespace

std::vector<HighPoint> highPointsOf(const PipeBody& body, bool forward)
{
    std::vector<Spot> spots = body.spots;
    if (!forward)
        std::reverse(spots.begin(), spots.end());
    const std::size_t count = spots.size();
    std::vector<HighPoint> points;
    for (std::size_t i = 1; i + 1 < count; ++i) {
        if (spots[i].level <= spots[i - 1].level)
            continue; // not risen to
        std::size_t before = i, behind = i;
        while (before > 0 && spots[before - 1].level <= spots[before].level)
            --before;
        units::Angle steepest = units::radians(0.0);
        while (behind + 1 < count && spots[behind + 1].level <= spots[behind].level) {
            const Vec leg = Vec(spots[behind + 1]) - Vec(spots[behind]);
            if (leg.z() < 0.0)
                steepest = std::max(steepest, units::radians(std::atan2(-leg.z(), std::hypot(leg.x(), leg.y()))));
            ++behind;
        }
        const units::Length height =
            std::min(spots[i].level - spots[before].level, spots[i].level - spots[behind].level);
        if (height > worthSaying)
            points.push_back({forward ? i : count - 1 - i, spots[i], height, steepest, behind + 1 == count});
    }
    return points;
}

} // namespace sumpwright::space
