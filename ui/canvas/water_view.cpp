#include "ui/canvas/water_view.hpp"

#include "core/assessment/run_grade.hpp"

namespace sumpwright::ui::canvas
{

namespace
{
std::optional<units::Flow> lookUp(const std::unordered_map<base::Id, units::Flow>& flows, base::Id id)
{
    const auto found = flows.find(id);
    return found == flows.end() ? std::nullopt : std::optional(found->second);
}
} // namespace

const VesselWater* WaterView::vessel(base::Id id) const
{
    const auto found = vessels.find(id);
    return found == vessels.end() ? nullptr : &found->second;
}

std::optional<units::Flow> WaterView::run(base::Id id) const { return lookUp(runs, id); }
std::optional<units::Flow> WaterView::pump(base::Id id) const { return lookUp(pumps, id); }

const RunFigures* WaterView::figuresOf(base::Id run) const
{
    const auto found = figures.find(run);
    return found == figures.end() ? nullptr : &found->second;
}

namespace
{
RunFigures figuresOfRun(const assessment::Assessment& assessment, const assessment::RunResult& result)
{
    RunFigures figures;
    const auto& flow = result.flow[assessment::RunningState::least];
    if (flow && flow->losses)
        figures.velocity = flow->losses->velocity;
    const plan::Run* run = assessment.plan.runs.find(result.id);
    const auto grade = run ? assessment::gradeOf(assessment, *run, assessment::RunningState::least) : std::nullopt;
    if (grade) {
        figures.gradeAtStart = grade->start;
        figures.gradeAtEnd = grade->end;
    }
    if (flow && flow->open && !flow->open->stretches.empty()) {
        figures.gradeAtStart = flow->open->stretches.front().startGrade;
        figures.gradeAtEnd = flow->open->stretches.back().endGrade;
    }
    const bool runs = flow && (flow->flow > units::litresPerHour(0.5) || flow->flow < units::litresPerHour(-0.5));
    if (runs && flow->open && flow->open->slowest)
        figures.velocity = flow->open->slowest;
    // The mean of a tide says nothing of how fast a gush runs.
    if (runs && !flow->meanOfTide && figures.velocity && *figures.velocity < slowBelow)
        figures.mark = RunMark::slow;
    if (runs && flow->open && flow->open->surcharged)
        figures.mark = RunMark::surcharged;
    return figures;
}
} // namespace

WaterView waterViewOf(const assessment::Assessment& assessment, bool stale)
{
    WaterView view;
    view.stale = stale;
    for (const auto& vessel : assessment.water->vessels) {
        const auto& water = vessel.water[assessment::WaterState::runningLeast];
        if (water)
            view.vessels.emplace(vessel.id, VesselWater{water->level, water->volume});
    }
    for (const auto& run : assessment.flow->runs) {
        const auto& flow = run.flow[assessment::RunningState::least];
        if (!flow)
            continue;
        view.figures.emplace(run.id, figuresOfRun(assessment, run));
        view.runs.emplace(run.id, flow->flow);
        view.tidal.emplace(run.id, flow->meanOfTide);
    }
    for (const auto& pump : assessment.pumps->pumps) {
        const auto& duty = pump.duty[assessment::RunningState::least];
        if (duty)
            view.pumps.emplace(pump.id, duty->flow);
    }
    return view;
}

} // namespace sumpwright::ui::canvas
