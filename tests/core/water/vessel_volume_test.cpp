#include "core/water/vessel_volume.hpp"

#include <gtest/gtest.h>

#include <cmath>

namespace sumpwright::water
{
namespace
{

UprightVessel bed() // 1.5 m2, 250 mm of gravel at 0.40, then 50 mm of pebbles at 0.45
{
    return *UprightVessel::make(units::squareMetres(1.5),
                                {{units::millimetres(250), 0.40}, {units::millimetres(300), 0.45}});
}

// Source: elementary geometry, worked by hand.
TEST(VesselVolume, RoundAndRectangularPlans)
{
    EXPECT_NEAR(units::inSquareMetres(roundArea(units::metres(1.2))), 1.1309733552923256, 1e-15);
    EXPECT_NEAR(units::inSquareMetres(rectangleArea(units::metres(1.2), units::metres(0.8))), 0.96, 1e-15);
    const auto tank = UprightVessel::make(roundArea(units::metres(1.2)));
    EXPECT_NEAR(units::inLitres(tank->waterAt(units::metres(0.75))), 848.2300164692442, 1e-9);
}

// By hand: 1.5 m2 x 0.20 m x 0.40 = 120 L; 1.5 x (0.25 x 0.40 + 0.03 x 0.45) = 170.25 L;
// 1.5 x (0.25 x 0.40 + 0.05 x 0.45 + 0.10) = 333.75 L.
TEST(VesselVolume, MediumLeavesOnlyItsPores)
{
    EXPECT_NEAR(units::inLitres(bed().waterAt(units::metres(0.20))), 120.0, 1e-9);
    EXPECT_NEAR(units::inLitres(bed().waterAt(units::metres(0.28))), 170.25, 1e-9);
    EXPECT_NEAR(units::inLitres(bed().waterAt(units::metres(0.40))), 333.75, 1e-9);
    EXPECT_NEAR(units::inLitres(bed().grainsBelow(units::metres(0.40))), 600.0 - 333.75, 1e-9);
    EXPECT_NEAR(units::inSquareMetres(bed().wetAreaAt(units::metres(0.10))), 0.60, 1e-12);
    EXPECT_NEAR(units::inSquareMetres(bed().wetAreaAt(units::metres(0.25))), 0.675, 1e-12);
    EXPECT_NEAR(units::inSquareMetres(bed().wetAreaAt(units::metres(0.30))), 1.5, 1e-12);
}

// A published case of a bed's tide: plan area x porosity 0.45 m2 over 0.22 m holds 99.0 L.
TEST(VesselVolume, TideOfABed)
{
    const auto medium = UprightVessel::make(units::squareMetres(1.0), {{units::metres(0.6), 0.45}});
    EXPECT_NEAR(units::inLitres(medium->waterAt(units::metres(0.55)) - medium->waterAt(units::metres(0.33))), 99.0,
                1e-9);
}

TEST(VesselVolume, DepthIsTheInverseOfVolume)
{
    for (double depth = 0.0; depth <= 0.6; depth += 0.007) {
        const units::Volume water = bed().waterAt(units::metres(depth));
        EXPECT_NEAR(units::inMetres(bed().depthOf(water)), depth, 1e-14);
    }
}

TEST(VesselVolume, BelowTheFloorIsEmpty)
{
    EXPECT_EQ(units::inLitres(bed().waterAt(units::metres(-0.1))), 0.0);
    EXPECT_EQ(units::inMetres(bed().depthOf(units::litres(-5))), 0.0);
    EXPECT_EQ(units::inLitres(bed().grainsBelow(units::metres(-0.1))), 0.0);
}

TEST(VesselVolume, RefusesWhatCannotHoldWater)
{
    const auto idOf = [](units::Area area, std::vector<PorousLayer> layers) {
        const auto vessel = UprightVessel::make(area, std::move(layers));
        return vessel.ok() ? "" : vessel.refusal().id + " " + vessel.refusal().place;
    };
    const units::Area plan = units::squareMetres(1.0);
    EXPECT_EQ(idOf(units::squareMetres(0.0), {}), "water.not-positive area");
    EXPECT_EQ(idOf(units::squareMetres(std::nan("")), {}), "water.not-positive area");
    EXPECT_EQ(idOf(plan, {{units::metres(0.3), 0.0}}), "water.porosity-out-of-range layer 1");
    EXPECT_EQ(idOf(plan, {{units::metres(0.3), 0.4}, {units::metres(0.4), 1.1}}),
              "water.porosity-out-of-range layer 2");
    EXPECT_EQ(idOf(plan, {{units::metres(0.3), 0.4}, {units::metres(0.3), 0.4}}), "water.layers-not-rising layer 2");
    EXPECT_EQ(idOf(plan, {{units::metres(-0.3), 0.4}}), "water.layers-not-rising layer 1");
    EXPECT_EQ(idOf(plan, {}), "");
}

} // namespace
} // namespace sumpwright::water
