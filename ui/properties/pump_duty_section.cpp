#include "ui/properties/pump_duty_section.hpp"

#include "ui/text/names.hpp"
#include "ui/text/result_names.hpp"

namespace sumpwright::ui::properties
{

PumpDutySection::PumpDutySection(Chosen about, QWidget* parent) : Section(std::move(about), tr("Duty point"), parent)
{
    for (const auto state : assessment::allRunningStates)
        addDuty(state);
    for (const auto end : assessment::bothYearEnds)
        addSeason(end);
    addPower();
}

void PumpDutySection::addDuty(assessment::RunningState state)
{
    addResult(
        text::heading(text::nameOf(state)),
        [this, state](const assessment::Assessment& results) -> QString {
            const auto* pump = assessment::find(results.pumps->pumps, chosen().first());
            if (!pump)
                return {};
            const auto& duty = pump->duty[state];
            if (!duty)
                return text::whyMissing(duty);
            const auto display = chosen().display();
            const QString point =
                tr("%1 at %2").arg(display.quantityText(duty->flow), display.quantityText(duty->head));
            return duty->beyondCurve ? tr("%1, beyond the end of its curve").arg(point) : point;
        },
        [this, state](const assessment::Assessment& results) {
            return assessment::workingOfDutyPoint(results, chosen().first(), state);
        });
}

void PumpDutySection::addSeason(assessment::YearEnd end)
{
    addResult(
        text::heading(text::nameOf(end)),
        [this, end](const assessment::Assessment& results) -> QString {
            const auto* season = assessment::find(results.season->pumps, chosen().first());
            if (!season)
                return {};
            const auto& duty = season->duty[end];
            if (!duty)
                return text::whyMissing(duty);
            const auto display = chosen().display();
            return tr("about %1 at %2, water at %3", "flow, head, temperature")
                .arg(display.quantityText(duty->flow), display.quantityText(duty->head),
                     display.quantityText(results.season->water[end]));
        },
        [this, end](const assessment::Assessment& results) {
            return assessment::workingOfSeason(results, chosen().first(), end);
        });
}

void PumpDutySection::addPower()
{
    addResult(
        tr("Power"),
        [this](const assessment::Assessment& results) -> QString {
            const auto* pump = assessment::find(results.pumps->pumps, chosen().first());
            const auto* duty = pump ? &pump->duty[assessment::RunningState::least] : nullptr;
            if (!duty || !duty->ok())
                return {};
            const auto& power = (*duty)->power;
            if (!power)
                return text::whyMissing(power);
            const auto display = chosen().display();
            const QString words =
                tr("%1, wire-to-water %2, %3 a year")
                    .arg(display.quantityText(power->electrical), display.percentText(power->wireToWater),
                         display.quantityText(power->energyPerYear));
            if (!power->costPerYear)
                return words;
            units::Look look;
            look.currency = results.plan.site->currency;
            return tr("%1, %2").arg(words, display.quantityText(*power->costPerYear, look));
        },
        [this](const assessment::Assessment& results) {
            return assessment::workingOfEnergy(results, chosen().first());
        });
}

} // namespace sumpwright::ui::properties
