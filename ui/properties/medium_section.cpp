#include "ui/properties/medium_section.hpp"

#include "core/plan/edits/vessel.hpp"
#include "ui/properties/each.hpp"
#include "ui/text/names.hpp"

namespace sumpwright::ui::properties
{

MediumSection::MediumSection(Chosen about, QWidget* parent) : Section(std::move(about), tr("Growing medium"), parent)
{
    const auto make = [this](const std::string& id) {
        return eachOf(chosen().ids, [&](base::Id bed) {
            if (id.empty())
                return plan::setMedium({bed}, std::nullopt);
            plan::Medium medium = chosen().plan().vessels.find(bed)->medium.value_or(plan::Medium{});
            medium.mediumId = id;
            return plan::setMedium({bed}, medium);
        });
    };
    addRow(tr("Medium"), choiceField(
                             tr("Medium"), mediumChoices(),
                             [this](const plan::Plan& plan) {
                                 return sharedOver<std::string>(plan.vessels, chosen().ids, [](const auto& vessel) {
                                     return vessel.medium ? vessel.medium->mediumId : std::string();
                                 });
                             },
                             make));
    auto* depth = quantityField<units::Length>(
        tr("Depth of medium"),
        [this](const plan::Plan& plan) {
            Shared<units::Length> shared;
            for (const auto id : chosen().ids)
                if (const auto* bed = plan.vessels.find(id); bed && bed->medium)
                    shared.add(bed->medium->depth);
            return shared;
        },
        [this](const units::Length& value) {
            return eachOf(chosen().ids, [&](base::Id bed) {
                auto medium = chosen().plan().vessels.find(bed)->medium;
                if (medium)
                    medium->depth = value;
                return plan::setMedium({bed}, medium);
            });
        });
    addRow(tr("Depth of medium"), depth);
    onRefresh([this, depth](const plan::Plan& plan) {
        bool filled = false;
        for (const auto id : chosen().ids)
            if (const auto* bed = plan.vessels.find(id))
                filled = filled || bed->medium;
        setRowVisible(depth, filled);
    });
}

std::vector<Choice> MediumSection::mediumChoices() const
{
    std::vector<Choice> choices{{std::string(), tr("None"), {}}};
    for (const auto& medium : chosen().document.catalogue()->media())
        choices.push_back(
            {medium.id, QString::fromStdString(medium.name),
             tr("Pores %1 of the bed; %2")
                 .arg(chosen().display().percentText(medium.porosity.typical), text::nameOf(medium.provenance.basis))});
    return choices;
}

} // namespace sumpwright::ui::properties
