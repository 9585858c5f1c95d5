// Loads on the floor against published and hand-made figures.
#include "tests/core/assessment/assessing.hpp"
#include "tests/support/sound_plan.hpp"

namespace
{

using namespace sumpwright;
using namespace sumpwright::test;
using assessment::LoadCase;
using assessment::Trust;

assessment::Load loadOf(const assessment::Assessment& result, base::Id vessel, LoadCase which)
{
    const auto& load = assessment::find(result.floor->vessels, vessel)->in(which);
    EXPECT_TRUE(load.ok()) << (load.ok() ? "" : load.reason().text);
    return load.ok() ? *load : assessment::Load{};
}

// 1 m of water at 1000 kg/m3 presses 9.807 kPa (definition of g), here on a thin-walled weightless vessel.
TEST(Loads, OneMetreOfWaterIsTheTextbookPressure)
{
    DrawnPlan drawn;
    const Id tank = drawn.vessel(plan::VesselKind::fishTank, {0, 0, 0}, 2.0, 2.0, 1.0);
    drawn.changeVessel(tank, [](plan::Vessel& v) { v.measuredTare = units::kilograms(0.0); });
    const auto load = loadOf(assess(drawn), tank, LoadCase::toRim);
    EXPECT_NEAR(units::inKilonewtons(load.weight) / 4.0, 9.807, 0.001);
    EXPECT_NEAR(units::inKilopascals(load.underFootprint), 9.807 * 4.0 / (2.012 * 2.012), 0.001);
}

// Caged tank: 1000 L and 60 kg empty on 1.2 m x 1.0 m: 1060 kg, 10.40 kN, 8.66 kPa (usual sizes, trade note).
TEST(Loads, OfACagedTankAreTheUsualOnes)
{
    DrawnPlan drawn;
    const Id tank = drawn.vessel(plan::VesselKind::fishTank, {0, 0, 0}, 1.0, 1.0, 1.0);
    drawn.changeVessel(tank, [](plan::Vessel& v) {
        v.shape = plan::CagedShape{};
        v.wallHeight = v.wallThickness + units::metres(1.0 / (1.188 * 0.988)); // so that it holds 1000 L
    });
    const auto result = assess(drawn);
    const auto load = loadOf(result, tank, LoadCase::toRim);
    EXPECT_NEAR(units::inKilograms(load.total), 1060.0, 1e-6);
    EXPECT_NEAR(units::inKilonewtons(load.weight), 10.40, 0.005);
    EXPECT_NEAR(units::inKilopascals(load.underFootprint), 8.66, 0.005);
    EXPECT_EQ(result.floor->vessels.front().tareFrom, Trust::catalogue);
}

// Gravel flooded 2011 kg/m3 and drained 1666 kg/m3 (computed from EN 1991-1-1 densities, heaviest filling).
TEST(Loads, OfABedCountWetMediumAndWater)
{
    const SoundPlan plan;
    const auto result = assess(plan.drawn);
    const auto load = loadOf(result, plan.bed1, LoadCase::toRim);
    const double plan2 = 1.2 * 0.8;
    EXPECT_NEAR(units::inKilograms(load.water + load.medium), plan2 * (0.3 * 2011.0 + 0.05 * 1000.0), 1.0);
    EXPECT_NEAR(units::inKilograms(load.water), plan2 * (0.3 * 0.396 + 0.05) * 1000.0, 1e-6);
    EXPECT_NEAR(units::inKilograms(load.total - load.water - load.medium - load.tare), 25.0, 1e-9);
    ASSERT_TRUE(load.perLeg.has_value());
    EXPECT_NEAR(units::inKilonewtons(*load.perLeg) * 6.0, units::inKilonewtons(load.weight), 1e-12);
    EXPECT_NEAR(units::inKilopascals(*load.underPad), units::inKilonewtons(*load.perLeg) / 0.01, 1e-9);
    const auto* vessel = assessment::find(result.floor->vessels, plan.bed1);
    EXPECT_EQ(vessel->standFrom, Trust::measured);
    EXPECT_EQ(vessel->tareFrom, Trust::assumed);
    EXPECT_EQ(vessel->mediumFrom, Trust::catalogue);
}

TEST(Loads, ToTheRimAreNeverLessThanFlooded)
{
    const SoundPlan plan;
    const auto result = assess(plan.drawn);
    for (const auto& vessel : result.floor->vessels)
        EXPECT_GE(vessel.in(LoadCase::toRim)->total, vessel.in(LoadCase::bedsFlooded)->total);
    const auto& rim = result.floor->in(LoadCase::toRim);
    double sum = 0.0;
    for (const auto& vessel : result.floor->vessels)
        sum += units::inKilograms(vessel.in(LoadCase::toRim)->total);
    EXPECT_NEAR(units::inKilograms(rim->mass), sum, 1e-9);
    EXPECT_NEAR(units::inKilopascals(*rim->meanOverFloor), units::inKilonewtons(rim->weight) / 30.0, 1e-12);
}

TEST(Loads, CompareOnlyWithAUseThatWasChosen)
{
    SoundPlan plan;
    EXPECT_FALSE(assess(plan.drawn).floor->comparison.has_value());
    plan.drawn.changeSite([](plan::Site& site) { site.floorUse = "dwelling-us"; });
    const auto result = assess(plan.drawn);
    ASSERT_TRUE(result.floor->comparison.has_value());
    const auto& comparison = *result.floor->comparison;
    EXPECT_NEAR(units::inKilopascals(comparison.liveLoad), 1.92, 1e-12);
    EXPECT_NEAR(units::inMillimetres(comparison.waterDepth), 196.0, 0.5); // 40 psf, as the code's table gives it
    EXPECT_NEAR(comparison.worstFootprintRatio,
                units::inKilopascals(result.floor->in(LoadCase::toRim)->worstFootprint) / 1.92, 1e-12);
}

TEST(Loads, AssumeAStandOfBlocksByItsHeight)
{
    DrawnPlan drawn;
    const Id tank = drawn.vessel(plan::VesselKind::fishTank, {0, 0, 0.386}, 1.0, 1.0, 0.5); // base at 0.38
    drawn.changeVessel(tank, [](plan::Vessel& v) {
        v.stand = plan::Stand{plan::StandKind::blocks, {}, 4, units::metres(0.2)};
    });
    const auto result = assess(drawn);
    EXPECT_NEAR(units::inKilograms(loadOf(result, tank, LoadCase::toRim).stand), 4 * 2 * 17.0, 1e-9);
    EXPECT_EQ(result.floor->vessels.front().standFrom, Trust::assumed);
}

TEST(Loads, AreMissingWithTheirReasonWhenLevelsAre)
{
    SoundPlan plan;
    plan.drawn.changeVessel(plan.sump, [](plan::Vessel& sump) { sump.runningLevel.reset(); });
    const auto result = assess(plan.drawn);
    EXPECT_EQ(result.floor->in(LoadCase::bedsFlooded).reason().id, "sump-level-missing");
    EXPECT_TRUE(result.floor->in(LoadCase::toRim).ok());
}

} // namespace
