#include "core/floor/masses.hpp"

#include <gtest/gtest.h>

#include "core/base/ensure.hpp"

using namespace sumpwright;
using namespace sumpwright::units;

namespace
{

const floor::MediumFilling gravel1600{kilogramsPerCubicMetre(1600.0), 0.01, 1.0 - 1600.0 / 2650.0, 0.05};
const floor::MediumFilling clay400{kilogramsPerCubicMetre(400.0), 0.25, 0.42, 0.05};
const Density at20 = kilogramsPerCubicMetre(998.2);

} // namespace

// Hydrostatics with g = 9.80665 m/s2 (CGPM 1901): 1 m of water presses 9.807 kPa at 1000 kg/m3 and 9.789 kPa at
// 998.21 kg/m3 (Kell 1975, 20 degC, from memory).
TEST(Masses, AMetreOfWaterPressesAboutTenKilopascals)
{
    const Area base = squareMetres(2.5);
    const Volume metreDeep = cubicMetres(2.5);
    EXPECT_NEAR(inKilopascals(floor::pressureUnder(floor::waterMass(metreDeep), base)), 9.807, 0.001);
    const Mass at20Degrees = floor::waterMass(metreDeep, kilogramsPerCubicMetre(998.21));
    EXPECT_NEAR(inKilopascals(floor::pressureUnder(at20Degrees, base)), 9.789, 0.001);
}

// Dry gravel fill 15-16 kN/m3: EN 1991-1-1 Table A.6; grain density 2650 kg/m3. Computed by hand from these:
// 1600 x 1.01 + 0.05 x 998.2 = 1665.9; 1600 x 1.01 + (1 - 1600/2650) x 998.2 = 2011.5.
TEST(Masses, WashedGravelDrainedAndFlooded)
{
    EXPECT_NEAR(inKilogramsPerCubicMetre(floor::drainedDensity(gravel1600, at20)), 1666.0, 0.5);
    EXPECT_NEAR(inKilogramsPerCubicMetre(floor::floodedDensity(gravel1600, at20)), 2011.0, 1.0);
}

// 400 x 1.25 + 0.05 x 998.2 = 549.9; 400 x 1.25 + 0.42 x 998.2 = 919.2: by hand, values of the grains from memory.
TEST(Masses, ExpandedClayDrainedAndFlooded)
{
    EXPECT_NEAR(inKilogramsPerCubicMetre(floor::drainedDensity(clay400, at20)), 550.0, 0.5);
    EXPECT_NEAR(inKilogramsPerCubicMetre(floor::floodedDensity(clay400, at20)), 919.0, 0.5);
}

// By hand: 2.4 x 1.2 x 0.3 m3 x 2011.5 kg/m3 + 60 kg = 1797.9 kg, x 9.80665 = 17.63 kN.
TEST(Masses, AFloodedGravelBedWeighsTwiceItsWater)
{
    const Area plan = squareMetres(2.4 * 1.2);
    const Mass bed = floor::bedMass(plan, metres(0.3), metres(0.3), gravel1600, at20) + kilograms(60.0);
    EXPECT_NEAR(inKilonewtons(weightOf(bed)), 17.63, 0.01);
}

TEST(Masses, ABedGrowsHeavierWithItsFloodDepthWithoutAJumpAtTheSurface)
{
    const Area plan = squareMetres(1.0);
    const auto mass = [&](double flood) {
        return inKilograms(floor::bedMass(plan, metres(0.30), metres(flood), clay400));
    };
    EXPECT_NEAR(mass(0.0), 0.30 * 550.0, 1e-9);
    EXPECT_NEAR(mass(0.20), 0.20 * 920.0 + 0.10 * 550.0, 1e-9);
    EXPECT_NEAR(mass(0.30), 0.30 * 920.0, 1e-9);
    EXPECT_NEAR(mass(0.35), 0.30 * 920.0 + 0.05 * 1000.0, 1e-9);
}

// A caged tank of 1.2 x 1.0 m with 1000 L and 60 kg empty: 1060 kg, 10.40 kN, 8.66 kPa, by hand (sizes from memory).
TEST(Masses, AFullCagedTank)
{
    const Mass full = floor::waterMass(litres(1000.0)) + kilograms(60.0);
    EXPECT_NEAR(inKilonewtons(weightOf(full)), 10.40, 0.01);
    EXPECT_NEAR(inKilopascals(floor::pressureUnder(full, squareMetres(1.2))), 8.66, 0.01);
}

TEST(Masses, AnEstimatedTareIsFourHundredthsOfTheWater)
{
    EXPECT_NEAR(inKilograms(floor::estimatedTare(litres(2000.0))), 80.0, 1e-9);
}

TEST(Masses, PromisesOfTheCallerAreChecked)
{
    EXPECT_THROW(floor::pressureUnder(kilograms(1.0), squareMetres(0.0)), base::BrokenPromise);
    const floor::MediumFilling leaky{kilogramsPerCubicMetre(400.0), 0.1, 0.3, 0.4};
    EXPECT_THROW(floor::floodedDensity(leaky), base::BrokenPromise);
}
