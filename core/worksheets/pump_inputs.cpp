#include "core/worksheets/pump_inputs.hpp"

#include "core/worksheets/common_inputs.hpp"
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
    if (pump.twoNumbers && points.size() == 2)
        return *PumpCurve::fromRatings(points.front().head, points.back().flow,
                                       power.empty() ? hydraulics::PumpPower()
                                                     : hydraulics::PumpPower(power.front().power));
    const auto curve = PumpCurve::fromPoints(points, power.empty()       ? hydraulics::PumpPower()
                                                     : power.size() == 1 ? hydraulics::PumpPower(power.front().power)
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
    InputSpec shutOff =
        optionally(quantityInput("shut_off_head", "head at no flow, where only the box's two numbers are known",
                                 units::KindId::head, "0 m", "200 m"));
    shutOff.leastExcluded = true;
    InputSpec greatest = optionally(flowInput());
    greatest.name = "greatest_flow";
    greatest.meaning = "flow at no head, the other number of the box";
    InputSpec arrangement;
    arrangement.name = "arrangement";
    arrangement.meaning = "one unit, or two alike: side by side their flows add, in a row their heads";
    arrangement.sort = InputSort::Choice;
    arrangement.choices = {"one", "two-parallel", "two-in-series"};
    arrangement.ifAbsent = "one";
    InputSpec speed;
    speed.name = "speed";
    speed.meaning = "speed / speed of the curve";
    speed.sort = InputSort::Ratio;
    speed.ifAbsent = "1";
    speed.least = "0.1";
    speed.most = "2";
    return {pump, points, shutOff, greatest, speed, arrangement};
}

namespace
{

hydraulics::PumpArrangement arrangementOf(const std::string& word)
{
    if (word == "two-parallel")
        return hydraulics::PumpArrangement::TwoParallel;
    return word == "two-in-series" ? hydraulics::PumpArrangement::TwoInSeries : hydraulics::PumpArrangement::One;
}

std::optional<Refusal> faultOf(const Inputs& inputs)
{
    const bool ratings = hasRatings(inputs);
    const int given = int(inputs.has("pump")) + int(inputs.has("points")) + int(ratings);
    const char* accepts = "one of them: a pump of the table, the points of a curve, or the two numbers of the box";
    if (given == 0)
        return Refusal{"worksheets.needs-one", "pump", "neither pump nor points is given", accepts};
    if (given > 1)
        return Refusal{"worksheets.one-of", "pump", "both pump and points are given", accepts};
    if (ratings && !(inputs.has("shut_off_head") && inputs.has("greatest_flow")))
        return Refusal{"worksheets.missing-input", inputs.has("shut_off_head") ? "greatest_flow" : "shut_off_head",
                       "the box's other number is missing", "both: head at no flow and flow at no head"};
    return std::nullopt;
}

Outcome<PumpCurve> curveOfOne(const Inputs& inputs)
{
    if (const auto fault = faultOf(inputs))
        return *fault;
    if (hasRatings(inputs))
        return PumpCurve::fromRatings(inputs.get<units::Head>("shut_off_head"),
                                      inputs.get<units::Flow>("greatest_flow"));
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

} // namespace

bool hasRatings(const Inputs& inputs) { return inputs.has("shut_off_head") || inputs.has("greatest_flow"); }

Outcome<PumpCurve> pumpCurveOf(const Inputs& inputs)
{
    const auto one = curveOfOne(inputs);
    return one ? one->together(arrangementOf(inputs.word("arrangement"))) : one;
}

void tellPump(AnswerDraft& draft, const Inputs& inputs)
{
    const std::string arrangement = inputs.word("arrangement");
    if (arrangement != "one") {
        draft.work(arrangement == "two-parallel" ? "two alike side by side: H(Q) = H_1(Q/2), P = 2 P_1"
                                                 : "two alike in a row: H(Q) = 2 H_1(Q), P = 2 P_1");
        draft.source("pumps-together");
    }
    if (hasRatings(inputs)) {
        draft.work("H_1(Q) = H_0 (1 - (Q/Q_max)^1.7) = ", inputs.shown("shut_off_head"), " × (1 - (Q / ",
                   inputs.shown("greatest_flow"), ")^1.7)");
        draft.note(twoNumbersNote().id);
        draft.source("pump-two-numbers");
    }
    if (!inputs.has("pump"))
        return;
    const catalogue::Pump& pump = **inputs.tables().pump(inputs.word("pump"));
    if (pump.provenance.basis == catalogue::Basis::Inference)
        draft.note(inventedPumpNote().id);
    if (pump.twoNumbers)
        draft.note(twoNumbersNote().id);
    draft.source(pump.provenance.source);
}

bool isEstimated(const Inputs& inputs)
{
    return hasRatings(inputs) || (inputs.has("pump") && (*inputs.tables().pump(inputs.word("pump")))->twoNumbers);
}

Note twoNumbersNote()
{
    return {"pump-two-numbers", "Only the two numbers of the box are known: the curve between them is an estimate."};
}

Note inventedPumpNote()
{
    return {"pump-invented", "The pump is invented, typical shape: put in the points of yours."};
}

} // namespace sumpwright::worksheets
