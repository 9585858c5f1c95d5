// What a network does with input nobody should draw: it says why it cannot, or gives finite numbers.
#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <string>

#include "tests/core/hydraulics/example_networks.hpp"

namespace sumpwright::hydraulics
{
namespace
{

using namespace examples;

constexpr double nan = std::numeric_limits<double>::quiet_NaN();

void expectFinite(const NetworkResult& r)
{
    for (const LinkFlow& link : r.links) {
        EXPECT_TRUE(std::isfinite(link.flow.value()));
        EXPECT_TRUE(std::isfinite(link.frictionLoss.value()));
        EXPECT_TRUE(std::isfinite(link.fittingLoss.value()));
        EXPECT_TRUE(std::isfinite(link.headGained.value()));
        EXPECT_TRUE(std::isfinite(link.velocity.value()));
        EXPECT_TRUE(std::isfinite(link.reynolds));
    }
    for (const NodeGrade& node : r.nodes) {
        EXPECT_TRUE(!node.grade || std::isfinite(node.grade->value()));
        EXPECT_TRUE(std::isfinite(node.delivered.value()));
    }
    EXPECT_TRUE(std::isfinite(r.massResidual.value()));
    EXPECT_TRUE(std::isfinite(r.headResidual.value()));
}

std::string reason(const Network& network)
{
    const NetworkResult r = solve(network);
    expectFinite(r);
    return r.solved() ? "" : r.notSolved->id + " " + r.notSolved->place;
}

Network withLink(const LinkPart& part, std::size_t from = 0, std::size_t to = 1)
{
    Network n = emptyNetwork();
    level(n, 1.0);
    n.addJunction();
    level(n, 0.0);
    n.addLink(1, 2, pipe(27.2, 1));
    n.addLink(from, to, part);
    return n;
}

TEST(NetworkRobust, NamesTheBadLink)
{
    const std::string bad = "hydraulics.network-bad-link link 1";
    EXPECT_EQ(reason(withLink(pipe(0, 1))), bad);
    EXPECT_EQ(reason(withLink(pipe(-20, 1))), bad);
    EXPECT_EQ(reason(withLink(pipe(nan, 1))), bad);
    EXPECT_EQ(reason(withLink(pipe(20, -1))), bad);
    EXPECT_EQ(reason(withLink(pipe(20, nan))), bad);
    EXPECT_EQ(reason(withLink(pipe(20, 1, -0.1))), bad);
    EXPECT_EQ(reason(withLink(pipe(20, 1, 1e30))), bad);
    EXPECT_EQ(reason(withLink(pipe(20, 1, 0, 0.011))), bad);
    EXPECT_EQ(reason(withLink(pipe(20, 1, 0, -1e-9))), bad);
    EXPECT_EQ(reason(withLink(PumpLink{g4500(), 0.0})), bad);
    EXPECT_EQ(reason(withLink(PumpLink{g4500(), nan})), bad);
    EXPECT_EQ(reason(withLink(pipe(20, 1), 0, 0)), bad);
    EXPECT_EQ(reason(withLink(pipe(20, 1), 0, 7)), bad);
    EXPECT_EQ(reason(withLink(pipe(20, 1))), "");
}

TEST(NetworkRobust, NamesTheBadNode)
{
    Network n = withLink(pipe(20, 1));
    n.nodes[2] = FixedGrade{units::elevationMetres(nan)};
    EXPECT_EQ(reason(n), "hydraulics.network-bad-node node 2");
    n.nodes[2] = Junction{units::litresPerHour(nan), {}};
    EXPECT_EQ(reason(n), "hydraulics.network-bad-node node 2");
    n.nodes[2] = Junction{units::Flow(), units::elevationMetres(nan)};
    EXPECT_EQ(reason(n), "hydraulics.network-bad-node node 2");
    n = withLink(pipe(20, 1));
    n.viscosity = units::KinematicViscosity();
    EXPECT_EQ(reason(n), "hydraulics.network-bad-node viscosity");
}

TEST(NetworkRobust, RefusesADrawThatNothingFeeds)
{
    // Behind a closed valve.
    Network n = withLink(pipe(20, 1));
    const std::size_t lone = n.addJunction(units::litresPerHour(-100));
    n.addLink(1, lone, ClosedLink{});
    EXPECT_EQ(reason(n), "hydraulics.network-demand-unfed node 3");
    // Behind a non-return valve the wrong way round.
    n.links.back().part = oneWay(pipe(20, 1));
    std::swap(n.links.back().from, n.links.back().to);
    EXPECT_EQ(reason(n), "hydraulics.network-demand-unfed node 3");
    // Put in where it cannot leave.
    n.nodes[lone] = Junction{units::litresPerHour(100), {}};
    n.links.back().part = ClosedLink{};
    EXPECT_EQ(reason(n), "hydraulics.network-demand-unfed node 3");
    // More drawn than any pipe brings is still brought: by suction, and flagged as such where a level is given.
    Network thirsty = emptyNetwork();
    const std::size_t tap = thirsty.addJunction(units::litresPerHour(-5000), units::elevationMetres(0.5));
    thirsty.addLink(level(thirsty, 1.0), tap, pipe(15, 5, 5));
    const NetworkResult r = solve(thirsty);
    ASSERT_TRUE(r.solved());
    EXPECT_TRUE(r.nodes[tap].lowPressure);
}

TEST(NetworkRobust, ExtremeSizesStayFinite)
{
    for (double bore : {0.01, 0.1, 4.0, 27.2, 2000.0})
        for (double length : {0.0, 1e-6, 3.0, 1e4})
            for (double sumK : {0.0, 1e-9, 5.0, 1e12}) {
                Manifold m = tankAndFourBeds();
                m.network.links[2].part = pipe(bore, length, sumK, 1e-6);
                const NetworkResult r = solve(m.network);
                expectFinite(r);
                EXPECT_TRUE(r.solved()) << bore << " " << length << " " << sumK << " "
                                        << (r.notSolved ? base::oneLine(*r.notSolved) : "");
                EXPECT_LT(r.headResidual.value(), 1e-8);
                EXPECT_LT(r.massResidual.value(), 1e-12 * r.links[m.pump].flow.value());
            }
}

// No length and no K: two such links side by side share evenly, whatever their bores.
TEST(NetworkRobust, LinksWithoutResistanceShareEvenly)
{
    Network n = emptyNetwork();
    const std::size_t a = n.addJunction(), b = n.addJunction();
    n.addLink(level(n, 1.0), a, pipe(27.2, 2));
    const std::size_t first = n.addLink(a, b, pipe(20, 0));
    const std::size_t second = n.addLink(a, b, pipe(30, 0));
    n.addLink(b, level(n, 0.0), pipe(27.2, 2));
    const NetworkResult r = solve(n);
    ASSERT_TRUE(r.solved());
    EXPECT_NEAR(lph(r, first) / lph(r, second), 1.0, 1e-9);
    EXPECT_LT(grade(r, a) - grade(r, b), 1e-6);
}

// A bridge between two equal branches carries nothing, though its law is flat at rest.
TEST(NetworkRobust, ABalancedBridgeCarriesNothing)
{
    for (double length : {0.0, 1.0}) {
        Network n = emptyNetwork();
        const std::size_t left = n.addJunction(), right = n.addJunction();
        const std::size_t high = level(n, 1.0), low = level(n, 0.0);
        for (std::size_t side : {left, right}) {
            n.addLink(high, side, pipe(27.2, 2, 1));
            n.addLink(side, low, pipe(27.2, 3, 2));
        }
        const std::size_t bridge = n.addLink(left, right, pipe(20, length, 3));
        const NetworkResult r = solve(n);
        ASSERT_TRUE(r.solved());
        EXPECT_NEAR(lph(r, bridge), 0.0, 0.1) << length;
        EXPECT_LT(r.headResidual.value(), 1e-9);
    }
}

// Levels exactly at the edge between open and shut settle one way or the other, with no flow either way.
TEST(NetworkRobust, KnifeEdgesSettle)
{
    for (double off : {0.0, 1e-12, -1e-12, 1e-9, -1e-9, 1e-7, -1e-7}) {
        Network n = emptyNetwork();
        const std::size_t link = n.addLink(level(n, 1.0 + off), level(n, 1.0), oneWay(pipe(17, 1, 6)));
        const NetworkResult r = solve(n);
        ASSERT_TRUE(r.solved()) << off;
        EXPECT_GE(lph(r, link), 0.0);
        EXPECT_NEAR(lph(r, link), 0.0, 1e-2);

        Manifold m = tankAndFourBeds();
        const double brim = grade(solve(tankAndFourBeds(0, 0, 2.4).network), m.junctions[4]);
        m = tankAndFourBeds(0, 0, brim + off);
        const NetworkResult edge = solve(m.network);
        ASSERT_TRUE(edge.solved()) << off;
        EXPECT_GE(lph(edge, m.outlets[4]), 0.0);
        EXPECT_NEAR(lph(edge, m.outlets[4]), 0.0, 0.1);
    }
}

TEST(NetworkRobust, PumpsInARingOfTheirOwnTurnNothingOver)
{
    Network n = emptyNetwork();
    const std::size_t a = n.addJunction(), b = n.addJunction();
    const std::size_t pump = n.addLink(a, b, PumpLink{g4500(), 1.0});
    n.addLink(b, a, pipe(27.2, 5, 3));
    const NetworkResult r = solve(n);
    ASSERT_TRUE(r.solved());
    EXPECT_EQ(r.links[pump].state, LinkState::Unfed);
    EXPECT_EQ(r.islands.size(), 1u);
}

} // namespace
} // namespace sumpwright::hydraulics
