// How several ways out share a flow at one level.
#include "core/hydraulics/shared_level.hpp"

#include <gtest/gtest.h>

#include <cmath>

namespace
{

using namespace sumpwright;
using namespace sumpwright::hydraulics;

// Level = start + c q^2, q in L/s: takes sqrt((level - start) / c).
LevelNeeded squares(std::vector<double> starts, std::vector<double> factors)
{
    return [starts, factors](std::size_t way, units::Flow flow) {
        const double q = 1e3 * units::inCubicMetresPerSecond(flow);
        return units::elevationMetres(starts[way] + factors[way] * q * q);
    };
}

constexpr auto litrePerSecond = units::cubicMetresPerSecond(1e-3);

TEST(SharedLevel, GivesAllToTheOnlyWayThatIsReached)
{
    const auto shared = shareOut(2, litrePerSecond, squares({0.0, 2.0}, {1.0, 1.0}));
    EXPECT_EQ(shared.flows[0], litrePerSecond);
    EXPECT_EQ(shared.flows[1], units::Flow());
    EXPECT_EQ(units::inMetres(shared.level), 1.0);
}

// sqrt(h/1) + sqrt(h/4) = 1 gives h = 4/9, flows 2/3 and 1/3.
TEST(SharedLevel, SharesByWhatEachNeeds)
{
    const auto shared = shareOut(2, litrePerSecond, squares({0.0, 0.0}, {1.0, 4.0}));
    EXPECT_NEAR(units::inMetres(shared.level), 4.0 / 9.0, 1e-12);
    EXPECT_NEAR(shared.flows[0] / litrePerSecond, 2.0 / 3.0, 1e-12);
    EXPECT_EQ(shared.flows[0] + shared.flows[1], litrePerSecond);
}

// A way that takes any flow at one level (a long flat step) takes what the others leave, not the largest of them.
TEST(SharedLevel, LetsAWayOfOneLevelTakeTheRest)
{
    const LevelNeeded needed = [](std::size_t way, units::Flow flow) {
        const double q = 1e3 * units::inCubicMetresPerSecond(flow);
        return units::elevationMetres(way == 0 ? 0.25 : q * q);
    };
    const auto shared = shareOut(2, litrePerSecond, needed);
    EXPECT_NEAR(units::inMetres(shared.level), 0.25, 1e-11);
    EXPECT_NEAR(shared.flows[1] / litrePerSecond, 0.5, 1e-9);
    EXPECT_NEAR(shared.flows[0] / litrePerSecond, 0.5, 1e-9);
}

// Where a way jumps up (a pipe begins to run full) it holds its flow while the others take more.
TEST(SharedLevel, HoldsAWayBelowItsJump)
{
    const LevelNeeded needed = [](std::size_t way, units::Flow flow) {
        const double q = 1e3 * units::inCubicMetresPerSecond(flow);
        return units::elevationMetres(way == 0 ? q + (q > 0.3 ? 5.0 : 0.0) : q);
    };
    const auto shared = shareOut(2, litrePerSecond, needed);
    EXPECT_NEAR(shared.flows[0] / litrePerSecond, 0.3, 1e-9);
    EXPECT_NEAR(shared.flows[1] / litrePerSecond, 0.7, 1e-9);
    EXPECT_NEAR(units::inMetres(shared.level), 0.7, 1e-9);
}

TEST(SharedLevel, TakesNothingBelowItsBeginning)
{
    EXPECT_EQ(takenAt(0, units::elevationMetres(0.5), litrePerSecond, squares({0.6}, {1.0})), units::Flow());
    EXPECT_EQ(takenAt(0, units::elevationMetres(50.0), litrePerSecond, squares({0.6}, {1.0})), litrePerSecond);
}

} // namespace
