#include "core/assessment/run_fittings.hpp"

#include <algorithm>
#include <string_view>

#include "core/assessment/rows.hpp"
#include "core/hydraulics/fittings.hpp"
#include "core/hydraulics/valve_opening.hpp"

namespace sumpwright::assessment
{
namespace
{

using hydraulics::FittingKind;

void override(FittingLoss& loss, const std::optional<double>& k)
{
    if (!k)
        return;
    loss.k = std::max(*k, 0.0);
    loss.basis = LossBasis::overridden;
    loss.source.clear();
}

// An elbow of 90 degrees by another turn follows the drawn angle; any other fitting keeps the K of its row.
bool turnsWithAngle(FittingKind kind)
{
    return kind == FittingKind::Elbow90 || kind == FittingKind::Elbow90Sweep || kind == FittingKind::Elbow90Mitre;
}

std::optional<hydraulics::ThrottleKind> throttleOf(const catalogue::Fitting* row)
{
    switch (row ? row->valve : catalogue::ValveKind::NotAValve) {
    case catalogue::ValveKind::Ball:
        return hydraulics::ThrottleKind::Ball;
    case catalogue::ValveKind::Gate:
        return hydraulics::ThrottleKind::Gate;
    case catalogue::ValveKind::Butterfly:
        return hydraulics::ThrottleKind::Butterfly;
    case catalogue::ValveKind::Globe:
    case catalogue::ValveKind::Check:
    case catalogue::ValveKind::NotAValve:
        break;
    }
    return std::nullopt;
}

bool stopsBackflow(const catalogue::Fitting* row) { return row && row->valve == catalogue::ValveKind::Check; }

FittingLoss bendLoss(const plan::Vertex& vertex, const plan::Bend& bend, const catalogue::Catalogue& catalogue)
{
    constexpr units::Angle between = units::degrees(67.5); // 45 and 90 degree elbows meet half-way
    const bool chosen = vertex.bendFittingId.empty();
    const std::string id = chosen ? (bend.angle < between ? "elbow-45" : "elbow-90") : vertex.bendFittingId;
    FittingLoss loss = lossFromRow(catalogue, id, FittingRole::bend, FittingPlace::vertex);
    loss.vertex = bend.vertex;
    loss.angle = bend.angle;
    const auto kind = hydraulics::fittingFromId(id);
    if (chosen || (kind && turnsWithAngle(*kind))) {
        loss.k = hydraulics::bendCoefficient(bend.angle, chosen ? FittingKind::Elbow90 : *kind);
        loss.basis = LossBasis::formula;
    }
    override(loss, vertex.lossCoefficient);
    return loss;
}

FittingLoss valveLoss(const plan::Valve& valve, const catalogue::Catalogue& catalogue, units::Length bore)
{
    FittingLoss loss = lossFromRow(catalogue, valve.fittingId, FittingRole::valve, FittingPlace::station, bore);
    loss.station = valve.station;
    loss.element = valve.id;
    const catalogue::Fitting* row = rowOf(catalogue.fittings(), valve.fittingId);
    const auto throttle = throttleOf(row);
    const double opening = std::clamp(valve.opening, 0.0, 1.0);
    loss.oneWay = stopsBackflow(row);
    loss.shut = opening <= 0.0 && !loss.oneWay;
    if (throttle) {
        const hydraulics::ValveLoss throttled = *hydraulics::throttlingLoss(*throttle, opening);
        loss.shut = throttled.closed;
        loss.k += throttled.added;
        if (throttled.added > 0.0)
            loss.source = "weisbach-valves";
    }
    override(loss, valve.lossCoefficient);
    return loss;
}

FittingLoss extraLoss(const plan::ExtraFitting& extra, const catalogue::Catalogue& catalogue, units::Length bore)
{
    FittingLoss loss = lossFromRow(catalogue, extra.fittingId, FittingRole::extra, FittingPlace::alongRun, bore);
    loss.count = std::max(extra.count, 0);
    loss.oneWay = loss.count > 0 && stopsBackflow(rowOf(catalogue.fittings(), extra.fittingId));
    override(loss, extra.lossCoefficient);
    return loss;
}

units::Head openingHeadOf(const FittingLoss& loss, const catalogue::Catalogue& catalogue)
{
    const catalogue::Fitting* row = loss.oneWay ? rowOf(catalogue.fittings(), loss.fittingId) : nullptr;
    return row && row->cracking ? static_cast<double>(loss.count) * *row->cracking : units::Head();
}

} // namespace

FittingLoss lossFromRow(const catalogue::Catalogue& catalogue, const std::string& fittingId, FittingRole role,
                        FittingPlace place, units::Length bore)
{
    FittingLoss loss;
    loss.role = role;
    loss.place = place;
    loss.fittingId = fittingId;
    loss.basis = LossBasis::none;
    if (const catalogue::Fitting* row = rowOf(catalogue.fittings(), fittingId)) {
        loss.k = row->flowFactor && bore > units::Length() ? hydraulics::coefficientOfFlowFactor(*row->flowFactor, bore)
                                                           : row->defaultK;
        loss.basis = LossBasis::catalogue;
        loss.source = row->provenance.source;
    }
    return loss;
}

InnerLosses innerLossesOf(const plan::Run& run, const catalogue::Catalogue& catalogue, units::Length bore)
{
    InnerLosses losses;
    for (const plan::Bend& bend : plan::bendsOf(run))
        losses.list.push_back(bendLoss(run.vertices[bend.vertex], bend, catalogue));
    std::vector<const plan::Valve*> valves;
    for (const plan::Valve& valve : run.valves)
        valves.push_back(&valve);
    std::stable_sort(valves.begin(), valves.end(),
                     [](const plan::Valve* a, const plan::Valve* b) { return a->station < b->station; });
    for (const plan::Valve* valve : valves)
        losses.list.push_back(valveLoss(*valve, catalogue, bore));
    for (const plan::ExtraFitting& extra : run.extraFittings)
        losses.list.push_back(extraLoss(extra, catalogue, bore));
    for (const FittingLoss& loss : losses.list)
        losses.openingHead += openingHeadOf(loss, catalogue);
    return losses;
}

} // namespace sumpwright::assessment
