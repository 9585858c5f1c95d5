// What the tests of this room share: manifolds with valves and targets, and flows read from a fresh assessment.
#pragma once

#include <gtest/gtest.h>

#include "core/assessment/stages.hpp"
#include "core/design/valve_setting.hpp"
#include "tests/support/manifolds.hpp"

namespace sumpwright::test
{

using assessment::RunningState;

inline const design::CataloguePointer& builtIn()
{
    static const design::CataloguePointer catalogue = catalogue::Catalogue::builtIn();
    return catalogue;
}

inline assessment::Assessment assess(const plan::Plan& plan) { return assessment::Stages(builtIn()).assess(plan); }

inline double flowOf(const plan::Plan& plan, Id run, RunningState state = RunningState::least) // L/h
{
    const assessment::Assessment result = assess(plan);
    const auto& flow = assessment::find(result.flow->runs, run)->flow[state];
    EXPECT_TRUE(flow.ok()) << (flow.ok() ? "" : flow.reason().text);
    return flow.ok() ? units::inLitresPerHour(flow->flow) : -1e9;
}

inline void setTarget(DrawnPlan& drawn, Id vessel, Id inlet, double litresPerHour)
{
    drawn.changePort(vessel, inlet, [&](plan::Port& port) { port.targetFlow = units::litresPerHour(litresPerHour); });
}

inline plan::Plan applied(const plan::Plan& plan, const std::optional<plan::Edit>& edit)
{
    if (!edit) {
        ADD_FAILURE() << "no edit to apply";
        return plan;
    }
    const auto outcome = edit->apply(plan);
    EXPECT_TRUE(outcome.ok()) << (outcome.ok() ? "" : base::oneLine(outcome.refusal()));
    return outcome.ok() ? *outcome : plan;
}

inline design::ValveSetting setValves(const DrawnPlan& drawn, design::ValveQuestion question = {})
{
    const auto outcome = design::setValves(drawn.plan, builtIn(), question);
    EXPECT_TRUE(outcome.ok()) << (outcome.ok() ? "" : base::oneLine(outcome.refusal()));
    return outcome.ok() ? *outcome : design::ValveSetting();
}

inline std::string refusedFor(const DrawnPlan& drawn)
{
    const auto outcome = design::setValves(drawn.plan, builtIn());
    return outcome.ok() ? "" : outcome.refusal().id;
}

// The manifold with a ball valve on each bed's branch: a tank that takes the rest, and four beds.
struct ValvedM1 : ManifoldM1 {
    std::vector<Id> valves;
    explicit ValvedM1(std::initializer_list<double> targets = {})
    {
        for (const Id branch : bedBranches)
            valves.push_back(drawn.valve(branch, "ball-valve", 1.0));
        std::size_t bed = 0;
        for (const double target : targets)
            aim(bed++, target);
    }
    void aim(std::size_t bed, double target) { setTarget(drawn, beds[bed], bedInlets[bed], target); }
};

// Four equal beds, each with a target and a valve of its own; no outlet takes a rest.
struct ValvedM2 : ManifoldM2 {
    std::vector<Id> valves;
    explicit ValvedM2(double target, const char* fitting = "ball-valve")
    {
        for (std::size_t i = 0; i < beds.size(); ++i) {
            valves.push_back(drawn.valve(bedBranches[i], fitting, 1.0));
            setTarget(drawn, beds[i], inlet(i), target);
        }
    }
    Id inlet(std::size_t bed) const { return std::get<plan::PortEnd>(drawn.plan.runs.find(bedBranches[bed])->to).port; }
};

} // namespace sumpwright::test
