#include "ui/properties/pump_section.hpp"

#include <QCheckBox>

#include "core/plan/edits/move.hpp"
#include "core/plan/edits/pump.hpp"
#include "ui/properties/each.hpp"
#include "ui/properties/enum_choice.hpp"
#include "ui/properties/part_choices.hpp"
#include "ui/text/cautions.hpp"
#include "ui/text/names.hpp"
#include "ui/text/subject.hpp"

namespace sumpwright::ui::properties
{

namespace
{
// A curve to start from when a catalogue pump becomes an own one: the pump's own points.
std::vector<plan::CurvePoint> startCurve(const catalogue::Catalogue& catalogue, const plan::Pump& pump)
{
    if (pump.ownCurve.size() >= 2)
        return pump.ownCurve;
    std::vector<plan::CurvePoint> points;
    if (const auto model = catalogue.pump(pump.modelId))
        for (const auto& point : (*model)->points)
            points.push_back({point.flow, point.head});
    if (points.size() < 2)
        points = {{units::litresPerHour(0.0), units::metresHead(2.0)},
                  {units::litresPerHour(2000.0), units::metresHead(0.0)}};
    return points;
}

const std::string twoNumbers = "two-numbers"; // no id of the catalogue

std::vector<Choice> modelChoices(const Chosen& chosen)
{
    std::vector<Choice> choices{
        {std::string(), PumpSection::tr("Own curve"), {}},
        {twoNumbers, PumpSection::tr("Two numbers of its box"),
         PumpSection::tr("Head at no flow and flow at no head; the curve between them is an estimate")}};
    for (const auto& pump : chosen.document.catalogue()->pumps())
        choices.push_back({pump.id, text::partName(pump.name.empty() ? pump.id : pump.name, pump.provenance.basis),
                           text::nameOf(pump.provenance.basis)});
    return choices;
}

std::string modelKey(const plan::Pump& pump)
{
    return pump.modelId.empty() && pump.twoNumbers ? twoNumbers : pump.modelId;
}
} // namespace

PumpSection::PumpSection(Chosen about, QWidget* parent) : Section(std::move(about), {}, parent)
{
    addModelRow();
    addSettingRows();
    addVesselRow();
    addLevelRows();
    addCaution(text::electricalCaution());
}

void PumpSection::addModelRow()
{
    auto* field = choiceField(
        tr("Pump"), modelChoices(chosen()),
        [this](const plan::Plan& plan) {
            return sharedOver<std::string>(plan.pumps, chosen().ids, [](const auto& pump) { return modelKey(pump); });
        },
        [this](const std::string& id) {
            if (!id.empty() && id != twoNumbers)
                return plan::setPumpModel(chosen().ids, id);
            return eachOf(chosen().ids, [&](base::Id pump) {
                const auto* now = chosen().plan().pumps.find(pump);
                const auto curve = startCurve(*chosen().document.catalogue(), *now);
                return id.empty() ? plan::setPumpCurve({pump}, curve, now->ownPower)
                                  : plan::setPumpRatings({pump}, curve.front().head, curve.back().flow, now->ownPower);
            });
        });
    addRow(tr("Pump"), field);
    onRefresh(whenPartsChange(chosen().document, [this, field] { field->setChoices(modelChoices(chosen())); }));
    using plan::PumpArrangement;
    addRow(tr("Units"),
           choiceField(
               tr("Units"),
               choicesOf({PumpArrangement::one, PumpArrangement::twoParallel, PumpArrangement::twoInSeries}),
               [this](const plan::Plan& plan) {
                   return sharedOver<std::string>(plan.pumps, chosen().ids,
                                                  [](const auto& pump) { return keyOf(pump.arrangement); });
               },
               [this](const std::string& key) {
                   return plan::setPumpArrangement(chosen().ids, enumOf<PumpArrangement>(key));
               }));
}

void PumpSection::addVesselRow()
{
    std::vector<Choice> vessels;
    for (const auto& vessel : chosen().plan().vessels)
        vessels.push_back(
            {std::to_string(vessel->id.number), text::heading(text::subject(chosen().plan(), vessel->id)), {}});
    addRow(tr("Stands in"), choiceField(
                                tr("Stands in"), std::move(vessels),
                                [this](const plan::Plan& plan) {
                                    return sharedOver<std::string>(plan.pumps, chosen().ids, [](const auto& pump) {
                                        return std::to_string(pump.vessel.number);
                                    });
                                },
                                [this](const std::string& key) {
                                    const base::Id vessel{std::stoull(key)};
                                    return eachOf(chosen().ids, [&](base::Id pump) {
                                        return plan::standPump(pump, vessel, plan::anchorOf(chosen().plan(), vessel));
                                    });
                                }));
}

void PumpSection::addSettingRows()
{
    const QString speed = tr("Speed, curve at 100 %");
    addRow(speed, percentField(
                      speed,
                      [this](const plan::Plan& plan) {
                          return sharedOver<double>(plan.pumps, chosen().ids,
                                                    [](const auto& pump) { return pump.speed; });
                      },
                      [this](const double& ratio) { return plan::setPumpSpeed(chosen().ids, ratio); }));
    addWide(checkField(
        tr("Running"),
        [this](const plan::Plan& plan) {
            return sharedOver<bool>(plan.pumps, chosen().ids, [](const auto& pump) { return pump.running; });
        },
        [this](const bool& running) { return plan::setPumpRunning(chosen().ids, running); }));
}

void PumpSection::addLevelRows()
{
    const QString outlet = tr("Outlet level");
    addRow(outlet, quantityField<units::Elevation>(
                       outlet,
                       [this](const plan::Plan& plan) {
                           return sharedOver<units::Elevation>(plan.pumps, chosen().ids,
                                                               [](const auto& pump) { return pump.outletLevel; });
                       },
                       [this](const units::Elevation& level) { return plan::setPumpOutlet(chosen().ids, level); }));
    const QString depth = tr("Least depth of water");
    addRow(depth,
           optionalField<units::Length>(
               depth,
               [this](const plan::Plan& plan) {
                   return sharedOver<std::optional<units::Length>>(plan.pumps, chosen().ids,
                                                                   [](const auto& pump) { return pump.leastDepth; });
               },
               [this](const std::optional<units::Length>& value) { return plan::setLeastDepth(chosen().ids, value); },
               tr("as its maker says"), text::inSmallSizes));
}

} // namespace sumpwright::ui::properties
