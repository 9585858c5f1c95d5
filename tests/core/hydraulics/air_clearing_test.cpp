#include "core/hydraulics/air_clearing.hpp"

#include <gtest/gtest.h>

namespace sumpwright::hydraulics
{
namespace
{

// Wisner, Mohsen and Kouwen (1975), from memory: V / sqrt(g D) = 0.25 sqrt(sin slope) + 0.825; at 100 mm sqrt(g D) is
// 0.9903 m/s.
TEST(AirClearing, FollowsTheEnvelope)
{
    const auto at = [](double degrees) {
        return units::inMetresPerSecond(airClearingVelocity(units::metres(0.1), units::degrees(degrees)));
    };
    EXPECT_NEAR(at(0.0), 0.8170, 1e-4);
    EXPECT_NEAR(at(30.0), 0.9921, 1e-4);
    EXPECT_NEAR(at(90.0), 1.0646, 1e-4);
}

} // namespace
} // namespace sumpwright::hydraulics
