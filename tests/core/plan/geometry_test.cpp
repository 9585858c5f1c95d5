#include <gtest/gtest.h>

#include "core/plan/run_ends.hpp"
#include "core/plan/tidy.hpp"
#include "tests/support/edited_plan.hpp"

using namespace sumpwright;
using namespace sumpwright::plan;
using test::at;
using test::vertex;

namespace
{

void expectAt(Point place, double x, double y)
{
    EXPECT_NEAR(units::inMetres(place.x), x, 1e-12);
    EXPECT_NEAR(units::inMetres(place.y), y, 1e-12);
}

} // namespace

TEST(Point, TurnsCounterClockwise)
{
    expectAt(turned(at(1, 0), units::degrees(90)), 0, 1);
    expectAt(turnedAbout(at(3, 2), at(2, 2), units::degrees(180)), 1, 2);
    EXPECT_NEAR(units::inDegrees(bearingOf(at(-1, 0))), 180, 1e-12);
    EXPECT_NEAR(units::inDegrees(bearingOf(at(0, -2))), -90, 1e-12);
    EXPECT_EQ(units::inDegrees(bearingOf(at(0, 0))), 0);
}

TEST(Tidy, TakesTheNoiseOfSumsAndMinusZeroAway)
{
    EXPECT_EQ(units::inMetres(tidy(units::metres(0.1 + 0.2))), 0.3);
    EXPECT_FALSE(std::signbit(units::inMetres(tidy(units::metres(-1e-12)))));
    EXPECT_EQ(units::inDegrees(tidy(units::degrees(450))), units::inDegrees(units::degrees(90)));
    EXPECT_EQ(units::inDegrees(tidy(units::degrees(-180))), 180);
}

TEST(Floor, FallsTowardsItsDirectionFromTheOrigin)
{
    Floor floor;
    floor.level = units::elevationMetres(0.1);
    floor.fall = units::metresPerMetre(0.02);
    floor.fallDirection = units::degrees(90);
    EXPECT_NEAR(units::inMetres(levelAt(floor, at(5, 3))), 0.04, 1e-12);
    EXPECT_NEAR(units::inMetres(levelAt(floor, at(-5, -1))), 0.12, 1e-12);
}

TEST(Floor, KnowsAreaAndInsideOfAnLShape)
{
    Floor floor;
    floor.outline = {at(0, 0), at(4, 0), at(4, 2), at(2, 2), at(2, 3), at(0, 3)};
    EXPECT_NEAR(units::inSquareMetres(areaOf(floor)), 10.0, 1e-12);
    EXPECT_TRUE(inside(floor, at(1, 2.5)));
    EXPECT_FALSE(inside(floor, at(3, 2.5)));
    EXPECT_FALSE(inside(Floor{}, at(0, 0)));
}

TEST(Vessel, TakesItsWallsOffTheInside)
{
    Vessel vessel;
    vessel.shape = RectangleShape{units::metres(2), units::metres(1)};
    vessel.wallThickness = units::millimetres(50);
    vessel.baseLevel = units::elevationMetres(0.6);
    vessel.wallHeight = units::metres(0.4);
    EXPECT_NEAR(units::inSquareMetres(outsideArea(vessel)), 2.0, 1e-12);
    EXPECT_NEAR(units::inSquareMetres(insideArea(vessel)), 1.9 * 0.9, 1e-12);
    EXPECT_NEAR(units::inMetres(rimLevel(vessel)), 1.0, 1e-12);
    EXPECT_NEAR(units::inMetres(insideBottom(vessel)), 0.65, 1e-12);
    vessel.shape = RoundShape{units::metres(1)};
    EXPECT_NEAR(units::inSquareMetres(insideArea(vessel)), units::pi / 4 * 0.81, 1e-12);
    EXPECT_EQ(outlineOf(vessel).size(), 48u);
    vessel.shape = CagedShape{};
    EXPECT_NEAR(units::inSquareMetres(outsideArea(vessel)), 1.2, 1e-12);
}

TEST(Vessel, StandsAtItsLowestLip)
{
    Vessel vessel;
    EXPECT_EQ(mainLip(vessel), nullptr);
    for (const double level : {0.40, 0.30, 0.35}) {
        Port port;
        port.id = {static_cast<std::uint64_t>(1000 * level)};
        port.kind = PortKind::lip;
        port.level = units::elevationMetres(level);
        vessel.ports.push_back(port);
    }
    Port inlet;
    inlet.id = {1};
    inlet.level = units::elevationMetres(0.1);
    vessel.ports.push_back(inlet);
    EXPECT_EQ(mainLip(vessel)->id.number, 300u);
}

TEST(Vessel, TurnsItsPortsAndOutlineWithIt)
{
    Vessel vessel;
    vessel.centre = at(2, 3);
    vessel.turn = units::degrees(90);
    vessel.shape = RectangleShape{units::metres(2), units::metres(1)};
    Port port;
    port.offset = at(0.8, 0.1);
    expectAt(placeOf(vessel, port), 1.9, 3.8);
    expectAt(outlineOf(vessel)[0], 2.5, 2.0);
}

TEST(Run, IsAsLongAsThePipeInSpace)
{
    plan::Run run;
    run.vertices = {vertex(0, 0, 0), vertex(3, 0, 4), vertex(3, 2, 4)};
    EXPECT_NEAR(units::inMetres(lengthOf(run)), 7.0, 1e-12);
    expectAt(placeAlong(run, 5.0 / 7.0).at, 3, 0);
    expectAt(placeAlong(run, 2.5 / 7.0).at, 1.5, 0);
    EXPECT_NEAR(units::inMetres(placeAlong(run, 2.5 / 7.0).level), 2.0, 1e-12);
    expectAt(placeAlong(run, -1).at, 0, 0);
    expectAt(placeAlong(run, 2).at, 3, 2);
}

TEST(Run, FindsBendsInPlanAndInLevel)
{
    plan::Run run;
    run.vertices = {vertex(0, 0, 0), vertex(0, 0, 1),    vertex(2, 0, 1),   vertex(4, 0, 1),
                    vertex(5, 1, 1), vertex(6, 1.01, 1), vertex(7, 1.02, 1)};
    const auto bends = bendsOf(run);
    ASSERT_EQ(bends.size(), 3u);
    EXPECT_EQ(bends[0].vertex, 1u);
    EXPECT_NEAR(units::inDegrees(bends[0].angle), 90, 1e-9);
    EXPECT_EQ(bends[1].vertex, 3u);
    EXPECT_NEAR(units::inDegrees(bends[1].angle), 45, 1e-9);
    EXPECT_EQ(bends[2].vertex, 4u);
}

TEST(Run, TurnedBackOnItselfBendsByHalfATurn)
{
    plan::Run run;
    run.vertices = {vertex(0, 0, 0), vertex(1, 0, 0), vertex(0, 0, 0)};
    ASSERT_EQ(bendsOf(run).size(), 1u);
    EXPECT_NEAR(units::inDegrees(bendsOf(run)[0].angle), 180, 1e-9);
}

TEST(Plan, NamesKindAndTagOfAnId)
{
    const test::SmallSystem system;
    EXPECT_EQ(kindOf(system.plan, system.pump), ElementKind::pump);
    EXPECT_EQ(kindOf(system.plan, system.main), ElementKind::run);
    EXPECT_EQ(kindOf(system.plan, system.note), ElementKind::note);
    EXPECT_EQ(kindOf(system.plan, system.line), ElementKind::dimension);
    EXPECT_EQ(kindOf(system.plan, system.wall), ElementKind::fixture);
    EXPECT_FALSE(kindOf(system.plan, base::Id{9999}));
    EXPECT_EQ(tagOf(system.plan, system.pump), "P1");
    EXPECT_EQ(tagOf(system.plan, system.note), "");
}

TEST(Table, KeepsPointersOfWhatDidNotChange)
{
    const test::SmallSystem system;
    const auto after = setWallHeight({system.tank}, units::metres(1.0)).apply(system.plan).value();
    EXPECT_NE(after.vessels.share(system.tank), system.plan.vessels.share(system.tank));
    EXPECT_EQ(after.vessels.share(system.sump), system.plan.vessels.share(system.sump));
    EXPECT_EQ(after.runs.share(system.main), system.plan.runs.share(system.main));
    EXPECT_EQ(after.site, system.plan.site);
}
