#include "core/design/valve_setting.hpp"

#include <algorithm>
#include <cmath>

#include "core/assessment/stages.hpp"
#include "core/design/circuit_setting.hpp"
#include "core/plan/edits/pump.hpp"
#include "core/plan/edits/sequence.hpp"

namespace sumpwright::design
{
namespace
{

constexpr int mostRounds = 12;
constexpr double settled = 5e-4; // of each flow aimed at

base::Refusal notSolved(const assessment::Reason& reason, const plan::Plan& plan)
{
    return {"design.not-solved", plan::tagOf(plan, reason.element), reason.text,
            "a plan whose flows are solved: see the findings"};
}

std::optional<base::Refusal> refusalOf(const plan::Plan& plan)
{
    const std::vector<Outlet> outlets = outletsOf(plan);
    if (outlets.empty())
        return base::Refusal{"design.no-pressure-outlet", "", "no pressure run brings water into a vessel",
                             "a pump, and pressure runs from it to inlets of tanks and beds"};
    if (std::none_of(outlets.begin(), outlets.end(), [](const Outlet& outlet) { return outlet.target.has_value(); }))
        return base::Refusal{"design.no-target", "", "no inlet has a target flow",
                             "a target flow on one inlet or more, in its vessel's properties"};
    return std::nullopt;
}

class ValveSetter
{
public:
    ValveSetter(const plan::Plan& plan, const CataloguePointer& catalogue, const ValveQuestion& question,
                const base::StopToken& stop)
        : m_plan(plan), m_catalogue(catalogue), m_question(question), m_stop(stop),
          m_before(assessment::Stages(catalogue).assess(plan)), m_tasks(tasksOf(plan, catalogue))
    {
    }

    base::Outcome<ValveSetting> set()
    {
        if (m_tasks.empty()) // the site's water has no viscosity
            return base::Refusal{"design.not-solved", "", "the water at the site could not be computed",
                                 "a design water temperature between 0 and 40 degC"};
        const plan::Plan open = opened(m_plan, m_tasks);
        const Bench openBench = benchOf(open, m_catalogue);
        plan::Plan tried = open;
        for (m_setting.rounds = 1; m_setting.rounds <= mostRounds; ++m_setting.rounds) {
            m_stop.checkpoint();
            const Bench bench = benchOf(tried, m_catalogue);
            if (const auto refusal = setOnce(openBench, bench))
                return *refusal;
            const bool same = m_rounds > 0 && missOf(bench) < settled;
            ++m_rounds;
            plan::Plan next = changed(open);
            if (same || next == tried)
                break;
            tried = std::move(next);
        }
        m_setting.rounds = m_rounds;
        return offer(changed(open));
    }

private:
    // Valves for the levels of this bench.
    std::optional<base::Refusal> setOnce(const Bench& openBench, const Bench& bench)
    {
        std::vector<CircuitSetting> settings;
        for (const CircuitTask& task : m_tasks) {
            const assessment::SolvedCircuit& circuit = bench.circuits.all[task.circuit];
            const assessment::CircuitState* state = shownState(circuit);
            if (!state)
                return notSolved(circuit.state[assessment::RunningState::most].reason(), m_plan);
            auto setting = settingFor(task, openBench, levelsIn(bench, circuit, *state), m_question, m_stop);
            if (!setting)
                return notSolved({"", "the pipe network has no solution with every valve open", {}}, m_plan);
            settings.push_back(std::move(*setting));
        }
        m_settings = std::move(settings);
        return std::nullopt;
    }

    plan::Plan changed(const plan::Plan& open) const
    {
        plan::Plan plan = open;
        for (const CircuitSetting& setting : m_settings) {
            for (const ValveOpening& valve : setting.valves)
                if (valve.after < 1.0)
                    plan = withOpening(plan, valve.valve, valve.after);
            if (setting.speed && m_question.mayChangeSpeed)
                plan = withSpeed(plan, setting.speed->pump, setting.speed->after);
        }
        return plan;
    }

    // How far the flows of a solved bench are from what the settings aim at.
    double missOf(const Bench& bench) const
    {
        double largest = 0.0;
        for (std::size_t i = 0; i < m_tasks.size(); ++i) {
            const auto* state = shownState(bench.circuits.all[m_tasks[i].circuit]);
            for (std::size_t outlet = 0; state && outlet < m_tasks[i].outlets.size(); ++outlet) {
                const CircuitOutlet& at = m_tasks[i].outlets[outlet];
                const units::Flow along = state->network.flowAlong(at.run);
                const units::Flow flow = at.outlet.side == plan::RunSide::to ? along : -along;
                largest = std::max(largest, missOf(m_settings[i].outlets[outlet], flow));
            }
        }
        return largest;
    }

    static double missOf(const OutletSetting& outlet, units::Flow flow)
    {
        return outlet.wanted > units::Flow() ? std::fabs(flow / outlet.wanted - 1.0) : 0.0;
    }

    base::Outcome<ValveSetting> offer(const plan::Plan& proposed)
    {
        const assessment::Assessment after = assessment::Stages(m_catalogue).assess(proposed);
        bool any = false;
        m_setting.state = assessment::RunningState::least;
        for (const CircuitTask& task : m_tasks)
            if (!flowOf(task.outlets.front().outlet, *after.flow, assessment::RunningState::least))
                m_setting.state = assessment::RunningState::most;
        for (const CircuitSetting& setting : m_settings) {
            takeCircuit(setting, after);
            any = any || setting.any;
        }
        if (!any)
            return nothingReached();
        if (m_setting.largestMiss > valveTolerance)
            return base::Refusal{"design.not-settled", "",
                                 "no setting was found that holds when the plan is computed afresh",
                                 "other targets, or valves set by hand"};
        m_setting.edit = editOf();
        return m_setting;
    }

    void takeCircuit(const CircuitSetting& setting, const assessment::Assessment& after)
    {
        for (OutletSetting outlet : setting.outlets) {
            for (const auto state : assessment::allRunningStates) {
                outlet.before[state] = flowOf(outlet.outlet, *m_before.flow, state);
                outlet.after[state] = flowOf(outlet.outlet, *after.flow, state);
            }
            const units::Flow flow = outlet.after[m_setting.state].value_or(units::Flow());
            m_setting.largestMiss = std::max(m_setting.largestMiss, missOf(outlet, flow));
            m_setting.asked += outlet.outlet.target.value_or(units::Flow());
            m_setting.reached += std::min(outlet.outlet.target.value_or(units::Flow()), flow);
            m_setting.outlets.push_back(outlet);
        }
        for (const ValveOpening& valve : setting.valves)
            if (valve.after < 1.0 || valve.before != valve.after)
                m_setting.valves.push_back(valve);
        m_setting.share = std::min(m_setting.share, setting.share);
        m_setting.restShare = std::min(m_setting.restShare, setting.restShare);
        m_setting.missing = std::max(m_setting.missing, setting.missing);
        if (setting.speed && !m_setting.speed)
            m_setting.speed = setting.speed;
    }

    base::Refusal nothingReached() const
    {
        std::string tags;
        for (const OutletSetting& outlet : m_setting.outlets)
            if (outlet.aim == Aim::unreachable || outlet.aim == Aim::noValve)
                tags += (tags.empty() ? "" : ", ") + plan::tagOf(m_plan, outlet.outlet.run);
        return {"design.no-target-reached", tags, "no target can be met by setting valves",
                "a pump that lifts water there, and a ball or gate valve on each branch with a target"};
    }

    std::optional<plan::Edit> editOf() const
    {
        std::vector<plan::Edit> edits;
        for (const ValveOpening& valve : m_setting.valves)
            if (valve.before != valve.after)
                edits.push_back(plan::setOpening({valve.valve}, valve.after));
        for (const CircuitSetting& setting : m_settings)
            if (setting.speed && m_question.mayChangeSpeed)
                edits.push_back(plan::setPumpSpeed({setting.speed->pump}, setting.speed->after));
        if (edits.empty())
            return std::nullopt;
        return plan::inSequence("edit.set-valves", std::move(edits));
    }

    const plan::Plan& m_plan;
    const CataloguePointer& m_catalogue;
    const ValveQuestion& m_question;
    const base::StopToken& m_stop;
    assessment::Assessment m_before;
    std::vector<CircuitTask> m_tasks;
    std::vector<CircuitSetting> m_settings; // as the tasks
    ValveSetting m_setting;
    int m_rounds = 0;
};

} // namespace

base::Outcome<ValveSetting> setValves(const plan::Plan& plan, const CataloguePointer& catalogue,
                                      const ValveQuestion& question, const base::StopToken& stop)
{
    if (const auto refusal = refusalOf(plan))
        return *refusal;
    return ValveSetter(plan, catalogue, question, stop).set();
}

units::Angle handleFromOpen(double opening) { return units::degrees(90.0 * (1.0 - opening)); }

} // namespace sumpwright::design
