#include "core/hydraulics/overflow.hpp"

#include <algorithm>
#include <cmath>

#include "core/base/ensure.hpp"

namespace sumpwright::hydraulics
{
namespace
{

constexpr double weirCoefficient = 0.62;
constexpr double drownedCoefficient = 0.60;
constexpr double blendPower = 4.0;
constexpr double twiceGravity = 2.0 * units::standardGravity;

struct LipNumbers { // SI; flow = weir h^1.5, drowned h^0.5
    double weir;
    double drowned;
};

LipNumbers numbersOf(const Lip& lip)
{
    const double d = units::inMetres(lip.bore);
    base::ensure(d > 0.0 && lip.openFraction > 0.0 && lip.openFraction <= 1.0, "a lip has a bore and an open part");
    const double perimeter = units::pi * d * lip.openFraction;
    const double area = units::pi / 4.0 * d * d * lip.openFraction;
    return {2.0 / 3.0 * weirCoefficient * std::sqrt(twiceGravity) * perimeter,
            drownedCoefficient * area * std::sqrt(twiceGravity)};
}

double levelMetres(units::Length level) { return std::max(units::inMetres(level), 0.0); }

// (Qw^-4 + Qo^-4)^(-1/4), written so that neither a dry lip nor a deep one over- or underflows.
double blended(const LipNumbers& n, double h)
{
    const double ratio = n.weir * h / n.drowned; // Qw / Qo
    return n.weir * h * std::sqrt(h) / std::pow(1.0 + std::pow(ratio, blendPower), 1.0 / blendPower);
}

// EN 12056-3: Q[L/s] = D h^1.5 / 7500 up to h = D/2, D^2 h^0.5 / 15000 above; D and h in mm.
double designLitresPerSecond(double d, double h)
{
    return h <= d / 2.0 ? d * h * std::sqrt(h) / 7500.0 : d * d * std::sqrt(h) / 15000.0;
}

double designLevelMillimetres(double d, double litresPerSecond)
{
    const double weir = std::pow(7500.0 * litresPerSecond / d, 2.0 / 3.0);
    if (weir <= d / 2.0)
        return weir;
    const double root = 15000.0 * litresPerSecond / (d * d);
    return root * root;
}

// The blend rises with h between h^0.5 and h^1.5, so Newton in ln h settles from either side.
double levelOfBlend(const LipNumbers& n, double flow)
{
    double y = std::max(2.0 / 3.0 * std::log(flow / n.weir), 2.0 * std::log(flow / n.drowned));
    for (int step = 0; step < 60; ++step) {
        const double h = std::exp(y);
        const double ratio4 = std::pow(n.weir * h / n.drowned, blendPower);
        const double slope = 1.5 - ratio4 / (1.0 + ratio4); // d ln Q / d ln h
        const double change = std::log(blended(n, h) / flow) / slope;
        y -= change;
        if (std::fabs(change) < 1e-14)
            break;
    }
    return std::exp(y);
}

} // namespace

units::Flow weirFlow(const Lip& lip, units::Length level)
{
    const double h = levelMetres(level);
    return units::cubicMetresPerSecond(numbersOf(lip).weir * h * std::sqrt(h));
}

units::Flow drownedFlow(const Lip& lip, units::Length level)
{
    return units::cubicMetresPerSecond(numbersOf(lip).drowned * std::sqrt(levelMetres(level)));
}

units::Flow overflowFlow(const Lip& lip, units::Length level)
{
    return units::cubicMetresPerSecond(blended(numbersOf(lip), levelMetres(level)));
}

units::Flow overflowDesignCapacity(const Lip& lip, units::Length level)
{
    base::ensure(units::inMetres(lip.bore) > 0.0, "a lip has a bore");
    return units::litresPerHour(3600.0 * lip.openFraction *
                                designLitresPerSecond(units::inMillimetres(lip.bore), 1e3 * levelMetres(level)));
}

base::Outcome<OverflowLevel> overflowLevel(const Lip& lip, units::Flow flow)
{
    const double q = units::inCubicMetresPerSecond(flow);
    if (!(q >= 0.0 && std::isfinite(q)))
        return base::Refusal{"hydraulics.negative", "flow", "an overflow takes no negative flow", "a flow from 0 up"};
    if (!(lip.bore >= smallestOverflowBore && lip.bore <= largestOverflowBore))
        return base::Refusal{"hydraulics.bore-out-of-range", "bore", "the bore is outside the range of the formulas",
                             "10 to 300 mm"};
    if (!(lip.openFraction > 0.0 && lip.openFraction <= 1.0))
        return base::Refusal{"hydraulics.open-fraction-out-of-range", "open_fraction",
                             "the open part of the lip is no part of 1", "above 0, at most 1"};
    if (q == 0.0)
        return OverflowLevel{};
    const double predicted = levelOfBlend(numbersOf(lip), q);
    const double design = designLevelMillimetres(units::inMillimetres(lip.bore), 1e3 * q / lip.openFraction);
    return OverflowLevel{units::metres(predicted), units::millimetres(design),
                         predicted <= deepestOverBore * units::inMetres(lip.bore)};
}

double pipeFroudeNumber(units::Flow flow, units::Length bore)
{
    const double d = units::inMetres(bore);
    base::ensure(d > 0.0, "a pipe has a bore");
    return std::fabs(units::inCubicMetresPerSecond(flow)) /
           (units::pi / 4.0 * d * d * std::sqrt(units::standardGravity * d));
}

OverflowRegime overflowRegimeOf(double froudeNumber)
{
    if (froudeNumber < quietFroude)
        return OverflowRegime::Quiet;
    return froudeNumber <= siphoningFroude ? OverflowRegime::Gurgling : OverflowRegime::Siphoning;
}

units::Flow flowAtFroude(double froudeNumber, units::Length bore)
{
    const double d = units::inMetres(bore);
    return units::cubicMetresPerSecond(froudeNumber * units::pi / 4.0 * d * d * std::sqrt(units::standardGravity * d));
}

} // namespace sumpwright::hydraulics
