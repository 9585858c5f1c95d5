#include "core/assessment/pumping.hpp"

#include <algorithm>

#include "core/assessment/pump_curve_of.hpp"
#include "core/hydraulics/energy.hpp"

namespace sumpwright::assessment
{
namespace
{

constexpr int pumpSamples = 40;
constexpr int systemSamples = 12;       // and the duty point itself
constexpr int systemSamplesOfLarge = 6; // in networks of more links than this:
constexpr std::size_t largeNetwork = 300;
constexpr double almostStill = 1e-3; // of the greatest flow: at no flow at all a network tells no head

Stage<PumpPower> powerOf(const DutyPoint& duty, const hydraulics::PumpCurve& curve, const DrawnPump& pump,
                         const Stage<units::Density>& density, const std::optional<units::EnergyPrice>& price)
{
    if (!density)
        return Stage<PumpPower>::missingAs(density);
    const auto electrical = curve.powerAt(duty.flow, pump.speed);
    if (!electrical || *electrical <= units::Power())
        return Stage<PumpPower>::notComputed({"pump-power-missing", "electrical power of the pump missing", pump.id});
    PumpPower power;
    power.hydraulic = hydraulics::hydraulicPower(duty.flow, duty.head, *density);
    power.electrical = *electrical;
    power.wireToWater = hydraulics::wireToWater(power.hydraulic, power.electrical);
    power.flowPerPower = duty.flow / power.electrical;
    power.energyPerYear = hydraulics::energyPerYear(power.electrical);
    if (price)
        power.costPerYear = hydraulics::costPerYear(power.energyPerYear, *price);
    return power;
}

Stage<DutyPoint> dutyOf(const Stage<CircuitState>& state, std::size_t place, const DrawnPump& pump,
                        const hydraulics::PumpCurve& curve)
{
    if (!pump.running)
        return Stage<DutyPoint>::notComputed({"pump-off", "the pump is switched off", pump.id});
    if (!state)
        return Stage<DutyPoint>::missingAs(state);
    const hydraulics::LinkFlow* link = state->network.pumpLink(place);
    if (!link || link->state == hydraulics::LinkState::Unfed)
        return Stage<DutyPoint>::notSolved({"pump-unfed", "no water reaches the pump", pump.id});
    DutyPoint duty;
    duty.flow = link->flow;
    duty.head = link->flow > units::Flow() ? link->headGained : curve.shutOffHead(pump.speed);
    duty.shareOfBoxFigure = duty.flow / curve.greatestFlow(pump.speed);
    duty.beyondCurve = link->runOut;
    return duty;
}

std::vector<CurveSample> samplesOf(const hydraulics::PumpCurve& curve, double speed)
{
    std::vector<CurveSample> samples;
    for (int i = 0; i <= pumpSamples; ++i) {
        const units::Flow flow = curve.greatestFlow(speed) * (static_cast<double>(i) / pumpSamples);
        samples.push_back({flow, curve.headAt(flow, speed)});
    }
    return samples;
}

// The duty point lies on the curve and costs no solve.
void addDutyPoint(std::vector<CurveSample>& samples, const Stage<DutyPoint>& duty)
{
    if (!duty || duty->flow <= units::Flow())
        return;
    const auto after = std::find_if(samples.begin(), samples.end(),
                                    [&duty](const CurveSample& sample) { return sample.flow >= duty->flow; });
    if (after == samples.end() || after->flow > duty->flow)
        samples.insert(after, {duty->flow, duty->head});
}

Stage<std::vector<CurveSample>> systemCurveOf(const Stage<CircuitState>& state, std::size_t place, units::Flow greatest,
                                              const Stage<DutyPoint>& duty, base::Id pump)
{
    using Samples = Stage<std::vector<CurveSample>>;
    if (!state)
        return Samples::missingAs(state);
    CircuitNetwork network = state->network;
    const Reason unfed{"system-curve-unsolved", "the pipework takes no water from the pump", pump};
    const auto suction = network.gradeAtNode(network.pumpSuction(place));
    if (!suction)
        return Samples::notSolved(unfed);
    const int count = network.linkCount() > largeNetwork ? systemSamplesOfLarge : systemSamples;
    std::vector<CurveSample> samples;
    for (int i = 0; i <= count; ++i) {
        const double share = i == 0 ? almostStill : static_cast<double>(i) / count;
        network.impose(place, greatest * share);
        network.solve();
        const auto grade = network.gradeAtNode(network.pumpOutlet(place));
        if (!network.result().solved() || !grade)
            return Samples::notSolved(unfed);
        samples.push_back({greatest * share, units::liftBetween(*suction, *grade)});
    }
    addDutyPoint(samples, duty);
    return samples;
}

PumpResult resultOf(const DrawnPump& pump, const SolvedCircuit& solved, std::size_t place,
                    const Stage<units::Density>& density, const std::optional<units::EnergyPrice>& price)
{
    PumpResult result;
    result.id = pump.id;
    const auto curve = curveOf(pump);
    if (pump.fault || !curve) {
        const Reason reason = pump.fault.value_or(Reason{"pump-curve-bad", "the pump's curve cannot be used", pump.id});
        for (const RunningState state : allRunningStates)
            result.duty[state] = Stage<DutyPoint>::notComputed(reason);
        result.systemCurve = Stage<std::vector<CurveSample>>::notComputed(reason);
        return result;
    }
    result.boxFigure = curve->greatestFlow(pump.speed);
    result.shutOff = curve->shutOffHead(pump.speed);
    result.pumpCurve = samplesOf(*curve, pump.speed);
    for (const RunningState state : allRunningStates) {
        Stage<DutyPoint> duty = dutyOf(solved.state[state], place, pump, *curve);
        if (duty) {
            DutyPoint told = *duty;
            told.power = powerOf(told, *curve, pump, density, price);
            duty = told;
        }
        result.duty[state] = duty;
    }
    result.systemCurve = systemCurveOf(solved.state[RunningState::least], place, result.boxFigure,
                                       result.duty[RunningState::least], pump.id);
    return result;
}

} // namespace

PumpResults pumpResultsOf(const Pipework& pipework, const Circuits& circuits, const Stage<units::Density>& density,
                          const std::optional<units::EnergyPrice>& price)
{
    PumpResults results;
    for (const SolvedCircuit& solved : circuits.all)
        for (std::size_t i = 0; i < solved.circuit.pumps.size(); ++i)
            results.pumps.push_back(resultOf(pipework.pumps[solved.circuit.pumps[i]], solved, i, density, price));
    std::sort(results.pumps.begin(), results.pumps.end(),
              [](const PumpResult& a, const PumpResult& b) { return a.id < b.id; });
    return results;
}

} // namespace sumpwright::assessment
