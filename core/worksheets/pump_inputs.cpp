#include "core/worksheets/pump_inputs.hpp"

#include "core/worksheets/pump_points.hpp"

namespace sumpwright::worksheets
{
namespace
{

using base::Outcome;
using base::Refusal;
using hydraulics::PumpCurve;

PumpCurve tableCurveOf(const catalogue::Pump& pump)
{
    std::vector<hydraulics::PumpPoint> points;
    for (const catalogue::PumpPoint& point : pump.points)
        points.push_back({point.flow, point.head});
    std::vector<hydraulics::PumpPowerPoint> power;
    for (const catalogue::PowerPoint& point : pump.power)
        power.push_back({point.flow, point.input});
    const auto curve = PumpCurve::fromPoints(points, power.size() == 1 ? hydraulics::PumpPower(power.front().power)
                                                                       : hydraulics::PumpPower(power));
    base::ensure(curve.ok(), "the pumps of the table have curves");
    return *curve;
}

} // namespace

std::vector<InputSpec> pumpInputs()
{
    InputSpec pump;
    pump.name = "pump";
    pump.meaning = "a pump of the table; or give points";
    pump.sort = InputSort::CatalogueId;
    pump.required = false;
    pump.choices = {"pumps"};
    InputSpec points;
    points.name = "points";
    points.meaning = "points of the pump curve from flow 0 up; or give pump";
    points.sort = InputSort::Curve;
    points.required = false;
    InputSpec speed;
    speed.name = "speed";
    speed.meaning = "speed / speed of the curve";
    speed.sort = InputSort::Ratio;
    speed.ifAbsent = "1";
    speed.least = "0.1";
    speed.most = "2";
    return {pump, points, speed};
}

Outcome<PumpCurve> pumpCurveOf(const Inputs& inputs)
{
    if (inputs.has("pump") == inputs.has("points"))
        return Refusal{inputs.has("pump") ? "worksheets.one-of" : "worksheets.needs-one", "pump",
                       inputs.has("pump") ? "both pump and points are given" : "neither pump nor points is given",
                       "one of them: a pump of the table, or the points of a curve"};
    if (inputs.has("pump"))
        return tableCurveOf(**inputs.tables().pump(inputs.word("pump")));
    const auto points = readPumpPoints(inputs.word("points"), inputs.style());
    base::ensure(points.ok(), "points that could be read once can be read again");
    const auto curve = PumpCurve::fromPoints(*points);
    if (curve.ok())
        return curve;
    Refusal refusal = curve.refusal();
    refusal.place = refusal.place == "points" ? "points" : "points, " + refusal.place;
    return refusal;
}

Note inventedPumpNote()
{
    return {"pump-invented", "The pump is invented, typical shape: put in the points of yours."};
}

} // namespace sumpwright::worksheets
