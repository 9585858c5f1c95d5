#include "ui/properties/valve_section.hpp"

#include <QPushButton>

#include "core/plan/edits/rename.hpp"
#include "ui/properties/loss_section.hpp"
#include "ui/properties/part_choices.hpp"
#include "ui/text/names.hpp"

namespace sumpwright::ui::properties
{

ValveSection::ValveSection(Chosen run, base::Id valve, QWidget* parent)
    : Section(std::move(run), {}, parent), m_valve{chosen().first(), valve}
{
    setAccessibleName(named(tr("Valve")));
    addRow(tr("Valve"), textField(named(tr("Tag")), reading<std::string>([](const auto& v) { return v.tag; }),
                                  [this](const std::string& tag) { return plan::renameTag(m_valve.valve, tag); }));
    addFittingRow();
    addRow(tr("Open, 0 to 100 %"),
           percentField(named(tr("Open")), reading<double>([](const auto& v) { return v.opening; }),
                        [this](const double& opening) { return plan::setOpening({m_valve}, opening); }));
    addRow(tr("Place, from the start"),
           percentField(named(tr("Place")), reading<double>([](const auto& v) { return v.station; }),
                        [this](const double& station) { return plan::moveValve(m_valve, station); }));
    addLossRows();
    addWide(button(tr("Remove"), named(tr("Remove")), [this] { return plan::removeValves({m_valve}); }));
}

const plan::Valve* ValveSection::find(const plan::Plan& plan) const
{
    if (const auto* run = plan.runs.find(m_valve.run))
        for (const auto& valve : run->valves)
            if (valve.id == m_valve.valve)
                return &valve;
    return nullptr;
}

QString ValveSection::named(const QString& what) const
{
    const auto* valve = find(chosen().plan());
    return valve ? tr("%1, valve %2").arg(what, QString::fromStdString(valve->tag)) : what;
}

void ValveSection::addFittingRow()
{
    const auto kinds = [this] {
        std::vector<Choice> choices;
        for (const auto& fitting : chosen().document.catalogue()->fittings())
            if (fitting.valve != catalogue::ValveKind::NotAValve)
                choices.push_back({fitting.id, text::partName(fitting.name, fitting.provenance.basis), {}});
        return choices;
    };
    auto* field =
        choiceField(named(tr("Kind")), kinds(), reading<std::string>([](const auto& v) { return v.fittingId; }),
                    [this](const std::string& id) { return plan::setValveFitting({m_valve}, id); });
    addRow(tr("Kind"), field);
    onRefresh(whenPartsChange(chosen().document, [field, kinds] { field->setChoices(kinds()); }));
}

void ValveSection::addLossRows()
{
    addRow(tr("K"), optionalRatioField(
                        named(tr("K")), reading<std::optional<double>>([](const auto& v) { return v.lossCoefficient; }),
                        [this](const std::optional<double>& k) { return plan::setValveLoss({m_valve}, k); },
                        tr("from the catalogue")));
    auto* counted = addResult(
        tr("Counted"),
        [this](const assessment::Assessment& results) -> QString {
            const auto* loss = lossIn(results);
            if (!loss)
                return {};
            return loss->shut ? tr("closed, nothing passes") : lossText(chosen().display(), *results.catalogue, *loss);
        },
        [this](const assessment::Assessment& results) -> std::optional<assessment::Working> {
            const auto* loss = lossIn(results);
            return loss ? assessment::workingOfFitting(results, m_valve.run, *loss, assessment::RunningState::least)
                        : std::nullopt;
        });
    counted->setFullName(named(tr("Counted")));
}

const assessment::FittingLoss* ValveSection::lossIn(const assessment::Assessment& results) const
{
    if (const auto* run = assessment::find(results.flow->runs, m_valve.run))
        for (const auto& loss : run->fittings)
            if (loss.element == m_valve.valve)
                return &loss;
    return nullptr;
}

} // namespace sumpwright::ui::properties
