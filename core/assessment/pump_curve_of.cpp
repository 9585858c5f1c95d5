#include "core/assessment/pump_curve_of.hpp"

namespace sumpwright::assessment
{
namespace
{

hydraulics::PumpPower powerOf(const DrawnPump& pump)
{
    if (pump.power.empty())
        return std::monostate{};
    if (pump.power.size() == 1)
        return pump.power.front().input;
    std::vector<hydraulics::PumpPowerPoint> points;
    for (const PowerSample& sample : pump.power)
        points.push_back({sample.flow, sample.input});
    return points;
}

hydraulics::PumpArrangement arrangementOf(plan::PumpArrangement arrangement)
{
    switch (arrangement) {
    case plan::PumpArrangement::one:
        return hydraulics::PumpArrangement::One;
    case plan::PumpArrangement::twoParallel:
        return hydraulics::PumpArrangement::TwoParallel;
    case plan::PumpArrangement::twoInSeries:
        return hydraulics::PumpArrangement::TwoInSeries;
    }
    return hydraulics::PumpArrangement::One;
}

base::Outcome<hydraulics::PumpCurve> curveOfOne(const DrawnPump& pump)
{
    if (pump.twoNumbers && pump.points.size() == 2)
        return hydraulics::PumpCurve::fromRatings(pump.points.front().head, pump.points.back().flow, powerOf(pump));
    std::vector<hydraulics::PumpPoint> points;
    for (const CurveSample& sample : pump.points)
        points.push_back({sample.flow, sample.head});
    return hydraulics::PumpCurve::fromPoints(points, powerOf(pump));
}

} // namespace

base::Outcome<hydraulics::PumpCurve> curveOf(const DrawnPump& pump)
{
    if (pump.fault)
        return base::Refusal{"assessment.pump-fault", "pump", pump.fault->text, "a pump with a curve"};
    const auto one = curveOfOne(pump);
    return one ? one->together(arrangementOf(pump.arrangement)) : one;
}

} // namespace sumpwright::assessment
