// What the worksheets add to the functions they call: nothing but defaults, notes, estimates and the working.
#include <algorithm>

#include "core/floor/masses.hpp"
#include "core/hydraulics/duty_point.hpp"
#include "core/hydraulics/energy.hpp"
#include "core/hydraulics/fittings.hpp"
#include "core/hydraulics/overflow.hpp"
#include "core/nature/water.hpp"
#include "tests/core/worksheets/asking.hpp"

using namespace sumpwright;
using namespace sumpwright::units;
using tests::ask;
using tests::numberOf;

namespace
{

bool says(const worksheets::Answer& answer, const std::string& note)
{
    return std::find(answer.notes.begin(), answer.notes.end(), note) != answer.notes.end();
}

bool quotes(const worksheets::Answer& answer, const std::string& source)
{
    return std::find(answer.sources.begin(), answer.sources.end(), source) != answer.sources.end();
}

} // namespace

// To the last bit: the worksheet calls the function the plan calls.
TEST(WorksheetAnswers, AreThoseOfTheCoreBitForBit)
{
    const auto water = nature::waterAt(celsius(12.0));
    const hydraulics::StraightPipe pipe{millimetres(27.2), metres(10.0), millimetres(0.01)};
    const auto friction = ask("pipe-friction", {{"flow", "1700 L/h"},
                                                {"bore", "27.2 mm"},
                                                {"length", "10 m"},
                                                {"roughness", "0.01 mm"},
                                                {"temperature", "12 degC"}});
    ASSERT_TRUE(friction.ok());
    EXPECT_EQ(numberOf(*friction, "friction_loss"),
              inMetresHead(hydraulics::frictionLoss(pipe, litresPerHour(1700.0), water->kinematicViscosity)));

    const auto level = ask("overflow-level", {{"flow", "1700 L/h"}, {"bore", "57 mm"}});
    ASSERT_TRUE(level.ok());
    EXPECT_EQ(numberOf(*level, "level_over_lip"),
              inMetres(hydraulics::overflowLevel({millimetres(57.0)}, litresPerHour(1700.0))->predicted));

    const auto loss = ask("fitting-loss", {{"fitting", "elbow-45"}, {"bore", "27.2 mm"}, {"flow", "1700 L/h"}});
    ASSERT_TRUE(loss.ok());
    EXPECT_EQ(numberOf(*loss, "k"), hydraulics::defaultCoefficient(hydraulics::FittingKind::Elbow45));
}

TEST(WorksheetAnswers, SayWhenTheFlowIsBetweenTheLaws)
{
    const auto between = ask("friction-factor", {{"reynolds", "3000"}, {"relative_roughness", "0"}});
    ASSERT_TRUE(between.ok());
    EXPECT_EQ(tests::wordOf(*between, "regime"), "transition");
    EXPECT_TRUE(between->output("friction_factor")->estimate);
    EXPECT_TRUE(says(*between, "transition-uncertain"));
    EXPECT_TRUE(quotes(*between, "transition-cubic"));
    const auto turbulent = ask("friction-factor", {{"reynolds", "30000"}, {"relative_roughness", "0"}});
    ASSERT_TRUE(turbulent.ok());
    EXPECT_FALSE(turbulent->output("friction_factor")->estimate);
    EXPECT_TRUE(turbulent->notes.empty());
}

TEST(WorksheetAnswers, SayWhenAWallIsRougherThanTheCharts)
{
    const auto rough =
        ask("pipe-friction", {{"flow", "100 L/h"}, {"bore", "4 mm"}, {"length", "1 m"}, {"roughness", "0.3 mm"}});
    ASSERT_TRUE(rough.ok());
    EXPECT_TRUE(says(*rough, "rough-beyond-chart"));
    EXPECT_TRUE(rough->output("head_loss")->estimate);
}

TEST(WorksheetAnswers, ADefaultKIsAnEstimateAndAPublishedOneIsNot)
{
    const tests::Texts place = {{"fitting", "elbow-90"}, {"bore", "27.2 mm"}, {"flow", "1000 L/h"}};
    const auto byDefault = ask("fitting-loss", place);
    ASSERT_TRUE(byDefault.ok());
    EXPECT_TRUE(byDefault->output("k")->estimate);
    EXPECT_TRUE(quotes(*byDefault, "fitting-defaults"));
    tests::Texts hooper = place;
    hooper.push_back({"method", "hooper"});
    const auto published = ask("fitting-loss", hooper);
    ASSERT_TRUE(published.ok());
    EXPECT_FALSE(published->output("k")->estimate);
    EXPECT_TRUE(quotes(*published, "hooper-1981"));
}

TEST(WorksheetAnswers, ADefaultKOutsideItsBoresIsMarked)
{
    const auto large = ask("fitting-loss", {{"fitting", "elbow-90"}, {"bore", "110 mm"}, {"flow", "8000 L/h"}});
    ASSERT_TRUE(large.ok());
    EXPECT_TRUE(says(*large, "default-k-range"));
    const auto small = ask("fitting-loss", {{"fitting", "elbow-90"}, {"bore", "27.2 mm"}, {"flow", "1000 L/h"}});
    ASSERT_TRUE(small.ok());
    EXPECT_FALSE(says(*small, "default-k-range"));
}

TEST(WorksheetAnswers, ASpringAddsTheHeadThatHoldsItOpen)
{
    const auto spring = ask("fitting-loss", {{"fitting", "spring-check"}, {"bore", "27.2 mm"}, {"flow", "1 L/h"}});
    ASSERT_TRUE(spring.ok());
    EXPECT_NEAR(numberOf(*spring, "loss"), 0.1, 1e-4);
    EXPECT_TRUE(says(*spring, "spring-held"));
}

TEST(WorksheetAnswers, AValveThatIsOpenAddsNothingAndOneThatIsShutIsRefused)
{
    const auto valve = [](const std::string& opening) {
        return ask("fitting-loss",
                   {{"fitting", "gate-valve"}, {"bore", "27.2 mm"}, {"flow", "1000 L/h"}, {"opening", opening}});
    };
    EXPECT_DOUBLE_EQ(numberOf(*valve("1"), "k"), 0.2);
    EXPECT_FALSE(says(*valve("1"), "valve-table-metal"));
    EXPECT_TRUE(says(*valve("0.5"), "valve-table-metal"));
    EXPECT_EQ(valve("0.01").refusal().id, "worksheets.valve-closed");
    EXPECT_EQ(
        ask("fitting-loss", {{"fitting", "elbow-90"}, {"bore", "27.2 mm"}, {"flow", "1000 L/h"}, {"opening", "0.5"}})
            .refusal()
            .id,
        "worksheets.not-a-throttle");
}

TEST(WorksheetAnswers, PointsWithoutPowerLeaveThePowerOut)
{
    const auto answer = ask("pump-duty", {{"points", "0 L/h: 3.2 m; 2250 L/h: 2.2 m; 4500 L/h: 0 m;"},
                                          {"static_head", "1.2 m"},
                                          {"bore", "27.2 mm"},
                                          {"length", "6 m"}});
    ASSERT_TRUE(answer.ok()) << base::oneLine(answer.refusal());
    EXPECT_EQ(answer->output("electrical_power"), nullptr);
    EXPECT_NE(answer->output("hydraulic_power"), nullptr);
    EXPECT_TRUE(says(*answer, "pump-power-unknown"));
}

TEST(WorksheetAnswers, WithoutAPriceThereIsNoCost)
{
    const auto answer = ask("pump-energy", {{"flow", "2000 L/h"}, {"head", "1.8 m"}, {"wire_to_water", "0.25"}});
    ASSERT_TRUE(answer.ok());
    EXPECT_EQ(answer->output("cost_per_year"), nullptr);
    EXPECT_TRUE(says(*answer, "price-absent"));
}

TEST(WorksheetAnswers, ACostIsInTheCurrencyOfItsPrice)
{
    const auto answer = ask(
        "pump-energy", {{"flow", "2000 L/h"}, {"head", "1.8 m"}, {"wire_to_water", "0.25"}, {"price", "0.50 NZD/kWh"}});
    ASSERT_TRUE(answer.ok());
    EXPECT_EQ(answer->output("cost_per_year")->unit, "NZD");
    EXPECT_NEAR(numberOf(*answer, "cost_per_year"), numberOf(*answer, "energy_per_year") * 0.5, 1e-9);
}

TEST(WorksheetAnswers, AFloodedBedIsHeaviestAtItsHeaviestFilling)
{
    const auto clay = catalogue::Catalogue::builtIn()->medium("expanded-clay");
    const floor::MediumFilling heaviest{(*clay)->dryDensity.high, (*clay)->absorption.high, (*clay)->porosity.high,
                                        (*clay)->retained.high};
    const auto bed = ask("vessel-mass", {{"shape", "rectangle"},
                                         {"length", "2 m"},
                                         {"width", "1 m"},
                                         {"medium", "expanded-clay"},
                                         {"medium_depth", "0.3 m"},
                                         {"flood_depth", "0.25 m"}});
    ASSERT_TRUE(bed.ok());
    EXPECT_EQ(numberOf(*bed, "mass"),
              inKilograms(floor::bedMass(squareMetres(2.0), metres(0.3), metres(0.25), heaviest)));
    EXPECT_LT(numberOf(*bed, "drained_mass"), numberOf(*bed, "mass"));
    EXPECT_TRUE(bed->output("mass")->estimate);
    EXPECT_TRUE(says(*bed, "floor-not-judged"));
}

TEST(WorksheetAnswers, WithoutAFloodDepthTheBedIsFullToTheTopOfItsMedium)
{
    tests::Texts bed = {{"shape", "round"}, {"diameter", "1 m"}, {"medium", "gravel"}, {"medium_depth", "0.3 m"}};
    const auto implied = ask("vessel-mass", bed);
    bed.push_back({"flood_depth", "0.3 m"});
    const auto stated = ask("vessel-mass", bed);
    ASSERT_TRUE(implied.ok() && stated.ok());
    EXPECT_EQ(numberOf(*implied, "mass"), numberOf(*stated, "mass"));
}
