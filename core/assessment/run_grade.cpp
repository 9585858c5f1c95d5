#include "core/assessment/run_grade.hpp"

#include <algorithm>

namespace sumpwright::assessment
{
namespace
{

std::optional<units::Elevation> waterIn(const Assessment& assessment, base::Id vessel, RunningState state)
{
    const VesselResult* result = find(assessment.water->vessels, vessel);
    const WaterState same = state == RunningState::least ? WaterState::runningLeast : WaterState::runningMost;
    return result && result->water[same] ? std::optional(result->water[same]->level) : std::nullopt;
}

std::optional<units::Elevation> gradeAt(const Assessment& assessment, const plan::RunEnd& end, RunningState state)
{
    if (const auto* at = std::get_if<plan::TeeEnd>(&end)) {
        const TeeResult* tee = find(assessment.flow->tees, at->tee);
        return tee && tee->grade[state] ? std::optional(*tee->grade[state]) : std::nullopt;
    }
    if (const auto* at = std::get_if<plan::PumpEnd>(&end)) {
        const plan::Pump* pump = assessment.plan.pumps.find(at->pump);
        const PumpResult* result = find(assessment.pumps->pumps, at->pump);
        const auto level = pump ? waterIn(assessment, pump->vessel, state) : std::nullopt;
        if (!level || !result || !result->duty[state])
            return std::nullopt;
        return units::elevationMetres(units::inMetres(*level) + units::inMetresHead(result->duty[state]->head));
    }
    const auto* at = std::get_if<plan::PortEnd>(&end);
    const plan::Vessel* vessel = at ? assessment.plan.vessels.find(at->vessel) : nullptr;
    const plan::Port* port = vessel ? plan::findPort(*vessel, at->port) : nullptr;
    if (!port)
        return std::nullopt;
    const auto level = waterIn(assessment, vessel->id, state);
    return level ? std::max(*level, port->level) : port->level;
}

} // namespace

std::optional<RunGrade> gradeOf(const Assessment& assessment, const plan::Run& run, RunningState state)
{
    const RunResult* result = find(assessment.flow->runs, run.id);
    if (run.service != plan::Service::pressure || !result || !result->flow[state])
        return std::nullopt;
    const auto start = gradeAt(assessment, run.from, state), end = gradeAt(assessment, run.to, state);
    return start && end ? std::optional(RunGrade{*start, *end}) : std::nullopt;
}

} // namespace sumpwright::assessment
