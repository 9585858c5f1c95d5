// Classical network problems of hydraulics textbooks: reservoirs joined at a point, pipes in a row, loops.
#include <gtest/gtest.h>

#include <cmath>

#include "tests/core/hydraulics/example_networks.hpp"

namespace sumpwright::hydraulics
{
namespace
{

using namespace examples;

constexpr double foot = 0.3048;

double flowOf(const NetworkResult& r, std::size_t link) { return units::inCubicMetresPerSecond(r.links[link].flow); }

// A pipe with a friction factor given: its whole loss is a K of f L/D, so that it goes with the square of the flow.
PipeLink givenFactor(double boreM, double lengthM, double f) { return pipe(1e3 * boreM, 0.0, f * lengthM / boreM); }

// A pipe that loses r Q^2, as loops are set in books (Q in any unit, here L/s).
PipeLink squareLaw(double lossPerSquare)
{
    const double perSquare = lossPerSquare * 1e6; // m per (m3/s)^2
    const double area = units::pi / 4.0 * 0.1 * 0.1;
    return pipe(100.0, 0.0, perSquare * 2.0 * units::standardGravity * area * area);
}

// Source: White, Fluid Mechanics, chapter 6, three reservoirs at 20, 100 and 40 m joined at a point by the pipes of the
// parallel example (values from memory): -52.4, 47.1 and 6.0 m3/h (their sum 0.7 off), the joint at 34.3 m. Tolerance
// 2 % of the greater flows, 1 m3/h of the small one, which the book's rounding moves most.
TEST(NetworkTextbook, ThreeReservoirsByFriction)
{
    Network n = emptyNetwork();
    n.viscosity = units::squareMetresPerSecond(1.02e-6);
    const std::size_t joint = n.addJunction();
    const std::size_t links[] = {n.addLink(level(n, 20.0), joint, pipe(80, 100, 0, 0.24e-3)),
                                 n.addLink(level(n, 100.0), joint, pipe(60, 150, 0, 0.12e-3)),
                                 n.addLink(level(n, 40.0), joint, pipe(40, 80, 0, 0.20e-3))};
    const NetworkResult r = solve(n);
    ASSERT_TRUE(r.solved());
    EXPECT_NEAR(lph(r, links[0]) / -52400.0, 1.0, 0.02);
    EXPECT_NEAR(lph(r, links[1]) / 47100.0, 1.0, 0.02);
    EXPECT_NEAR(lph(r, links[2]) / 1e3, 6.0, 1.0);
    EXPECT_NEAR(grade(r, joint), 34.3, 0.3);
}

// Source: Munson, Young and Okiishi, Fundamentals of Fluid Mechanics, chapter 8, reservoirs at 100, 20 and 0 ft, pipes
// of 1 ft bore and 1000, 500 and 400 ft, f 0.02, no fittings (the data seen, the answers from memory): 12.5 ft3/s leave
// the highest, 2.26 reach the middle and 10.2 the lowest one.
TEST(NetworkTextbook, ThreeReservoirsByAGivenFactor)
{
    Network n = emptyNetwork();
    const std::size_t joint = n.addJunction();
    const std::size_t high = n.addLink(level(n, 100.0 * foot), joint, givenFactor(foot, 1000.0 * foot, 0.02));
    const std::size_t middle = n.addLink(joint, level(n, 20.0 * foot), givenFactor(foot, 500.0 * foot, 0.02));
    const std::size_t low = n.addLink(joint, level(n, 0.0), givenFactor(foot, 400.0 * foot, 0.02));
    const NetworkResult r = solve(n);
    ASSERT_TRUE(r.solved());
    const double cubicFoot = foot * foot * foot;
    EXPECT_NEAR(flowOf(r, high) / cubicFoot, 12.5, 0.05);
    EXPECT_NEAR(flowOf(r, middle) / cubicFoot, 2.26, 0.045);
    EXPECT_NEAR(flowOf(r, low) / cubicFoot, 10.2, 0.1);
}

// Source: Cengel and Cimbala, Fluid Mechanics, example 8-9 (from memory): 6 L/s of water at 10 degC run from one
// reservoir to another through 89 m of 5 cm cast iron (0.26 mm) with an entry of 0.5, two elbows of 0.3, a gate valve
// of 0.2 and an exit of 1.06: the loss is 27.9 m. Here the levels are given and the flow is asked.
TEST(NetworkTextbook, TwoReservoirs)
{
    Network n = emptyNetwork();
    n.viscosity = units::squareMetresPerSecond(1.307e-3 / 999.7);
    const std::size_t link =
        n.addLink(level(n, 27.9), level(n, 0.0), pipe(50, 89, 0.5 + 2 * 0.3 + 0.2 + 1.06, 0.26e-3));
    const NetworkResult r = solve(n);
    ASSERT_TRUE(r.solved());
    EXPECT_NEAR(1e3 * flowOf(r, link), 6.0, 0.03);
    EXPECT_NEAR(units::inMetresPerSecond(r.links[link].velocity), 3.06, 0.02);
    EXPECT_NEAR(r.links[link].reynolds / 117000.0, 1.0, 0.01);
}

// Source: White, Fluid Mechanics, chapter 6, three pipes of the parallel example in a row, 150 kPa and 5 m of fall
// (from memory): 10.2 m3/h. Tolerance 1 %.
TEST(NetworkTextbook, ThreePipesInARow)
{
    Network n = emptyNetwork();
    n.viscosity = units::squareMetresPerSecond(1.02e-6);
    const double drop = 150000.0 / (1000.0 * 9.81) + 5.0;
    const std::size_t first = n.addJunction(), second = n.addJunction();
    const std::size_t link = n.addLink(level(n, drop), first, pipe(80, 100, 0, 0.24e-3));
    n.addLink(first, second, pipe(60, 150, 0, 0.12e-3));
    n.addLink(second, level(n, 0.0), pipe(40, 80, 0, 0.20e-3));
    const NetworkResult r = solve(n);
    ASSERT_TRUE(r.solved());
    EXPECT_NEAR(lph(r, link) / 10200.0, 1.0, 0.01);
}

// Two loops as Hardy Cross (1936) balances them, losses r Q^2. Flows chosen first, resistances so that both loops
// close: A-B 60, A-C 40, B-C 20, B-D 10, C-D 20 L/s; 100 in at A, 30 out at B, 40 at C, 30 at D. Own case; the answer
// is exact.
TEST(NetworkTextbook, TwoLoopsBalance)
{
    Network n = emptyNetwork();
    const auto litres = [](double flow) { return units::cubicMetresPerSecond(1e-3 * flow); };
    const std::size_t a = level(n, 50.0);
    const std::size_t b = n.addJunction(litres(-30)), c = n.addJunction(litres(-40)), d = n.addJunction(litres(-30));
    const std::size_t links[] = {n.addLink(a, b, squareLaw(10.0 / 3600.0)), n.addLink(a, c, squareLaw(14.0 / 1600.0)),
                                 n.addLink(b, c, squareLaw(4.0 / 400.0)), n.addLink(b, d, squareLaw(9.0 / 100.0)),
                                 n.addLink(c, d, squareLaw(5.0 / 400.0))};
    const NetworkResult r = solve(n);
    ASSERT_TRUE(r.solved());
    constexpr double flows[] = {60, 40, 20, 10, 20};
    for (int i = 0; i < 5; ++i)
        EXPECT_NEAR(1e3 * flowOf(r, links[i]), flows[i], 1e-8) << i;
    EXPECT_NEAR(grade(r, b), 40.0, 1e-8);
    EXPECT_NEAR(grade(r, c), 36.0, 1e-8);
    EXPECT_NEAR(grade(r, d), 31.0, 1e-8);
}

// Source: the same problem by the loop method of Hardy Cross (1936) with Colebrook's friction, written out here: one
// correction a loop, -sum h / sum h', until both loops close. 0.9 L/s in at A, 0.4 out at C and 0.5 at D.
TEST(NetworkTextbook, TwoLoopsByLoopCorrections)
{
    const PipeLink pipes[] = {pipe(27.2, 12), pipe(21.2, 9), pipe(17.0, 5), pipe(21.2, 14), pipe(27.2, 8)};
    Network n = emptyNetwork();
    const std::size_t a = level(n, 5.0), b = n.addJunction();
    const std::size_t c = n.addJunction(units::cubicMetresPerSecond(-0.4e-3));
    const std::size_t d = n.addJunction(units::cubicMetresPerSecond(-0.5e-3));
    const std::size_t ends[][2] = {{a, b}, {a, c}, {b, c}, {b, d}, {c, d}};
    std::size_t links[5];
    for (int i = 0; i < 5; ++i)
        links[i] = n.addLink(ends[i][0], ends[i][1], pipes[i]);
    const NetworkResult r = solve(n);
    ASSERT_TRUE(r.solved());

    double flow[5] = {0.5e-3, 0.4e-3, 0.1e-3, 0.4e-3, 0.1e-3};
    constexpr int loops[2][3] = {{0, 2, 1}, {3, 4, 2}}; // A-B-C-A and B-D-C-B
    constexpr double sense[2][3] = {{1, 1, -1}, {1, -1, -1}};
    for (int round = 0; round < 400; ++round)
        for (int loop = 0; loop < 2; ++loop) {
            double loss = 0.0, slope = 0.0;
            for (int i = 0; i < 3; ++i) {
                const PipeLink& p = pipes[loops[loop][i]];
                const LossWithSlope at = frictionLossWithSlope(
                    {p.bore, p.length, p.roughness}, units::cubicMetresPerSecond(flow[loops[loop][i]]), n.viscosity);
                loss += sense[loop][i] * units::inMetresHead(at.loss);
                slope += at.slope.value();
            }
            for (int i = 0; i < 3; ++i)
                flow[loops[loop][i]] -= sense[loop][i] * loss / slope;
        }
    for (int i = 0; i < 5; ++i)
        EXPECT_NEAR(flowOf(r, links[i]), flow[i], 1e-12) << i;
}

} // namespace
} // namespace sumpwright::hydraulics
