// The level a gravity pipe needs where it begins.
#include "core/hydraulics/gravity_run.hpp"

#include <gtest/gtest.h>

#include <cmath>

#include "core/hydraulics/friction.hpp"
#include "core/hydraulics/round_channel.hpp"
#include "core/hydraulics/side_outlet.hpp"

namespace
{

using namespace sumpwright;
using namespace sumpwright::hydraulics;

constexpr auto viscosity = units::squareMetresPerSecond(1.0034e-6);
constexpr auto bore = units::millimetres(103.6);

GravityPipe sloping(double length, double fall, double start = 1.0, double entryK = 0.5)
{
    GravityPipe pipe;
    pipe.bore = bore;
    pipe.roughness = units::millimetres(0.0015);
    pipe.reaches = {
        {units::metres(length), units::elevationMetres(start), units::elevationMetres(start - fall), entryK}};
    return pipe;
}

double needed(const GravityPipe& pipe, double litresPerHour, std::optional<double> tail = {})
{
    const auto level = tail ? std::optional(units::elevationMetres(*tail)) : std::nullopt;
    return units::inMetres(levelNeeded(pipe, units::litresPerHour(litresPerHour), level, viscosity));
}

// Steep: the entry holds the water, at critical depth. 2000 L/h 35.2 mm, 8000 L/h 74.3 mm over the invert of 103.6 mm
// with entry K 0.5 (independent script, open-channel equations).
TEST(GravityRun, FallsFreelyFromACriticalEntryWhereItIsSteep)
{
    EXPECT_NEAR(needed(sloping(5.0, 0.1), 2000.0), 1.0352, 1.8e-4);
    EXPECT_NEAR(needed(sloping(5.0, 0.1), 8000.0), 1.0743, 3.7e-4);
}

// Level and long: friction raises the water upstream of its critical outfall; full pipe as the bound.
TEST(GravityRun, StandsHigherWhereALevelPipeIsLong)
{
    const double shortPipe = needed(sloping(0.1, 0.0), 8000.0), longPipe = needed(sloping(25.0, 0.0), 8000.0);
    EXPECT_GT(longPipe, shortPipe + 0.01);
    EXPECT_LT(longPipe, 1.0 + 0.1036 * 1.3);
}

// Drawdown to a free outfall: the depth integrated over the length (dy/dx = (S - Sf) / (1 - Fr^2)) by an independent
// script with an adaptive Runge-Kutta method of order 5 (SciPy), entry K 0.5; here stepped in the energy instead.
TEST(GravityRun, FollowsTheDrawdownCurve)
{
    struct Case {
        double length, flow, boreMetres, fall, rough, depth, level; // m, L/h, m, m/m, m, m, m
    };
    for (const Case& c :
         {Case{25, 8000, 0.1036, 0, 1.5e-6, 0.089235, 0.095568}, Case{10, 8000, 0.1036, 0, 1.5e-6, 0.074416, 0.083407},
          Case{3, 2000, 0.0473, 0, 1e-5, 0.045273, 0.053150}, Case{6, 2000, 0.0690, 0.002, 1e-4, 0.033254, 0.040673},
          Case{4, 3000, 0.0788, 0.001, 1e-5, 0.041154, 0.049154}}) {
        GravityPipe pipe = sloping(c.length, c.fall * c.length);
        pipe.bore = units::metres(c.boreMetres);
        pipe.roughness = units::metres(c.rough);
        const auto water = waterAlong(pipe, units::litresPerHour(c.flow), {}, viscosity);
        EXPECT_NEAR(units::inMetres(water.reaches[0].startDepth), c.depth, 4e-4);
        EXPECT_NEAR(units::inMetres(water.upstreamLevel), 1.0 + c.level, 2e-4);
    }
}

// A mild slope long enough: uniform flow, whose friction slope is the fall; the depth that gives it is found here by
// Colebrook on the hydraulic diameter (EN 12056-2 annex B's form), and the level is its energy with the entry loss.
TEST(GravityRun, ComesToUniformDepthOnALongMildSlope)
{
    constexpr double fall = 0.001, q = 6000.0 / 3.6e6;
    GravityPipe pipe = sloping(200.0, 200.0 * fall);
    double low = 0.0, high = 0.1036;
    for (int i = 0; i < 100; ++i) {
        const double y = 0.5 * (low + high);
        const auto section = sectionAt(bore, units::metres(y));
        const double a = units::inSquareMetres(section.area), v = q / a;
        const double across = 4.0 * a / units::inMetres(section.wettedPerimeter);
        const double f = frictionFactor(v * across / 1.0034e-6, 1.5e-6 / across);
        (f * v * v / (2.0 * 9.80665 * across) > fall ? low : high) = y;
    }
    const double v = q / units::inSquareMetres(sectionAt(bore, units::metres(low)).area);
    EXPECT_NEAR(needed(pipe, 6000.0), 1.0 + low + 1.5 * v * v / (2.0 * 9.80665), 2e-4);
    const auto water = waterAlong(pipe, units::litresPerHour(6000.0), {}, viscosity);
    EXPECT_NEAR(units::inMetres(water.reaches[0].startDepth), low, 2e-4);
    EXPECT_NEAR(units::inMetres(water.reaches[0].endDepth),
                units::inMetres(criticalDepth(bore, units::litresPerHour(6000.0))), 1e-6);
}

// Under water at its end and full: tail, pipe friction, entry and exit loss add up (Darcy and Weisbach).
TEST(GravityRun, IsAFullPipeWhereItsEndIsDeepUnderWater)
{
    const double tail = 1.5, flow = 20000.0;
    const auto q = units::litresPerHour(flow);
    const double friction =
        units::inMetresHead(frictionLoss({bore, units::metres(8.0), units::millimetres(0.0015)}, q, viscosity));
    const double v = units::inMetresPerSecond(meanVelocity(q, bore)), head = v * v / (2.0 * 9.80665);
    EXPECT_NEAR(needed(sloping(8.0, 0.2), flow, tail), tail + friction + 1.5 * head, 1e-9);
}

TEST(GravityRun, DoesNotFeelATailBelowItsOutfall)
{
    EXPECT_EQ(needed(sloping(5.0, 0.2), 3000.0, 0.75), needed(sloping(5.0, 0.2), 3000.0));
    EXPECT_GT(needed(sloping(5.0, 0.2), 3000.0, 1.1), 1.1);
}

TEST(GravityRun, ClimbsOverACrest)
{
    GravityPipe pipe = sloping(2.0, 0.1);
    pipe.reaches.push_back({units::metres(0.5), units::elevationMetres(0.9), units::elevationMetres(1.4), 0.9});
    pipe.reaches.push_back({units::metres(2.0), units::elevationMetres(1.4), units::elevationMetres(0.5), 0.9});
    const double level = needed(pipe, 3000.0);
    EXPECT_GT(level, 1.4 + units::inMetres(criticalDepth(bore, units::litresPerHour(3000.0))));
    EXPECT_LT(level, 1.4 + 0.1036);
    EXPECT_NEAR(needed(pipe, 0.0), 1.4, 1e-12);
}

TEST(GravityRun, NeedsNothingAboveTheLipWhereItFallsAwayFromOne)
{
    GravityPipe pipe;
    pipe.bore = bore;
    pipe.fromLip = true;
    pipe.reaches = {{units::metres(0.9), units::elevationMetres(0.95), units::elevationMetres(0.05), 0.5},
                    {units::metres(2.0), units::elevationMetres(0.05), units::elevationMetres(0.0), 0.9}};
    EXPECT_EQ(needed(pipe, 5000.0), 0.95);
    EXPECT_GT(needed(pipe, 5000.0, 1.2), 1.2);
}

TEST(GravityRun, NeverNeedsLessForMoreFlowOrAHigherTail)
{
    for (const double fall : {-0.05, 0.0, 0.002, 0.02, 0.3, 3.0})
        for (const double roof : {0.0, 0.9, 1.05, 1.3}) {
            const GravityPipe pipe = sloping(3.0, fall);
            double last = -1e9;
            for (double flow = 0.0; flow < 60000.0; flow += 97.0) {
                const double level = needed(pipe, flow, roof);
                ASSERT_TRUE(std::isfinite(level));
                ASSERT_GE(level, last - 1e-6) << fall << ' ' << roof << ' ' << flow;
                ASSERT_GE(needed(pipe, flow, roof + 0.05), level - 1e-6);
                last = level;
            }
        }
}

} // namespace
