#include "ui/properties/site_sections.hpp"

#include "core/plan/edits/site.hpp"
#include "core/plan/edits/underlay.hpp"
#include "ui/text/names.hpp"
#include "ui/text/result_names.hpp"

namespace sumpwright::ui::properties
{

namespace
{
// One property of the site as a row reads it.
template <class T, class Of> Read<T> ofSite(Of of)
{
    return [of](const plan::Plan& plan) { return sharedOne<T>(of(*plan.site)); };
}
} // namespace

SiteNamesSection::SiteNamesSection(Chosen about, QWidget* parent) : Section(std::move(about), tr("Plan"), parent)
{
    const auto row = [this](const QString& label, std::string plan::Site::*which, plan::Edit (*edit)(std::string)) {
        addRow(label,
               textField(label, ofSite<std::string>([which](const plan::Site& site) { return site.*which; }), edit));
    };
    row(tr("Name"), &plan::Site::name, &plan::setSiteName);
    row(tr("Client"), &plan::Site::client, &plan::setClient);
    row(tr("Designer"), &plan::Site::designer, &plan::setDesigner);
}

SiteConditionsSection::SiteConditionsSection(Chosen about, QWidget* parent)
    : Section(std::move(about), tr("Conditions"), parent)
{
    const QString altitude = tr("Altitude");
    addRow(altitude, optionalField<units::Length>(
                         altitude, ofSite<std::optional<units::Length>>([](const auto& site) { return site.altitude; }),
                         &plan::setAltitude, tr("not given"), {"m", "ft"}));
    addResult(
        tr("Air pressure there"),
        [this](const assessment::Assessment& results) {
            return text::stageText(chosen().display(), results.site->airPressure);
        },
        &assessment::workingOfAirPressure);
    const QString water = tr("Design water temperature");
    addRow(water, quantityField<units::Temperature>(
                      water, ofSite<units::Temperature>([](const auto& site) { return site.designWater; }),
                      &plan::setDesignWater));
    addYearsWaterRows();
    const QString air = tr("Design air temperature");
    addRow(air,
           quantityField<units::Temperature>(
               air, ofSite<units::Temperature>([](const auto& site) { return site.designAir; }), &plan::setDesignAir));
    addPipeConditionRow();
    const QString north = tr("Direction of north");
    addRow(north, quantityField<units::Angle>(north, ofSite<units::Angle>([](const auto& site) { return site.north; }),
                                              &plan::setNorth));
}

void SiteConditionsSection::addYearsWaterRows()
{
    const auto row = [this](const QString& label, std::optional<units::Temperature> plan::Site::*which, auto edit) {
        addRow(label,
               optionalField<units::Temperature>(
                   label, ofSite<std::optional<units::Temperature>>([which](const auto& site) { return site.*which; }),
                   edit, tr("as designed")));
    };
    row(tr("Coldest water in the year"), &plan::Site::coldestWater, &plan::setColdestWater);
    row(tr("Warmest water in the year"), &plan::Site::warmestWater, &plan::setWarmestWater);
}

void SiteConditionsSection::addPipeConditionRow()
{
    std::vector<Choice> choices;
    for (const auto condition :
         {plan::PipeCondition::asNew, plan::PipeCondition::inService, plan::PipeCondition::fouled})
        choices.push_back({std::to_string(static_cast<int>(condition)), text::heading(text::nameOf(condition)), {}});
    const QString label = tr("Pipe walls");
    addRow(label, choiceField(label, std::move(choices), ofSite<std::string>([](const auto& site) {
                                  return std::to_string(static_cast<int>(site.pipeCondition));
                              }),
                              [](const std::string& key) {
                                  return plan::setPipeCondition(static_cast<plan::PipeCondition>(std::stoi(key)));
                              }));
}

SiteSketchSection::SiteSketchSection(Chosen about, QWidget* parent)
    : Section(std::move(about), tr("Site sketch"), parent)
{
    addFact(tr("Picture"), [](const plan::Plan& plan) {
        return plan.underlay ? QString::fromStdString(plan.underlay->fileName) : QString();
    });
    const QString strength = tr("Strength");
    addRow(strength, percentField(
                         strength,
                         [](const plan::Plan& plan) {
                             Shared<double> shared;
                             if (plan.underlay)
                                 shared.add(plan.underlay->opacity);
                             return shared;
                         },
                         &plan::setUnderlayOpacity));
    const QString turn = tr("Turn");
    addRow(turn, quantityField<units::Angle>(
                     turn,
                     [](const plan::Plan& plan) {
                         Shared<units::Angle> shared;
                         if (plan.underlay)
                             shared.add(plan.underlay->turn);
                         return shared;
                     },
                     &plan::turnUnderlay));
    addHint(tr("100 % hides the floor behind it; a faint sketch lets the drawing stand out."));
    onRefresh([this](const plan::Plan& plan) { setVisible(plan.underlay != nullptr); });
}

SitePricesSection::SitePricesSection(Chosen about, QWidget* parent) : Section(std::move(about), tr("Prices"), parent)
{
    const QString currency = tr("Currency");
    addRow(currency, textField(currency, ofSite<std::string>([](const auto& site) { return site.currency; }),
                               &plan::setCurrency));
    const QString power = tr("Power price");
    addRow(power,
           optionalField<units::EnergyPrice>(
               power, ofSite<std::optional<units::EnergyPrice>>([](const auto& site) { return site.powerPrice; }),
               &plan::setPowerPrice, tr("not given")));
}

ClearancesSection::ClearancesSection(Chosen about, QWidget* parent)
    : Section(std::move(about), tr("Clearances to keep"), parent)
{
    addClearance(tr("Aisle width"), &plan::Clearances::aisle);
    addClearance(tr("Reach of a hand"), &plan::Clearances::reach);
    addClearance(tr("Headroom over a rim"), &plan::Clearances::headroom);
    addClearance(tr("Door wider than vessel by"), &plan::Clearances::doorMargin);
    addHint(tr("The values offered are common practice, no source."));
}

void ClearancesSection::addClearance(const QString& label, units::Length plan::Clearances::*which)
{
    const auto read = ofSite<units::Length>([which](const plan::Site& site) { return site.clearances.*which; });
    addRow(label, quantityField<units::Length>(label, read, [this, which](const units::Length& value) {
               plan::Clearances clearances = chosen().plan().site->clearances;
               clearances.*which = value;
               return plan::setClearances(clearances);
           }));
}

TotalsSection::TotalsSection(Chosen about, QWidget* parent) : Section(std::move(about), tr("Totals"), parent)
{
    addResult(
        tr("Water while running"),
        [this](const assessment::Assessment& results) {
            const auto& total = results.water->totals[assessment::WaterState::runningLeast];
            if (!total)
                return text::whyMissing(total);
            return tr("%1, of it %2 in pipes")
                .arg(chosen().display().quantityText(total->all()), chosen().display().quantityText(total->inPipes));
        },
        [](const assessment::Assessment& results) {
            return assessment::workingOfWaterTotal(results, assessment::WaterState::runningLeast);
        });
    addResult(
        tr("Load, every vessel to its rim"),
        [this](const assessment::Assessment& results) {
            const auto& total = results.floor->in(assessment::LoadCase::toRim);
            if (!total)
                return text::whyMissing(total);
            return tr("%1, worst footprint %2")
                .arg(chosen().display().quantityText(total->weight),
                     chosen().display().quantityText(total->worstFootprint));
        },
        [](const assessment::Assessment& results) {
            return assessment::workingOfLoadTotal(results, assessment::LoadCase::toRim);
        });
}

} // namespace sumpwright::ui::properties
