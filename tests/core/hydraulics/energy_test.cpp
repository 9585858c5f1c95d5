#include "core/hydraulics/energy.hpp"

#include <gtest/gtest.h>

#include "core/base/ensure.hpp"

namespace sumpwright::hydraulics
{
namespace
{

const units::Density at20 = units::kilogramsPerCubicMetre(998.207);

// By hand: 998.207 x 9.80665 x (2/3600) x 1.8 = 9.789 W; a quarter efficient 39.156 W and 343.01 kWh a year.
TEST(Energy, OfASmallPump)
{
    const units::Power water = hydraulicPower(units::litresPerHour(2000), units::metresHead(1.8), at20);
    EXPECT_NEAR(units::inWatts(water), 9.789, 5e-4);
    const units::Power wire = electricalPower(water, 0.25);
    EXPECT_NEAR(units::inWatts(wire), 39.156, 2e-3);
    EXPECT_NEAR(units::inKilowattHours(energyPerYear(wire)), 343.01, 0.02);
    EXPECT_NEAR(wireToWater(water, wire), 0.25, 1e-15);
}

// Source: Cengel and Cimbala, Fluid Mechanics, example 8-7: 8 kW x 0.70 is the water power (their g is 9.81).
TEST(Energy, OfTheParallelPipesInTheTextbook)
{
    const units::Power water = hydraulicPower(units::cubicMetresPerSecond(0.030012), units::metresHead(19.059),
                                              units::kilogramsPerCubicMetre(998));
    EXPECT_NEAR(units::inWatts(water) / 5600.0, 1.0, 1e-3);
}

TEST(Energy, GivesNothingWhereTheWaterDrivesThePump)
{
    const auto density = units::kilogramsPerCubicMetre(998.0);
    EXPECT_EQ(hydraulicPower(units::litresPerHour(9018.0), units::metresHead(-1.96), density), units::watts(0.0));
    EXPECT_GT(hydraulicPower(units::litresPerHour(9018.0), units::metresHead(1.96), density), units::watts(48.0));
}

TEST(Energy, CostsWhatItsPriceSays)
{
    const units::Money cost = costPerYear(units::kilowattHours(343.01), units::perKilowattHour(0.30));
    EXPECT_NEAR(units::inCurrency(cost), 102.903, 1e-9);
    EXPECT_NEAR(units::inKilowattHours(energyPerYear(units::watts(40), units::hours(100))), 4.0, 1e-12);
}

TEST(Energy, HoldsTheCallerToAnEfficiency)
{
    EXPECT_THROW(electricalPower(units::watts(10), 0.0), base::BrokenPromise);
    EXPECT_THROW(electricalPower(units::watts(10), 1.01), base::BrokenPromise);
    EXPECT_EQ(wireToWater(units::watts(10), units::watts(0)), 0.0);
}

} // namespace
} // namespace sumpwright::hydraulics
