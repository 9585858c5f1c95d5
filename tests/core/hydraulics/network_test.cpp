// How a network behaves: valves, non-return valves, pumps that cannot lift, cut-off parts, the split of losses.
#include "core/hydraulics/network.hpp"

#include <gtest/gtest.h>

#include <cmath>

#include "core/hydraulics/fittings.hpp"
#include "tests/core/hydraulics/example_networks.hpp"

namespace sumpwright::hydraulics
{
namespace
{

using namespace examples;

TEST(Network, LossesAddUpToTheDifferenceOfGrades)
{
    const Manifold m = tankAndFourBeds();
    const NetworkResult r = solve(m.network);
    ASSERT_TRUE(r.solved());
    for (std::size_t k = 0; k < r.links.size(); ++k) {
        const NetworkLink& link = m.network.links[k];
        const LinkFlow& flow = r.links[k];
        const units::Head lost = flow.frictionLoss + flow.fittingLoss - flow.headGained;
        EXPECT_NEAR(grade(r, link.from) - grade(r, link.to), units::inMetresHead(lost), 1e-11) << k;
    }
    // The riser's fittings alone: K 1.8 on the velocity head.
    const LinkFlow& riser = r.links[1];
    EXPECT_NEAR(units::inMetresHead(riser.fittingLoss), units::inMetresHead(fittingLoss(1.8, riser.velocity)), 1e-12);
    EXPECT_EQ(riser.regime, FlowRegime::Turbulent);
}

TEST(Network, EveryJunctionBalancesAndOutletsSumToThePump)
{
    const Manifold m = tankAndFourBeds();
    const NetworkResult r = solve(m.network);
    double delivered = 0.0;
    for (std::size_t i = 0; i < r.nodes.size(); ++i)
        if (r.nodes[i].state == NodeState::Flowing) {
            EXPECT_NEAR(units::inLitresPerHour(r.nodes[i].delivered), 0.0, 1e-12 * lph(r, m.pump)) << i;
        }
    for (std::size_t outlet : m.outlets)
        delivered += units::inLitresPerHour(r.nodes[m.network.links[outlet].to].delivered);
    EXPECT_NEAR(delivered / lph(r, m.pump), 1.0, 1e-12);
    EXPECT_LT(std::fabs(r.massResidual.value()), 1e-15);
    EXPECT_LT(r.headResidual.value(), 1e-9);
    EXPECT_LE(r.iterations, 8);
    EXPECT_EQ(r.rounds, 1);
    EXPECT_EQ(r.unknowns, 6u);
}

TEST(Network, AClosedValveIsNoLinkAtAll)
{
    Manifold m = tankAndFourBeds();
    m.network.links[m.outlets[2]].part = ClosedLink{};
    const NetworkResult closed = solve(m.network);
    ASSERT_TRUE(closed.solved());
    EXPECT_EQ(closed.links[m.outlets[2]].state, LinkState::Removed);
    EXPECT_EQ(lph(closed, m.outlets[2]), 0.0);
    Manifold without = tankAndFourBeds();
    without.network.links.erase(without.network.links.begin() + static_cast<long>(m.outlets[2]));
    EXPECT_NEAR(lph(closed, m.pump) / lph(solve(without.network), m.pump), 1.0, 1e-12);
}

// A valve closed in the header: what lies behind has no water, and the rest runs on.
TEST(Network, ReportsPartsNoWaterReaches)
{
    Manifold m = tankAndFourBeds();
    m.network.links[4].part = ClosedLink{}; // header piece between the third and the fourth junction
    const NetworkResult r = solve(m.network);
    ASSERT_TRUE(r.solved());
    ASSERT_EQ(r.islands.size(), 1u);
    EXPECT_EQ(r.islands[0], (std::vector<std::size_t>{m.junctions[3], m.junctions[4]}));
    EXPECT_EQ(r.nodes[m.junctions[3]].state, NodeState::Unfed);
    EXPECT_FALSE(r.nodes[m.junctions[3]].grade.has_value());
    EXPECT_EQ(r.links[5].state, LinkState::Unfed);
    EXPECT_EQ(lph(r, 5), 0.0);
    EXPECT_GT(lph(r, m.outlets[0]), 860.0);
}

TEST(Network, WaterRunsBackThroughAPlainPipeButNotThroughANonReturnValve)
{
    for (bool guarded : {false, true}) {
        Network n = emptyNetwork();
        PipeLink line = pipe(27.2, 6, 10);
        line.oneWay = guarded;
        const std::size_t low = level(n, 0.1);
        const std::size_t link = n.addLink(low, level(n, 1.0), line);
        const NetworkResult r = solve(n);
        ASSERT_TRUE(r.solved());
        if (guarded) {
            EXPECT_EQ(lph(r, link), 0.0);
            EXPECT_EQ(r.links[link].state, LinkState::Shut);
            continue;
        }
        EXPECT_LT(lph(r, link), -1000.0);
        EXPECT_LT(units::inMetresHead(r.links[link].frictionLoss), 0.0);
        EXPECT_GT(units::inMetresPerSecond(r.links[link].velocity), 0.0);
        EXPECT_GT(r.links[link].reynolds, 4000.0);
        EXPECT_NEAR(units::inLitresPerHour(r.nodes[low].delivered), -lph(r, link), 1e-9);
    }
}

// A published estimate of the back-siphon rate: about 2250 L/h for 0.9 m through 6 m of 27.2 mm with K 10.
TEST(Network, BackSiphonRate)
{
    Network n = emptyNetwork();
    const std::size_t link = n.addLink(level(n, 0.0), level(n, 0.9), pipe(27.2, 6, 10));
    EXPECT_NEAR(lph(solve(n), link), -2250, 30);
}

TEST(Network, ASpringTakesItsOpeningHead)
{
    for (double drop : {0.05, 0.0999, 0.2, 0.5}) {
        Network n = emptyNetwork();
        PipeLink line = oneWay(pipe(27.2, 2, 6));
        line.openingHead = units::metresHead(0.1);
        const std::size_t link = n.addLink(level(n, drop), level(n, 0.0), line);
        const NetworkResult r = solve(n);
        ASSERT_TRUE(r.solved()) << drop;
        if (drop < 0.1) {
            EXPECT_EQ(lph(r, link), 0.0);
            continue;
        }
        Network plain = emptyNetwork();
        const std::size_t same = plain.addLink(level(plain, drop - 0.1), level(plain, 0.0), pipe(27.2, 2, 6));
        EXPECT_NEAR(lph(r, link) / lph(solve(plain), same), 1.0, 1e-9);
        EXPECT_NEAR(units::inMetresHead(r.links[link].frictionLoss + r.links[link].fittingLoss), drop, 1e-9);
    }
}

// The pump holds its column up and moves nothing: water stands in the riser at sump plus head at no flow.
TEST(Network, APumpThatCannotLiftHoldsItsColumn)
{
    Manifold m = tankAndFourBeds();
    for (std::size_t outlet : m.outlets)
        m.network.nodes[m.network.links[outlet].to] = FixedGrade{units::elevationMetres(3.5)};
    const NetworkResult r = solve(m.network);
    ASSERT_TRUE(r.solved());
    EXPECT_EQ(r.links[m.pump].state, LinkState::Shut);
    EXPECT_EQ(lph(r, m.pump), 0.0);
    for (std::size_t junction : m.junctions) {
        EXPECT_EQ(r.nodes[junction].state, NodeState::Standing);
        EXPECT_NEAR(grade(r, junction), 0.20 + 3.20, 1e-12);
    }
    for (std::size_t outlet : m.outlets)
        EXPECT_EQ(r.links[outlet].state, LinkState::Shut);
}

// A pump given by two numbers has a level curve at no flow; against a blind end it holds its head and moves nothing.
// The mouth that would be reached first does not hold up the column either.
TEST(Network, AColumnThatReachesNoMouthStandsAtThePumpsHead)
{
    Network network;
    network.viscosity = units::squareMetresPerSecond(1.0e-6);
    const std::size_t sump = network.addFixedGrade(units::elevationMetres(-0.12)), tee = network.addJunction();
    network.addLink(sump, tee, PumpLink{g4500(), 0.4});
    for (const double mouth : {0.73, 0.73, 0.9}) {
        const std::size_t bed = network.addFixedGrade(units::elevationMetres(mouth));
        network.addLink(tee, bed,
                        PipeLink{units::metres(0.02), units::metres(1.0), units::metres(1e-5), 2.0, true, {}});
    }
    const NetworkResult r = solve(network);
    ASSERT_TRUE(r.solved());
    EXPECT_NEAR(grade(r, tee), -0.12 + units::inMetresHead(g4500().shutOffHead(0.4)), 1e-9);
    EXPECT_LT(grade(r, tee), 0.73);
}

TEST(Network, APumpAgainstABlindEndHoldsItsHead)
{
    Network n = emptyNetwork();
    const std::size_t head = n.addJunction(), end = n.addJunction();
    const PumpCurve pump = *PumpCurve::fromRatings(units::metresHead(2.5), units::litresPerHour(3000));
    const std::size_t link = n.addLink(level(n, 0.1), head, PumpLink{pump, 1.0});
    n.addLink(head, end, pipe(27.2, 2, 1));
    const NetworkResult r = solve(n);
    ASSERT_TRUE(r.solved());
    EXPECT_NEAR(lph(r, link), 0.0, 1e-6);
    EXPECT_NEAR(grade(r, end), 2.6, 1e-9);
}

TEST(Network, WaterStandsBetweenNonReturnValvesAtTheHighestLevelThatCouldReachIt)
{
    Network n = emptyNetwork();
    const std::size_t between = n.addJunction(), deadEnd = n.addJunction();
    n.addLink(level(n, 0.5), between, oneWay(pipe(27.2, 1)));
    n.addLink(level(n, 0.8), between, oneWay(pipe(27.2, 1)));
    n.addLink(between, deadEnd, pipe(27.2, 1));
    n.addLink(deadEnd, level(n, 2.0), oneWay(pipe(27.2, 1)));
    const NetworkResult r = solve(n);
    ASSERT_TRUE(r.solved());
    EXPECT_EQ(r.nodes[between].state, NodeState::Standing);
    EXPECT_NEAR(grade(r, between), 0.8, 1e-12);
    EXPECT_NEAR(grade(r, deadEnd), 0.8, 1e-12);
}

TEST(Network, AWeakPumpBesideAStrongOneIsShut)
{
    Network n = emptyNetwork();
    const std::size_t sump = level(n, 0.0), head = n.addJunction();
    const std::size_t strong = n.addLink(sump, head, PumpLink{g4500(), 1.0});
    const std::size_t weak = n.addLink(sump, head, PumpLink{g4500(), 0.5});
    const std::size_t line = n.addLink(head, level(n, 1.2), oneWay(pipe(27.2, 6, 4.5)));
    const NetworkResult r = solve(n);
    ASSERT_TRUE(r.solved());
    EXPECT_EQ(r.links[weak].state, LinkState::Shut); // 0.8 m at no flow against 1.95 m
    EXPECT_EQ(lph(r, weak), 0.0);
    EXPECT_NEAR(lph(r, strong), lph(r, line), 1e-9);
    EXPECT_NEAR(lph(r, line) / 2596.07, 1.0, 1e-4);
}

TEST(Network, FlagsAHighPointThatMayDrawInAir)
{
    for (double top : {0.4, 1.4}) {
        Network n = emptyNetwork();
        const std::size_t crest = n.addJunction({}, units::elevationMetres(top));
        n.addLink(level(n, 1.0), crest, pipe(27.2, 2, 1.5));
        n.addLink(crest, level(n, 0.0), pipe(27.2, 2, 1.0));
        EXPECT_EQ(solve(n).nodes[crest].lowPressure, top > 1.0) << top;
    }
}

TEST(Network, SaysWhenThePumpRunsOut)
{
    Network n = emptyNetwork();
    const std::size_t head = n.addJunction();
    const std::size_t pump = n.addLink(level(n, 2.0), head, PumpLink{g4500(), 1.0});
    n.addLink(head, level(n, 0.0), pipe(60, 1, 1));
    EXPECT_TRUE(solve(n).links[pump].runOut);
}

TEST(Network, AnEmptyNetworkIsSolved)
{
    EXPECT_TRUE(solve(emptyNetwork()).solved());
    Network n = emptyNetwork();
    level(n, 1.0);
    n.addJunction();
    const NetworkResult r = solve(n);
    EXPECT_TRUE(r.solved());
    EXPECT_EQ(r.islands.size(), 1u);
}

TEST(Network, WaterPutInFlowsOutThroughTheOutlet)
{
    Network n = emptyNetwork();
    const std::size_t inlet = n.addJunction(units::litresPerHour(900));
    const std::size_t line = n.addLink(inlet, level(n, 0.4), oneWay(pipe(40, 2, 1.5)));
    const NetworkResult r = solve(n);
    ASSERT_TRUE(r.solved());
    EXPECT_NEAR(lph(r, line), 900.0, 1e-9);
    EXPECT_GT(grade(r, inlet), 0.4);
    EXPECT_EQ(r.nodes[inlet].state, NodeState::Flowing);
}

} // namespace
} // namespace sumpwright::hydraulics
