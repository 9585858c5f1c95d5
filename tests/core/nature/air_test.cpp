#include "core/nature/air.hpp"

#include <gtest/gtest.h>

#include <cmath>

namespace sumpwright::nature
{
namespace
{

double pascalsAt(double metres) { return units::inPascals(*airPressureAt(units::metres(metres))); }

// Source: US Standard Atmosphere 1976, equal to ISO 2533 up to 32 km, by the reference library python3-fluids 1.0.22
// (ATMOSPHERE_1976, asked at the geometric height of each geopotential altitude).
TEST(Air, FollowsTheStandardAtmosphere)
{
    EXPECT_NEAR(pascalsAt(-500), 107477.51, 0.2);
    EXPECT_NEAR(pascalsAt(0), 101325.0, 1e-9);
    EXPECT_NEAR(pascalsAt(500), 95460.84, 0.2);
    EXPECT_NEAR(pascalsAt(1000), 89874.57, 0.2);
    EXPECT_NEAR(pascalsAt(2000), 79495.22, 0.2);
    EXPECT_NEAR(pascalsAt(3000), 70108.54, 0.2);
    EXPECT_NEAR(pascalsAt(5000), 54019.91, 0.2);
}

// Source: the short form often printed for ISO 2533, P = 101325 (1 - 2.25577e-5 h)^5.25588.
TEST(Air, AgreesWithTheShortForm)
{
    for (double h = -500; h <= 5000; h += 250)
        EXPECT_NEAR(pascalsAt(h) / (101325.0 * std::pow(1.0 - 2.25577e-5 * h, 5.25588)), 1.0, 2e-6) << h;
}

TEST(Air, RefusesAltitudesNobodyFarmsAt)
{
    for (double h : {-501.0, 5001.0, std::nan("")}) {
        const auto pressure = airPressureAt(units::metres(h));
        ASSERT_FALSE(pressure.ok()) << h;
        EXPECT_EQ(pressure.refusal().id, "nature.altitude-out-of-range");
        EXPECT_EQ(pressure.refusal().place, "altitude");
    }
}

} // namespace
} // namespace sumpwright::nature
