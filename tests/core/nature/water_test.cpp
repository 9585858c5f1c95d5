#include "core/nature/water.hpp"

#include <gtest/gtest.h>

#include <limits>

namespace sumpwright::nature
{
namespace
{

struct Row {
    double celsius;
    double density;   // kg/m3
    double viscosity; // uPa s
    double kinematic; // 1e-6 m2/s
    double vapour;    // kPa
};

// Source: IAPWS-95 (density) with IAPWS R12-08 (viscosity) at 101.325 kPa and IF97 region 4 (vapour pressure),
// computed with the reference library python3-iapws 1.5.3. Formulas here are others (Tanaka 2001, SR6-08), so this
// compares two independent published routes.
constexpr Row releases[] = {
    {0.01, 999.844, 1791.13, 1.79141, 0.61166}, {4, 999.975, 1567.29, 1.56733, 0.81355},
    {5, 999.967, 1518.17, 1.51822, 0.87257},    {10, 999.703, 1305.90, 1.30629, 1.22818},
    {15, 999.103, 1137.57, 1.13859, 1.70574},   {20, 998.207, 1001.60, 1.00340, 2.33921},
    {25, 997.048, 890.02, 0.89266, 3.16975},    {30, 995.650, 797.22, 0.80071, 4.24669},
    {35, 994.033, 719.13, 0.72344, 5.62862},    {40, 992.216, 652.73, 0.65785, 7.38443},
};

TEST(Water, FollowsTheReleasesOfIapws)
{
    for (const Row& row : releases) {
        const auto water = waterAt(units::celsius(row.celsius));
        ASSERT_TRUE(water.ok()) << row.celsius;
        EXPECT_NEAR(units::inKilogramsPerCubicMetre(water->density), row.density, 0.002) << row.celsius;
        EXPECT_NEAR(1e6 * units::inPascalSeconds(water->dynamicViscosity) / row.viscosity, 1.0, 1e-3) << row.celsius;
        EXPECT_NEAR(1e6 * units::inSquareMetresPerSecond(water->kinematicViscosity) / row.kinematic, 1.0, 1e-3)
            << row.celsius;
        EXPECT_NEAR(1e-3 * units::inPascals(water->vapourPressure), row.vapour, 1e-5) << row.celsius;
    }
}

// Source: IAPWS R7-97 (IF97), table 35: saturation pressure at 300 K is 0.353658941e-2 MPa.
TEST(Water, MeetsTheVerificationValueOfIf97)
{
    EXPECT_NEAR(units::inPascals(waterAt(units::kelvin(300.0))->vapourPressure), 3536.58941, 5e-6);
}

// Source: IAPWS SR6-08 gives 889.997 uPa s at 298.15 K and 0.1 MPa (from memory), its verification value.
TEST(Water, MeetsTheVerificationViscosity)
{
    EXPECT_NEAR(1e6 * units::inPascalSeconds(waterAt(units::kelvin(298.15))->dynamicViscosity), 889.997, 5e-3);
}

TEST(Water, IsHeaviestNearFourDegrees)
{
    const auto density = [](double t) { return waterAt(units::celsius(t))->density; };
    EXPECT_GT(density(3.98), density(3.5));
    EXPECT_GT(density(3.98), density(4.5));
}

TEST(Water, RefusesTemperaturesOutsideItsRange)
{
    for (double celsius : {-0.1, 40.1, 1e9, std::numeric_limits<double>::quiet_NaN()}) {
        const auto water = waterAt(units::celsius(celsius));
        ASSERT_FALSE(water.ok()) << celsius;
        EXPECT_EQ(water.refusal().id, "nature.water-temperature-out-of-range");
        EXPECT_EQ(water.refusal().place, "temperature");
        EXPECT_EQ(water.refusal().accepts, "0 to 40 degC");
    }
    EXPECT_TRUE(waterAt(coldestWater).ok());
    EXPECT_TRUE(waterAt(warmestWater).ok());
}

} // namespace
} // namespace sumpwright::nature
