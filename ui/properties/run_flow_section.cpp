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
    }
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

} // namespace sumpwright::ui::properties
