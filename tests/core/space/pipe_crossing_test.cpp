// Where runs want the same place. All expected distances by plain geometry.
#include "core/space/pipe_crossing.hpp"

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <random>

#include "tests/core/space/bodies.hpp"

namespace
{

using namespace sumpwright;
using namespace sumpwright::test;

const units::Length clearance = units::millimetres(5.0);

std::vector<space::PipeCrossing> crossings(const std::vector<space::PipeBody>& bodies)
{
    return space::crossingsOf(bodies, clearance);
}

// A run along x at y = 0 and level 1, and one along y at `level`, both 50 mm outside.
std::vector<space::PipeBody> cross(double level)
{
    return {pipe(1, 0.025, {{-2, 0, 1}, {2, 0, 1}}), pipe(2, 0.025, {{0.3, -2, level}, {0.3, 2, level}})};
}

TEST(PipeCrossing, TellsDistanceAndPlaceOfRunsAtTheSameLevel)
{
    const auto found = crossings(cross(1.02));
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].first, Id{1});
    EXPECT_EQ(found[0].second, Id{2});
    EXPECT_NEAR(units::inMillimetres(found[0].between), 20.0, 1e-6);
    EXPECT_NEAR(units::inMillimetres(found[0].needed), 50.0, 1e-9);
    EXPECT_NEAR(units::inMetres(found[0].at.at.x), 0.3, 1e-9);
    EXPECT_NEAR(units::inMetres(found[0].at.at.y), 0.0, 1e-9);
}

TEST(PipeCrossing, LeavesRunsAloneThatPassOverEachOther)
{
    EXPECT_EQ(crossings(cross(1.054)).size(), 1U); // within the clearance
    EXPECT_TRUE(crossings(cross(1.0551)).empty());
    EXPECT_TRUE(crossings(cross(0.5)).empty());
}

TEST(PipeCrossing, FindsLongParallelRuns)
{
    const std::vector<space::PipeBody> side{pipe(1, 0.02, {{0, 0, 1}, {30, 0, 1}}),
                                            pipe(2, 0.02, {{0, 0.03, 1}, {30, 0.03, 1}})};
    ASSERT_EQ(crossings(side).size(), 1U);
    EXPECT_NEAR(units::inMillimetres(crossings(side)[0].between), 30.0, 1e-6);
    EXPECT_TRUE(
        crossings({pipe(1, 0.02, {{0, 0, 1}, {30, 0, 1}}), pipe(2, 0.02, {{0, 0.05, 1}, {30, 0.05, 1}})}).empty());
}

TEST(PipeCrossing, LeavesRunsAloneWhereTheyMeetAtATee)
{
    const Id tee{9};
    EXPECT_TRUE(crossings({pipe(1, 0.025, {{-2, 0, 1}, {0, 0, 1}}, {}, tee),
                           pipe(2, 0.025, {{0, 0, 1}, {2, 0, 1}}, tee), pipe(3, 0.025, {{0, 0, 1}, {0, 2, 1}}, tee)})
                    .empty());
    // Not joined they want the same place.
    EXPECT_EQ(crossings({pipe(1, 0.025, {{-2, 0, 1}, {0, 0, 1}}), pipe(3, 0.025, {{0, 0, 1}, {0, 2, 1}})}).size(), 1U);
    // Joined at one end, they still may not come together again.
    EXPECT_EQ(crossings({pipe(1, 0.025, {{0, 0, 1}, {2, 0, 1}, {2, 2, 1}}, tee),
                         pipe(2, 0.025, {{0, 0, 1}, {0, 1, 1}, {3, 1, 1}}, tee)})
                  .size(),
              1U);
}

TEST(PipeCrossing, TellsForEachRunItsWorst)
{
    // A header over three drains, one of them only just too near.
    const auto found =
        crossings({pipe(1, 0.02, {{0, 0, 1}, {9, 0, 1}}), pipe(2, 0.02, {{1, -1, 1}, {1, 1, 1}}),
                   pipe(3, 0.02, {{5, -1, 1.02}, {5, 1, 1.02}}), pipe(4, 0.02, {{8, -1, 1.04}, {8, 1, 1.04}})});
    ASSERT_EQ(found.size(), 3U);
    EXPECT_EQ(found[0].second, Id{2});
    EXPECT_EQ(found[2].second, Id{4});
}

// Every pair by brute force, with points 10 mm apart along both runs, finds what the search finds.
TEST(PipeCrossing, AgreesWithPointsAlongTheRuns)
{
    std::mt19937 random(7);
    std::uniform_real_distribution<double> place(0.0, 3.0), level(0.0, 0.4);
    int near = 0;
    for (int round = 0; round < 40; ++round) {
        std::vector<space::PipeBody> bodies;
        for (std::uint64_t id = 1; id < 3; ++id)
            bodies.push_back(pipe(id, 0.03,
                                  {{place(random), place(random), level(random)},
                                   {place(random), place(random), level(random)},
                                   {place(random), place(random), level(random)}}));
        double least = 1e9;
        const auto points = [](const space::PipeBody& body) {
            std::vector<std::array<double, 3>> all;
            for (std::size_t i = 1; i < body.spots.size(); ++i)
                for (int k = 0; k <= 400; ++k) {
                    const auto along = [&](double a, double b) { return a + (b - a) * k / 400.0; };
                    const auto &a = body.spots[i - 1], &b = body.spots[i];
                    all.push_back({along(units::inMetres(a.at.x), units::inMetres(b.at.x)),
                                   along(units::inMetres(a.at.y), units::inMetres(b.at.y)),
                                   along(units::inMetres(a.level), units::inMetres(b.level))});
                }
            return all;
        };
        for (const auto& p : points(bodies[0]))
            for (const auto& q : points(bodies[1]))
                least = std::min(least, std::hypot(p[0] - q[0], p[1] - q[1], p[2] - q[2]));
        const auto found = crossings(bodies);
        if (!found.empty()) {
            ++near;
            EXPECT_NEAR(units::inMetres(found[0].between), least, 0.007) << round;
        } else {
            EXPECT_GT(least, 0.065 - 0.007) << round;
        }
    }
    EXPECT_GT(near, 5);
}

TEST(PipeCrossing, EndsSoonOnAPileOfRunsAndOnAThousandPieces)
{
    std::vector<space::PipeBody> pile, wide;
    for (std::uint64_t id = 1; id <= 300; ++id)
        pile.push_back(pipe(id, 0.02, {{0, 0, 1}, {2, 0, 1}}));
    const auto found = crossings(pile);
    EXPECT_LE(found.size(), 300U);
    EXPECT_FALSE(found.empty());
    for (std::uint64_t id = 1; id <= 1000; ++id) {
        const double x = 0.1 * static_cast<double>(id);
        wide.push_back(pipe(id, 0.02, {{x, 0, 1}, {x, 10, 1}, {x, 10, 0.2}}));
    }
    EXPECT_TRUE(crossings(wide).empty());
}

TEST(PipeCrossing, ToleratesRunsWithoutLength)
{
    const auto found =
        crossings({pipe(1, 0.02, {{0, 0, 1}, {0, 0, 1}}), pipe(2, 0.02, {{0, 0, 1}, {0, 0, 1}, {1, 0, 1}})});
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(units::inMetres(found[0].between), 0.0);
}

} // namespace
