// Pumps the hydraulics tests share. The G4500 is invented, of typical shape.
#pragma once

#include <vector>

#include "core/hydraulics/pump_curve.hpp"

namespace sumpwright::hydraulics::examples
{

inline std::vector<PumpPoint> points(const std::vector<std::pair<double, double>>& litresPerHourAndMetres)
{
    std::vector<PumpPoint> all;
    for (const auto& [flow, head] : litresPerHourAndMetres)
        all.push_back({units::litresPerHour(flow), units::metresHead(head)});
    return all;
}

inline PumpCurve g4500()
{
    return *PumpCurve::fromPoints(points({{0, 3.20}, {1125, 2.90}, {2250, 2.22}, {3375, 1.24}, {4500, 0}}),
                                  units::watts(70));
}

} // namespace sumpwright::hydraulics::examples
