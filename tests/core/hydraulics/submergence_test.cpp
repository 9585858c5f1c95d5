#include "core/hydraulics/submergence.hpp"

#include <gtest/gtest.h>

#include "core/base/ensure.hpp"

namespace sumpwright::hydraulics
{
namespace
{

// Source: ANSI/HI 9.8, S = D (1 + 2.3 F), from memory; by hand: 40 mm at 0.8 m/s F 1.2773, 0.1575 m; 50 mm at 3000 L/h
// 0.1197 m.
TEST(Submergence, OfTheStandardByHand)
{
    const units::Flow flow = units::cubicMetresPerSecond(0.8 * units::pi / 4.0 * 0.04 * 0.04);
    EXPECT_NEAR(units::inMetres(submergenceNeeded(units::millimetres(40.0), flow)), 0.1575, 5e-5);
    EXPECT_NEAR(units::inMetres(submergenceNeeded(units::millimetres(50.0), units::litresPerHour(3000.0))), 0.1197,
                5e-5);
}

TEST(Submergence, OfStillWaterIsOneDiameterAndGrowsWithTheFlow)
{
    const units::Length inlet = units::millimetres(40.0);
    EXPECT_EQ(submergenceNeeded(inlet, units::Flow()), inlet);
    EXPECT_EQ(submergenceNeeded(inlet, units::litresPerHour(-100.0)), inlet);
    units::Length last = inlet;
    for (double lph = 100.0; lph < 20000.0; lph *= 1.4) {
        EXPECT_GT(submergenceNeeded(inlet, units::litresPerHour(lph)), last);
        last = submergenceNeeded(inlet, units::litresPerHour(lph));
    }
    EXPECT_THROW(submergenceNeeded(units::Length(), units::litresPerHour(10.0)), base::BrokenPromise);
}

} // namespace
} // namespace sumpwright::hydraulics
