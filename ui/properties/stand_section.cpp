#include "ui/properties/stand_section.hpp"

#include <cmath>

#include "core/plan/edits/vessel.hpp"
#include "ui/properties/each.hpp"
#include "ui/properties/enum_choice.hpp"
#include "ui/text/cautions.hpp"
#include "ui/text/result_names.hpp"

namespace sumpwright::ui::properties
{

namespace
{
plan::Stand standOf(const plan::Vessel& vessel) { return vessel.stand.value_or(plan::Stand{}); }
} // namespace

StandSection::StandSection(Chosen about, QWidget* parent) : Section(std::move(about), tr("Stand and load"), parent)
{
    addKindRow();
    addLegRows();
    addMassRows();
    if (chosen().one())
        addLoadResults();
    addCaution(text::loadCaution());
}

plan::Edit StandSection::changeStands(const Change& change) const
{
    return eachOf(chosen().ids, [&](base::Id id) {
        plan::Stand stand = standOf(*chosen().plan().vessels.find(id));
        change(stand);
        return plan::setStand({id}, stand);
    });
}

void StandSection::addKindRow()
{
    using Kind = plan::StandKind;
    addRow(tr("Stands"), choiceField(
                             tr("Stands"), choicesOf({Kind::flat, Kind::legs, Kind::blocks}),
                             [this](const plan::Plan& plan) {
                                 return sharedOver<std::string>(plan.vessels, chosen().ids, [](const auto& vessel) {
                                     return keyOf(standOf(vessel).kind);
                                 });
                             },
                             [this](const std::string& key) {
                                 return changeStands([&](plan::Stand& stand) { stand.kind = enumOf<Kind>(key); });
                             }));
}

void StandSection::addLegRows()
{
    auto* count = ratioField(
        tr("Legs or piers"),
        [this](const plan::Plan& plan) {
            return sharedOver<double>(plan.vessels, chosen().ids,
                                      [](const auto& vessel) { return double(standOf(vessel).legCount); });
        },
        [this](const double& value) {
            const bool whole = std::isfinite(value) && std::floor(value) == value && std::abs(value) < 1000.0;
            // not a whole number: minus one is refused by the edit with its own words
            return changeStands([&](plan::Stand& stand) { stand.legCount = whole ? static_cast<int>(value) : -1; });
        });
    auto* pad = quantityField<units::Length>(
        tr("Side of each pad"),
        [this](const plan::Plan& plan) {
            return sharedOver<units::Length>(plan.vessels, chosen().ids,
                                             [](const auto& vessel) { return standOf(vessel).padSide; });
        },
        [this](const units::Length& side) { return changeStands([&](plan::Stand& stand) { stand.padSide = side; }); },
        text::inSmallSizes);
    addRow(tr("Legs or piers"), count);
    addRow(tr("Side of each pad"), pad);
    onRefresh([this, count, pad](const plan::Plan& plan) {
        const auto onPads = sharedOver<bool>(plan.vessels, chosen().ids, [](const auto& vessel) {
            return standOf(vessel).kind != plan::StandKind::flat;
        });
        setRowVisible(count, onPads.value.value_or(false));
        setRowVisible(pad, onPads.value.value_or(false));
    });
}

void StandSection::addMassRows()
{
    const QString stand = tr("Mass of the stand");
    addRow(stand, optionalField<units::Mass>(
                      stand,
                      [this](const plan::Plan& plan) {
                          return sharedOver<std::optional<units::Mass>>(
                              plan.vessels, chosen().ids, [](const auto& vessel) { return standOf(vessel).mass; });
                      },
                      [this](const std::optional<units::Mass>& mass) {
                          return changeStands([&](plan::Stand& changed) { changed.mass = mass; });
                      },
                      tr("assumed")));
    const QString tare = tr("Empty vessel, weighed");
    addRow(tare,
           optionalField<units::Mass>(
               tare,
               [this](const plan::Plan& plan) {
                   return sharedOver<std::optional<units::Mass>>(
                       plan.vessels, chosen().ids, [](const auto& vessel) { return vessel.measuredTare; });
               },
               [this](const std::optional<units::Mass>& mass) { return plan::setMeasuredTare(chosen().ids, mass); },
               tr("assumed")));
}

void StandSection::addLoadResults()
{
    for (const auto loadCase : {assessment::LoadCase::toRim, assessment::LoadCase::bedsFlooded})
        addResult(
            text::heading(text::nameOf(loadCase)),
            [this, loadCase](const assessment::Assessment& results) -> QString {
                const auto* vessel = assessment::find(results.floor->vessels, chosen().first());
                if (!vessel)
                    return {};
                const auto& load = vessel->in(loadCase);
                if (!load)
                    return text::whyMissing(load);
                const auto display = chosen().display();
                const QString whole =
                    tr("%1 (estimate), %2 under its footprint")
                        .arg(display.quantityText(load->weight), display.quantityText(load->underFootprint));
                return load->perLeg ? tr("%1; %2 a leg if shared evenly, which real legs do not")
                                          .arg(whole, display.quantityText(*load->perLeg))
                                    : whole;
            },
            [this, loadCase](const assessment::Assessment& results) {
                return assessment::workingOfMass(results, chosen().first(), loadCase);
            });
}

} // namespace sumpwright::ui::properties
