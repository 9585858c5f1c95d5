// An independent friction law and network check for the hydraulics properties: written from the published equations
// without the solver's own code. Colebrook by bisection on f, the transition by its own Hermite form, plain loops.
#pragma once

#include <algorithm>
#include <cmath>
#include <vector>

#include "core/hydraulics/network.hpp"

namespace sumpwright::oracle
{

constexpr double gravity = 9.80665;
constexpr double pi = 3.14159265358979323846;

// Colebrook-White as g(f) = 1/sqrt(f) + 2 log10(e/3.7 + 2.51/(Re sqrt f)) = 0; falls with f. Illinois false position.
inline double colebrook(double reynolds, double roughness)
{
    const auto g = [&](double f) {
        return 1.0 / std::sqrt(f) + 2.0 * std::log10(roughness / 3.7 + 2.51 / (reynolds * std::sqrt(f)));
    };
    double low = 1e-3, high = 10.0, atLow = g(low), atHigh = g(high);
    int side = 0;
    for (int i = 0; i < 200 && high - low > 1e-16 * high; ++i) {
        const double f = std::clamp((low * atHigh - high * atLow) / (atHigh - atLow), low, high);
        const double at = g(f);
        if (at == 0.0)
            return f;
        if (at > 0.0) {
            low = f;
            atLow = at;
            atHigh = side == 1 ? atHigh / 2.0 : atHigh;
            side = 1;
        } else {
            high = f;
            atHigh = at;
            atLow = side == 2 ? atLow / 2.0 : atLow;
            side = 2;
        }
        if (std::fabs(at) < 1e-15)
            return f;
    }
    return 0.5 * (low + high);
}

inline double frictionFactor(double reynolds, double roughness)
{
    if (reynolds <= 2000.0)
        return 64.0 / reynolds;
    if (reynolds >= 4000.0)
        return colebrook(reynolds, roughness);
    const double end = colebrook(4000.0, roughness);
    // d ln f / d ln Re from Colebrook by implicit differentiation.
    const double inside = roughness / 3.7 + 2.51 / (4000.0 * std::sqrt(end));
    const double w = 2.0 / std::log(10.0) * 2.51 / (4000.0 * inside);
    const double slope = -2.0 * w / (1.0 + w);
    const double width = std::log(2.0), s = std::log(reynolds / 2000.0) / width;
    const double h00 = (1 + 2 * s) * (1 - s) * (1 - s), h10 = s * (1 - s) * (1 - s);
    const double h01 = s * s * (3 - 2 * s), h11 = s * s * (s - 1);
    return std::exp(h00 * std::log(0.032) + h10 * width * -1.0 + h01 * std::log(end) + h11 * width * slope);
}

// Friction and fittings of a pipe at a flow of either sign, m.
inline double pipeLoss(const hydraulics::PipeLink& pipe, double viscosity, double flow)
{
    if (flow == 0.0)
        return 0.0;
    const double d = pipe.bore.value(), v = 4.0 * std::fabs(flow) / (pi * d * d);
    const double reynolds = v * d / viscosity;
    const double f = frictionFactor(reynolds, pipe.roughness.value() / d);
    return std::copysign((f * pipe.length.value() / d + pipe.sumK) * v * v / (2.0 * gravity), flow);
}

// Flow of a one-way pipe that drops from one grade to another, by false position on its loss.
inline double oneWayFlow(const hydraulics::PipeLink& pipe, double viscosity, double drop)
{
    if (drop <= 0.0)
        return 0.0;
    double low = 0.0, high = 1e-5;
    while (pipeLoss(pipe, viscosity, high) < drop) {
        low = high;
        high *= 2.0;
    }
    double atLow = pipeLoss(pipe, viscosity, low) - drop, atHigh = pipeLoss(pipe, viscosity, high) - drop;
    double flow = high;
    int side = 0;
    for (int i = 0; i < 200; ++i) {
        flow = (low * atHigh - high * atLow) / (atHigh - atLow);
        const double at = pipeLoss(pipe, viscosity, flow) - drop;
        if (std::fabs(at) < 1e-14 * (1.0 + drop) || high - low < 1e-16 * high)
            break;
        if (at < 0.0) {
            low = flow;
            atLow = at;
            atHigh = side == 1 ? atHigh / 2.0 : atHigh;
            side = 1;
        } else {
            high = flow;
            atHigh = at;
            atLow = side == 2 ? atLow / 2.0 : atLow;
            side = 2;
        }
    }
    return flow;
}

// How far a result is from solving its network: the conditions that only the one solution meets.
struct Misfit {
    double head = 0.0;     // m, over open links
    double mass = 0.0;     // m3/s, over junctions
    double backward = 0.0; // m3/s, worst flow against a one-way link
    double barred = 0.0;   // m, worst head a shut link holds back unduly
    int shut = 0;          // links found shut
};

inline Misfit misfitOf(const hydraulics::Network& network, const hydraulics::NetworkResult& result)
{
    Misfit misfit;
    std::vector<double> balance(network.nodes.size(), 0.0);
    for (std::size_t k = 0; k < network.links.size(); ++k) {
        const hydraulics::NetworkLink& link = network.links[k];
        const double flow = result.links[k].flow.value();
        balance[link.from] -= flow;
        balance[link.to] += flow;
        if (!result.nodes[link.from].grade || !result.nodes[link.to].grade)
            continue;
        const double drop = result.nodes[link.from].grade->value() - result.nodes[link.to].grade->value();
        const auto* pipe = std::get_if<hydraulics::PipeLink>(&link.part);
        const auto* pump = std::get_if<hydraulics::PumpLink>(&link.part);
        if (!pipe && !pump)
            continue;
        const bool oneWay = pump || pipe->oneWay;
        const double loss = pump ? -pump->curve.headAt(units::cubicMetresPerSecond(flow), pump->speed).value()
                                 : pipeLoss(*pipe, network.viscosity.value(), flow);
        if (oneWay)
            misfit.backward = std::max(misfit.backward, -flow);
        if (oneWay && flow == 0.0) {
            misfit.barred = std::max(misfit.barred, drop - loss);
            ++misfit.shut;
        } else
            misfit.head = std::max(misfit.head, std::fabs(drop - loss));
    }
    for (std::size_t i = 0; i < network.nodes.size(); ++i)
        if (const auto* junction = std::get_if<hydraulics::Junction>(&network.nodes[i]))
            misfit.mass = std::max(misfit.mass, std::fabs(balance[i] + junction->supply.value()));
    return misfit;
}

} // namespace sumpwright::oracle
