// The head a link takes from the water against the flow in it, for pipes and pumps alike, in plain SI numbers.
// Rises strictly with flow, so the network's content is strictly convex and its solution the only one.
// A one-way link lets a little water back against a very steep line; whoever solves shuts it then and solves again.
#pragma once

#include <algorithm>

#include "core/hydraulics/kernel/pipe_law.hpp"
#include "core/hydraulics/pump_curve.hpp"

namespace sumpwright::hydraulics::kernel
{

constexpr double backflowResistance = 1e10; // s/m2
constexpr double smallestResistance = 1e-3; // s/m2: 1 um at 1 L/s, for a link without length and K
constexpr double startVelocity = 0.3;       // m/s

class LinkLaw
{
public:
    struct Value {
        double loss;  // m
        double slope; // s/m2, at least smallestResistance
    };

    static LinkLaw ofPipe(const PipeNumbers& pipe, double kinematicViscosity, bool oneWay, double openingHead)
    {
        LinkLaw law;
        law.m_pipe = PipeLaw(pipe, kinematicViscosity);
        law.m_oneWay = oneWay;
        law.m_atRest = oneWay ? openingHead : 0.0;
        law.m_leastResistance = pipe.length == 0.0 && pipe.sumK == 0.0 ? smallestResistance : 0.0;
        law.m_start = startVelocity * units::pi / 4.0 * pipe.bore * pipe.bore;
        return law;
    }

    // The curve must outlive the law.
    static LinkLaw ofPump(const PumpCurve& curve, double speed)
    {
        LinkLaw law;
        law.m_pump = &curve;
        law.m_speed = speed;
        law.m_oneWay = true;
        law.m_atRest = -units::inMetresHead(curve.shutOffHead(speed));
        law.m_start = 0.5 * units::inCubicMetresPerSecond(curve.greatestFlow(speed));
        return law;
    }

    Value at(double flow)
    {
        if (m_oneWay && flow < 0.0)
            return {m_atRest + backflowResistance * flow, backflowResistance};
        if (m_pump) {
            const HeadWithSlope head = m_pump->headWithSlopeAt(units::cubicMetresPerSecond(flow), m_speed);
            return {-units::inMetresHead(head.head), std::max(-head.slope.value(), smallestResistance)};
        }
        const PipeLaw::Value value = m_pipe.at(flow, m_root);
        return {m_atRest + value.friction + value.fittings + m_leastResistance * flow,
                std::max(value.slope, smallestResistance)};
    }

    bool oneWay() const { return m_oneWay; }
    double atRest() const { return m_atRest; } // loss just above no flow: opening head, or minus the shut-off head
    double start() const { return m_start; }   // a flow to start from
    const PipeLaw& pipe() const { return m_pipe; }

private:
    PipeLaw m_pipe;
    const PumpCurve* m_pump = nullptr;
    double m_speed = 1.0;
    bool m_oneWay = false;
    double m_atRest = 0.0;
    double m_leastResistance = 0.0;
    double m_start = 0.0;
    double m_root = 7.0; // 1/sqrt(f) of the last evaluation
};

} // namespace sumpwright::hydraulics::kernel
