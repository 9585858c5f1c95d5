// Published and independently solved networks, through the network's own public header.
#include <gtest/gtest.h>

#include <cmath>

#include "core/hydraulics/duty_point.hpp"
#include "tests/core/hydraulics/example_networks.hpp"

namespace sumpwright::hydraulics
{
namespace
{

using namespace examples;

// Points of H = P / (density g Q) around a flow, as a pump of constant water power is given here.
PumpCurve constantPower(double watts, double density, double around)
{
    std::vector<PumpPoint> points = {{units::Flow(), units::metresHead(200.0)}};
    for (double part = 0.2; part < 2.0; part += 0.02)
        points.push_back({units::cubicMetresPerSecond(part * around),
                          units::metresHead(watts / (density * units::standardGravity * part * around))});
    return *PumpCurve::fromPoints(points);
}

// Source: Cengel and Cimbala, Fluid Mechanics, example 8-7, two parallel pipes with a pump: 5 m to 13 m, 36 m of 4 and
// 8 cm, roughness 0.045 mm, density 998, viscosity 1.002e-3, 8 kW at 70 %. The book (values from memory) prints
// 0.0300, 0.00415 and 0.0259 m3/s, losses 11.1 m, pump 19.1 m, 3.30 and 5.15 m/s, Re 131 600 and 410 000.
TEST(NetworkPublished, TwoParallelPipesWithAPump)
{
    Network n = emptyNetwork();
    n.viscosity = units::squareMetresPerSecond(1.002e-3 / 998.0);
    const std::size_t low = level(n, 5.0), high = level(n, 13.0), split = n.addJunction();
    const std::size_t pump = n.addLink(low, split, PumpLink{constantPower(5600.0, 998.0, 0.03), 1.0});
    const std::size_t small = n.addLink(split, high, pipe(40, 36, 0, 4.5e-5));
    const std::size_t large = n.addLink(split, high, pipe(80, 36, 0, 4.5e-5));
    const NetworkResult r = solve(n);
    ASSERT_TRUE(r.solved());
    const auto flow = [&](std::size_t link) { return units::inCubicMetresPerSecond(r.links[link].flow); };
    EXPECT_NEAR(flow(pump), 0.0300, 5e-5);
    EXPECT_NEAR(flow(small), 0.00415, 1e-5);
    EXPECT_NEAR(flow(large), 0.0259, 1e-4);
    EXPECT_NEAR(units::inMetresHead(r.links[large].frictionLoss), 11.1, 0.06);
    EXPECT_NEAR(units::inMetresHead(r.links[pump].headGained), 19.1, 0.06);
    EXPECT_NEAR(units::inMetresPerSecond(r.links[small].velocity), 3.30, 0.01);
    EXPECT_NEAR(units::inMetresPerSecond(r.links[large].velocity), 5.15, 0.01);
    EXPECT_NEAR(r.links[small].reynolds, 131600, 200);
    EXPECT_NEAR(r.links[large].reynolds, 410000, 600);
    // An independent script (g 9.81) has 0.030012, 0.0041514 and 0.0258608.
    EXPECT_NEAR(flow(pump) / 0.030012, 1.0, 1e-3);
    EXPECT_NEAR(flow(small) / 0.0041514, 1.0, 1e-3);
    EXPECT_NEAR(flow(large) / 0.0258608, 1.0, 1e-3);
}

// Source: White, Fluid Mechanics, chapter 6, three pipes in parallel (values from memory): pressure drop 150 kPa, drop
// of level 5 m, 100/150/80 m of 8/6/4 cm, roughness 0.24/0.12/0.20 mm, viscosity 1.02e-6: 62.5 + 25.9 + 11.4 = 99.8
// m3/h. Tolerance 1 %.
TEST(NetworkPublished, ThreeParallelPipes)
{
    Network n = emptyNetwork();
    n.viscosity = units::squareMetresPerSecond(1.02e-6);
    const double drop = 150000.0 / (1000.0 * 9.81) + 5.0; // m, the book's water and g
    const std::size_t a = level(n, drop), b = level(n, 0.0);
    const std::size_t first = n.addLink(a, b, pipe(80, 100, 0, 0.24e-3));
    const std::size_t second = n.addLink(a, b, pipe(60, 150, 0, 0.12e-3));
    const std::size_t third = n.addLink(a, b, pipe(40, 80, 0, 0.20e-3));
    const NetworkResult r = solve(n);
    ASSERT_TRUE(r.solved());
    EXPECT_NEAR(lph(r, first) / 62500, 1.0, 1e-2);
    EXPECT_NEAR(lph(r, second) / 25900, 1.0, 1e-2);
    EXPECT_NEAR(lph(r, third) / 11400, 1.0, 1e-2);
    EXPECT_NEAR(units::inLitresPerHour(r.nodes[b].delivered) / 99800, 1.0, 1e-2);
    // An independent script has 62.53, 25.90, 11.41 and 99.84.
    EXPECT_NEAR(lph(r, first) / 62530, 1.0, 1e-3);
    EXPECT_NEAR(lph(r, second) / 25900, 1.0, 1e-3);
    EXPECT_NEAR(lph(r, third) / 11410, 1.0, 1e-3);
}

// Source: the sum of squares 1^2 + ... + N^2. With equal outflows along a header whose loss goes with the square of
// the flow, the header loses h (1/3 + 1/(2N) + 1/(6N^2)) of what the whole flow would lose along all of it.
TEST(NetworkPublished, ManifoldWithEqualOutlets)
{
    for (int outlets : {1, 2, 4, 7, 20}) {
        Network n = emptyNetwork();
        const double each = 1.0 / outlets; // L/s
        // A square law without friction: every piece is a fitting of K 3 on 50 mm.
        std::size_t before = level(n, 10.0);
        for (int i = 0; i < outlets; ++i) {
            const std::size_t next = n.addJunction(units::cubicMetresPerSecond(-1e-3 * each));
            n.addLink(before, next, pipe(50, 0, 3.0));
            before = next;
        }
        const NetworkResult r = solve(n);
        ASSERT_TRUE(r.solved());
        const double v = 1e-3 / (units::pi / 4.0 * 0.05 * 0.05);
        const double whole = outlets * 3.0 * v * v / (2.0 * units::standardGravity);
        const double share = 1.0 / 3.0 + 1.0 / (2.0 * outlets) + 1.0 / (6.0 * outlets * outlets);
        EXPECT_NEAR((10.0 - grade(r, before)) / whole, share, 1e-9) << outlets;
    }
}

// Source: two independent scripts (marching with bisection, and Newton with dense matrices), agreeing to all digits
// given; tolerance 0.2 % of flow and 2 mm of head.
struct ManifoldCase {
    Manifold manifold;
    double pump; // L/h
    std::vector<double> outlets;
};

void expectFlows(const ManifoldCase& expected)
{
    const NetworkResult r = solve(expected.manifold.network);
    ASSERT_TRUE(r.solved());
    EXPECT_NEAR(lph(r, expected.manifold.pump) / expected.pump, 1.0, 2e-3);
    for (std::size_t i = 0; i < expected.outlets.size(); ++i)
        EXPECT_NEAR(lph(r, expected.manifold.outlets[i]), expected.outlets[i], 2e-3 * expected.outlets[i]) << i;
}

void expectGrades(const Manifold& manifold, const std::vector<double>& grades)
{
    const NetworkResult r = solve(manifold.network);
    for (std::size_t i = 0; i < grades.size(); ++i)
        EXPECT_NEAR(grade(r, manifold.junctions[i]), grades[i], 2e-3) << i;
}

TEST(NetworkPublished, TankAndFourBeds)
{
    const Manifold m = tankAndFourBeds();
    expectFlows({m, 3066.69, {860.81, 608.97, 553.87, 525.81, 517.22}});
    expectGrades(m, {1.35888, 1.29910, 1.26529, 1.24927, 1.24453});
    EXPECT_NEAR(units::inMetresHead(solve(m.network).links[m.pump].headGained), 1.53481, 2e-3);
}

TEST(NetworkPublished, ThrottlingOneBed)
{
    expectFlows({tankAndFourBeds(50.0), 3042.61, {1059.27, 232.85, 606.68, 576.51, 567.30}});
}

TEST(NetworkPublished, ThrottlingTheTank)
{
    expectFlows({tankAndFourBeds(0.0, 20.0), 3021.93, {591.88, 669.69, 610.07, 579.77, 570.51}});
}

TEST(NetworkPublished, ABedTooHighGetsNothing)
{
    const Manifold m = tankAndFourBeds(0.0, 0.0, 2.40);
    expectFlows({m, 3038.54, {1089.58, 674.89, 642.04, 632.03}});
    const NetworkResult r = solve(m.network);
    EXPECT_EQ(lph(r, m.outlets[4]), 0.0);
    EXPECT_EQ(r.links[m.outlets[4]].state, LinkState::Shut);
    EXPECT_NEAR(grade(r, m.junctions[4]), 1.31417, 2e-3);
}

TEST(NetworkPublished, FourEqualBedsShareUnequally)
{
    const Manifold m = fourEqualBeds();
    expectFlows({m, 3034.81, {908.84, 765.88, 691.55, 668.54}});
    expectGrades(m, {1.1647, 1.11804, 1.09679, 1.09063});
}

// Source: an independent script; 10 m held at node 1, pipes of 27.2 mm, 0.25, 0.30 and 0.20 L/s drawn at nodes 2 to 4.
TEST(NetworkPublished, RingWithThreeDraws)
{
    Network n = emptyNetwork();
    const std::size_t first = level(n, 10.0);
    const std::size_t second = n.addJunction(units::cubicMetresPerSecond(-0.25e-3));
    const std::size_t third = n.addJunction(units::cubicMetresPerSecond(-0.30e-3));
    const std::size_t fourth = n.addJunction(units::cubicMetresPerSecond(-0.20e-3));
    const std::size_t links[] = {n.addLink(first, second, pipe(27.2, 10)), n.addLink(second, third, pipe(27.2, 15)),
                                 n.addLink(third, fourth, pipe(27.2, 10)), n.addLink(fourth, first, pipe(27.2, 12))};
    const NetworkResult r = solve(n);
    ASSERT_TRUE(r.solved());
    constexpr double flows[] = {1404.54, 504.54, -575.46, -1295.46};
    for (int i = 0; i < 4; ++i)
        EXPECT_NEAR(lph(r, links[i]) / flows[i], 1.0, 2e-3) << i;
    EXPECT_NEAR(grade(r, second), 9.77516, 2e-3);
    EXPECT_NEAR(grade(r, third), 9.71835, 2e-3);
    EXPECT_NEAR(grade(r, fourth), 9.76587, 2e-3);
}

// Source: scipy 1.10.1 on curves added by hand: G4500 twice in parallel and twice in series on 1.20 m of lift through
// 6 m of 27.2 mm, K 4.5; tolerance 0.1 %.
TEST(NetworkPublished, TwoPumpsSideBySideAndInARow)
{
    Network beside = emptyNetwork();
    const std::size_t sump = level(beside, 0.0), head = beside.addJunction();
    beside.addLink(sump, head, PumpLink{g4500(), 1.0});
    beside.addLink(sump, head, PumpLink{g4500(), 1.0});
    const std::size_t line = beside.addLink(head, level(beside, 1.2), oneWay(pipe(27.2, 6, 4.5)));
    const NetworkResult both = solve(beside);
    ASSERT_TRUE(both.solved());
    EXPECT_NEAR(lph(both, line) / 3545.47, 1.0, 1e-3);
    EXPECT_NEAR(grade(both, head) / 2.55309, 1.0, 1e-3);

    Network row = emptyNetwork();
    const std::size_t low = level(row, 0.0), between = row.addJunction(), top = row.addJunction();
    row.addLink(low, between, PumpLink{g4500(), 1.0});
    row.addLink(between, top, PumpLink{g4500(), 1.0});
    const std::size_t riser = row.addLink(top, level(row, 1.2), oneWay(pipe(27.2, 6, 4.5)));
    const NetworkResult raised = solve(row);
    ASSERT_TRUE(raised.solved());
    EXPECT_NEAR(lph(raised, riser) / 3392.82, 1.0, 1e-3);
    EXPECT_NEAR(grade(raised, top) / 2.44523, 1.0, 1e-3);
}

// The one-dimensional duty point and the network are two ways to one answer.
TEST(NetworkPublished, OnePipeIsTheDutyPoint)
{
    const nature::WaterProperties water = *nature::waterAt(units::celsius(12));
    for (double speed : {0.7, 1.0, 1.1}) {
        const DutyPoint point = *dutyPoint(
            g4500(), speed,
            {units::metresHead(1.2), {units::millimetres(27.2), units::metres(6), units::metres(smoothPlastic)}, 4.5},
            water);
        Network n = emptyNetwork();
        n.viscosity = water.kinematicViscosity;
        const std::size_t head = n.addJunction();
        n.addLink(level(n, 0.3), head, PumpLink{g4500(), speed});
        const std::size_t line = n.addLink(head, level(n, 1.5), oneWay(pipe(27.2, 6, 4.5)));
        const NetworkResult r = solve(n);
        ASSERT_TRUE(r.solved());
        EXPECT_NEAR(lph(r, line) / units::inLitresPerHour(point.flow), 1.0, 1e-11);
        EXPECT_NEAR(units::inMetresHead(r.links[line].frictionLoss), units::inMetresHead(point.frictionLoss), 1e-10);
        EXPECT_NEAR(units::inMetresHead(r.links[line].fittingLoss), units::inMetresHead(point.fittingLoss), 1e-10);
    }
}

} // namespace
} // namespace sumpwright::hydraulics
