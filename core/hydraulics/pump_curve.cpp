#include "core/hydraulics/pump_curve.hpp"

#include <algorithm>
#include <cmath>
#include <string>

#include "core/base/ensure.hpp"

namespace sumpwright::hydraulics
{
namespace
{

constexpr double boxExponent = 1.7;

base::Refusal refusal(const char* id, const std::string& place, const char* what, const char* accepts)
{
    return {std::string("hydraulics.pump-") + id, place, what, accepts};
}

std::string pointName(std::size_t index) { return "point " + std::to_string(index + 1); }

std::optional<base::Refusal> faultOf(const std::vector<PumpPoint>& points)
{
    if (points.size() < 2)
        return refusal("too-few-points", "points", "a pump curve needs two points", "at least two, flow and head");
    for (std::size_t i = 0; i < points.size(); ++i) {
        const double q = units::inCubicMetresPerSecond(points[i].flow);
        const double h = units::inMetresHead(points[i].head);
        if (!std::isfinite(q) || !std::isfinite(h))
            return refusal("not-a-number", pointName(i), "flow or head is no number", "numbers");
        if (q < 0.0 || h < 0.0)
            return refusal("negative", pointName(i), "flow or head is below zero", "flow and head from 0 up");
        if (i == 0 && q > 0.0)
            return refusal("starts-off-zero", pointName(i), "the first point is not at no flow",
                           "a first point at 0 flow with the shut-off head");
        if (i > 0 && !(points[i].flow > points[i - 1].flow))
            return refusal("flow-not-rising", pointName(i), "the flow is not above that of the point before",
                           "points in order of rising flow, each flow once");
        if (i > 0 && !(points[i].head < points[i - 1].head))
            return refusal("head-rises", pointName(i), "the head is not below that of the point before",
                           "a head that falls from point to point");
    }
    return std::nullopt;
}

std::optional<base::Refusal> faultOf(const std::vector<PumpPowerPoint>& points)
{
    if (points.empty())
        return refusal("too-few-points", "power", "a power curve needs a point", "at least one, flow and power");
    for (std::size_t i = 0; i < points.size(); ++i) {
        const double q = units::inCubicMetresPerSecond(points[i].flow);
        const double p = units::inWatts(points[i].power);
        if (!std::isfinite(q) || !std::isfinite(p))
            return refusal("not-a-number", "power " + pointName(i), "flow or power is no number", "numbers");
        if (q < 0.0 || p <= 0.0)
            return refusal("negative", "power " + pointName(i), "flow is below zero or power not above it",
                           "flow from 0 up, power above 0");
        if (i > 0 && !(points[i].flow > points[i - 1].flow))
            return refusal("flow-not-rising", "power " + pointName(i), "the flow is not above that of the point before",
                           "points in order of rising flow, each flow once");
    }
    return std::nullopt;
}

std::optional<base::Refusal> faultOf(const PumpPower& power)
{
    if (const auto* constant = std::get_if<units::Power>(&power))
        if (!(units::inWatts(*constant) > 0.0 && std::isfinite(units::inWatts(*constant))))
            return refusal("negative", "power", "the input power is not above zero", "a power above 0");
    if (const auto* points = std::get_if<std::vector<PumpPowerPoint>>(&power))
        return faultOf(*points);
    return std::nullopt;
}

// Slope at the end of a curve from its last two pieces (widths h0, h1; secants s0, s1; 0 is the end piece).
double endSlope(double h0, double h1, double s0, double s1)
{
    const double slope = ((2.0 * h0 + h1) * s0 - h0 * s1) / (h0 + h1);
    if (slope * s0 <= 0.0)
        return 0.0;
    return s0 * s1 < 0.0 && std::fabs(slope) > 3.0 * std::fabs(s0) ? 3.0 * s0 : slope;
}

} // namespace

// Interior slopes are weighted harmonic means of the secants (Fritsch and Butland), so no piece turns back.
std::vector<PumpCurve::Knot> PumpCurve::knotsThrough(const std::vector<double>& x, const std::vector<double>& y)
{
    const std::size_t n = x.size();
    std::vector<Knot> knots(n);
    for (std::size_t i = 0; i < n; ++i)
        knots[i] = {x[i], y[i], 0.0};
    if (n < 2)
        return knots;
    const auto width = [&](std::size_t i) { return x[i + 1] - x[i]; };
    const auto secant = [&](std::size_t i) { return (y[i + 1] - y[i]) / width(i); };
    if (n == 2) {
        knots[0].slope = knots[1].slope = secant(0);
        return knots;
    }
    for (std::size_t i = 1; i + 1 < n; ++i) {
        const double before = secant(i - 1), after = secant(i);
        if (before * after <= 0.0)
            continue;
        const double w1 = 2.0 * width(i) + width(i - 1), w2 = width(i) + 2.0 * width(i - 1);
        knots[i].slope = (w1 + w2) / (w1 / before + w2 / after);
    }
    knots.front().slope = endSlope(width(0), width(1), secant(0), secant(1));
    knots.back().slope = endSlope(width(n - 2), width(n - 3), secant(n - 2), secant(n - 3));
    return knots;
}

PumpCurve::Point PumpCurve::interpolate(const std::vector<Knot>& knots, double x)
{
    const auto after = std::upper_bound(knots.begin(), knots.end(), x, [](double v, const Knot& k) { return v < k.x; });
    if (after == knots.begin())
        return {knots.front().y, 0.0};
    if (after == knots.end())
        return {knots.back().y, 0.0};
    const Knot& a = *(after - 1);
    const Knot& b = *after;
    const double width = b.x - a.x, t = (x - a.x) / width, rise = b.y - a.y;
    const double first = a.slope * width, last = b.slope * width;
    const double c2 = 3.0 * rise - 2.0 * first - last, c3 = first + last - 2.0 * rise;
    return {a.y + t * (first + t * (c2 + t * c3)), (first + t * (2.0 * c2 + t * 3.0 * c3)) / width};
}

base::Outcome<PumpCurve> PumpCurve::fromPoints(const std::vector<PumpPoint>& points, const PumpPower& power)
{
    if (const auto fault = faultOf(points))
        return *fault;
    if (const auto fault = faultOf(power))
        return *fault;
    std::vector<double> x, y;
    for (const PumpPoint& point : points) {
        x.push_back(units::inCubicMetresPerSecond(point.flow));
        y.push_back(units::inMetresHead(point.head));
    }
    PumpCurve curve;
    curve.m_points = points;
    curve.m_head = knotsThrough(x, y);
    const std::size_t n = x.size();
    // An end slope of 0 would let the pump run away along a flat line; the last secant then goes on.
    const double end = curve.m_head.back().slope;
    curve.m_tailSlope = end < 0.0 ? end : (y[n - 1] - y[n - 2]) / (x[n - 1] - x[n - 2]);
    curve.takePower(power);
    return curve;
}

base::Outcome<PumpCurve> PumpCurve::fromRatings(units::Head shutOff, units::Flow greatest, const PumpPower& power)
{
    const double h = units::inMetresHead(shutOff), q = units::inCubicMetresPerSecond(greatest);
    if (!(h > 0.0 && std::isfinite(h)))
        return refusal("negative", "shut_off_head", "the head at no flow is not above zero", "a head above 0");
    if (!(q > 0.0 && std::isfinite(q)))
        return refusal("negative", "greatest_flow", "the flow at no head is not above zero", "a flow above 0");
    if (const auto fault = faultOf(power))
        return *fault;
    PumpCurve curve;
    curve.m_points = {{units::Flow(), shutOff}, {greatest, units::Head()}};
    curve.m_twoNumbers = true;
    curve.m_tailSlope = -boxExponent * h / q;
    curve.takePower(power);
    return curve;
}

void PumpCurve::takePower(const PumpPower& power)
{
    if (const auto* constant = std::get_if<units::Power>(&power))
        m_power = knotsThrough({0.0}, {units::inWatts(*constant)});
    if (const auto* points = std::get_if<std::vector<PumpPowerPoint>>(&power)) {
        std::vector<double> x, y;
        for (const PumpPowerPoint& point : *points) {
            x.push_back(units::inCubicMetresPerSecond(point.flow));
            y.push_back(units::inWatts(point.power));
        }
        m_power = knotsThrough(x, y);
    }
}

PumpCurve PumpCurve::together(PumpArrangement arrangement) const
{
    PumpCurve all = *this;
    switch (arrangement) {
    case PumpArrangement::One:
        break;
    case PumpArrangement::TwoParallel:
        all.m_flows *= 2.0;
        break;
    case PumpArrangement::TwoInSeries:
        all.m_heads *= 2.0;
        break;
    }
    return all;
}

HeadWithSlope PumpCurve::headWithSlopeAt(units::Flow flow, double speed) const
{
    base::ensure(speed > 0.0 && std::isfinite(speed), "a pump's speed is above zero");
    const double q = std::max(units::inCubicMetresPerSecond(flow), 0.0) / (speed * m_flows);
    const double end = units::inCubicMetresPerSecond(m_points.back().flow);
    Point point;
    if (q >= end)
        point = {units::inMetresHead(m_points.back().head) + m_tailSlope * (q - end), m_tailSlope};
    else if (m_twoNumbers) {
        const double h0 = units::inMetresHead(m_points.front().head);
        const double part = std::pow(q / end, boxExponent - 1.0);
        point = {h0 * (1.0 - part * q / end), -boxExponent * h0 / end * part};
    } else
        point = interpolate(m_head, q);
    return {units::metresHead(speed * speed * m_heads * point.y),
            units::fromSi<HeadPerFlow>(speed * m_heads / m_flows * point.slope)};
}

units::Head PumpCurve::headAt(units::Flow flow, double speed) const { return headWithSlopeAt(flow, speed).head; }

std::optional<units::Power> PumpCurve::powerAt(units::Flow flow, double speed) const
{
    base::ensure(speed > 0.0 && std::isfinite(speed), "a pump's speed is above zero");
    if (m_power.empty())
        return std::nullopt;
    const double q = units::inCubicMetresPerSecond(flow) / (speed * m_flows);
    return units::watts(m_flows * m_heads * speed * speed * speed * interpolate(m_power, q).y);
}

units::Head PumpCurve::shutOffHead(double speed) const { return headAt(units::Flow(), speed); }

units::Flow PumpCurve::greatestFlow(double speed) const { return m_points.back().flow * (speed * m_flows); }

} // namespace sumpwright::hydraulics
