// Distances between outlines, and what a hand can reach.
#include "core/space/outline.hpp"

#include <cmath>

#include <gtest/gtest.h>

#include "core/assessment/stages.hpp"
#include "core/findings/reach.hpp"
#include "tests/support/sound_plan.hpp"

namespace
{

using namespace sumpwright;
using namespace findings;
using namespace space;

plan::Point point(double x, double y) { return {units::metres(x), units::metres(y)}; }

plan::Vessel box(double x, double y, double length, double width, double turnDegrees = 0.0)
{
    plan::Vessel vessel;
    vessel.shape = plan::RectangleShape{units::metres(length), units::metres(width)};
    vessel.centre = point(x, y);
    vessel.turn = units::degrees(turnDegrees);
    return vessel;
}

double gap(const plan::Vessel& a, const plan::Vessel& b)
{
    const auto distance = gapBetween(footprintOf(a), footprintOf(b), units::metres(100.0));
    return distance ? units::inMetres(*distance) : -1.0;
}

TEST(Outline, MeasuresGapsBetweenBoxes)
{
    EXPECT_NEAR(gap(box(0, 0, 2, 1), box(3, 0, 2, 1)), 1.0, 1e-12);
    EXPECT_NEAR(gap(box(0, 0, 2, 1), box(5, 4, 2, 1)), std::hypot(3.0, 3.0), 1e-12);
    EXPECT_NEAR(gap(box(0, 0, 2, 2), box(3, 0, std::sqrt(2.0), std::sqrt(2.0), 45)), 1.0, 1e-12); // corner to side
    EXPECT_EQ(gap(box(0, 0, 2, 1), box(1, 0, 2, 1)), 0.0);
    EXPECT_EQ(gap(box(0, 0, 4, 4), box(0, 0, 1, 1)), 0.0); // one inside the other
}

TEST(Outline, GivesNothingBeyondTheDistanceAskedFor)
{
    EXPECT_FALSE(gapBetween(footprintOf(box(0, 0, 1, 1)), footprintOf(box(9, 0, 1, 1)), units::metres(1.0)));
}

TEST(Outline, OverlapsOnlyByMoreThanATouch)
{
    EXPECT_TRUE(overlap(footprintOf(box(0, 0, 2, 2)), footprintOf(box(1.9, 0, 2, 2))));
    EXPECT_FALSE(overlap(footprintOf(box(0, 0, 2, 2)), footprintOf(box(2.0, 0, 2, 2))));
    EXPECT_FALSE(overlap(footprintOf(box(0, 0, 2, 2)), footprintOf(box(2.1, 2.1, 2, 2, 45)))); // the boxes around do
    EXPECT_TRUE(overlap(footprintOf(box(0, 0, 4, 4)), footprintOf(box(0, 0, 1, 1))));
}

TEST(Outline, OfARoundVesselIsNearlyRound)
{
    plan::Vessel round = box(0, 0, 1, 1);
    round.shape = plan::RoundShape{units::metres(2.0)};
    EXPECT_NEAR(gap(round, box(3, 0.37, 2, 1)), 1.0, 0.003);
    EXPECT_NEAR(units::inMetres(gapTo(footprintOf(round), point(0, 3))), 2.0, 0.003);
    EXPECT_EQ(units::inMetres(gapTo(footprintOf(round), point(0.2, 0.3))), 0.0);
}

TEST(Outline, OfAWallHasItsThickness)
{
    plan::Fixture wall;
    wall.from = point(0, 0);
    wall.to = point(4, 0);
    wall.size = units::metres(0.2);
    const Outline outline = footprintOf(wall);
    EXPECT_NEAR(units::inMetres(gapTo(outline, point(2, 1))), 0.9, 1e-12);
    EXPECT_NEAR(units::inMetres(gapTo(outline, point(5, 0))), 1.0, 1e-12);
}

TEST(Reach, EndsAtTheShoulderBesideTheVessel)
{
    const test::SoundPlan plan; // beds 0.812 m wide: their middle is 0.406 m from the edge, 0.606 m from a shoulder
    const auto result = assessment::Stages(catalogue::Catalogue::builtIn()).assess(plan.drawn.plan);
    const findings::Situation situation(result);
    const plan::Point middle = plan.drawn.plan.vessels.find(plan.bed1)->centre;
    EXPECT_TRUE(findings::withinReach(situation, middle, units::metres(0.65)));
    EXPECT_FALSE(findings::withinReach(situation, middle, units::metres(0.60)));
    EXPECT_FALSE(findings::withinReach(situation, point(50, 50), units::metres(0.6))); // no floor there to stand on
}

} // namespace
