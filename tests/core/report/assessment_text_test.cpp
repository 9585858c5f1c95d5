// The whole assessment as JSON, held to its schema, and as text.
#include <fstream>

#include <gtest/gtest.h>

#include "core/findings/rules.hpp"
#include "core/report/assessment_text.hpp"
#include "core/units/format.hpp"
#include "tests/core/report/assessed.hpp"
#include "tests/support/json_schema.hpp"
#include "tests/support/manifolds.hpp"

namespace
{

using namespace sumpwright;
using nlohmann::json;
using test::assessed;
using test::SoundPlan;

json jsonOf(const test::DrawnPlan& drawn) { return json::parse(report::assessmentJson(assessed(drawn))); }

void expectByTheSchema(const test::DrawnPlan& drawn)
{
    static const auto schema =
        tests::JsonSchema::fromFile(SUMPWRIGHT_SOURCE "/resources/schema/assessment.schema.json");
    for (const std::string& fault : schema.faultsOf(jsonOf(drawn)))
        ADD_FAILURE() << fault;
}

TEST(AssessmentJson, KeepsItsSchemaForSoundAndSpoiltPlans)
{
    expectByTheSchema(SoundPlan().drawn);
    expectByTheSchema(test::ManifoldM1().drawn);
    expectByTheSchema(test::DrawnPlan());
    SoundPlan noLevel, dry, noPump, use, hot;
    noLevel.drawn.changeVessel(noLevel.sump, [](plan::Vessel& v) { v.runningLevel.reset(); });
    dry.drawn.changeVessel(dry.sump, [](plan::Vessel& v) { v.runningLevel = units::elevationMetres(0.1); });
    noPump.drawn.plan.pumps = noPump.drawn.plan.pumps.without(noPump.pump);
    use.drawn.changeSite([](plan::Site& site) {
        site.floorUse = "dwelling-us";
        site.altitude.reset();
    });
    hot.drawn.changeSite([](plan::Site& site) { site.designWater = units::celsius(80.0); });
    for (const SoundPlan* plan : {&noLevel, &dry, &noPump, &use, &hot})
        expectByTheSchema(plan->drawn);
}

TEST(AssessmentJson, TellsTheResultsTheAssessmentHolds)
{
    const SoundPlan plan;
    const auto result = assessed(plan.drawn);
    const json document = json::parse(report::assessmentJson(result));
    const json& duty = document.at("pumps").at(0).at("duty").at("least");
    const auto& held = result.pumps->pumps.front().duty[assessment::RunningState::least];
    EXPECT_EQ(duty.at("status"), "solved");
    EXPECT_EQ(duty.at("flow").at("value").get<double>(), units::inCubicMetresPerSecond(held->flow));
    EXPECT_EQ(duty.at("flow").at("unit"), "m3/s");
    EXPECT_EQ(duty.at("working").at("worksheet"), "pump-duty");
    EXPECT_EQ(duty.at("power").at("cost_per_year").at("unit"), "EUR");
    EXPECT_EQ(document.at("vessels").size(), 4U);
    EXPECT_EQ(document.at("runs").size(), 8U);
    const json& stop = document.at("sumps").at(0).at("pump_stop");
    double sum = stop.at("start_volume").at("value");
    for (const json& part : stop.at("contributions"))
        sum += part.at("volume").at("value").get<double>();
    EXPECT_NEAR(sum, stop.at("volume").at("value").get<double>(), 1e-12);
    double head = 0.0;
    for (const json& step : document.at("pumps").at(0).at("head_path").at("steps"))
        head += step.at("head").at("value").get<double>();
    EXPECT_NEAR(head, duty.at("head").at("value").get<double>(), 1e-9);
    EXPECT_EQ(document.at("findings").size(), result.findings->list.size());
}

TEST(AssessmentJson, TellsBothEndsOfTheYearAndTheTextDoesToo)
{
    SoundPlan plan;
    plan.drawn.changeSite([](plan::Site& site) {
        site.coldestWater = units::celsius(4.0);
        site.warmestWater = units::celsius(29.0);
    });
    const auto result = assessed(plan.drawn);
    const json document = json::parse(report::assessmentJson(result));
    const json& season = document.at("pumps").at(0).at("season");
    const auto& held = result.season->pumps.front().duty[assessment::YearEnd::fouledCold];
    EXPECT_EQ(season.at("fouled_cold").at("flow").at("value").get<double>(), units::inCubicMetresPerSecond(held->flow));
    EXPECT_NEAR(season.at("fouled_cold").at("water_temperature").at("value").get<double>(), 4.0, 1e-9);
    EXPECT_EQ(season.at("new_warm").at("working").at("worksheet"), "pump-duty");
    int pressure = 0;
    for (const json& run : document.at("runs"))
        if (run.at("service") == "pressure") {
            EXPECT_GT(run.at("season").at("new_warm").at("value").get<double>(), 0.0);
            ++pressure;
        } else {
            EXPECT_FALSE(run.contains("season"));
        }
    EXPECT_EQ(pressure, 5);
    const std::string text = report::assessmentLines(result);
    for (const std::string& piece : {std::string("fouled pipes and water of "), units::format(held->flow)})
        EXPECT_NE(text.find(piece), std::string::npos) << piece;
}

TEST(AssessmentJson, SaysWhyAStageIsMissing)
{
    SoundPlan plan;
    plan.drawn.changeVessel(plan.sump, [](plan::Vessel& v) { v.runningLevel = units::elevationMetres(0.1); });
    plan.drawn.changeSite([](plan::Site& site) { site.altitude.reset(); });
    const json document = jsonOf(plan.drawn);
    EXPECT_EQ(document.at("site").at("air_pressure").at("message"), "not computed: altitude missing");
    const json& least = document.at("water").at("running_least");
    EXPECT_EQ(least.at("status"), "not solved");
    EXPECT_EQ(least.at("reason_id"), "sump-runs-dry");
    EXPECT_EQ(least.at("element").at("id"), plan.sump.number);
    EXPECT_EQ(document.at("water").at("running_most").at("status"), "solved");
}

TEST(AssessmentLines, TellWhatAPractitionerReadsAloud)
{
    SoundPlan plan;
    plan.drawn.changeSite([](plan::Site& site) {
        site.name = "Shed";
        site.altitude.reset();
    });
    const std::string text = report::assessmentLines(assessed(plan.drawn));
    for (const char* piece :
         {"Plan Shed", "air pressure not computed: altitude missing", "fish tank V", "where the head goes", "room left",
          "all, to the rim", "Findings", "nothing about what the floor can carry", "common practice, no source"})
        EXPECT_NE(text.find(piece), std::string::npos) << piece << '\n' << text;
    for (const char* piece : {"nan", "inf ", "-0.000"})
        EXPECT_EQ(text.find(piece), std::string::npos) << piece;
}

} // namespace
