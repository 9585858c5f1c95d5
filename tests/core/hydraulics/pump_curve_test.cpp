#include "core/hydraulics/pump_curve.hpp"

#include <gtest/gtest.h>

#include <cmath>

#include "core/base/ensure.hpp"
#include "tests/core/hydraulics/example_pumps.hpp"

namespace sumpwright::hydraulics
{
namespace
{

using examples::g4500;
using examples::points;

double headAt(const PumpCurve& pump, double litresPerHour, double speed = 1.0)
{
    return units::inMetresHead(pump.headAt(units::litresPerHour(litresPerHour), speed));
}

// Source: scipy 1.10.1, PchipInterpolator through the same five points.
TEST(PumpCurve, IsTheMonotoneCubicOfScipy)
{
    const PumpCurve pump = g4500();
    EXPECT_NEAR(headAt(pump, 500), 3.1054953668710286, 1e-12);
    EXPECT_NEAR(headAt(pump, 1500), 2.721499148521524, 1e-12);
    EXPECT_NEAR(headAt(pump, 2000), 2.3977588897624593, 1e-12);
    EXPECT_NEAR(headAt(pump, 3000), 1.5967894802432958, 1e-12);
    EXPECT_NEAR(headAt(pump, 4000), 0.584880683152288, 1e-12);
    constexpr double slopes[] = {-0.0977777778, -0.3700680272, -0.7136813922, -0.9731331331, -1.2177777778};
    for (int i = 0; i < 5; ++i)
        EXPECT_NEAR(pump.headWithSlopeAt(units::litresPerHour(1125.0 * i)).slope.value() / 3.6e3, slopes[i], 1e-9);
}

TEST(PumpCurve, PassesThroughItsPoints)
{
    const PumpCurve pump = g4500();
    for (const PumpPoint& point : pump.points())
        EXPECT_NEAR(units::inMetresHead(pump.headAt(point.flow)), units::inMetresHead(point.head), 1e-14);
}

TEST(PumpCurve, FallsEverywhereAndItsSlopeIsTheDerivative)
{
    for (const PumpCurve& pump :
         {g4500(), *PumpCurve::fromRatings(units::metresHead(2.5), units::litresPerHour(3000)),
          *PumpCurve::fromPoints(points({{0, 4}, {100, 3.99}, {200, 1.0}, {1000, 0.9}, {1001, 0.1}}))})
        for (double q = 7.0; q < 6000.0; q += 13.0) {
            EXPECT_LT(headAt(pump, q), headAt(pump, q - 6.0)) << q;
            const double difference = (headAt(pump, q + 1e-3) - headAt(pump, q - 1e-3)) / 2e-3 * 3.6e6;
            const double slope = pump.headWithSlopeAt(units::litresPerHour(q)).slope.value();
            EXPECT_NEAR(slope, difference, 1e-2 * std::fabs(difference) + 1.0) << q;
        }
}

// The curve runs on straight past its last point: 1.2177778 m per 1000 L/h for G4500.
TEST(PumpCurve, RunsOnStraightPastItsEnd)
{
    EXPECT_NEAR(headAt(g4500(), 5500), -1.2177777778, 1e-9);
    EXPECT_TRUE(g4500().runsOut(units::litresPerHour(4501)));
    EXPECT_FALSE(g4500().runsOut(units::litresPerHour(4499)));
    // An end slope of zero would never come down: the last secant runs on instead.
    const PumpCurve flat = *PumpCurve::fromPoints(points({{0, 3}, {1000, 1}, {2000, 0.9}, {3000, 0.899999}}));
    EXPECT_LT(headAt(flat, 9000), headAt(flat, 3000));
}

// By the affinity laws the points of G4500 at speed 0.8 are (900, 1.856) (1800, 1.4208) (2700, 0.7936) (3600, 0).
TEST(PumpCurve, ObeysTheAffinityLaws)
{
    EXPECT_NEAR(headAt(g4500(), 0, 0.8), 2.048, 1e-12);
    EXPECT_NEAR(headAt(g4500(), 900, 0.8), 1.856, 1e-12);
    EXPECT_NEAR(headAt(g4500(), 1800, 0.8), 1.4208, 1e-12);
    EXPECT_NEAR(headAt(g4500(), 2700, 0.8), 0.7936, 1e-12);
    EXPECT_NEAR(headAt(g4500(), 3600, 0.8), 0.0, 1e-12);
    EXPECT_NEAR(units::inLitresPerHour(g4500().greatestFlow(0.8)), 3600.0, 1e-9);
    EXPECT_NEAR(units::inWatts(*g4500().powerAt(units::litresPerHour(900), 0.8)), 70.0 * 0.512, 1e-9);
}

// By hand: H0 (1 - 0.5^1.7) = 3 x 0.69223 = 2.07664 m at half the greatest flow.
TEST(PumpCurve, TwoNumbersFromTheBox)
{
    const PumpCurve pump = *PumpCurve::fromRatings(units::metresHead(3.0), units::litresPerHour(2000));
    EXPECT_NEAR(headAt(pump, 0), 3.0, 1e-12);
    EXPECT_NEAR(headAt(pump, 1000), 2.07664, 2e-5);
    EXPECT_NEAR(headAt(pump, 2000), 0.0, 1e-12);
    EXPECT_LT(headAt(pump, 2100), 0.0);
    EXPECT_TRUE(pump.fromTwoNumbers());
    EXPECT_FALSE(g4500().fromTwoNumbers());
}

TEST(PumpCurve, PowerIsUnknownConstantOrACurve)
{
    const auto shape = points({{0, 3}, {2000, 0}});
    const auto at = [&](const PumpPower& power, double q) {
        return PumpCurve::fromPoints(shape, power)->powerAt(units::litresPerHour(q));
    };
    EXPECT_FALSE(at({}, 500).has_value());
    EXPECT_EQ(units::inWatts(*at(units::watts(25), 500)), 25.0);
    const std::vector<PumpPowerPoint> curve = {{units::litresPerHour(0), units::watts(20)},
                                               {units::litresPerHour(1000), units::watts(30)}};
    EXPECT_NEAR(units::inWatts(*at(curve, 500)), 25.0, 1e-12);
    EXPECT_NEAR(units::inWatts(*at(curve, 1800)), 30.0, 1e-12);
}

// Source: scipy 1.10.1, PchipInterpolator; input power that rises and falls, and one that starts against its bend.
TEST(PumpCurve, PowerCurvesThatTurnAreTheCubicOfScipy)
{
    const auto at = [](const std::vector<std::pair<double, double>>& rows, double q) {
        std::vector<PumpPowerPoint> power;
        for (const auto& [flow, watts] : rows)
            power.push_back({units::litresPerHour(flow), units::watts(watts)});
        return units::inWatts(
            *PumpCurve::fromPoints(points({{0, 3}, {4000, 0}}), power)->powerAt(units::litresPerHour(q)));
    };
    const std::vector<std::pair<double, double>> hump = {{0, 20}, {1000, 30}, {3000, 31}, {4000, 24}};
    EXPECT_NEAR(at(hump, 500), 26.51348039215686, 1e-12);
    EXPECT_NEAR(at(hump, 2000), 30.764705882352942, 1e-12);
    EXPECT_NEAR(at(hump, 3500), 28.6875, 1e-12);
    const std::vector<std::pair<double, double>> cliff = {{0, 20}, {1000, 20.5}, {1100, 10}, {4000, 9}};
    EXPECT_NEAR(at(cliff, 300), 20.3285, 1e-12);
    EXPECT_NEAR(at(cliff, 500), 20.4375, 1e-12);
    EXPECT_NEAR(at(cliff, 1050), 15.262436174132759, 1e-12);
    EXPECT_NEAR(at(cliff, 2000), 9.344963195060096, 1e-12);
}

std::string refusalOf(const base::Outcome<PumpCurve>& outcome)
{
    return outcome.ok() ? "" : outcome.refusal().id + " " + outcome.refusal().place;
}

TEST(PumpCurve, OfTwoAlikeAddsFlowsSideBySideAndHeadsInARow)
{
    const PumpCurve one = g4500();
    const PumpCurve side = one.together(PumpArrangement::TwoParallel), row = one.together(PumpArrangement::TwoInSeries);
    EXPECT_EQ(one.together(PumpArrangement::One).headAt(units::litresPerHour(900)),
              one.headAt(units::litresPerHour(900)));
    for (const double speed : {1.0, 0.8})
        for (const double lph : {0.0, 700.0, 2300.0, 4400.0, 6000.0}) {
            const units::Flow flow = units::litresPerHour(lph);
            EXPECT_NEAR(units::inMetresHead(side.headAt(2.0 * flow, speed)),
                        units::inMetresHead(one.headAt(flow, speed)), 1e-12);
            EXPECT_NEAR(units::inMetresHead(row.headAt(flow, speed)),
                        2.0 * units::inMetresHead(one.headAt(flow, speed)), 1e-12);
            EXPECT_NEAR(units::inWatts(*side.powerAt(2.0 * flow, speed)),
                        2.0 * units::inWatts(*one.powerAt(flow, speed)), 1e-9);
            EXPECT_NEAR(units::inWatts(*row.powerAt(flow, speed)), 2.0 * units::inWatts(*one.powerAt(flow, speed)),
                        1e-9);
            for (const PumpCurve* curve : {&side, &row}) {
                const double step = 1e-9; // m3/s
                const auto at = [&](double q) {
                    return units::inMetresHead(curve->headAt(units::cubicMetresPerSecond(q), speed));
                };
                const double q = units::inCubicMetresPerSecond(flow) + 1e-6;
                EXPECT_NEAR((at(q + step) - at(q - step)) / (2.0 * step) /
                                curve->headWithSlopeAt(units::cubicMetresPerSecond(q), speed).slope.value(),
                            1.0, 1e-4);
            }
        }
    EXPECT_NEAR(units::inLitresPerHour(side.greatestFlow()), 9000.0, 1e-6);
    EXPECT_NEAR(units::inMetresHead(side.shutOffHead()), 3.2, 1e-12);
    EXPECT_NEAR(units::inLitresPerHour(row.greatestFlow()), 4500.0, 1e-6);
    EXPECT_NEAR(units::inMetresHead(row.shutOffHead(0.8)), 6.4 * 0.64, 1e-12);
    EXPECT_TRUE(row.runsOut(units::litresPerHour(4600)));
    EXPECT_FALSE(side.runsOut(units::litresPerHour(8900)));
}

// Affinity laws by hand at speed 0.8: flows times 0.8, heads times 0.64; 1125 L/h at 2.9 m is 900 L/h at 1.856 m.
TEST(PumpCurve, ItsPointsMoveBySpeedAsTheAffinityLawsSay)
{
    constexpr double scaled[][2] = {{900, 1.856}, {1800, 1.4208}, {2700, 0.7936}, {3600, 0.0}};
    for (const auto& row : scaled)
        EXPECT_NEAR(units::inMetresHead(g4500().headAt(units::litresPerHour(row[0]), 0.8)), row[1], 1e-12);
}

TEST(PumpCurve, RefusesPointsThatRise)
{
    EXPECT_EQ(refusalOf(PumpCurve::fromPoints(points({{0, 2}, {500, 2.1}, {900, 0}}))),
              "hydraulics.pump-head-rises point 2");
    EXPECT_EQ(refusalOf(PumpCurve::fromPoints(points({{0, 2}, {500, 1}, {900, 1}}))),
              "hydraulics.pump-head-rises point 3");
}

TEST(PumpCurve, RefusesWhatIsNoCurve)
{
    EXPECT_EQ(refusalOf(PumpCurve::fromPoints({})), "hydraulics.pump-too-few-points points");
    EXPECT_EQ(refusalOf(PumpCurve::fromPoints(points({{0, 2}}))), "hydraulics.pump-too-few-points points");
    EXPECT_EQ(refusalOf(PumpCurve::fromPoints(points({{100, 2}, {900, 0}}))),
              "hydraulics.pump-starts-off-zero point 1");
    EXPECT_EQ(refusalOf(PumpCurve::fromPoints(points({{0, 2}, {900, 1}, {900, 0}}))),
              "hydraulics.pump-flow-not-rising point 3");
    EXPECT_EQ(refusalOf(PumpCurve::fromPoints(points({{0, 2}, {900, 1}, {800, 0}}))),
              "hydraulics.pump-flow-not-rising point 3");
    EXPECT_EQ(refusalOf(PumpCurve::fromPoints(points({{0, 2}, {900, -1}}))), "hydraulics.pump-negative point 2");
    EXPECT_EQ(refusalOf(PumpCurve::fromPoints(points({{0, 2}, {std::nan(""), 0}}))),
              "hydraulics.pump-not-a-number point 2");
    EXPECT_EQ(refusalOf(PumpCurve::fromPoints(points({{0, 2}, {900, 0}}), units::watts(0))),
              "hydraulics.pump-negative power");
    EXPECT_EQ(refusalOf(PumpCurve::fromPoints(points({{0, 2}, {900, 0}}), std::vector<PumpPowerPoint>{})),
              "hydraulics.pump-too-few-points power");
    EXPECT_EQ(refusalOf(PumpCurve::fromRatings(units::metresHead(0), units::litresPerHour(900))),
              "hydraulics.pump-negative shut_off_head");
    EXPECT_EQ(refusalOf(PumpCurve::fromRatings(units::metresHead(2), units::litresPerHour(std::nan("")))),
              "hydraulics.pump-negative greatest_flow");
}

TEST(PumpCurve, HoldsTheCallerToAPositiveSpeed)
{
    EXPECT_THROW(g4500().headAt(units::litresPerHour(100), 0.0), base::BrokenPromise);
    EXPECT_THROW(g4500().powerAt(units::litresPerHour(100), std::nan("")), base::BrokenPromise);
}

} // namespace
} // namespace sumpwright::hydraulics
