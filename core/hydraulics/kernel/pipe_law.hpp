// Head loss of one pipe against flow, with its slope, in plain SI numbers: the inner loop of every solve.
// Flow m3/s, loss m, slope s/m2. The public doors are friction.hpp and network.hpp; the law is stated in friction.hpp.
#pragma once

#include <cmath>
#include <optional>

#include "core/hydraulics/friction.hpp"

namespace sumpwright::hydraulics::kernel
{

constexpr double colebrookSlope = 0.86858896380650365530; // 2 / ln 10
constexpr double colebrookSmooth = 2.51;

// x = 1/sqrt(f) as last solved, a start for the next: with the slope of x its place at a nearby Reynolds number
// follows.
struct LastRoot {
    double x = 7.0; // any positive number will do
    double perReynolds = 1.0;
    double perLogReynolds = 0.0;
    bool settled = true; // by the last step, where only one was asked for
    struct TurbulentEnd {
        double rise; // of ln f over the transition
        double last; // d ln f there, by the part of the transition's width
    };
    std::optional<TurbulentEnd> turbulentEnd; // of the transition, once it was needed

    double startFor(double nextReynolds) const
    {
        const double change = nextReynolds * perReynolds - 1.0; // ln of the ratio from its first three terms
        const double logRatio = change * (1.0 - change * (0.5 - change * (1.0 / 3.0)));
        return std::fabs(change) < 0.5 ? x + perLogReynolds * logRatio : x;
    }
};

constexpr double acceptedRootStep = 3e-4;

// One step of Halley's method towards x of Colebrook-White. The residual g = x + a ln(r + s x), a = 2/ln 10, rises and
// is concave in x; g, g' = 1 + a s / (r + s x) and g'' give the step with one division. A step dx leaves an error below
// 0.0025 |dx|^3 where the flow is turbulent: an accepted step less than 1e-13.
inline double colebrookStep(double roughTerm, double smoothTerm, double x)
{
    const double inside = roughTerm + smoothTerm * x;
    const double viscous = colebrookSlope * smoothTerm;
    const double both = inside + viscous;
    const double g = x + colebrookSlope * std::log(inside);
    return -g * inside * both / (both * both + g * viscous * viscous * (0.5 / colebrookSlope));
}

// How far 1/sqrt(f) is taken: to its end, or by one step, for a solver whose own steps go on with it.
enum class Roots { Settled, OneStep };

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

    template <Roots roots = Roots::Settled> Value at(double reynolds, LastRoot& root) const
    {
        if (reynolds <= laminarLimit)
            return {64.0 / reynolds, -1.0};
        return reynolds >= turbulentLimit ? turbulent<roots>(reynolds, root) : transition(reynolds, root);
    }

private:
    template <Roots roots> Value turbulent(double reynolds, LastRoot& root) const
    {
        const double perReynolds = 1.0 / reynolds;
        const double smoothTerm = colebrookSmooth * perReynolds;
        double x = root.startFor(reynolds);
        double step = 0.0;
        int steps = roots == Roots::OneStep ? 1 : 20;
        do {
            step = colebrookStep(m_roughTerm, smoothTerm, x);
            x += step;
        } while (--steps > 0 && std::fabs(step) >= acceptedRootStep);
        const double viscous = colebrookSlope * smoothTerm;
        const double both = m_roughTerm + smoothTerm * x + viscous;
        const double inverse = 1.0 / (x * x * both);
        const double relativeSlope = viscous * x * x * inverse; // d ln x / d ln Re
        root.x = x;
        root.perReynolds = perReynolds;
        root.perLogReynolds = relativeSlope * x;
        root.settled = std::fabs(step) < acceptedRootStep;
        return {both * inverse, -2.0 * relativeSlope};
    }

    // Cubic Hermite of ln f in ln Re between the laminar and the turbulent end.
    Value transition(double reynolds, LastRoot& root) const
    {
        constexpr double width = 0.69314718055994530942;         // ln(4000/2000)
        constexpr double logLaminarFactor = -3.4420193761824105; // ln(64/2000)
        constexpr double first = -width;
        if (!root.turbulentEnd) {
            LastRoot end;
            const Value value = turbulent<Roots::Settled>(turbulentLimit, end);
            root.turbulentEnd = {std::log(value.factor) - logLaminarFactor, value.logSlope * width};
        }
        root.settled = true;
        const auto [rise, last] = *root.turbulentEnd;
        const double t = std::log(reynolds * (1.0 / laminarLimit)) * (1.0 / width);
        // y = y0 + first t + c2 t^2 + c3 t^3
        const double c2 = 3.0 * rise - 2.0 * first - last;
        const double c3 = first + last - 2.0 * rise;
        const double y = logLaminarFactor + t * (first + t * (c2 + t * c3));
        return {std::exp(y), (first + t * (2.0 * c2 + t * 3.0 * c3)) * (1.0 / width)};
    }

    double m_roughTerm = 0.0;
};

struct PipeNumbers { // SI
    double bore = 0.0;
    double length = 0.0;
    double roughness = 0.0;
    double sumK = 0.0;
    double corrugatedFactor = 0.0; // 0: a plain wall
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
        m_corrugated = pipe.corrugatedFactor;
        m_laminarTo = m_corrugated > 0.0 ? 64.0 / m_corrugated : laminarLimit;
    }

    double reynolds(double flow) const { return m_reynoldsPerFlow * std::fabs(flow); }

    // About the flow that a head above zero drives; infinite for a link without length and K.
    double roughFlow(double head) const
    {
        constexpr double usualFactor = 0.03;
        return std::sqrt(head / (usualFactor * m_perFactor + m_perSquare));
    }

    template <Roots roots = Roots::Settled> Value at(double flow, LastRoot& root) const
    {
        const double size = std::fabs(flow);
        const double re = m_reynoldsPerFlow * size;
        const double fittings = m_perSquare * size * flow;
        if (re <= m_laminarTo || m_perFactor == 0.0) {
            root.settled = true; // none is needed
            return {m_laminar * flow, fittings, m_laminar + 2.0 * m_perSquare * size};
        }
        if (m_corrugated > 0.0) {
            root.settled = true;
            const double perFlow = m_perFactor * m_corrugated * size;
            return {perFlow * flow, fittings, 2.0 * perFlow + 2.0 * m_perSquare * size};
        }
        const FrictionLaw::Value f = m_friction.at<roots>(re, root);
        const double perFlow = m_perFactor * f.factor * size; // loss / flow
        return {perFlow * flow, fittings, perFlow * (2.0 + f.logSlope) + 2.0 * m_perSquare * size};
    }

private:
    FrictionLaw m_friction;
    double m_reynoldsPerFlow = 0.0;
    double m_perFactor = 0.0; // friction loss = m_perFactor f q^2
    double m_perSquare = 0.0; // fitting loss = m_perSquare q^2
    double m_laminar = 0.0;   // laminar friction loss = m_laminar q
    double m_corrugated = 0.0;
    double m_laminarTo = laminarLimit; // Reynolds number
};

} // namespace sumpwright::hydraulics::kernel
