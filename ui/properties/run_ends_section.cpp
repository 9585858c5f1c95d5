#include "ui/properties/run_ends_section.hpp"

#include "core/plan/edits/draw_run.hpp"
#include "ui/text/names.hpp"
#include "ui/text/subject.hpp"

namespace sumpwright::ui::properties
{

namespace
{
// "open", "port/4/7", "pump/3", "tee/9": an end as the key of a choice.
std::string keyOf(const plan::RunEnd& end)
{
    if (const auto* at = std::get_if<plan::PortEnd>(&end))
        return "port/" + std::to_string(at->vessel.number) + "/" + std::to_string(at->port.number);
    if (const auto* at = std::get_if<plan::PumpEnd>(&end))
        return "pump/" + std::to_string(at->pump.number);
    if (const auto* at = std::get_if<plan::TeeEnd>(&end))
        return "tee/" + std::to_string(at->tee.number);
    return "open";
}

plan::Target targetOf(const std::string& key)
{
    const QStringList parts = QString::fromStdString(key).split(u'/');
    const auto id = [&](int index) { return base::Id{parts.value(index).toULongLong()}; };
    if (parts.first() == QLatin1String("port"))
        return plan::AtPort{id(1), id(2)};
    if (parts.first() == QLatin1String("pump"))
        return plan::AtPump{id(1)};
    if (parts.first() == QLatin1String("tee"))
        return plan::AtTee{id(1)};
    return plan::Nowhere{};
}

// Everything this end could be led to: what is free, and where it is now.
std::vector<Choice> endChoices(const plan::Plan& plan, const plan::Run& run)
{
    std::vector<Choice> choices{{"open", text::heading(text::endName(plan, plan::OpenEnd{})), {}}};
    const auto offer = [&](const plan::RunEnd& end) {
        choices.push_back({keyOf(end), text::heading(text::endName(plan, end)), {}});
    };
    const auto free = [&](const plan::Run* other) { return !other || other->id == run.id; };
    for (const auto& vessel : plan.vessels)
        for (const auto& port : vessel->ports)
            if (free(plan::runAtPort(plan, vessel->id, port.id)))
                offer(plan::PortEnd{vessel->id, port.id, {}});
    for (const auto& pump : plan.pumps)
        if (free(plan::runAtPump(plan, pump->id)))
            offer(plan::PumpEnd{pump->id});
    for (const auto& tee : plan.tees)
        offer(plan::TeeEnd{tee->id, {}});
    return choices;
}
} // namespace

RunEndsSection::RunEndsSection(Chosen about, QWidget* parent) : Section(std::move(about), tr("Connected"), parent)
{
    addEndRow(tr("From"), plan::RunSide::from);
    addEndRow(tr("To"), plan::RunSide::to);
}

void RunEndsSection::addEndRow(const QString& label, plan::RunSide side)
{
    auto* field = choiceField(
        label, {},
        [this, side](const plan::Plan& plan) {
            return sharedOver<std::string>(plan.runs, chosen().ids,
                                           [side](const auto& run) { return keyOf(plan::endOf(run, side)); });
        },
        [this, side](const std::string& key) {
            const auto target = targetOf(key);
            return std::holds_alternative<plan::Nowhere>(target) ? plan::detachEnd(chosen().first(), side)
                                                                 : plan::connectEnd(chosen().first(), side, target);
        });
    addRow(label, field);
    onRefresh([this, field, side](const plan::Plan& plan) {
        const auto* run = plan.runs.find(chosen().first());
        if (!run)
            return;
        field->setChoices(endChoices(plan, *run));
        field->setShown(keyOf(plan::endOf(*run, side)));
    });
}

} // namespace sumpwright::ui::properties
