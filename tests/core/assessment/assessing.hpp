// What the tests of this room share: assessing a drawn plan and reading results in plain numbers.
#pragma once

#include <gtest/gtest.h>

#include "core/assessment/stages.hpp"
#include "tests/support/drawn_plan.hpp"

namespace sumpwright::test
{

using assessment::RunningState;
using assessment::WaterState;

inline assessment::Assessment assess(const DrawnPlan& drawn)
{
    return assessment::Stages(catalogue::Catalogue::builtIn()).assess(drawn.plan);
}

inline const assessment::Stage<assessment::VesselWater>& waterOf(const assessment::Assessment& result, base::Id vessel,
                                                                 WaterState state)
{
    return assessment::find(result.water->vessels, vessel)->water[state];
}

inline double levelOf(const assessment::Assessment& result, base::Id vessel, WaterState state)
{
    const auto& water = waterOf(result, vessel, state);
    EXPECT_TRUE(water.ok()) << (water.ok() ? "" : water.reason().text);
    return water.ok() ? units::inMetres(water->level) : -1e9;
}

inline double litresIn(const assessment::Assessment& result, base::Id vessel, WaterState state)
{
    const auto& water = waterOf(result, vessel, state);
    EXPECT_TRUE(water.ok()) << (water.ok() ? "" : water.reason().text);
    return water.ok() ? units::inLitres(water->volume) : -1e9;
}

inline const assessment::RunResult& runOf(const assessment::Assessment& result, base::Id run)
{
    return *assessment::find(result.flow->runs, run);
}

inline double flowOf(const assessment::Assessment& result, base::Id run, RunningState state) // L/h
{
    const auto& flow = runOf(result, run).flow[state];
    EXPECT_TRUE(flow.ok()) << (flow.ok() ? "" : flow.reason().text);
    return flow.ok() ? units::inLitresPerHour(flow->flow) : -1e9;
}

} // namespace sumpwright::test
