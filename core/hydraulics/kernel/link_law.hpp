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
        double loss;     // m
        double slope;    // s/m2, at least smallestResistance
        double friction; // m, the part of the loss that is pipe friction
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

    // By one step a friction factor may still be on its way, which rootSettled() tells.
    template <Roots roots = Roots::Settled> Value at(double flow)
    {
        if (m_oneWay && flow < 0.0) {
            m_root.settled = true;
            return {m_atRest + backflowResistance * flow, backflowResistance, 0.0};
        }
        if (m_pump) {
            const HeadWithSlope head = m_pump->headWithSlopeAt(units::cubicMetresPerSecond(flow), m_speed);
            return {-units::inMetresHead(head.head), std::max(-head.slope.value(), smallestResistance), 0.0};
        }
        const PipeLaw::Value value = m_pipe.at<roots>(flow, m_root);
        return {m_atRest + value.friction + value.fittings + m_leastResistance * flow,
                std::max(value.slope, smallestResistance), value.friction};
    }

    // Where to go on from when a one-way pipe's flow changes its sign, given the head across it: on the backward line,
    // or at about the flow that this head drives. Next to no flow a tangent is nearly level and would lead far astray.
    double flowAcross(double head) const
    {
        const double driving = head - m_atRest;
        return driving > 0.0 ? std::min(m_pipe.roughFlow(driving), 10.0 * m_start) : driving / backflowResistance;
    }

    bool rootSettled() const { return m_root.settled; }
    bool isPump() const { return m_pump != nullptr; }
    bool oneWay() const { return m_oneWay; }
    double atRest() const { return m_atRest; } // loss just above no flow: opening head, or minus the shut-off head
    double start() const { return m_start; }   // a flow to start from

private:
    PipeLaw m_pipe;
    const PumpCurve* m_pump = nullptr;
    double m_speed = 1.0;
    bool m_oneWay = false;
    double m_atRest = 0.0;
    double m_leastResistance = 0.0;
    double m_start = 0.0;
    LastRoot m_root;
};

} // namespace sumpwright::hydraulics::kernel
