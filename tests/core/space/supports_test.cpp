// How far apart runs must be held, and how many supports that makes.
#include "core/space/supports.hpp"

#include <gtest/gtest.h>

#include "tests/core/space/bodies.hpp"

namespace
{

using namespace sumpwright;
using namespace sumpwright::test;

double distance(const char* pipeId, double celsius)
{
    const auto tables = catalogue::Catalogue::builtIn();
    return units::inMetres(space::supportDistanceOf(**tables->pipe(pipeId), units::celsius(celsius), *tables).most);
}

// DVS 2210-1 for PVC-U and PE, the usual handbook table of Schedule 40 in feet; both from memory.
TEST(SupportDistance, IsThatOfTheTables)
{
    EXPECT_NEAR(distance("pvcu-pn16-32", 20.0), 1.35, 1e-9);
    EXPECT_NEAR(distance("pvcu-pn16-63", 40.0), 1.70, 1e-9);
    EXPECT_NEAR(distance("pe-sdr11-50", 30.0), 1.00, 1e-9);
    EXPECT_NEAR(distance("sch40-dn50", 15.5556), 6.0 * 0.3048, 1e-4); // 60 degF
    EXPECT_NEAR(distance("sch40-dn50", 37.7778), 5.0 * 0.3048, 1e-4);
}

TEST(SupportDistance, LiesBetweenTheColumnsAndStopsAtTheOutermost)
{
    EXPECT_NEAR(distance("pvcu-pn16-32", 25.0), 1.325, 1e-9);
    EXPECT_NEAR(distance("pvcu-pn16-32", 5.0), 1.35, 1e-9);
    EXPECT_NEAR(distance("pvcu-pn16-160", 60.0), 2.70, 1e-9);
}

TEST(SupportDistance, OfDrainagePipeAndUnknownMaterialIsTenDiameters)
{
    EXPECT_NEAR(distance("waste-pvcu-75", 20.0), 0.75, 1e-9);
    EXPECT_NEAR(distance("ldpe-20", 20.0), 0.20, 1e-9);
    const auto tables = catalogue::Catalogue::builtIn();
    EXPECT_EQ(space::supportDistanceOf(**tables->pipe("ldpe-20"), units::celsius(20.0), *tables).source,
              "common-practice");
    EXPECT_EQ(space::supportDistanceOf(**tables->pipe("pvcu-pn16-32"), units::celsius(20.0), *tables).source,
              "dvs-2210-1");
}

space::SupportNeed need(space::PipeBody body, bool heldAtStart, bool heldAtEnd)
{
    body.ends[0].owner = heldAtStart ? Id{90} : Id{};
    body.ends[1].owner = heldAtEnd ? Id{91} : Id{};
    return space::supportNeedOf(body, plan::Floor(), units::metres(1.0));
}

TEST(SupportNeed, CountsWhatAFreeLengthAsksFor)
{
    const auto level = pipe(1, 0.02, {{0, 0, 1}, {3.4, 0, 1}});
    EXPECT_EQ(need(level, true, true).count, 3);  // 3.4 spans: 3 between the ends
    EXPECT_EQ(need(level, true, false).count, 3); // the far tee is held within half a span
    EXPECT_EQ(need(level, false, false).count, 4);
    EXPECT_NEAR(units::inMetres(need(level, true, true).longestFree), 3.4, 1e-9);
    EXPECT_EQ(need(pipe(1, 0.02, {{0, 0, 1}, {1.0, 0, 1}}), true, true).count, 0); // just one span
}

TEST(SupportNeed, LeavesAPipeOnTheFloorAndUprightLegsAlone)
{
    EXPECT_EQ(need(pipe(1, 0.02, {{0, 0, 0.04}, {9, 0, 0.04}}), false, false).count, 0);
    EXPECT_EQ(need(pipe(1, 0.02, {{0, 0, -0.3}, {9, 0, -0.3}}), false, false).count, 0);
    EXPECT_EQ(need(pipe(1, 0.02, {{0, 0, 0.1}, {0, 0, 9.0}}), true, true).count, 0);
    // Two free lengths with a foot on the floor between them.
    const auto foot =
        pipe(1, 0.02, {{0, 0, 1}, {0.9, 0, 1}, {0.9, 0, 0.02}, {0.9, 0.1, 0.02}, {0.9, 0.1, 1}, {1.8, 0.1, 1}});
    EXPECT_EQ(need(foot, true, true).count, 0);
}

} // namespace
