#include "core/hydraulics/friction.hpp"

#include <gtest/gtest.h>

#include <cmath>

#include "core/base/ensure.hpp"

namespace sumpwright::hydraulics
{
namespace
{

const units::KinematicViscosity at20 = units::squareMetresPerSecond(1.00340e-6);

struct Factor {
    double reynolds;
    double roughness;
    double factor;
};

// Source: Colebrook-White solved in closed form through Lambert's W by the reference library python3-fluids 1.0.22.
TEST(Friction, TurbulentFactorIsColebrooks)
{
    constexpr Factor rows[] = {
        {4000, 0, 0.03990701406},   {1e4, 0, 0.03088295035},    {2e4, 0, 0.02588307854},    {5e4, 0, 0.02089144353},
        {1e5, 0, 0.01798977308},    {1e6, 0, 0.011645041},      {5e3, 5e-5, 0.03744866653}, {2e4, 2e-4, 0.02631690104},
        {1e5, 1e-4, 0.01851386608}, {1e5, 1e-3, 0.02217453594}, {1e5, 1e-2, 0.03850354353}, {1e6, 1e-5, 0.01186954483},
        {1e4, 0.05, 0.07380127564}, {3e4, 2e-3, 0.0280936396},
    };
    for (const Factor& row : rows)
        EXPECT_NEAR(frictionFactor(row.reynolds, row.roughness) / row.factor, 1.0, 1e-9)
            << row.reynolds << " " << row.roughness;
}

// Source: Serghides 1984 as tabulated by the tests of the fluids library (Re 1e5, e 1e-4: 0.018513589832), stated to
// lie within 0.0031 % of Colebrook; Cengel and Cimbala, Fluid Mechanics, Re 126 400, e 0.000042: 0.0174 (from memory).
TEST(Friction, AgreesWithOtherPublishedValues)
{
    EXPECT_NEAR(frictionFactor(1e5, 1e-4) / 0.018513589832, 1.0, 3.1e-5);
    EXPECT_NEAR(frictionFactor(126400, 0.000042), 0.0174, 5e-5);
}

TEST(Friction, FactorSolvesColebrooksEquation)
{
    for (double re = 4000; re < 1e8; re *= 1.7)
        for (double e : {0.0, 1e-6, 1e-4, 1e-3, 0.01, 0.05, 0.3}) {
            const double x = 1.0 / std::sqrt(frictionFactor(re, e));
            EXPECT_NEAR(x, -2.0 * std::log10(e / 3.7 + 2.51 * x / re), 1e-12 * x + 1e-12) << re << " " << e;
        }
}

// Source: Hagen-Poiseuille, f = 64/Re.
TEST(Friction, LaminarFactorIsHagenPoiseuilles)
{
    for (double re : {1e-6, 1.0, 64.0, 1662.6, 2000.0})
        EXPECT_DOUBLE_EQ(frictionFactor(re, 0.01), 64.0 / re);
}

// Source: cubic Hermite of ln f in ln Re evaluated by an independent script (scipy CubicHermiteSpline, ends as stated
// in the header): Re, f at e = 0, f at e = 1e-4.
TEST(Friction, TransitionIsTheStatedCubic)
{
    constexpr double rows[][3] = {
        {2250, 0.030158, 0.030163}, {2500, 0.030922, 0.030938}, {3000, 0.035279, 0.035328}, {3500, 0.039256, 0.039339}};
    for (const auto& row : rows) {
        EXPECT_NEAR(frictionFactor(row[0], 0.0), row[1], 6e-7) << row[0];
        EXPECT_NEAR(frictionFactor(row[0], 1e-4), row[2], 6e-7) << row[0];
    }
}

TEST(Friction, TransitionMeetsBothEndsInValueAndSlope)
{
    for (double e : {0.0, 1e-4, 1e-2, 0.05})
        for (double end : {laminarLimit, turbulentLimit}) {
            const double d = 1e-4 * end;
            const auto lnf = [&](double re) { return std::log(frictionFactor(re, e)); };
            EXPECT_NEAR(lnf(end * (1 + 1e-12)), lnf(end * (1 - 1e-12)), 1e-10) << e << " " << end;
            const double below = (lnf(end) - lnf(end - d)) / d * end, above = (lnf(end + d) - lnf(end)) / d * end;
            EXPECT_NEAR(below, above, 5e-3) << e << " " << end;
        }
}

struct Line {
    double flow;      // L/h
    double bore;      // mm
    double length;    // m
    double roughness; // m
    double velocity;  // m/s
    double reynolds;
    double loss; // m
};

// Source: Darcy-Weisbach with the friction factors above, worked in an independent script; tolerance 0.1 %.
TEST(Friction, StraightPipesLoseWhatHandCalculationSays)
{
    constexpr Line rows[] = {
        {100, 21.2, 10, 1.5e-6, 0.07869, 1662.6, 0.005733}, {300, 21.2, 10, 1.5e-6, 0.23608, 4987.9, 0.050261},
        {1000, 27.2, 10, 1.5e-6, 0.47805, 12959, 0.124055}, {2000, 35.2, 10, 1.5e-6, 0.57089, 20027, 0.122588},
        {5000, 57.0, 20, 1.5e-6, 0.54429, 30919, 0.123963}, {2000, 25.2, 10, 7e-6, 1.11388, 27975, 0.617141},
        {2000, 25.2, 10, 7e-5, 1.11388, 27975, 0.748257},
    };
    for (const Line& row : rows) {
        const units::Flow flow = units::litresPerHour(row.flow);
        const StraightPipe pipe{units::millimetres(row.bore), units::metres(row.length), units::metres(row.roughness)};
        EXPECT_NEAR(units::inMetresPerSecond(meanVelocity(flow, pipe.bore)) / row.velocity, 1.0, 1e-3) << row.flow;
        EXPECT_NEAR(reynoldsNumber(flow, pipe.bore, at20) / row.reynolds, 1.0, 1e-3) << row.flow;
        EXPECT_NEAR(units::inMetresHead(frictionLoss(pipe, flow, at20)) / row.loss, 1.0, 1e-3) << row.flow;
    }
}

TEST(Friction, SlopeIsTheDerivative)
{
    const StraightPipe pipe{units::millimetres(21.2), units::metres(3.0), units::millimetres(0.0015)};
    for (double lph : {-900.0, -150.0, 20.0, 150.0, 200.0, 300.0, 900.0, 9000.0}) {
        const double d = 1e-5 * std::fabs(lph);
        const auto loss = [&](double q) {
            return units::inMetresHead(frictionLoss(pipe, units::litresPerHour(q), at20));
        };
        const double difference = (loss(lph + d) - loss(lph - d)) / (2.0 * d) * 3.6e6;
        EXPECT_NEAR(frictionLossWithSlope(pipe, units::litresPerHour(lph), at20).slope.value() / difference, 1.0, 1e-5)
            << lph;
    }
}

TEST(Friction, StillWaterLosesNothing)
{
    const StraightPipe pipe{units::millimetres(21.2), units::metres(3.0), units::millimetres(0.0015)};
    EXPECT_EQ(units::inMetresHead(frictionLoss(pipe, units::Flow(), at20)), 0.0);
    EXPECT_GT(frictionLossWithSlope(pipe, units::Flow(), at20).slope.value(), 0.0);
}

TEST(Friction, NamesTheRegime)
{
    EXPECT_EQ(regimeOf(0.0), FlowRegime::Still);
    EXPECT_EQ(regimeOf(2000.0), FlowRegime::Laminar);
    EXPECT_EQ(regimeOf(2000.1), FlowRegime::Transition);
    EXPECT_EQ(regimeOf(3999.9), FlowRegime::Transition);
    EXPECT_EQ(regimeOf(4000.0), FlowRegime::Turbulent);
}

// By hand: 1000 L/h through 3 m of 25 mm, f 0.08: 0.08 x 3/0.025 x 0.56588^2 / (2 x 9.80665) = 0.15674 m; the smooth
// hose loses 0.0556 m, so the corrugated one 2.8 times as much, between the 2 and 4 times of the trade (no source).
TEST(Friction, CorrugatedHoseKeepsItsFactor)
{
    StraightPipe hose{units::millimetres(25.0), units::metres(3.0), units::millimetres(0.0015)};
    const units::Flow flow = units::litresPerHour(1000.0);
    const double smooth = units::inMetresHead(frictionLoss(hose, flow, at20));
    EXPECT_NEAR(smooth, 0.0556, 1e-4);
    hose.corrugatedFactor = 0.08;
    const double corrugated = units::inMetresHead(frictionLoss(hose, flow, at20));
    EXPECT_NEAR(corrugated, 0.15674, 2e-5);
    EXPECT_GT(corrugated, 2.0 * smooth);
    EXPECT_LT(corrugated, 4.0 * smooth);
    EXPECT_NEAR(units::inMetresHead(frictionLoss(hose, -flow, at20)), -corrugated, 1e-15);
    EXPECT_NEAR(units::inMetresHead(frictionLoss(hose, 2.0 * flow, at20)) / corrugated, 4.0, 1e-12);
    EXPECT_EQ(corrugatedFrictionFactor(1e5, 0.08), 0.08);
    EXPECT_EQ(corrugatedFrictionFactor(400.0, 0.08), 0.16);
}

TEST(Friction, CorrugatedLossRisesWithFlowAndMeetsTheLaminarLaw)
{
    const StraightPipe hose{units::millimetres(25.0), units::metres(3.0), units::Length(), 0.08};
    const StraightPipe smooth{units::millimetres(25.0), units::metres(3.0), units::Length()};
    double before = 0.0;
    for (double lph = 0.5; lph < 5000.0; lph *= 1.05) {
        const units::Flow flow = units::litresPerHour(lph);
        const double loss = units::inMetresHead(frictionLoss(hose, flow, at20));
        EXPECT_GT(loss, before) << lph;
        before = loss;
        if (reynoldsNumber(flow, hose.bore, at20) < 799.0) {
            EXPECT_EQ(loss, units::inMetresHead(frictionLoss(smooth, flow, at20))) << lph;
        }
        const auto at = [&](double q) {
            return units::inMetresHead(frictionLoss(hose, units::litresPerHour(q), at20));
        };
        const double slope = (at(lph * 1.0001) - at(lph * 0.9999)) / (0.0002 * lph / 3.6e6);
        const double told = frictionLossWithSlope(hose, flow, at20).slope.value();
        EXPECT_NEAR(slope / told, 1.0, std::fabs(reynoldsNumber(flow, hose.bore, at20) - 800.0) < 1.0 ? 1.0 : 1e-4)
            << lph;
    }
}

TEST(Friction, HoldsTheCallerToItsPromises)
{
    EXPECT_THROW(frictionFactor(0.0, 0.0), base::BrokenPromise);
    EXPECT_THROW(frictionFactor(std::nan(""), 0.0), base::BrokenPromise);
    EXPECT_THROW(frictionFactor(1e5, -1e-9), base::BrokenPromise);
    EXPECT_THROW(frictionFactor(1e5, 0.6), base::BrokenPromise);
    EXPECT_THROW(frictionLoss({units::Length(), units::metres(1), units::Length()}, units::litresPerHour(1), at20),
                 base::BrokenPromise);
}

} // namespace
} // namespace sumpwright::hydraulics
