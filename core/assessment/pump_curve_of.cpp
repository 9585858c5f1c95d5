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

} // namespace

base::Outcome<hydraulics::PumpCurve> curveOf(const DrawnPump& pump)
{
    if (pump.fault)
        return base::Refusal{"assessment.pump-fault", "pump", pump.fault->text, "a pump with a curve"};
    std::vector<hydraulics::PumpPoint> points;
    for (const CurveSample& sample : pump.points)
        points.push_back({sample.flow, sample.head});
    return hydraulics::PumpCurve::fromPoints(points, powerOf(pump));
}

} // namespace sumpwright::assessment
