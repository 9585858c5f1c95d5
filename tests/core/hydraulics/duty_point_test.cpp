#include "core/hydraulics/duty_point.hpp"

#include <gtest/gtest.h>

#include <cmath>

#include "tests/core/hydraulics/example_pumps.hpp"

namespace sumpwright::hydraulics
{
namespace
{

using examples::g4500;

const nature::WaterProperties water = *nature::waterAt(units::celsius(20));

PipeSystem riser() // lift 1.20 m through 6 m of 27.2 mm, K 4.5 with the exit
{
    return {units::metresHead(1.20), {units::millimetres(27.2), units::metres(6.0), units::millimetres(0.0015)}, 4.5};
}

// Source: scipy 1.10.1 (PchipInterpolator with brentq on Darcy-Weisbach and Colebrook), an independent script.
TEST(DutyPoint, OfG4500OnARiser)
{
    const DutyPoint point = *dutyPoint(g4500(), 1.0, riser(), water);
    EXPECT_NEAR(units::inLitresPerHour(point.flow) / 2596.07, 1.0, 1e-5);
    EXPECT_NEAR(units::inMetresHead(point.head) / 1.95217, 1.0, 1e-5);
    EXPECT_NEAR(units::inMetresPerSecond(point.velocity) / 1.2410, 1.0, 1e-4);
    EXPECT_NEAR(units::inWatts(point.hydraulicPower) / 13.781, 1.0, 1e-4);
    EXPECT_NEAR(*point.wireToWater / 0.1969, 1.0, 1e-3);
    EXPECT_NEAR(units::inKilowattHours(*point.energyPerYear), 70.0 * 8.76, 1e-6);
    EXPECT_EQ(point.regime, FlowRegime::Turbulent);
    EXPECT_FALSE(point.runOut);
}

TEST(DutyPoint, OfG4500AtSpeedZeroPointEight)
{
    const DutyPoint point = *dutyPoint(g4500(), 0.8, riser(), water);
    EXPECT_NEAR(units::inLitresPerHour(point.flow) / 1633.35, 1.0, 1e-4);
    EXPECT_NEAR(units::inMetresHead(point.head) / 1.51577, 1.0, 1e-4);
    EXPECT_NEAR(units::inWatts(*point.electricalPower), 70.0 * 0.512, 1e-9);
}

// Source: scipy 1.10.1, the same independent script: flows added at equal head, heads added at equal flow.
TEST(DutyPoint, OfTwoG4500SideBySideAndInARow)
{
    const DutyPoint parallel = *dutyPoint(g4500().together(PumpArrangement::TwoParallel), 1.0, riser(), water);
    EXPECT_NEAR(units::inLitresPerHour(parallel.flow) / 3545.47, 1.0, 1e-5);
    EXPECT_NEAR(units::inMetresHead(parallel.head) / 2.55309, 1.0, 1e-5);
    EXPECT_NEAR(units::inWatts(*parallel.electricalPower), 140.0, 1e-9);
    const DutyPoint series = *dutyPoint(g4500().together(PumpArrangement::TwoInSeries), 1.0, riser(), water);
    EXPECT_NEAR(units::inLitresPerHour(series.flow) / 3392.82, 1.0, 1e-5);
    EXPECT_NEAR(units::inMetresHead(series.head) / 2.44523, 1.0, 1e-5);
    EXPECT_NEAR(units::inWatts(*series.electricalPower), 140.0, 1e-9);
}

// By hand, exact: a pump 4 - 0.25 q^2 against 1.5 + 0.15 q^2 (q in m3/h) meets it at q = 2.5, H = 2.4375. The pump is
// given by 81 points, the system is a fitting without length.
TEST(DutyPoint, MeetsAParabolaByHand)
{
    std::vector<PumpPoint> points;
    for (int i = 0; i <= 80; ++i) {
        const double q = 0.05 * i;
        points.push_back({units::litresPerHour(1000.0 * q), units::metresHead(4.0 - 0.25 * q * q)});
    }
    const units::Length bore = units::millimetres(30.0);
    const double v = units::inMetresPerSecond(meanVelocity(units::litresPerHour(1000.0), bore));
    PipeSystem system{units::metresHead(1.5), {bore, units::Length(), units::Length()}, 0.0};
    system.sumK = 0.15 * 2.0 * units::standardGravity / (v * v);
    const DutyPoint point = *dutyPoint(*PumpCurve::fromPoints(points), 1.0, system, water);
    EXPECT_NEAR(units::inLitresPerHour(point.flow), 2500.0, 2e-2);
    EXPECT_NEAR(units::inMetresHead(point.head), 2.4375, 2e-5);
    EXPECT_FALSE(point.electricalPower.has_value());
}

TEST(DutyPoint, LiesOnBothCurves)
{
    for (double lift : {-3.0, 0.0, 0.5, 2.0, 3.1, 3.1999999}) {
        PipeSystem system = riser();
        system.staticHead = units::metresHead(lift);
        const DutyPoint point = *dutyPoint(g4500(), 1.0, system, water);
        EXPECT_GT(units::inLitresPerHour(point.flow), 0.0) << lift;
        EXPECT_NEAR(units::inMetresHead(point.head), units::inMetresHead(g4500().headAt(point.flow)), 1e-12) << lift;
        EXPECT_NEAR(units::inMetresHead(point.head),
                    units::inMetresHead(systemHead(system, point.flow, water.kinematicViscosity)), 1e-9)
            << lift;
        EXPECT_NEAR(units::inMetresHead(point.head), lift + units::inMetresHead(point.frictionLoss + point.fittingLoss),
                    1e-9)
            << lift;
    }
}

TEST(DutyPoint, SaysWhenThePumpRunsOut)
{
    PipeSystem system = riser();
    system.staticHead = units::metresHead(-4.0);
    EXPECT_TRUE(dutyPoint(g4500(), 1.0, system, water)->runOut);
}

TEST(DutyPoint, RefusesALiftThePumpCannotReach)
{
    PipeSystem system = riser();
    system.staticHead = units::metresHead(3.2);
    const auto point = dutyPoint(g4500(), 1.0, system, water);
    ASSERT_FALSE(point.ok());
    EXPECT_EQ(point.refusal().id, "hydraulics.pump-cannot-lift");
    EXPECT_EQ(point.refusal().place, "static_head");
}

TEST(DutyPoint, RefusesBadInput)
{
    const auto refusal = [](auto change, double speed = 1.0) {
        PipeSystem system = riser();
        change(system);
        const auto point = dutyPoint(g4500(), speed, system, water);
        return point.ok() ? std::string() : point.refusal().id + " " + point.refusal().place;
    };
    EXPECT_EQ(refusal([](PipeSystem& s) { s.pipe.bore = units::Length(); }), "hydraulics.not-positive bore");
    EXPECT_EQ(refusal([](PipeSystem& s) { s.pipe.length = units::metres(-1); }), "hydraulics.negative length");
    EXPECT_EQ(refusal([](PipeSystem& s) { s.pipe.roughness = units::metres(-1); }), "hydraulics.negative roughness");
    EXPECT_EQ(refusal([](PipeSystem& s) { s.pipe.roughness = units::metres(1); }), "hydraulics.too-rough roughness");
    EXPECT_EQ(refusal([](PipeSystem& s) { s.sumK = std::nan(""); }), "hydraulics.negative sum_k");
    EXPECT_EQ(refusal([](PipeSystem& s) { s.staticHead = units::metresHead(std::nan("")); }),
              "hydraulics.not-a-number static_head");
    EXPECT_EQ(refusal([](PipeSystem&) {}, 0.0), "hydraulics.not-positive speed");
    EXPECT_EQ(refusal([](PipeSystem&) {}), "");
}

} // namespace
} // namespace sumpwright::hydraulics
