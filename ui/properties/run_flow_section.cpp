#include "ui/properties/run_flow_section.hpp"

#include "ui/text/names.hpp"
#include "ui/text/result_names.hpp"

namespace sumpwright::ui::properties
{

RunFlowSection::RunFlowSection(Chosen about, QWidget* parent) : Section(std::move(about), tr("Flow and loss"), parent)
{
    for (const auto state : assessment::allRunningStates) {
        addFlow(state);
        addLoss(state);
        addOpen(state);
    }
    addCapacity();
    addResult(
        tr("Content, bore full"),
        [this](const assessment::Assessment& results) {
            const auto* run = find(results);
            return run ? chosen().display().quantityText(run->content) : QString();
        },
        [this](const assessment::Assessment& results) {
            return assessment::workingOfContent(results, chosen().first());
        });
}

const assessment::RunResult* RunFlowSection::find(const assessment::Assessment& results) const
{
    return assessment::find(results.flow->runs, chosen().first());
}

void RunFlowSection::addFlow(assessment::RunningState state)
{
    addResult(
        text::heading(text::nameOf(state)),
        [this, state](const assessment::Assessment& results) -> QString {
            const auto* run = find(results);
            if (!run)
                return {};
            const auto& flow = run->flow[state];
            if (!flow)
                return text::whyMissing(flow);
            const QString words = chosen().display().quantityText(flow->flow);
            if (flow->meanOfTide)
                return tr("%1, the mean of its tide").arg(words);
            return flow->losses ? tr("%1, %2").arg(words, chosen().display().quantityText(flow->losses->velocity))
                                : words;
        },
        [this, state](const assessment::Assessment& results) {
            return assessment::workingOfRunFlow(results, chosen().first(), state);
        });
}

void RunFlowSection::addLoss(assessment::RunningState state)
{
    auto* loss = addResult(
        state == assessment::RunningState::least ? tr("Head loss, least flow") : tr("Head loss, most flow"),
        [this, state](const assessment::Assessment& results) -> QString {
            const auto* run = find(results);
            if (!run || !run->flow[state] || !run->flow[state]->losses)
                return {};
            const auto& losses = *run->flow[state]->losses;
            const auto display = chosen().display();
            return tr("%1 = pipe %2 + fittings %3, %4")
                .arg(display.quantityText(losses.friction + losses.fittings), display.quantityText(losses.friction),
                     display.quantityText(losses.fittings), text::nameOf(losses.regime));
        },
        [this, state](const assessment::Assessment& results) {
            return assessment::workingOfRunLoss(results, chosen().first(), state);
        });
    onRefresh([this, loss](const plan::Plan& plan) { // one that runs part full has none
        const auto* run = plan.runs.find(chosen().first());
        setRowVisible(loss, run && run->service == plan::Service::pressure);
    });
}

void RunFlowSection::addOpen(assessment::RunningState state)
{
    auto* water = addResult(
        state == assessment::RunningState::least ? tr("Water in it, least flow") : tr("Water in it, most flow"),
        [this, state](const assessment::Assessment& results) -> QString {
            const auto* run = find(results);
            if (!run || !run->flow[state] || !run->flow[state]->open)
                return {};
            const assessment::OpenFlow& open = *run->flow[state]->open;
            const auto display = chosen().display();
            QString words = open.surcharged ? tr("full, under pressure")
                            : open.backedUp
                                ? tr("up to %1 full, mouth under water").arg(display.percentText(open.fullest, 2))
                                : tr("up to %1 full").arg(display.percentText(open.fullest, 2));
            if (open.slowest)
                words = tr("%1, at least %2").arg(words, display.quantityText(*open.slowest));
            return words;
        });
    onRefresh([this, water](const plan::Plan& plan) {
        const auto* run = plan.runs.find(chosen().first());
        setRowVisible(water, run && run->service == plan::Service::gravity);
    });
}

void RunFlowSection::addCapacity()
{
    auto* capacity = addResult(
        tr("Carries, just full"),
        [this](const assessment::Assessment& results) -> QString {
            const auto* run = find(results);
            if (!run || !run->flow[assessment::RunningState::most] || !run->flow[assessment::RunningState::most]->open)
                return {};
            const auto& flattest = run->flow[assessment::RunningState::most]->open->flattest;
            if (!flattest)
                return tr("no stretch falls the way the water runs");
            const auto display = chosen().display();
            return tr("%1 where it falls least, %2")
                .arg(display.quantityText(flattest->fullFlow), display.quantityText(flattest->fall));
        },
        [this](const assessment::Assessment& results) {
            return assessment::workingOfDrain(results, chosen().first(), assessment::RunningState::most);
        });
    onRefresh([this, capacity](const plan::Plan& plan) {
        const auto* run = plan.runs.find(chosen().first());
        setRowVisible(capacity, run && run->service == plan::Service::gravity);
    });
}

} // namespace sumpwright::ui::properties
