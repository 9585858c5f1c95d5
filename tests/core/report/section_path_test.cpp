// The section along the water's way against geometry worked out by hand.
#include <gtest/gtest.h>

#include "core/report/section_path.hpp"
#include "tests/core/report/assessed.hpp"

using namespace sumpwright;
using report::FallVerdict;
using report::SectionPath;
using report::WayChoice;

namespace
{

double m(units::Length length) { return units::inMetres(length); }
double m(units::Elevation level) { return units::inMetres(level); }

struct Sectioned : test::SoundPlan {
    SectionPath toTank(const assessment::Assessment* results = nullptr) const
    {
        return report::sectionOf(drawn.plan, results, catalogue::Catalogue::builtIn().get(), {pump, tank, tankInlet})
            .value();
    }
    const report::Fall& fall(const SectionPath& path, base::Id run) const
    {
        return std::find_if(path.runs.begin(), path.runs.end(), [run](const auto& r) { return r.id == run; })
            ->falls.at(0);
    }
    void drainTo(double level) // of the drain's end, at the sump
    {
        drawn.changeRun(tankDrain, [level](plan::Run& run) { run.vertices[2].level = units::elevationMetres(level); });
    }
};

} // namespace

TEST(WaterWay, LeadsFromThePumpToTheOutletAndBackToTheSump)
{
    const Sectioned sound;
    const auto way = report::wayOf(sound.drawn.plan, nullptr,
                                   {sound.pump, sound.bed2, sound.drawn.plan.vessels.find(sound.bed2)->ports[0].id});
    ASSERT_TRUE(way);
    EXPECT_EQ(way->source, sound.sump);
    EXPECT_EQ(way->lift, (std::vector<report::WayRun>{{sound.riser}, {sound.header}, {sound.branch2}}));
    ASSERT_EQ(way->stops.size(), 2U);
    EXPECT_EQ(way->stops[0].vessel, sound.bed2);
    EXPECT_EQ(way->stops[0].onward, (std::vector<report::WayRun>{{sound.drain2}}));
    EXPECT_EQ(way->stops[1].vessel, sound.sump);
    EXPECT_TRUE(way->closed);
}

TEST(WaterWay, OffersEveryOutletOfThePumpNearestFirst)
{
    const Sectioned sound;
    const auto ways = report::waysOf(sound.drawn.plan, nullptr);
    ASSERT_EQ(ways.size(), 3U);
    EXPECT_EQ(ways[0], (WayChoice{sound.pump, sound.tank, sound.tankInlet}));
}

TEST(WaterWay, UsuallyTakesTheWorstPathOfThePump)
{
    const Sectioned sound;
    const auto results = test::assessed(sound.drawn);
    const auto* worst = assessment::find(results.headPaths->pumps, sound.pump);
    ASSERT_TRUE(worst && worst->path);
    const auto usual = report::usualWay(sound.drawn.plan, &results);
    ASSERT_TRUE(usual);
    EXPECT_EQ(usual->vessel, worst->path->vessel);
    EXPECT_EQ(report::usualWay(sound.drawn.plan, nullptr)->vessel, sound.tank); // without results: the nearest
    EXPECT_FALSE(report::usualWay(test::DrawnPlan().plan, nullptr));
}

TEST(WaterWay, FollowsRunsDrawnAgainstTheWater)
{
    Sectioned sound;
    for (const base::Id id : {sound.riser, sound.tankDrain})
        sound.drawn.changeRun(id, [](plan::Run& run) {
            std::swap(run.from, run.to);
            std::reverse(run.vertices.begin(), run.vertices.end());
        });
    const SectionPath path = sound.toTank();
    EXPECT_EQ(path.way.lift.front(), (report::WayRun{sound.riser, false}));
    EXPECT_EQ(path.way.stops[0].onward.front(), (report::WayRun{sound.tankDrain, false}));
    EXPECT_NEAR(m(path.runs[0].centre.front().level), 0.1, 1e-12); // still from the pump on
    EXPECT_EQ(path.runs[0].vertices.front(), 2U);
    EXPECT_EQ(sound.fall(path, sound.tankDrain).verdict, FallVerdict::falls);
}

TEST(WaterWay, StopsWhereNothingLeadsOn)
{
    Sectioned sound;
    sound.drawn.plan.runs = sound.drawn.plan.runs.without(sound.tankDrain);
    const SectionPath path = sound.toTank();
    EXPECT_EQ(path.way.stops.size(), 1U);
    EXPECT_FALSE(path.way.closed);
    EXPECT_EQ(path.vessels.size(), 2U);
}

TEST(WaterWay, IsNotThereWhereNoRunJoinsThePumpToTheOutlet)
{
    Sectioned sound;
    sound.drawn.plan.runs = sound.drawn.plan.runs.without(sound.tankBranch);
    EXPECT_FALSE(report::wayOf(sound.drawn.plan, nullptr, {sound.pump, sound.tank, sound.tankInlet}));
    EXPECT_FALSE(report::wayOf(sound.drawn.plan, nullptr, {sound.pump, base::Id{9999}, sound.tankInlet}));
    EXPECT_FALSE(report::wayOf(sound.drawn.plan, nullptr, {base::Id{9999}, sound.tank, sound.tankInlet}));
}

TEST(SectionPath, UnrollsTheLengthInPlan)
{
    const Sectioned sound;
    const SectionPath path = sound.toTank();
    ASSERT_EQ(path.runs.size(), 3U);
    EXPECT_NEAR(m(path.runs[0].centre[1].along), 0.0, 1e-12); // the riser takes none
    EXPECT_NEAR(m(path.runs[0].centre.back().along), 1.2, 1e-12);
    EXPECT_NEAR(m(path.runs[1].centre.back().along), 2.5, 1e-12);
    EXPECT_NEAR(m(path.runs[2].centre.front().along), 2.8, 1e-12); // 0.3 m from inlet to lip
    EXPECT_NEAR(m(path.runs[2].centre.back().along), 5.2, 1e-12);
}

TEST(SectionPath, CutsVesselsAlongThePipesThroughThem)
{
    const Sectioned sound;
    const SectionPath path = sound.toTank();
    ASSERT_EQ(path.vessels.size(), 3U);
    EXPECT_NEAR(m(path.vessels[0].profile.left), -0.406, 1e-9); // the pump stands in the middle, the riser leads to +y
    EXPECT_NEAR(m(path.vessels[0].profile.right), 0.406, 1e-9);
    EXPECT_NEAR(m(path.vessels[1].profile.left), 2.5 - 0.606, 1e-9);
    EXPECT_NEAR(m(path.vessels[1].profile.right), 2.8 + 0.606, 1e-9);
    EXPECT_NEAR(m(path.vessels[2].profile.left), 5.2 - 0.306, 1e-9); // entered 0.1 m behind its middle, from +y
    EXPECT_NEAR(m(path.vessels[2].profile.right), 5.2 + 0.506, 1e-9);
    EXPECT_FALSE(path.vessels[0].again);
    EXPECT_TRUE(path.vessels[2].again);
    ASSERT_EQ(path.vessels[1].profile.ports.size(), 2U);
    EXPECT_NEAR(m(path.vessels[1].profile.ports[1].along), 2.8, 1e-12);
}

TEST(SectionPath, WritesInvertsAndFall)
{
    const Sectioned sound;
    const SectionPath path = sound.toTank();
    const report::Fall& fall = sound.fall(path, sound.tankDrain);
    EXPECT_EQ(fall.leg, 1U); // after the drop
    EXPECT_NEAR(m(fall.length), 2.4, 1e-12);
    EXPECT_NEAR(m(fall.drop), 0.05, 1e-12);
    const double bore = m((*catalogue::Catalogue::builtIn()->pipe("pvcu-pn16-75"))->bore);
    EXPECT_NEAR(m(fall.invertStart), 0.6 - bore / 2.0, 1e-12);
    EXPECT_NEAR(m(fall.invertEnd), 0.55 - bore / 2.0, 1e-12);
    EXPECT_EQ(fall.verdict, FallVerdict::falls);
    EXPECT_EQ(m(fall.missing), 0.0);
}

TEST(SectionPath, SaysWhatALegThatRisesWants)
{
    Sectioned sound;
    sound.drainTo(0.72); // 120 mm up over 2.4 m; at 1 in 100 it should fall 24 mm
    const SectionPath path = sound.toTank();
    EXPECT_EQ(sound.fall(path, sound.tankDrain).verdict, FallVerdict::rises);
    EXPECT_NEAR(m(sound.fall(path, sound.tankDrain).missing), 0.144, 1e-9);
}

TEST(SectionPath, TellsALittleFallFromNone)
{
    Sectioned sound;
    sound.drainTo(0.59); // 10 mm over 2.4 m
    const SectionPath path = sound.toTank();
    EXPECT_EQ(sound.fall(path, sound.tankDrain).verdict, FallVerdict::little);
    EXPECT_NEAR(m(sound.fall(path, sound.tankDrain).missing), 0.014, 1e-9);
}

TEST(SectionPath, SaysHowFarTheWaterBelowStandsAboveTheOutlet)
{
    Sectioned sound;
    sound.drawn.changePort(sound.tank, sound.tankLip,
                           [](plan::Port& port) { port.level = units::elevationMetres(0.30); });
    sound.drawn.changeRun(sound.tankDrain, [](plan::Run& run) {
        run.vertices[0].level = units::elevationMetres(0.30);
        run.vertices[1].level = units::elevationMetres(0.28);
        run.vertices[2].level = units::elevationMetres(0.20);
    });
    const auto results = test::assessed(sound.drawn);
    const SectionPath path = sound.toTank(&results);
    ASSERT_TRUE(path.vessels[2].profile.water.most);
    ASSERT_TRUE(path.vessels[2].drowns);
    EXPECT_NEAR(m(*path.vessels[2].drowns), m(*path.vessels[2].profile.water.most) - 0.30, 1e-12);
    EXPECT_FALSE(path.vessels[1].drowns);
    EXPECT_FALSE(Sectioned().toTank(&results).vessels[1].drowns);
}

TEST(SectionPath, MarksItsHighestPoint)
{
    const SectionPath path = Sectioned().toTank();
    ASSERT_TRUE(path.highest);
    EXPECT_NEAR(m(path.highest->level), 1.2, 1e-12);
    EXPECT_NEAR(m(path.high.level), 1.2, 1e-12);
    EXPECT_NEAR(m(path.low.along), -0.406, 1e-9);
}

TEST(SectionPath, OfABedRightAboveTheSumpStaysFinite)
{
    test::DrawnPlan drawn;
    const auto sump = drawn.sump({0, 0, 0}, 1.0, 1.0, 0.5, 0.3);
    const auto bed = drawn.vessel(plan::VesselKind::mediaBed, {0, 0, 1.0}, 1.0, 1.0, 0.3);
    const auto inlet = drawn.port(bed, plan::PortKind::inlet, {0, 0, 1.4});
    const auto pump = drawn.pump(sump, "G4500", 0.1);
    drawn.run(plan::Service::pressure, "pvcu-pn16-25", plan::PumpEnd{pump}, plan::PortEnd{bed, inlet, {}},
              {{0, 0, 0.1}, {0, 0, 1.4}});
    drawn.drain(bed, sump, {0.2, 0, 1.2}, 0.03, {0.2, 0, 0.4});
    const auto path = report::sectionOf(drawn.plan, nullptr, nullptr, {pump, bed, inlet});
    ASSERT_TRUE(path);
    EXPECT_NEAR(m(path->vessels[1].profile.left), -0.506, 1e-9);
    EXPECT_NEAR(m(path->vessels[1].profile.right), 0.506, 1e-9);
    EXPECT_NEAR(m(path->runs.back().centre.back().along), 0.2, 1e-12);
}
