#include "ui/properties/floor_sections.hpp"

#include "core/plan/edits/site.hpp"
#include "ui/text/cautions.hpp"
#include "ui/text/names.hpp"
#include "ui/text/result_names.hpp"

namespace sumpwright::ui::properties
{

FloorLoadSection::FloorLoadSection(Chosen about, QWidget* parent) : Section(std::move(about), tr("Load"), parent)
{
    for (const auto loadCase : {assessment::LoadCase::toRim, assessment::LoadCase::bedsFlooded})
        addResult(
            text::heading(text::nameOf(loadCase)),
            [this, loadCase](const assessment::Assessment& results) { return totalText(results, loadCase); },
            [loadCase](const assessment::Assessment& results) {
                return assessment::workingOfLoadTotal(results, loadCase);
            });
    addUseRow();
    auto* compared = addResult(
        tr("Compared with it"), [this](const assessment::Assessment& results) { return comparisonText(results); },
        &assessment::workingOfLiveLoad);
    onRefresh([this, compared](const plan::Plan& plan) { setRowVisible(compared, !plan.site->floorUse.empty()); });
    addCaution(text::loadCaution());
}

QString FloorLoadSection::totalText(const assessment::Assessment& results, assessment::LoadCase loadCase) const
{
    const auto& total = results.floor->in(loadCase);
    if (!total)
        return text::whyMissing(total);
    const auto display = chosen().display();
    const QString worst = tr("%1 (estimate), worst footprint %2")
                              .arg(display.quantityText(total->weight), display.quantityText(total->worstFootprint));
    return total->meanOverFloor
               ? tr("%1, mean over the floor %2").arg(worst, display.quantityText(*total->meanOverFloor))
               : worst;
}

QString FloorLoadSection::comparisonText(const assessment::Assessment& results) const
{
    const auto& comparison = results.floor->comparison;
    if (!comparison)
        return {};
    const auto display = chosen().display();
    return tr("Live load %1 (%2), a comparison and no verdict. The worst footprint is %3 times that; %4 of water alone "
              "weigh as much.")
        .arg(display.quantityText(comparison->liveLoad), QString::fromStdString(comparison->code),
             display.ratioText(comparison->worstFootprintRatio), display.quantityText(comparison->waterDepth));
}

void FloorLoadSection::addUseRow()
{
    std::vector<Choice> choices{{std::string(), tr("No comparison"), {}}};
    for (const auto& use : chosen().document.catalogue()->liveLoads())
        choices.push_back(
            {use.id, QString::fromStdString(use.use),
             tr("%1: %2").arg(QString::fromStdString(use.code), chosen().display().quantityText(use.uniform))});
    const QString label = tr("Ordinary use to compare with");
    addRow(label,
           choiceField(
               label, std::move(choices),
               [](const plan::Plan& plan) { return sharedOne<std::string>(plan.site->floorUse); }, &plan::setFloorUse));
}

} // namespace sumpwright::ui::properties
