// The wetted part of a round bore by its half angle: 0 at the invert, pi/2 half full, pi brim full.
// All results are ratios to the bore D: depth y/D, area A/D2, width T/D, wetted perimeter P/D.
// Exact geometry; the area keeps its digits down to the thinnest film.
#pragma once

#include <algorithm>
#include <cmath>

#include "core/units/measures.hpp"

namespace sumpwright::hydraulics::kernel
{

inline double halfAngleAt(double depthRatio) { return 2.0 * std::asin(std::sqrt(std::clamp(depthRatio, 0.0, 1.0))); }

inline double depthRatioAt(double halfAngle)
{
    const double root = std::sin(halfAngle / 2.0);
    return root * root;
}

// Half angle minus sine times cosine: four times the area ratio, twice the area of the unit circle's segment.
inline double segmentAt(double halfAngle)
{
    const double x = 2.0 * halfAngle;
    if (x > 0.25)
        return halfAngle - std::sin(x) / 2.0;
    const double x2 = x * x; // (x - sin x) / 2 by its series, where the difference would lose its digits
    return x * x2 / 12.0 * (1.0 - x2 / 20.0 * (1.0 - x2 / 42.0 * (1.0 - x2 / 72.0 * (1.0 - x2 / 110.0))));
}

// The half angle in (0, highest) at which `misfit`, rising with the angle from below zero to above it, is zero: Newton
// inside a shrinking bracket. `misfit(angle)` gives value and slope.
struct Misfit {
    double value;
    double slope;
};
constexpr int arcSteps = 100;
constexpr double arcGoal = 1e-9; // a Newton step this small leaves nothing behind it

template <class Law> double halfAngleWhere(const Law& misfit, double guess, double highest)
{
    double below = 0.0;
    double above = highest;
    double angle = std::clamp(guess, 1e-6 * highest, (1.0 - 1e-6) * highest);
    for (int step = 0; step < arcSteps; ++step) {
        const Misfit at = misfit(angle);
        (at.value < 0.0 ? below : above) = angle;
        const double next = angle - at.value / at.slope;
        const bool inside = next > below && next < above;
        const bool done = std::fabs(next - angle) <= arcGoal * angle;
        angle = inside || done ? std::clamp(next, below, above) : (below + above) / 2.0;
        if (done)
            break;
    }
    return angle;
}

} // namespace sumpwright::hydraulics::kernel
