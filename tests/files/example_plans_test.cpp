// The example plans: they load, hold water, carry no error, and agree with a count and an arithmetic made by hand from
// the drawing of the community shed (places and levels as drawn, metres).
#include <cmath>
#include <fstream>
#include <iostream>
#include <sstream>

#include <gtest/gtest.h>

#include "core/engine/engine.hpp"
#include "core/storage/plan_text.hpp"

namespace
{

using namespace sumpwright;
using assessment::RunningState;

plan::Plan example(const std::string& name)
{
    std::ifstream file(std::string(SUMPWRIGHT_SOURCE) + "/resources/examples/" + name, std::ios::binary);
    std::stringstream text;
    text << file.rdbuf();
    const auto loaded = storage::loadText(text.str());
    EXPECT_TRUE(loaded.ok()) << (loaded.ok() ? "" : base::oneLine(loaded.refusal()));
    if (!loaded.ok())
        return {};
    EXPECT_EQ(storage::saveText(loaded->plan), text.str()) << "saving what was loaded gives other bytes";
    return loaded->plan;
}

std::shared_ptr<const assessment::Assessment> assessed(const plan::Plan& plan)
{
    return engine::assess(plan, catalogue::Catalogue::builtIn());
}

TEST(ExamplePlans, CarryNoErrorAndNoWarning)
{
    for (const char* name : {"community_shed.sumpwright", "back_garden.sumpwright"}) {
        const auto results = assessed(example(name));
        for (const auto& finding : results->findings->list)
            EXPECT_EQ(finding.severity, assessment::Severity::note) << name << ": " << finding.id;
        EXPECT_TRUE(results->water->totals[assessment::WaterState::runningLeast].ok()) << name;
        ASSERT_EQ(results->pumps->pumps.size(), 1u) << name;
        EXPECT_TRUE(results->pumps->pumps[0].duty[RunningState::least].ok()) << name;
    }
}

// What arrives in the sump is what its pump gives, and is pumped out of it: no rounding of the two is left as a flow.
TEST(ExamplePlans, TellWhatComesIntoTheSumpAndWhatItsPumpTakes)
{
    for (const char* name : {"community_shed.sumpwright", "back_garden.sumpwright"}) {
        const plan::Plan plan = example(name);
        const auto results = assessed(plan);
        for (const auto& vessel : plan.vessels)
            if (vessel->kind == plan::VesselKind::sump)
                for (const auto state : {RunningState::least, RunningState::most}) {
                    const auto* sump = assessment::find(results->water->vessels, vessel->id);
                    ASSERT_TRUE(sump->inflow[state].ok() && sump->pumpedOut[state].ok()) << name;
                    const double pumped = units::inLitresPerHour(results->pumps->pumps[0].duty[state]->flow);
                    EXPECT_GT(pumped, 1000.0) << name;
                    EXPECT_NEAR(units::inLitresPerHour(*sump->inflow[state]), pumped, 1e-6 * pumped) << name;
                    EXPECT_NEAR(units::inLitresPerHour(*sump->pumpedOut[state]), pumped, 1e-6 * pumped) << name;
                    EXPECT_EQ(units::inLitresPerHour(*sump->leftOver(state)), 0.0) << name;
                }
    }
}

// Counted on the drawing. Bends: pressure 16 (main 5, south header 4, tank branch 3, four bed branches 1 each); gravity
// 9 (north collector 4, south collector 3, overflow 1, emergency overflow 1). Tees: 6 on the pressure side, 4 on the
// collectors. Valves: one before each of six beds, one before the tank.
TEST(ExamplePlans, CommunityShedHasTheFittingsCountedByHand)
{
    const plan::Plan plan = example("community_shed.sumpwright");
    std::size_t pressureBends = 0;
    std::size_t gravityBends = 0;
    std::size_t valves = 0;
    for (const auto& run : plan.runs) {
        (run->service == plan::Service::pressure ? pressureBends : gravityBends) += plan::bendsOf(*run).size();
        valves += run->valves.size();
    }
    EXPECT_EQ(pressureBends, 16u);
    EXPECT_EQ(gravityBends, 9u);
    EXPECT_EQ(plan.tees.size(), 10u);
    EXPECT_EQ(valves, 7u);
}

// Pump stopped, by hand: the sump stands at -0.220 m with all beds drained; what comes down is the water over the
// tank's lip, the pressure pipes above that level, and half the gravity pipes. Bores: 45.2, 36.2, 28.4 and 21.2 mm as
// DIN 8062 has them, 69 and 44 mm waste pipe.
TEST(ExamplePlans, CommunityShedStopsAtTheLevelOfHandArithmetic)
{
    const plan::Plan plan = example("community_shed.sumpwright");
    const auto results = assessed(plan);
    ASSERT_EQ(results->sumps->sumps.size(), 1u);
    const auto& stop = results->sumps->sumps[0].pumpStop;
    ASSERT_TRUE(stop.ok());
    const double pi = std::acos(-1.0);
    const auto litresPerMetre = [pi](double bore) { return pi / 4.0 * bore * bore * 1000.0; };
    const auto* tank = assessment::find(results->water->vessels, plan.vessels.begin()->get()->id);
    const double overLip = units::inMetres(tank->water[assessment::WaterState::runningMost]->level) - 0.95;
    const double lip = pi / 4.0 * 1.988 * 1.988 * overLip * 1000.0;
    // main: 0.16 m of riser above -0.22, 0.55 to the first tee, 2.7 to the second; north 1.25 + 0.94 + 1.45 + 1.7,
    // south 1.15 + 0.94 + 1.45 + 1.7, tank branch 0.15 + 1.26 + 0.3 + 0.18; beds 4 x (0.37 + 0.08), 2 x 2.15
    const double pressure = 3.41 * litresPerMetre(0.0452) + (3.64 + 1.7 + 3.54 + 1.7 + 1.89) * litresPerMetre(0.0362) +
                            4.30 * litresPerMetre(0.0272) + 1.80 * litresPerMetre(0.0212);
    // collectors 4.30 + 2.47 + 1.70 and 2.90 + 2.47 + 1.70, overflow 2.56; the emergency overflow carries nothing and
    // holds nothing; drops of 44 mm 3.22
    const double gravity = 0.5 * (18.10 * litresPerMetre(0.069) + 3.216 * litresPerMetre(0.044));
    const double area = 1.988 * 1.488;
    const double level = -0.22 + (lip + pressure + gravity) / 1000.0 / area;
    std::cout << "over the lip " << lip << " L, pressure pipes " << pressure << " L, gravity pipes " << gravity
              << " L, level " << level << " m\n";
    EXPECT_NEAR(units::inMetres(stop->level), level, 0.0005);
}

} // namespace
