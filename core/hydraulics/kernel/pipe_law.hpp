// Head loss of one pipe against flow, with its slope, in plain SI numbers: the inner loop of every solve.
// Flow m3/s, loss m, slope s/m2. The public doors are friction.hpp and network.hpp; the law is stated in friction.hpp.
#pragma once

#include <cmath>

#include "core/hydraulics/friction.hpp"

namespace sumpwright::hydraulics::kernel
{

constexpr double colebrookSlope = 0.86858896380650365530; // 2 / ln 10
constexpr double colebrookSmooth = 2.51;

// x = 1/sqrt(f) of Colebrook-White by Newton. The residual x + (2/ln 10) ln(r + s x) rises and is concave in x, so from
// any start the steps settle; the error after a step dx is below 0.02 dx^2, so a step under 1e-6 leaves less than
// 1e-13.
inline double colebrookRoot(double roughTerm, double smoothTerm, double start)
{
    double x = start;
    for (int step = 0; step < 20; ++step) {
        const double inside = roughTerm + smoothTerm * x;
        const double change = inside * (x + colebrookSlope * std::log(inside)) / (inside + colebrookSlope * smoothTerm);
        x -= change;
        if (std::fabs(change) < 1e-6)
            break;
    }
    return x;
}

// Friction factor of one relative roughness: ln f and its slope against ln Re.
class FrictionLaw
{
public:
    struct Value {
        double factor;
        double logSlope; // d ln f / d ln Re
    };

    FrictionLaw() = default;
    explicit FrictionLaw(double relativeRoughness) : m_roughTerm(relativeRoughness / 3.7) {}

    // `root` is 1/sqrt(f) of the last turbulent value, a start for the next; any positive number will do.
    Value at(double reynolds, double& root) const
    {
        if (reynolds <= laminarLimit)
            return {64.0 / reynolds, -1.0};
        return reynolds >= turbulentLimit ? turbulent(reynolds, root) : transition(reynolds, root);
    }

private:
    Value turbulent(double reynolds, double& root) const
    {
        const double smoothTerm = colebrookSmooth / reynolds;
        root = colebrookRoot(m_roughTerm, smoothTerm, root);
        const double viscous = colebrookSlope * smoothTerm;
        return {1.0 / (root * root), -2.0 * viscous / (m_roughTerm + smoothTerm * root + viscous)};
    }

    // Cubic Hermite of ln f in ln Re between the laminar and the turbulent end.
    Value transition(double reynolds, double& root) const
    {
        const Value end = turbulent(turbulentLimit, root);
        constexpr double logTurbulentOverLaminar = 0.69314718055994530942; // ln(4000/2000)
        constexpr double logLaminarFactor = -3.4420193761824105;           // ln(64/2000)
        const double width = logTurbulentOverLaminar;
        const double t = std::log(reynolds / laminarLimit) / width;
        const double rise = std::log(end.factor) - logLaminarFactor;
        const double first = -width;
        const double last = end.logSlope * width;
        // y = y0 + first t + c2 t^2 + c3 t^3
        const double c2 = 3.0 * rise - 2.0 * first - last;
        const double c3 = first + last - 2.0 * rise;
        const double y = logLaminarFactor + t * (first + t * (c2 + t * c3));
        return {std::exp(y), (first + t * (2.0 * c2 + t * 3.0 * c3)) / width};
    }

    double m_roughTerm = 0.0;
};

struct PipeNumbers { // SI
    double bore = 0.0;
    double length = 0.0;
    double roughness = 0.0;
    double sumK = 0.0;
};

class PipeLaw
{
public:
    struct Value {
        double friction; // m, signed as the flow
        double fittings; // m, signed as the flow
        double slope;    // of their sum, s/m2
    };

    PipeLaw() = default;
    PipeLaw(const PipeNumbers& pipe, double kinematicViscosity)
        : m_friction(pipe.roughness / pipe.bore), m_reynoldsPerFlow(4.0 / (units::pi * pipe.bore * kinematicViscosity))
    {
        const double d2 = pipe.bore * pipe.bore;
        const double velocityHead = 8.0 / (units::standardGravity * units::pi * units::pi * d2 * d2); // per q^2
        m_perFactor = velocityHead * pipe.length / pipe.bore;
        m_perSquare = velocityHead * pipe.sumK;
        m_laminar = 64.0 * m_perFactor / m_reynoldsPerFlow;
    }

    double reynolds(double flow) const { return m_reynoldsPerFlow * std::fabs(flow); }

    Value at(double flow, double& root) const
    {
        const double size = std::fabs(flow);
        const double re = m_reynoldsPerFlow * size;
        const double fittings = m_perSquare * size * flow;
        if (re <= laminarLimit || m_perFactor == 0.0)
            return {m_laminar * flow, fittings, m_laminar + 2.0 * m_perSquare * size};
        const FrictionLaw::Value f = m_friction.at(re, root);
        const double perFlow = m_perFactor * f.factor * size; // loss / flow
        return {perFlow * flow, fittings, perFlow * (2.0 + f.logSlope) + 2.0 * m_perSquare * size};
    }

private:
    FrictionLaw m_friction;
    double m_reynoldsPerFlow = 0.0;
    double m_perFactor = 0.0; // friction loss = m_perFactor f q^2
    double m_perSquare = 0.0; // fitting loss = m_perSquare q^2
    double m_laminar = 0.0;   // laminar friction loss = m_laminar q
};

} // namespace sumpwright::hydraulics::kernel
