#include "ui/properties/run_section.hpp"

#include <QPushButton>

#include "core/plan/edits/fall.hpp"
#include "core/plan/edits/run.hpp"
#include "ui/properties/enum_choice.hpp"
#include "ui/properties/part_choices.hpp"
#include "ui/properties/run_levels.hpp"

namespace sumpwright::ui::properties
{

RunSection::RunSection(Chosen about, QWidget* parent) : Section(std::move(about), {}, parent)
{
    addPipeRow();
    addServiceRow();
    addFact(tr("Length"), [this](const plan::Plan& plan) {
        units::Length sum = units::metres(0.0);
        for (const auto id : chosen().ids)
            if (const auto* run = plan.runs.find(id))
                sum += plan::lengthOf(*run);
        return chosen().display().quantityText(sum);
    });
    addFallRow();
    addWide(button(tr("Lead the water the other way"), tr("Lead the water the other way"),
                   [this] { return plan::reverseRuns(chosen().ids); }));
}

void RunSection::addPipeRow()
{
    const auto pipes = [this] {
        std::vector<Choice> choices;
        for (const auto& pipe : chosen().document.catalogue()->pipes()) {
            const QString bore = chosen().display().quantityText(pipe.bore);
            choices.push_back(
                {pipe.id, text::partName(pipe.name, pipe.provenance.basis),
                 tr("Bore %1; %2; %3")
                     .arg(bore, QString::fromStdString(pipe.standard), text::nameOf(pipe.provenance.basis))});
        }
        return choices;
    };
    auto* field = choiceField(
        tr("Pipe"), pipes(),
        [this](const plan::Plan& plan) {
            return sharedOver<std::string>(plan.runs, chosen().ids, [](const auto& run) { return run.pipeId; });
        },
        [this](const std::string& id) { return plan::setRunPipe(chosen().ids, id); });
    addRow(tr("Pipe"), field);
    onRefresh(whenPartsChange(chosen().document, [field, pipes] { field->setChoices(pipes()); }));
    addFact(tr("Bore"), [this](const plan::Plan& plan) {
        const auto bore = sharedOver<std::optional<units::Length>>(
            plan.runs, chosen().ids, [this](const auto& run) { return boreOf(*chosen().document.catalogue(), run); });
        return bore.value && *bore.value ? chosen().display().quantityText(**bore.value) : QString();
    });
}

void RunSection::addServiceRow()
{
    using Service = plan::Service;
    addRow(tr("Service"),
           choiceField(
               tr("Service"), choicesOf({Service::pressure, Service::gravity}),
               [this](const plan::Plan& plan) {
                   return sharedOver<std::string>(plan.runs, chosen().ids,
                                                  [](const auto& run) { return keyOf(run.service); });
               },
               [this](const std::string& key) { return plan::setRunService(chosen().ids, enumOf<Service>(key)); }));
}

// Shown from the lying legs; entered, it lays the whole run at that fall, its start kept.
void RunSection::addFallRow()
{
    auto* field = quantityField<units::Slope>(
        tr("Fall"),
        [this](const plan::Plan& plan) {
            Shared<units::Slope> shared;
            for (const auto id : chosen().ids)
                if (const auto* run = plan.runs.find(id))
                    for (const auto& fall : lyingFalls(*run))
                        shared.add(fall);
            return shared;
        },
        [this](const units::Slope& fall) { return plan::setFall(chosen().ids, fall, plan::RunSide::from); });
    addRow(tr("Fall, from its start"), field);
    onRefresh([this, field](const plan::Plan& plan) {
        const auto gravity = sharedOver<bool>(plan.runs, chosen().ids,
                                              [](const auto& run) { return run.service == plan::Service::gravity; });
        setRowVisible(field, gravity.value.value_or(false));
    });
}

} // namespace sumpwright::ui::properties
