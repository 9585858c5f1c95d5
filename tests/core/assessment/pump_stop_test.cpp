// What comes down when the pump stops, against hand arithmetic that is printed with the test.
#include <cmath>
#include <iostream>

#include "core/hydraulics/overflow.hpp"
#include "tests/core/assessment/assessing.hpp"
#include "tests/support/sound_plan.hpp"

namespace
{

using namespace sumpwright;
using namespace sumpwright::test;
using assessment::ComesDown;

assessment::PumpStop stopOf(const assessment::Assessment& result, base::Id sump)
{
    const auto& stop = assessment::find(result.sumps->sumps, sump)->pumpStop;
    EXPECT_TRUE(stop.ok()) << (stop.ok() ? "" : stop.reason().text);
    return *stop;
}

double litresOf(const assessment::PumpStop& stop, ComesDown kind, base::Id element)
{
    double sum = 0.0;
    for (const auto& part : stop.contributions)
        if (part.kind == kind && part.element == element)
            sum += units::inLitres(part.volume);
    return sum;
}

double bore(double metres) { return units::pi / 4.0 * metres * metres * 1000.0; } // L per m

// By hand for the sound plan, all in litres; the sump stands at 0.35 when the pump stops.
struct HandArithmetic {
    double start = 1.0 * 0.8 * (0.35 - 0.006) * 1000.0;
    double tankOverLip;
    double riser = bore(0.0340) * ((1.2 - 0.35) + 1.2); // upright from 0.35 to 1.20, then level
    double tankBranch = bore(0.0272) * (1.3 + 0.2);
    double header = bore(0.0272) * 2.0;
    double branch1 = bore(0.0212) * (0.8 + 0.1);
    double branch2 = bore(0.0212) * (0.9 + 0.1);
    double tankDrain = 0.5 * bore(0.0638) * ((0.8 - 0.6) + std::hypot(0.0, 2.4, 0.05));
    double drain1 = 0.5 * bore(0.0426) * ((0.956 - 0.6) + std::hypot(1.4, 0.4, 0.05));
    double drain2 = 0.5 * bore(0.0426) * ((0.956 - 0.6) + std::hypot(1.4, 2.2, 0.05));

    explicit HandArithmetic(double headOverLip) : tankOverLip(1.2 * 1.2 * headOverLip * 1000.0) {}
    double all() const
    {
        return start + tankOverLip + riser + tankBranch + header + branch1 + branch2 + tankDrain + drain1 + drain2;
    }
    void print(std::ostream& out) const
    {
        out << "by hand: sump at 0.35 m holds " << start << " L\n  + tank over its lip " << tankOverLip
            << "\n  + riser " << riser << ", tank branch " << tankBranch << ", header " << header << ", bed branches "
            << branch1 << " and " << branch2 << "\n  + gravity runs half full " << tankDrain << ", " << drain1 << ", "
            << drain2 << "\n  = " << all() << " L, level " << 0.006 + all() / 800.0 << " m, room up to the rim "
            << 480.0 - all() << " L\n";
    }
};

TEST(PumpStop, BringsDownWhatHandArithmeticSays)
{
    const SoundPlan plan;
    const auto result = assess(plan.drawn);
    const auto& stop = stopOf(result, plan.sump);
    const HandArithmetic hand(units::inMetres(waterOf(result, plan.tank, WaterState::runningMost)->overLip));
    hand.print(std::cout);
    EXPECT_NEAR(litresOf(stop, ComesDown::overLip, plan.tank), hand.tankOverLip, 1e-9);
    EXPECT_NEAR(litresOf(stop, ComesDown::pipe, plan.riser), hand.riser, 1e-9);
    EXPECT_NEAR(litresOf(stop, ComesDown::pipe, plan.tankBranch), hand.tankBranch, 1e-9);
    EXPECT_NEAR(litresOf(stop, ComesDown::pipe, plan.header), hand.header, 1e-9);
    EXPECT_NEAR(litresOf(stop, ComesDown::gravityRun, plan.tankDrain), hand.tankDrain, 1e-9);
    EXPECT_NEAR(litresOf(stop, ComesDown::gravityRun, plan.drain2), hand.drain2, 1e-9);
    EXPECT_NEAR(units::inLitres(stop.volume), hand.all(), 1e-9);
    EXPECT_NEAR(units::inMetres(stop.level), 0.006 + hand.all() / 800.0, 1e-12);
    EXPECT_NEAR(units::inLitres(stop.roomLeft), 480.0 - hand.all(), 1e-9);
    EXPECT_EQ(units::inLitres(stop.spilled), 0.0);
    EXPECT_EQ(levelOf(result, plan.tank, WaterState::pumpStopped), 0.8);
    EXPECT_NEAR(levelOf(result, plan.sump, WaterState::pumpStopped), units::inMetres(stop.level), 1e-15);
}

TEST(PumpStop, ContributionsAddUpToWhatTheSumpHoldsAndSpills)
{
    SoundPlan plan;
    plan.drawn.changeVessel(plan.sump, [](plan::Vessel& sump) { sump.runningLevel = units::elevationMetres(0.59); });
    const auto result = assess(plan.drawn);
    const auto& stop = stopOf(result, plan.sump);
    double sum = units::inLitres(stop.startVolume);
    for (const auto& part : stop.contributions)
        sum += units::inLitres(part.volume);
    EXPECT_GT(units::inLitres(stop.spilled), 0.0);
    EXPECT_NEAR(sum, units::inLitres(stop.volume + stop.spilled), 1e-9);
    EXPECT_NEAR(units::inLitres(stop.roomLeft), -units::inLitres(stop.spilled), 1e-12);
    EXPECT_EQ(stop.level, stop.spillLevel);
    EXPECT_NEAR(units::inLitres(result.water->totals[WaterState::pumpStopped]->spilled), units::inLitres(stop.spilled),
                1e-12);
}

TEST(PumpStop, SpillsAtTheSumpsOwnOverflowWhereThatIsLowerThanTheRim)
{
    SoundPlan plan;
    plan.drawn.port(plan.sump, plan::PortKind::lip, {1.4, 1.0, 0.36}, 0.05);
    EXPECT_EQ(units::inMetres(stopOf(assess(plan.drawn), plan.sump).spillLevel), 0.36);
}

TEST(PumpStop, EmptiesAVesselThroughASubmergedInletDownToItsMouth)
{
    SoundPlan plan;
    plan.drawn.changePort(plan.tank, plan.tankInlet,
                          [](plan::Port& port) { port.level = units::elevationMetres(0.75); });
    const auto result = assess(plan.drawn);
    EXPECT_NEAR(litresOf(stopOf(result, plan.sump), ComesDown::siphonBack, plan.tank), 1.2 * 1.2 * 0.05 * 1000.0, 1e-9);
    EXPECT_NEAR(levelOf(result, plan.tank, WaterState::pumpStopped), 0.75, 1e-12);
    EXPECT_EQ(waterOf(result, plan.tank, WaterState::pumpStopped)->heldBy, assessment::HeldBy::siphonBack);
}

TEST(PumpStop, StopsTheSiphonAtTheVentHole)
{
    SoundPlan plan;
    plan.drawn.changePort(plan.tank, plan.tankInlet, [](plan::Port& port) {
        port.level = units::elevationMetres(0.2);
        port.ventLevel = units::elevationMetres(0.78);
    });
    const auto result = assess(plan.drawn);
    EXPECT_NEAR(litresOf(stopOf(result, plan.sump), ComesDown::siphonBack, plan.tank), 1.2 * 1.2 * 0.02 * 1000.0, 1e-9);
    plan.drawn.changePort(plan.tank, plan.tankInlet,
                          [](plan::Port& port) { port.ventLevel = units::elevationMetres(0.85); });
    EXPECT_EQ(litresOf(stopOf(assess(plan.drawn), plan.sump), ComesDown::siphonBack, plan.tank), 0.0);
}

TEST(PumpStop, TakesNoNonReturnValveForAGuard)
{
    SoundPlan plan;
    plan.drawn.changePort(plan.tank, plan.tankInlet,
                          [](plan::Port& port) { port.level = units::elevationMetres(0.75); });
    plan.drawn.valve(plan.riser, "swing-check", 1.0);
    EXPECT_GT(litresOf(stopOf(assess(plan.drawn), plan.sump), ComesDown::siphonBack, plan.tank), 71.9);
}

TEST(PumpStop, LetsTheSiphonEndWhereTheLevelsMeet)
{
    SoundPlan plan;
    plan.drawn.changePort(plan.tank, plan.tankInlet,
                          [](plan::Port& port) { port.level = units::elevationMetres(0.1); });
    plan.drawn.changeVessel(plan.sump, [](plan::Vessel& sump) { sump.wallHeight = units::metres(1.006); });
    const auto result = assess(plan.drawn);
    const double tank = levelOf(result, plan.tank, WaterState::pumpStopped);
    EXPECT_GT(tank, 0.5);
    EXPECT_NEAR(tank, levelOf(result, plan.sump, WaterState::pumpStopped), 1e-9);
    const double most = units::inLitres(result.water->totals[WaterState::runningMost]->all());
    EXPECT_NEAR(units::inLitres(result.water->totals[WaterState::pumpStopped]->all()), most, 1e-9 * most);
}

TEST(PumpStop, BringsDownNothingFromPipesWhenThePumpWasOff)
{
    SoundPlan plan;
    plan.drawn.changePump(plan.pump, [](plan::Pump& pump) { pump.running = false; });
    const auto result = assess(plan.drawn);
    const auto& stop = stopOf(result, plan.sump);
    EXPECT_TRUE(stop.contributions.empty());
    EXPECT_EQ(units::inMetres(stop.level), 0.35);
}

TEST(PumpStop, NamesThePumpsCoverInTheLowestState)
{
    const SoundPlan plan;
    const auto result = assess(plan.drawn);
    const auto& cover = assessment::find(result.sumps->sumps, plan.sump)->cover;
    ASSERT_TRUE(cover.ok());
    ASSERT_EQ(cover->size(), 1U);
    EXPECT_NEAR(units::inMetres(cover->front().depth), levelOf(result, plan.sump, WaterState::runningLeast) - 0.006,
                1e-12);
    ASSERT_TRUE(cover->front().needed.has_value());
    EXPECT_GT(units::inMetres(*cover->front().needed), 0.0);
}

// A tank of 1.2 m x 1.2 m that overflows only: the head over its lip by an independent integration in steps of 1 ms.
TEST(StopCourse, BringsTheTankDownOverItsLipAsTheWeirLets)
{
    const SoundPlan plan;
    const auto result = assess(plan.drawn);
    const auto stop = stopOf(result, plan.sump);
    ASSERT_TRUE(stop.course);
    const auto& points = stop.course->sump;
    ASSERT_GT(points.size(), 15U);
    EXPECT_EQ(points.front().level, stop.startLevel);
    EXPECT_LT(points.back().level, stop.level + units::metres(1e-9));
    const double area = 1.2 * 1.2, sumpArea = 1.0 * 0.8;
    double h = levelOf(result, plan.tank, WaterState::runningMost) - 0.8, time = 0.0;
    for (std::size_t i = 2; i < points.size(); i += 5) {
        for (; time < units::inSeconds(points[i].time); time += 1e-3)
            h -= 1e-3 *
                 units::inCubicMetresPerSecond(hydraulics::overflowFlow({units::millimetres(63.8)}, units::metres(h))) /
                 area;
        const double below = units::inMetres(stop.level) - units::inMetres(points[i].level);
        EXPECT_NEAR(below * sumpArea, h * area, 2e-6) << time;
    }
}

TEST(StopCourse, NeverFallsAndTellsWhenNearlyAllIsDown)
{
    const SoundPlan plan;
    const auto stop = stopOf(assess(plan.drawn), plan.sump);
    ASSERT_TRUE(stop.course);
    for (std::size_t i = 1; i < stop.course->sump.size(); ++i) {
        EXPECT_GE(stop.course->sump[i].time, stop.course->sump[i - 1].time);
        EXPECT_GE(stop.course->sump[i].level, stop.course->sump[i - 1].level - units::metres(1e-12));
    }
    EXPECT_GT(stop.course->nearlyAll, units::seconds(1.0));
    EXPECT_LT(stop.course->nearlyAll, stop.course->sump.back().time);
    EXPECT_FALSE(stop.course->spillsAfter);
}

// 1.2 m x 1.2 m of tank down to a mouth at 0.6 m, at about 2 m3/h: minutes, not seconds.
TEST(StopCourse, OfASiphonTakesAsLongAsItsWayBackLets)
{
    SoundPlan plan;
    plan.drawn.changePort(plan.tank, plan.tankInlet,
                          [](plan::Port& port) { port.level = units::elevationMetres(0.6); });
    const auto stop = stopOf(assess(plan.drawn), plan.sump);
    ASSERT_TRUE(stop.course);
    ASSERT_TRUE(stop.course->spillsAfter);
    EXPECT_GT(stop.spilled, units::litres(10.0));
    EXPECT_GT(*stop.course->spillsAfter, units::seconds(30.0));
    EXPECT_LT(*stop.course->spillsAfter, units::seconds(1800.0));
    EXPECT_NEAR(units::inMetres(stop.course->sump.back().level), units::inMetres(stop.spillLevel), 1e-9);
}

TEST(StopCourse, IsNotToldWhileThePumpIsOff)
{
    SoundPlan plan;
    plan.drawn.changePump(plan.pump, [](plan::Pump& pump) { pump.running = false; });
    EXPECT_FALSE(stopOf(assess(plan.drawn), plan.sump).course);
}

} // namespace
