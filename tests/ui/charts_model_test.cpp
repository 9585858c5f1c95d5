// The bar models: what the side charts show follows the results, in the person's units, and says what is missing.
#include <gtest/gtest.h>

#include "ui/charts/axis_ticks.hpp"
#include "ui/charts/models.hpp"
#include "ui/charts/signs.hpp"

namespace
{

using namespace sumpwright;
namespace text = sumpwright::ui::text;
using assessment::WaterState;

text::DisplaySettings plainDisplay() { return {}; }

struct Case {
    assessment::Assessment results;
    base::Id tank{1};
    base::Id sump{2};

    Case()
    {
        plan::Vessel fishTank;
        fishTank.id = tank;
        fishTank.tag = "T1";
        plan::Vessel sumpVessel;
        sumpVessel.id = sump;
        sumpVessel.tag = "S1";
        sumpVessel.kind = plan::VesselKind::sump;
        results.plan.vessels = results.plan.vessels.with(fishTank).with(sumpVessel);
    }

    void setWater(double tankLitres, double sumpLitres, double pipeLitres)
    {
        assessment::WaterResult water;
        for (const auto& [id, volume] : {std::pair{tank, tankLitres}, std::pair{sump, sumpLitres}}) {
            assessment::VesselResult vessel;
            vessel.id = id;
            for (const auto state : assessment::allWaterStates) {
                assessment::VesselWater held;
                held.volume = units::litres(volume);
                vessel.water[state] = held;
            }
            water.vessels.push_back(vessel);
        }
        for (const auto state : assessment::allWaterStates) {
            assessment::WaterTotal total;
            total.inVessels = units::litres(tankLitres + sumpLitres);
            total.inPipes = units::litres(pipeLitres);
            water.totals[state] = total;
        }
        results.water = std::make_shared<const assessment::WaterResult>(water);
    }

    void setPumpStop(double roomLitres, double spilledLitres)
    {
        assessment::PumpStop stop;
        stop.roomLeft = units::litres(roomLitres);
        stop.spilled = units::litres(spilledLitres);
        assessment::SumpResult result;
        result.id = sump;
        result.pumpStop = stop;
        results.sumps = std::make_shared<const assessment::SumpResults>(assessment::SumpResults{{result}});
    }
};

double rowSum(const ui::charts::BarModel& model, int row)
{
    double sum = 0.0;
    for (const auto& segment : model.segments)
        if (segment.row == row)
            sum += segment.value;
    return sum;
}

TEST(WaterChart, BarsOfAStateSumToAllTheWater)
{
    Case plan;
    plan.setWater(2000.0, 700.0, 30.0);
    const auto model = ui::charts::waterModel(plan.results, plainDisplay());
    ASSERT_EQ(model.rows.size(), 3);
    for (int row = 0; row < 3; ++row)
        EXPECT_NEAR(rowSum(model, row), 2730.0, 1e-9);
    EXPECT_EQ(model.table.rows.size(), model.segments.size());
}

TEST(WaterChart, SpeaksOfTheSpillWhenTheSumpDoesNotHoldIt)
{
    Case plan;
    plan.setWater(2000.0, 700.0, 30.0);
    plan.setPumpStop(120.0, 0.0);
    EXPECT_TRUE(ui::charts::waterModel(plan.results, plainDisplay()).sentence.contains(QStringLiteral("room for 120")));
    plan.setPumpStop(-45.0, 45.0);
    EXPECT_TRUE(ui::charts::waterModel(plan.results, plainDisplay()).sentence.contains(QStringLiteral("spills 45")));
}

TEST(WaterChart, ShowsUsGallonsToWhoWantsThem)
{
    Case plan;
    plan.setWater(3785.411784, 0.0, 0.0); // 1000 US gal, NIST SP 811
    text::DisplaySettings us;
    us.system = units::UnitSystem::us;
    const auto model = ui::charts::waterModel(plan.results, us);
    EXPECT_NEAR(rowSum(model, 0), 1000.0, 1e-9);
    EXPECT_TRUE(model.axisTitle.contains(QStringLiteral("US gal")));
}

TEST(WaterChart, SaysWhatIsMissingInsteadOfDrawing)
{
    Case plan;
    const auto model = ui::charts::waterModel(plan.results, plainDisplay());
    EXPECT_TRUE(model.rows.isEmpty());
    EXPECT_TRUE(model.sentence.contains(QStringLiteral("not computed"), Qt::CaseInsensitive));
}

TEST(HeadChart, StepsOfThePathSumToThePumpHead)
{
    Case plan;
    assessment::HeadPath path;
    path.vessel = plan.tank;
    path.pumpHead = units::metresHead(2.1);
    using Kind = assessment::HeadStepKind;
    path.steps = {{Kind::lift, plan.tank, 0, units::metresHead(1.2)},
                  {Kind::friction, base::Id{7}, 0, units::metresHead(0.4)},
                  {Kind::fitting, base::Id{7}, 0, units::metresHead(0.3)},
                  {Kind::friction, base::Id{8}, 0, units::metresHead(0.1)},
                  {Kind::exit, base::Id{8}, 0, units::metresHead(0.1)}};
    assessment::PumpHeadPath pump;
    pump.id = base::Id{9};
    pump.path = path;
    plan.results.headPaths = std::make_shared<const assessment::HeadPaths>(assessment::HeadPaths{{pump}});
    const auto model = ui::charts::headModel(plan.results, plainDisplay());
    ASSERT_EQ(model.rows.size(), 3); // lift, and one row a run
    EXPECT_NEAR(rowSum(model, 0) + rowSum(model, 1) + rowSum(model, 2), 2.1, 1e-9);
    EXPECT_NEAR(rowSum(model, 1), 0.7, 1e-9);
}

TEST(HeadChart, SumsTheRunsThatTakeLeastInOneRowWhenTheWayHasMany)
{
    Case plan;
    assessment::HeadPath path;
    path.vessel = plan.tank;
    path.pumpHead = units::metresHead(2.1);
    using Kind = assessment::HeadStepKind;
    path.steps = {{Kind::lift, plan.tank, 0, units::metresHead(0.001)}};
    for (int run = 1; run <= 20; ++run) { // run 1 takes most
        path.steps.push_back({Kind::friction, base::Id{100u + run}, 0, units::metresHead(0.4 / run)});
        path.steps.push_back({Kind::fitting, base::Id{100u + run}, 0, units::metresHead(0.1 / run)});
    }
    assessment::PumpHeadPath pump;
    pump.id = base::Id{9};
    pump.path = path;
    plan.results.headPaths = std::make_shared<const assessment::HeadPaths>(assessment::HeadPaths{{pump}});
    const auto model = ui::charts::headModel(plan.results, plainDisplay());
    ASSERT_EQ(model.rows.size(), 12);
    EXPECT_NEAR(rowSum(model, 0), 0.001, 1e-9) << "the lift is named however little it is";
    EXPECT_NEAR(rowSum(model, 10), 0.05, 1e-9) << "run 10 is the last with a row of its own";
    double others = 0.0;
    for (int run = 11; run <= 20; ++run)
        others += 0.5 / run;
    EXPECT_NEAR(rowSum(model, 11), others, 1e-9);
    EXPECT_TRUE(model.rows.last().contains(QStringLiteral("10"))) << model.rows.last().toStdString();
    EXPECT_EQ(model.table.rows.size(), 41u) << "the numbers saved name every run";
}

TEST(FloorChart, NeverSaysAFloorIsSafeAndAlwaysDefersToAnEngineer)
{
    Case plan;
    assessment::FloorResult floor;
    assessment::VesselLoad load;
    load.id = plan.tank;
    assessment::Load heavy;
    heavy.underFootprint = units::groundKilopascals(9.807);
    heavy.weight = units::newtons(10400.0);
    load.load = {heavy, heavy};
    floor.vessels = {load};
    assessment::FloorTotal total;
    total.weight = heavy.weight;
    total.worstFootprint = heavy.underFootprint;
    total.worstVessel = plan.tank;
    floor.total = {total, total};
    plan.results.floor = std::make_shared<const assessment::FloorResult>(floor);
    const auto model = ui::charts::floorModel(plan.results, plainDisplay());
    EXPECT_TRUE(model.sentence.contains(QStringLiteral("structural engineer")));
    EXPECT_FALSE(model.sentence.contains(QStringLiteral("safe"), Qt::CaseInsensitive));
    EXPECT_FALSE(model.limit.has_value()); // until a use is chosen
    ASSERT_EQ(model.segments.size(), 2u);
    EXPECT_NEAR(model.segments[0].value, 9.807, 1e-9);
}

TEST(VitalSigns, AreAbsentUntilComputedAndSayHowMuchWorse)
{
    Case plan;
    auto signs = ui::charts::signsOf(plan.results, nullptr, plainDisplay());
    ASSERT_EQ(signs.size(), 1u); // the findings alone
    plan.setWater(2000.0, 700.0, 30.0);
    plan.setPumpStop(100.0, 0.0);
    Case before = plan;
    before.setPumpStop(112.0, 0.0);
    signs = ui::charts::signsOf(plan.results, &before.results, plainDisplay());
    ASSERT_EQ(signs.size(), 3u);
    EXPECT_EQ(signs[1].id, QStringLiteral("sump"));
    EXPECT_TRUE(signs[1].worse.contains(QStringLiteral("12"))) << signs[1].worse.toStdString();
    EXPECT_TRUE(ui::charts::signsOf(before.results, &plan.results, plainDisplay())[1].worse.isEmpty());
}

TEST(VitalSigns, AreAbsentWhileThereIsNoVesselAndTheChartsSaySo)
{
    Case nothing;
    nothing.results.plan.vessels = {};
    assessment::WaterResult water;
    for (const auto state : assessment::allWaterStates)
        water.totals[state] = assessment::WaterTotal{};
    nothing.results.water = std::make_shared<const assessment::WaterResult>(water);
    assessment::FloorResult floor;
    floor.total = {assessment::FloorTotal{}, assessment::FloorTotal{}};
    nothing.results.floor = std::make_shared<const assessment::FloorResult>(floor);
    const auto signs = ui::charts::signsOf(nothing.results, nullptr, plainDisplay());
    ASSERT_EQ(signs.size(), 1u) << "no water and no load are not 0 L and 0 kN";
    EXPECT_EQ(signs[0].id, QStringLiteral("findings"));
    for (const auto& model : {ui::charts::waterModel(nothing.results, plainDisplay()),
                              ui::charts::floorModel(nothing.results, plainDisplay())}) {
        EXPECT_TRUE(model.sentence.startsWith(QStringLiteral("No vessel yet"))) << model.sentence.toStdString();
        EXPECT_TRUE(model.rows.isEmpty());
    }
}

TEST(AxisTicks, AreRoundAndCoverTheRange)
{
    for (const double most : {0.013, 0.9, 1.0, 2.1, 7.7, 49.0, 5230.0, 1e6}) {
        const auto ticks = ui::charts::ticksFor(0.0, most);
        EXPECT_GE(ticks.most, most);
        EXPECT_LT(ticks.most, most + ticks.step * 1.0001);
        EXPECT_LE((ticks.most - ticks.least) / ticks.step, 6.0 + 1e-9);
    }
    EXPECT_EQ(ui::charts::ticksFor(0.0, 0.0).most, 1.0);
}

TEST(ChartTable, WritesCommaSeparatedValuesThatReadBack)
{
    ui::charts::ChartTable table{{QStringLiteral("a,b"), QStringLiteral("c")}, {QString(), QStringLiteral("L")}, {}};
    table.rows.push_back({QStringLiteral("say \"x\""), ui::charts::ChartTable::number(0.1 + 0.2)});
    EXPECT_EQ(table.toCsv(), QStringLiteral("\"a,b\",c\r\n,L\r\n\"say \"\"x\"\"\",0.30000000000000004\r\n"));
}

} // namespace
