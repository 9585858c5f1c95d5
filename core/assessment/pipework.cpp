#include "core/assessment/pipework.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

#include "core/assessment/end_losses.hpp"
#include "core/assessment/pump_curve_of.hpp"
#include "core/assessment/rows.hpp"
#include "core/assessment/run_fittings.hpp"
#include "core/hydraulics/fittings.hpp"
#include "core/hydraulics/pipe_content.hpp"

namespace sumpwright::assessment
{
namespace
{

DrawnEnd drawnEnd(const plan::RunEnd& end, const plan::Vertex* vertex, const PipeworkInput& input)
{
    DrawnEnd drawn;
    if (vertex)
        drawn.level = vertex->level;
    if (const auto* at = std::get_if<plan::PortEnd>(&end)) {
        const plan::Vessel* vessel = input.vessels.find(at->vessel);
        if (const plan::Port* port = vessel ? plan::findPort(*vessel, at->port) : nullptr)
            return {EndKind::vessel, at->vessel, at->port, port->kind, port->level};
    } else if (const auto* pump = std::get_if<plan::PumpEnd>(&end)) {
        if (input.pumps.find(pump->pump)) {
            drawn.kind = EndKind::pump;
            drawn.element = pump->pump;
        }
    } else if (const auto* tee = std::get_if<plan::TeeEnd>(&end)) {
        if (input.tees.find(tee->tee)) {
            drawn.kind = EndKind::tee;
            drawn.element = tee->tee;
        }
    }
    return drawn;
}

const catalogue::RoughnessState* stateOf(plan::PipeCondition condition, const catalogue::Catalogue& tables)
{
    switch (condition) {
    case plan::PipeCondition::asNew:
        return rowOf(tables.roughness(), "new");
    case plan::PipeCondition::inService:
        return rowOf(tables.roughness(), "in-service");
    case plan::PipeCondition::fouled:
        return rowOf(tables.roughness(), "fouled");
    }
    return nullptr;
}

Walls wallsOf(const catalogue::Pipe& pipe, plan::PipeCondition condition, const catalogue::Catalogue& tables)
{
    const catalogue::RoughnessState* state = stateOf(condition, tables);
    const units::Length roughness = state && condition != plan::PipeCondition::asNew
                                        ? std::max(pipe.roughnessNew, state->roughness)
                                        : pipe.roughnessNew;
    // The n that loses as much as the factor does in the full bore: R^(1/6) (f / (8 g))^(1/2), R = D/4.
    const double likeFactor = std::pow(units::inMetres(pipe.bore) / 4.0, 1.0 / 6.0) *
                              std::sqrt(pipe.corrugatedFactor.value_or(0.0) / (8.0 * units::standardGravity));
    return {roughness, std::max(state ? state->manningN : 0.009, likeFactor)};
}

std::vector<Stretch> stretchesOf(const plan::Run& run)
{
    std::vector<Stretch> stretches;
    for (std::size_t i = 1; i < run.vertices.size(); ++i) {
        const plan::Vertex &a = run.vertices[i - 1], &b = run.vertices[i];
        const double rise = units::inMetres(b.level) - units::inMetres(a.level);
        const double length = std::hypot(units::inMetres(b.at.x - a.at.x), units::inMetres(b.at.y - a.at.y), rise);
        stretches.push_back({units::metres(length), a.level, b.level});
    }
    return stretches;
}

void settleLosses(DrawnRun& drawn, std::vector<FittingLoss> start, InnerLosses inner, std::vector<FittingLoss> end)
{
    const auto placeless = std::find_if(inner.list.begin(), inner.list.end(),
                                        [](const FittingLoss& loss) { return loss.place == FittingPlace::alongRun; });
    drawn.fittings = std::move(start);
    drawn.fittings.insert(drawn.fittings.end(), inner.list.begin(), placeless);
    drawn.fittings.insert(drawn.fittings.end(), end.begin(), end.end());
    drawn.fittings.insert(drawn.fittings.end(), placeless, inner.list.end());
    drawn.openingHead = inner.openingHead;
    std::vector<double> coefficients;
    for (const FittingLoss& loss : drawn.fittings) {
        coefficients.push_back(loss.k * loss.count);
        drawn.shut = drawn.shut || loss.shut;
        drawn.oneWay = drawn.oneWay || loss.oneWay;
    }
    drawn.sumK = hydraulics::sumOfCoefficients(coefficients);
}

DrawnRun drawnRun(const plan::Run& run, const PipeworkInput& input)
{
    DrawnRun drawn;
    drawn.id = run.id;
    drawn.service = run.service;
    const bool some = !run.vertices.empty();
    drawn.from = drawnEnd(run.from, some ? &run.vertices.front() : nullptr, input);
    drawn.to = drawnEnd(run.to, some ? &run.vertices.back() : nullptr, input);
    drawn.stretches = stretchesOf(run);
    for (const Stretch& stretch : drawn.stretches)
        drawn.length += stretch.length;
    if (const catalogue::Pipe* pipe = rowOf(input.catalogue->pipes(), run.pipeId)) {
        drawn.bore = pipe->bore;
        const Walls walls = wallsOf(*pipe, input.condition, *input.catalogue);
        drawn.roughness = walls.roughness;
        drawn.manningN = walls.manningN;
        drawn.whenNew = wallsOf(*pipe, plan::PipeCondition::asNew, *input.catalogue);
        drawn.whenFouled = wallsOf(*pipe, plan::PipeCondition::fouled, *input.catalogue);
        drawn.corrugatedFactor = pipe->corrugatedFactor.value_or(0.0);
    } else {
        drawn.fault = Reason{"pipe-unknown", "the pipe \"" + run.pipeId + "\" is not in the catalogue", run.id};
    }
    return drawn;
}

void takeCurve(DrawnPump& drawn, const plan::Pump& pump, const catalogue::Catalogue& tables)
{
    if (pump.modelId.empty()) {
        for (const plan::CurvePoint& point : pump.ownCurve)
            drawn.points.push_back({point.flow, point.head});
        drawn.twoNumbers = pump.twoNumbers;
        if (pump.ownPower)
            drawn.power.push_back({units::Flow(), *pump.ownPower});
        if (drawn.points.empty())
            drawn.fault = Reason{"pump-curve-missing", "the pump has neither a model nor a curve", pump.id};
        return;
    }
    const catalogue::Pump* row = rowOf(tables.pumps(), pump.modelId);
    if (!row) {
        drawn.fault = Reason{"pump-unknown", "the pump \"" + pump.modelId + "\" is not in the catalogue", pump.id};
        return;
    }
    for (const catalogue::PumpPoint& point : row->points)
        drawn.points.push_back({point.flow, point.head});
    drawn.twoNumbers = row->twoNumbers;
    for (const catalogue::PowerPoint& point : row->power)
        drawn.power.push_back({point.flow, point.input});
    const units::Length depth = std::max(row->minimumDepth, row->dryRunDepth);
    if (!drawn.leastDepth && depth > units::Length())
        drawn.leastDepth = depth;
}

DrawnPump drawnPump(const plan::Pump& pump, const PipeworkInput& input)
{
    DrawnPump drawn;
    drawn.id = pump.id;
    drawn.vessel = input.vessels.find(pump.vessel) ? pump.vessel : base::Id{};
    drawn.outletLevel = pump.outletLevel;
    drawn.speed = pump.speed;
    drawn.running = pump.running;
    drawn.arrangement = pump.arrangement;
    drawn.leastDepth = pump.leastDepth;
    takeCurve(drawn, pump, *input.catalogue);
    if (!drawn.fault && !drawn.vessel.valid())
        drawn.fault = Reason{"pump-without-vessel", "the pump stands in no vessel", pump.id};
    if (!drawn.fault)
        if (const auto curve = curveOf(drawn); !curve)
            drawn.fault = Reason{"pump-curve-bad", "pump curve: " + base::oneLine(curve.refusal()), pump.id};
    return drawn;
}

} // namespace

Pipework pipeworkOf(const PipeworkInput& input)
{
    Pipework pipework;
    std::vector<RunEnds> ends;
    for (const auto& run : input.runs) {
        pipework.runs.push_back(drawnRun(*run, input));
        ends.push_back({run.get(), pipework.runs.back().bore});
    }
    std::vector<EndLosses> atEnds = endLossesOf(ends, input.vessels, input.tees, *input.catalogue);
    for (std::size_t i = 0; i < ends.size(); ++i)
        settleLosses(pipework.runs[i], std::move(atEnds[i][0]),
                     innerLossesOf(*ends[i].run, *input.catalogue, ends[i].bore), std::move(atEnds[i][1]));
    for (const auto& pump : input.pumps)
        pipework.pumps.push_back(drawnPump(*pump, input));
    for (const auto& tee : input.tees)
        pipework.tees.push_back({tee->id, tee->level});
    return pipework;
}

units::Volume contentOf(const DrawnRun& run) { return hydraulics::pipeContent(run.bore, run.length); }

units::Volume contentAbove(const DrawnRun& run, units::Elevation level)
{
    units::Length above;
    for (const Stretch& stretch : run.stretches) {
        const double low = units::inMetres(std::min(stretch.start, stretch.end));
        const double high = units::inMetres(std::max(stretch.start, stretch.end));
        const double z = units::inMetres(level);
        if (z <= low)
            above += stretch.length;
        else if (z < high)
            above += stretch.length * ((high - z) / (high - low));
    }
    return hydraulics::pipeContent(run.bore, above);
}

units::Elevation highestCentre(const DrawnRun& run)
{
    units::Elevation highest = run.from.level;
    for (const Stretch& stretch : run.stretches)
        highest = std::max({highest, stretch.start, stretch.end});
    return highest;
}

} // namespace sumpwright::assessment
