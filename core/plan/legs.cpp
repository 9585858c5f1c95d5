#include "core/plan/legs.hpp"

#include <algorithm>
#include <cmath>

namespace sumpwright::plan
{

std::vector<Point> legOffsets(const Vessel& vessel)
{
    std::vector<Point> places;
    if (!vessel.stand || vessel.stand->kind == StandKind::flat || vessel.stand->legCount < 1)
        return places;
    const RectangleShape frame = frameOf(vessel.shape);
    const units::Length length = frame.length - vessel.stand->padSide;
    const units::Length width = frame.width - vessel.stand->padSide;
    const int count = vessel.stand->legCount;
    if (std::holds_alternative<RoundShape>(vessel.shape)) {
        for (int i = 0; i < count; ++i) {
            const double angle = -2.0 * units::pi * (i + 0.5) / count;
            places.push_back({length / 2.0 * std::cos(angle), length / 2.0 * std::sin(angle)});
        }
        return places;
    }
    const int columns = std::max(1, (count + 1) / 2);
    const bool along = length >= width;
    for (int i = 0; i < count; ++i) {
        const double share = columns > 1 ? static_cast<double>(i / 2) / (columns - 1) : 0.5;
        const double side = i % 2;
        places.push_back({length * ((along ? share : side) - 0.5), width * (0.5 - (along ? side : share))});
    }
    return places;
}

} // namespace sumpwright::plan
