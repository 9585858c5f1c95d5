#include "core/plan/check_elements.hpp"
#include "core/plan/limits.hpp"

namespace sumpwright::plan
{

namespace
{

units::Length legLength(const Vertex& a, const Vertex& b)
{
    Run leg;
    leg.vertices = {a, b};
    return lengthOf(leg);
}

void checkVertices(const Run& run, FaultFinder& faults)
{
    const std::size_t count = run.vertices.size();
    if (count < 2 || count > limits::mostVertices) {
        faults.fault("vertices", "plan.vertex-count", std::to_string(count) + " vertices",
                     "2 to " + std::to_string(limits::mostVertices));
        return;
    }
    bool sound = true;
    for (std::size_t i = 0; i < count; ++i) {
        const Vertex& vertex = run.vertices[i];
        faults.inside("vertices/" + std::to_string(i), "vertex " + std::to_string(i + 1));
        sound = faults.place("at", vertex.at) && faults.level("level", vertex.level) && sound;
        faults.words("bend_fitting", vertex.bendFittingId, limits::longestTag, false);
        faults.loss("loss_coefficient", vertex.lossCoefficient);
        if (sound && i > 0 && legLength(run.vertices[i - 1], vertex) < limits::leastLeg)
            faults.fault("at", "plan.zero-leg", "two vertices lie at one place",
                         "vertices at least " + units::format(limits::leastLeg) + " apart; remove one");
    }
    faults.inside({}, {});
}

void checkValves(const Run& run, FaultFinder& faults)
{
    for (std::size_t i = 0; i < run.valves.size(); ++i) {
        const Valve& valve = run.valves[i];
        faults.inside("valves/" + std::to_string(i), valve.tag);
        faults.words("tag", valve.tag, limits::longestTag, true);
        faults.words("fitting", valve.fittingId, limits::longestTag, true);
        faults.ratio("station", valve.station, 0.0, 1.0);
        faults.ratio("opening", valve.opening, 0.0, 1.0);
        faults.loss("loss_coefficient", valve.lossCoefficient);
    }
    for (std::size_t i = 0; i < run.extraFittings.size(); ++i) {
        const ExtraFitting& fitting = run.extraFittings[i];
        faults.inside("extra_fittings/" + std::to_string(i), "fitting " + std::to_string(i + 1));
        faults.words("fitting", fitting.fittingId, limits::longestTag, true);
        faults.ratio("count", fitting.count, 1, 1000);
        faults.loss("loss_coefficient", fitting.lossCoefficient);
    }
    faults.inside({}, {});
}

void checkEndLoss(const char* key, const RunEnd& end, FaultFinder& faults)
{
    if (const auto* port = std::get_if<PortEnd>(&end))
        faults.loss(key, port->lossCoefficient);
    if (const auto* tee = std::get_if<TeeEnd>(&end))
        faults.loss(key, tee->lossCoefficient);
}

} // namespace

void checkRun(const Run& run, FaultFinder& faults)
{
    faults.at(run.id, "run", run.tag);
    faults.words("tag", run.tag, limits::longestTag, true);
    faults.words("pipe", run.pipeId, limits::longestTag, true);
    checkEndLoss("from/loss_coefficient", run.from, faults);
    checkEndLoss("to/loss_coefficient", run.to, faults);
    checkVertices(run, faults);
    checkValves(run, faults);
}

void checkTee(const Tee& tee, FaultFinder& faults)
{
    faults.at(tee.id, "tee", tee.tag);
    faults.words("tag", tee.tag, limits::longestTag, true);
    faults.place("at", tee.at);
    faults.level("level", tee.level);
}

void checkPumpCurve(const std::string& key, const std::vector<CurvePoint>& curve, bool twoNumbers, FaultFinder& faults)
{
    if (curve.size() < 2 || curve.size() > limits::mostCurvePoints) {
        faults.fault(key, "plan.curve-count", std::to_string(curve.size()) + " points",
                     "2 to " + std::to_string(limits::mostCurvePoints) + " points");
        return;
    }
    if (twoNumbers && (curve.size() != 2 || units::inSi(curve.back().head) != 0.0)) {
        faults.fault(key, "plan.two-numbers", "the two numbers of a box are a head at no flow and a flow at no head",
                     "two points, the second at head 0; or say that these are points of a curve");
        return;
    }
    const auto [insideKey, insideName] = faults.inside();
    for (std::size_t i = 0; i < curve.size(); ++i) {
        faults.inside((insideKey.empty() ? "" : insideKey + "/") + key + "/" + std::to_string(i),
                      (insideName.empty() ? "" : insideName + ", ") + "curve point " + std::to_string(i + 1));
        const bool sound = faults.within("flow", curve[i].flow, units::litresPerHour(0.0), units::litresPerHour(1e6)) &&
                           faults.within("head", curve[i].head, units::metresHead(0.0), units::metresHead(200.0));
        if (sound && i == 0 && units::inSi(curve[i].flow) != 0.0)
            faults.fault("flow", "plan.curve-start", "the curve starts at " + units::format(curve[i].flow),
                         "the first point at no flow (shut-off)");
        if (sound && i > 0 && curve[i].flow <= curve[i - 1].flow)
            faults.fault("flow", "plan.curve-flow", units::format(curve[i].flow) + " is not above the flow before it",
                         "flows that rise from point to point");
        if (sound && i > 0 && curve[i].head >= curve[i - 1].head)
            faults.fault("head", "plan.curve-head", units::format(curve[i].head) + " is not below the head before it",
                         "heads that fall from point to point");
    }
    faults.inside(insideKey, insideName);
}

void checkPump(const Pump& pump, FaultFinder& faults)
{
    faults.at(pump.id, "pump", pump.tag);
    faults.words("tag", pump.tag, limits::longestTag, true);
    faults.words("model", pump.modelId, limits::longestTag, false);
    faults.place("offset", pump.offset);
    faults.ratio("speed", pump.speed, 0.01, limits::fastestPump);
    faults.level("outlet_level", pump.outletLevel);
    if (pump.leastDepth)
        faults.within("least_depth", *pump.leastDepth, units::metres(0.0), units::metres(20.0));
    if (pump.ownPower)
        faults.within("own_power", *pump.ownPower, units::watts(0.0), units::watts(1e6));
    if (!pump.modelId.empty() && !pump.ownCurve.empty())
        faults.fault("own_curve", "plan.two-curves", "both a catalogue model and an own curve", "one of the two");
    else if (!pump.ownCurve.empty())
        checkPumpCurve("own_curve", pump.ownCurve, pump.twoNumbers, faults);
}

} // namespace sumpwright::plan
