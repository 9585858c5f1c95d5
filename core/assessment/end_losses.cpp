#include "core/assessment/end_losses.hpp"

#include <algorithm>

#include "core/assessment/run_fittings.hpp"
#include "core/assessment/tee_legs.hpp"
#include "core/hydraulics/fittings.hpp"

namespace sumpwright::assessment
{
namespace
{

constexpr units::Length sameBore = units::millimetres(0.001);
constexpr units::Angle straightOn = units::degrees(1.0);

FittingLoss overriddenLoss(FittingRole role, FittingPlace place, double k)
{
    FittingLoss loss;
    loss.role = role;
    loss.place = place;
    loss.k = std::max(k, 0.0);
    loss.basis = LossBasis::overridden;
    return loss;
}

// Bends made by two runs that meet without a third: one fitting more, but no tee.
void addJoint(std::vector<FittingLoss>& losses, const TeeLeg& leg, const TeeLeg& other, FittingPlace place,
              base::Id tee, const catalogue::Catalogue& catalogue)
{
    const units::Angle turn = turnBetween(leg, other);
    if (turn < straightOn)
        return;
    FittingLoss loss =
        lossFromRow(catalogue, turn < units::degrees(67.5) ? "elbow-45" : "elbow-90", FittingRole::bend, place);
    loss.k = hydraulics::bendCoefficient(turn);
    loss.basis = LossBasis::formula;
    loss.angle = turn;
    loss.element = tee;
    losses.push_back(loss);
}

void addBoreChange(std::vector<FittingLoss>& losses, const TeeLeg& leg, const TeeLeg& single, FittingPlace place,
                   base::Id tee)
{
    const units::Length none;
    const units::Length difference = leg.bore > single.bore ? leg.bore - single.bore : single.bore - leg.bore;
    if (leg.bore <= none || single.bore <= none || difference < sameBore)
        return;
    const units::Length upstream = leg.incoming ? leg.bore : single.bore;
    const units::Length downstream = leg.incoming ? single.bore : leg.bore;
    const double onSmaller = hydraulics::boreChangeCoefficient(upstream, downstream);
    FittingLoss loss;
    loss.role = FittingRole::boreChange;
    loss.place = place;
    loss.element = tee;
    loss.k = hydraulics::restated(onSmaller, std::min(leg.bore, single.bore), leg.bore);
    loss.basis = LossBasis::formula;
    loss.source = "entry-exit";
    losses.push_back(loss);
}

void addTee(std::vector<EndLosses>& losses, const TeeLegs& tee, const catalogue::Catalogue& catalogue)
{
    const std::vector<LegPart> parts = partsOf(tee.legs);
    const auto found = std::find(parts.begin(), parts.end(), LegPart::single);
    const TeeLeg* single = found == parts.end() ? nullptr : &tee.legs[static_cast<std::size_t>(found - parts.begin())];
    for (std::size_t i = 0; i < tee.legs.size(); ++i) {
        const TeeLeg& leg = tee.legs[i];
        std::vector<FittingLoss>& list = losses[leg.run][leg.end];
        const FittingPlace place = leg.end == 0 ? FittingPlace::start : FittingPlace::end;
        const bool straight = parts[i] == LegPart::straight;
        const FittingRole role = straight ? FittingRole::teeRun : FittingRole::teeBranch;
        if (leg.lossCoefficient) {
            list.push_back(
                overriddenLoss(parts[i] == LegPart::single ? FittingRole::teeRun : role, place, *leg.lossCoefficient));
            list.back().element = tee.tee;
            continue;
        }
        if (parts[i] == LegPart::single)
            continue;
        if (tee.legs.size() == 2 && single) {
            addJoint(list, leg, *single, place, tee.tee, catalogue);
        } else {
            list.push_back(lossFromRow(catalogue, straight ? "tee-run" : "tee-branch", role, place));
            list.back().element = tee.tee;
        }
        if (single)
            addBoreChange(list, leg, *single, place, tee.tee);
    }
}

void addPort(std::vector<FittingLoss>& losses, const plan::RunEnd& end, plan::Service service, FittingPlace place,
             const plan::Table<plan::Vessel>& vessels, const catalogue::Catalogue& catalogue)
{
    const auto* at = std::get_if<plan::PortEnd>(&end);
    const plan::Vessel* vessel = at ? vessels.find(at->vessel) : nullptr;
    const plan::Port* port = vessel ? plan::findPort(*vessel, at->port) : nullptr;
    if (!port)
        return;
    const bool leavesVessel = port->kind == plan::PortKind::sideOutlet ||
                              (port->kind == plan::PortKind::lip && service == plan::Service::gravity);
    const FittingRole role = leavesVessel ? FittingRole::entry : FittingRole::exit;
    losses.push_back(at->lossCoefficient ? overriddenLoss(role, place, *at->lossCoefficient)
                                         : lossFromRow(catalogue, leavesVessel ? "entry-flush" : "exit", role, place));
    losses.back().element = port->id;
}

} // namespace

std::vector<EndLosses> endLossesOf(const std::vector<RunEnds>& runs, const plan::Table<plan::Vessel>& vessels,
                                   const plan::Table<plan::Tee>& tees, const catalogue::Catalogue& catalogue)
{
    std::vector<EndLosses> losses(runs.size());
    for (std::size_t i = 0; i < runs.size(); ++i) {
        const plan::Run& run = *runs[i].run;
        addPort(losses[i][0], run.from, run.service, FittingPlace::start, vessels, catalogue);
        addPort(losses[i][1], run.to, run.service, FittingPlace::end, vessels, catalogue);
    }
    for (const TeeLegs& tee : teeLegsOf(runs))
        if (tees.find(tee.tee))
            addTee(losses, tee, catalogue);
    return losses;
}

} // namespace sumpwright::assessment
