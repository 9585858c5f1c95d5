#include "ui/properties/vessel_levels_section.hpp"

#include "core/plan/edits/move.hpp"
#include "core/plan/edits/vessel.hpp"
#include "ui/text/names.hpp"
#include "ui/text/result_names.hpp"

namespace sumpwright::ui::properties
{

namespace
{
constexpr units::Look shortLength{.smallInMillimetres = true}; // as in the findings
} // namespace

VesselLevelsSection::VesselLevelsSection(Chosen about, bool sumps, QWidget* parent)
    : Section(std::move(about), tr("Levels and water"), parent)
{
    const QString base = tr("Base level");
    addRow(base, quantityField<units::Elevation>(
                     base,
                     [this](const plan::Plan& plan) {
                         return sharedOver<units::Elevation>(plan.vessels, chosen().ids,
                                                             [](const auto& vessel) { return vessel.baseLevel; });
                     },
                     [this](const units::Elevation& level) { return plan::setBaseLevel(chosen().ids, level); }));
    if (sumps)
        addRunningLevelRow();
    if (!chosen().one())
        return;
    addFact(tr("Rim level"), [this](const plan::Plan& plan) {
        const auto* vessel = plan.vessels.find(chosen().first());
        return vessel ? chosen().display().quantityText(plan::rimLevel(*vessel)) : QString();
    });
    for (const auto state : assessment::allRunningStates)
        addWaterResult(state);
    for (const auto state : assessment::allRunningStates)
        addInflowResult(state);
    if (sumps)
        addPumpStopResult();
}

void VesselLevelsSection::addRunningLevelRow()
{
    const QString label = tr("Level while running, beds drained");
    addRow(label, optionalField<units::Elevation>(
                      label,
                      [this](const plan::Plan& plan) {
                          return sharedOver<std::optional<units::Elevation>>(
                              plan.vessels, chosen().ids, [](const auto& vessel) { return vessel.runningLevel; });
                      },
                      [this](const std::optional<units::Elevation>& level) {
                          return plan::setRunningLevel(chosen().ids, level);
                      },
                      tr("not given")));
    addHint(tr("This one entry fixes all the water of the plan: every other level follows from it."));
}

void VesselLevelsSection::addWaterResult(assessment::RunningState state)
{
    const bool least = state == assessment::RunningState::least;
    const auto waterState = least ? assessment::WaterState::runningLeast : assessment::WaterState::runningMost;
    addResult(
        least ? tr("Water, least flow") : tr("Water, most flow"),
        [this, waterState](const assessment::Assessment& results) -> QString {
            const auto* vessel = assessment::find(results.water->vessels, chosen().first());
            if (!vessel)
                return {};
            const auto& water = vessel->water[waterState];
            if (!water)
                return text::whyMissing(water);
            const auto display = chosen().display();
            return tr("%1, %2 deep, %3, free-board %4")
                .arg(display.quantityText(water->level), display.quantityText(water->depth, shortLength),
                     display.quantityText(water->volume), display.quantityText(water->freeBoard, shortLength));
        },
        [this, state](const assessment::Assessment& results) {
            return assessment::workingOfWater(results, chosen().first(), state);
        });
}

void VesselLevelsSection::addInflowResult(assessment::RunningState state)
{
    const QString label = state == assessment::RunningState::least ? tr("Inflow, least") : tr("Inflow, most");
    addResult(
        label,
        [this, state](const assessment::Assessment& results) -> QString {
            const auto* vessel = assessment::find(results.water->vessels, chosen().first());
            if (!vessel)
                return {};
            const QString comesIn = text::stageText(chosen().display(), vessel->inflow[state]);
            const auto& out = vessel->pumpedOut[state];
            if (!out || *out <= units::Flow())
                return comesIn;
            const auto left = vessel->leftOver(state);
            return left && *left == units::Flow()
                       ? tr("%1, all pumped on").arg(comesIn)
                       : tr("%1; pumped on %2").arg(comesIn, chosen().display().quantityText(*out));
        },
        [this, state](const assessment::Assessment& results) {
            return assessment::workingOfInflow(results, chosen().first(), state);
        });
}

void VesselLevelsSection::addPumpStopResult()
{
    addResult(
        tr("After pump stop"),
        [this](const assessment::Assessment& results) -> QString {
            const auto* sump = assessment::find(results.sumps->sumps, chosen().first());
            if (!sump)
                return {};
            if (!sump->pumpStop)
                return text::whyMissing(sump->pumpStop);
            const auto display = chosen().display();
            const auto& stop = *sump->pumpStop;
            if (units::inLitres(stop.spilled) > 0.0)
                return tr("%1, %2 spill").arg(display.quantityText(stop.level), display.quantityText(stop.spilled));
            return tr("%1, room left %2").arg(display.quantityText(stop.level), display.quantityText(stop.roomLeft));
        },
        [this](const assessment::Assessment& results) {
            return assessment::workingOfPumpStop(results, chosen().first());
        });
    addResult(tr("95 % is down after"), [this](const assessment::Assessment& results) -> QString {
        const auto* sump = assessment::find(results.sumps->sumps, chosen().first());
        if (!sump || !sump->pumpStop || !sump->pumpStop->course)
            return {};
        const auto& course = *sump->pumpStop->course;
        const auto display = chosen().display();
        const QString down = display.quantityText(course.nearlyAll);
        return course.spillsAfter
                   ? tr("%1, spills after %2 (estimate)").arg(down, display.quantityText(*course.spillsAfter))
                   : tr("%1 (estimate)").arg(down);
    });
}

} // namespace sumpwright::ui::properties
