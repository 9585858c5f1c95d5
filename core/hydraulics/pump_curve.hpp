// A pump's head and input power against flow: a monotone cubic through its points, or two numbers from the box.
// Flow from 0 up, head above 0 falling strictly. Past the last point the curve runs on straight ("run-out"), head may
// fall below 0 there. Speed is a ratio to the curve's own speed: flow ~ n, head ~ n^2, power ~ n^3.
// Identical units together: side by side the flows add at one head (each behind its own non-return valve), in a row the
// heads at one flow; the power is that of all.
// Source: Fritsch and Butland 1984 (the interpolation); affinity laws. The exponent 1.7 of the two-number form is our
// own choice (1.3 to 2.0 are usual). Keys: fritsch-butland-1984, affinity-laws, pump-two-numbers,
// pumps-together.
#pragma once

#include <optional>
#include <variant>
#include <vector>

#include "core/base/outcome.hpp"
#include "core/hydraulics/friction.hpp"
#include "core/units/measures.hpp"

namespace sumpwright::hydraulics
{

struct PumpPoint {
    units::Flow flow;
    units::Head head;
};

struct PumpPowerPoint {
    units::Flow flow;
    units::Power power;
};

// Unknown, the same at every flow, or points (held constant before the first and after the last).
using PumpPower = std::variant<std::monostate, units::Power, std::vector<PumpPowerPoint>>;

struct HeadWithSlope {
    units::Head head;
    HeadPerFlow slope; // d head / d flow, never positive
};

enum class PumpArrangement { One, TwoParallel, TwoInSeries };

class PumpCurve
{
public:
    // Refusals, place "points" or "point 3": "hydraulics.pump-too-few-points", "-starts-off-zero", "-flow-not-rising"
    // (also equal flows), "-head-rises" (also equal heads), "-negative", "-not-a-number".
    static base::Outcome<PumpCurve> fromPoints(const std::vector<PumpPoint>& points, const PumpPower& power = {});
    // Head at no flow and greatest flow at no head: H = H0 (1 - (Q/Qmax)^1.7). An estimate.
    static base::Outcome<PumpCurve> fromRatings(units::Head shutOff, units::Flow greatest, const PumpPower& power = {});

    // The curve of identical units of this curve's pump together; of one: the curve itself.
    PumpCurve together(PumpArrangement arrangement) const;

    units::Head headAt(units::Flow flow, double speed = 1.0) const; // flow below 0 counts as 0
    HeadWithSlope headWithSlopeAt(units::Flow flow, double speed = 1.0) const;
    std::optional<units::Power> powerAt(units::Flow flow, double speed = 1.0) const; // electrical input, if known

    units::Head shutOffHead(double speed = 1.0) const;
    units::Flow greatestFlow(double speed = 1.0) const; // end of the curve given
    bool runsOut(units::Flow flow, double speed = 1.0) const { return flow > greatestFlow(speed); }
    bool fromTwoNumbers() const { return m_twoNumbers; }
    const std::vector<PumpPoint>& points() const { return m_points; } // of one unit

private:
    struct Knot { // SI numbers of the interpolation
        double x;
        double y;
        double slope;
    };
    struct Point {
        double y = 0.0;
        double slope = 0.0;
    };
    PumpCurve() = default;
    static std::vector<Knot> knotsThrough(const std::vector<double>& x, const std::vector<double>& y);
    static Point interpolate(const std::vector<Knot>& knots, double x); // constant beyond the ends
    void takePower(const PumpPower& power);

    std::vector<PumpPoint> m_points;
    std::vector<Knot> m_head;
    std::vector<Knot> m_power;
    double m_tailSlope = 0.0; // m per m3/s, below 0
    bool m_twoNumbers = false;
    double m_flows = 1.0; // units side by side
    double m_heads = 1.0; // units in a row
};

} // namespace sumpwright::hydraulics
