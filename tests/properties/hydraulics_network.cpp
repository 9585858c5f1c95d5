// What must hold for any network: the one solution, whatever the order of its parts; more opening, more flow.
#include <gtest/gtest.h>

#include <cmath>

#include "core/hydraulics/network.hpp"
#include "tests/properties/hydraulics_oracle.hpp"
#include "tests/properties/hydraulics_random.hpp"

namespace sumpwright::hydraulics
{
namespace
{

using random_networks::Built;
using random_networks::Dice;
using random_networks::grid;
using random_networks::pipe;
using random_networks::tree;

double flowOf(const NetworkResult& r, std::size_t link) { return r.links[link].flow.value(); }

// 500 trees and 500 grids: every law met, every junction balanced, no outlet sucks, by a check that shares no code
// with the solver.
TEST(NetworkProperty, ThousandRandomNetworksMeetEveryLaw)
{
    int shut = 0, open = 0, reopened = 0, worstSteps = 0;
    for (unsigned seed = 0; seed < 1000; ++seed) {
        const Built built = seed % 2 == 0 ? tree(seed) : grid(seed);
        const NetworkResult r = solve(built.network);
        ASSERT_TRUE(r.solved()) << seed << " " << base::oneLine(*r.notSolved);
        const oracle::Misfit misfit = oracle::misfitOf(built.network, r);
        EXPECT_LT(misfit.head, 1e-9) << seed;
        EXPECT_LE(misfit.mass, 1e-12 * std::fabs(flowOf(r, built.pump)) + 1e-18) << seed;
        EXPECT_EQ(misfit.backward, 0.0) << seed;
        EXPECT_LT(misfit.barred, 1e-6) << seed;
        shut += misfit.shut;
        open += static_cast<int>(built.outlets.size());
        reopened += r.rounds > 2 ? 1 : 0;
        worstSteps = std::max(worstSteps, r.iterations);
    }
    // The sample is worth its name only if many links shut and most do not.
    EXPECT_GT(shut, 1000);
    EXPECT_GT(open, 3 * shut / 2);
    RecordProperty("networks_with_more_than_two_rounds", reopened);
    RecordProperty("most_newton_steps", worstSteps);
}

// A manifold solved by marching from its far end with false position: no matrix, no Newton, an independent friction
// law.
double marchedSump(const Built& built, const std::vector<std::size_t>& header, double end, double& pumpFlow,
                   std::vector<double>& outletFlows)
{
    const double viscosity = built.network.viscosity.value();
    double grade = end, flow = 0.0;
    for (std::size_t i = header.size(); i-- > 0;) {
        const NetworkLink& outlet = built.network.links[built.outlets[i]];
        const double level = std::get<FixedGrade>(built.network.nodes[outlet.to]).grade.value();
        outletFlows[i] = oracle::oneWayFlow(std::get<PipeLink>(outlet.part), viscosity, grade - level);
        flow += outletFlows[i];
        grade += oracle::pipeLoss(std::get<PipeLink>(built.network.links[header[i]].part), viscosity, flow);
    }
    pumpFlow = flow;
    const auto& pump = std::get<PumpLink>(built.network.links[built.pump].part);
    return grade - pump.curve.headAt(units::cubicMetresPerSecond(flow), pump.speed).value();
}

TEST(NetworkProperty, ManifoldsAgreeWithMarching)
{
    for (unsigned seed = 0; seed < 200; ++seed) {
        Dice dice(seed + 5000);
        const int pieces = 1 + dice.upTo(9);
        Built built = random_networks::start(dice, pieces);
        std::vector<std::size_t> header;
        std::size_t before = 1;
        for (int i = 0; i < pieces; ++i) {
            const std::size_t next = built.network.addJunction();
            header.push_back(
                built.network.addLink(before, next, pipe(27.2, dice.between(0.3, 2.0), dice.between(0, 2))));
            random_networks::addOutlet(built, dice, next);
            before = next;
        }
        const NetworkResult r = solve(built.network);
        ASSERT_TRUE(r.solved());
        const double sump = std::get<FixedGrade>(built.network.nodes[built.sump]).grade.value();
        double low = sump - 1.0, high = sump + 10.0, pumpFlow = 0.0;
        std::vector<double> outlets(pieces);
        for (int i = 0; i < 60; ++i) {
            const double middle = 0.5 * (low + high);
            (marchedSump(built, header, middle, pumpFlow, outlets) < sump ? low : high) = middle;
        }
        EXPECT_NEAR(flowOf(r, built.pump), pumpFlow, 1e-9 * pumpFlow + 1e-15) << seed;
        for (int i = 0; i < pieces; ++i)
            EXPECT_NEAR(flowOf(r, built.outlets[i]), outlets[i], 1e-9 * pumpFlow + 1e-15) << seed << " " << i;
        EXPECT_NEAR(r.nodes[before].grade->value(), 0.5 * (low + high), 1e-9) << seed;
    }
}

TEST(NetworkProperty, OrderOfNodesAndLinksDoesNotMatter)
{
    for (unsigned seed = 0; seed < 200; ++seed) {
        const Built built = seed % 2 == 0 ? tree(seed) : grid(seed);
        const random_networks::Shuffled other = random_networks::shuffled(built.network, seed + 1);
        const NetworkResult a = solve(built.network), b = solve(other.network);
        ASSERT_TRUE(a.solved() && b.solved()) << seed;
        const double scale = std::fabs(flowOf(a, built.pump)) + 1e-9;
        for (std::size_t k = 0; k < a.links.size(); ++k)
            EXPECT_NEAR(flowOf(a, k), flowOf(b, other.linkAt[k]), 1e-9 * scale) << seed << " " << k;
        for (std::size_t i = 0; i < a.nodes.size(); ++i) {
            ASSERT_EQ(a.nodes[i].grade.has_value(), b.nodes[other.nodeAt[i]].grade.has_value());
            if (a.nodes[i].grade) {
                EXPECT_NEAR(a.nodes[i].grade->value(), b.nodes[other.nodeAt[i]].grade->value(), 1e-9) << seed;
            }
        }
    }
}

// A pipe drawn the other way round carries the same water with the other sign.
TEST(NetworkProperty, DirectionOfDrawingDoesNotMatter)
{
    for (unsigned seed = 0; seed < 200; ++seed) {
        const Built built = grid(seed);
        Network turned = built.network;
        for (NetworkLink& link : turned.links)
            if (const auto* part = std::get_if<PipeLink>(&link.part); part && !part->oneWay)
                std::swap(link.from, link.to);
        const NetworkResult a = solve(built.network), b = solve(turned);
        ASSERT_TRUE(a.solved() && b.solved());
        for (std::size_t k = 0; k < a.links.size(); ++k) {
            const double sign = turned.links[k].from == built.network.links[k].from ? 1.0 : -1.0;
            EXPECT_NEAR(flowOf(a, k), sign * flowOf(b, k), 1e-9 * std::fabs(flowOf(a, built.pump)) + 1e-15);
        }
    }
}

// A plan lifted off its datum is the same plan.
TEST(NetworkProperty, DatumDoesNotMatter)
{
    for (unsigned seed = 0; seed < 100; ++seed) {
        const Built built = tree(seed);
        Network lifted = built.network;
        for (NetworkNode& node : lifted.nodes)
            if (auto* fixed = std::get_if<FixedGrade>(&node))
                fixed->grade = units::elevationMetres(fixed->grade.value() + 3.0);
        const NetworkResult a = solve(built.network), b = solve(lifted);
        for (std::size_t k = 0; k < a.links.size(); ++k)
            EXPECT_NEAR(flowOf(a, k), flowOf(b, k), 1e-9 * std::fabs(flowOf(a, built.pump)) + 1e-15);
    }
}

TEST(NetworkProperty, PipesInARowAddTheirLosses)
{
    Dice dice(11);
    for (int round = 0; round < 50; ++round) {
        Network n;
        n.viscosity = units::squareMetresPerSecond(1.0034e-6);
        std::size_t before = n.addFixedGrade(units::elevationMetres(2.0));
        std::vector<PipeLink> pipes;
        const int count = 2 + dice.upTo(6);
        for (int i = 0; i < count; ++i) {
            const std::size_t next =
                i + 1 < count ? n.addJunction() : n.addFixedGrade(units::elevationMetres(dice.between(0, 1.9)));
            pipes.push_back(pipe(dice.between(12, 60), dice.between(0.1, 9), dice.between(0, 9)));
            n.addLink(before, next, pipes.back());
            before = next;
        }
        const NetworkResult r = solve(n);
        ASSERT_TRUE(r.solved());
        double sum = 0.0;
        for (std::size_t k = 0; k < pipes.size(); ++k) {
            EXPECT_NEAR(flowOf(r, k) / flowOf(r, 0), 1.0, 1e-12);
            sum += oracle::pipeLoss(pipes[k], n.viscosity.value(), flowOf(r, 0));
        }
        EXPECT_NEAR(sum, 2.0 - r.nodes[before].grade->value(), 1e-10);
    }
}

TEST(NetworkProperty, IdenticalPipesSideBySideShareEvenly)
{
    for (int count : {2, 3, 7, 20})
        for (double drop : {1e-4, 0.01, 0.5, 4.0}) {
            Network n;
            n.viscosity = units::squareMetresPerSecond(1.0034e-6);
            const std::size_t high = n.addFixedGrade(units::elevationMetres(drop)), split = n.addJunction();
            const std::size_t join = n.addJunction(), low = n.addFixedGrade(units::elevationMetres(0));
            const std::size_t whole = n.addLink(high, split, pipe(60, 2, 1));
            for (int i = 0; i < count; ++i)
                n.addLink(split, join, pipe(17, 1, 3));
            n.addLink(join, low, pipe(60, 2, 1));
            const NetworkResult r = solve(n);
            ASSERT_TRUE(r.solved());
            for (int i = 0; i < count; ++i)
                EXPECT_NEAR(count * flowOf(r, whole + 1 + i) / flowOf(r, whole), 1.0, 1e-12) << count << " " << drop;
        }
}

// In a tree, opening any valve (less K) never lowers the pump's flow. In loops it may: a bridge of unequal pipes.
TEST(NetworkProperty, OpeningAValveInATreeNeverLowersThePumpsFlow)
{
    for (unsigned seed = 0; seed < 60; ++seed) {
        const Built built = tree(seed);
        const double before = flowOf(solve(built.network), built.pump);
        for (std::size_t k = 0; k < built.network.links.size(); ++k) {
            Network opened = built.network;
            auto* part = std::get_if<PipeLink>(&opened.links[k].part);
            if (!part)
                continue;
            part->sumK *= 0.5;
            EXPECT_GE(flowOf(solve(opened), built.pump), before * (1.0 - 1e-10)) << seed << " " << k;
        }
    }
}

TEST(NetworkProperty, RaisingTheSumpNeverLowersAnOutletsFlow)
{
    for (unsigned seed = 0; seed < 300; ++seed) {
        const Built built = seed % 2 == 0 ? tree(seed) : grid(seed);
        Network raised = built.network;
        auto& sump = std::get<FixedGrade>(raised.nodes[built.sump]);
        sump.grade = units::elevationMetres(sump.grade.value() + 0.15);
        const NetworkResult low = solve(built.network), high = solve(raised);
        for (std::size_t outlet : built.outlets)
            EXPECT_GE(flowOf(high, outlet), flowOf(low, outlet) - 1e-10 * std::fabs(flowOf(low, built.pump)) - 1e-15)
                << seed;
    }
}

// Where the loss goes with the square of the flow alone, double the heads drive sqrt(2) of the flow.
TEST(NetworkProperty, DoubleTheHeadDrivesRootTwoThroughFittings)
{
    Dice dice(3);
    for (int round = 0; round < 30; ++round) {
        const double first = dice.between(0.1, 2.0), k = dice.between(0.5, 40.0);
        const auto flow = [&](double head) {
            Network n;
            n.viscosity = units::squareMetresPerSecond(1.0034e-6);
            const std::size_t between = n.addJunction();
            n.addLink(n.addFixedGrade(units::elevationMetres(head)), between, pipe(27.2, 0, k));
            n.addLink(between, n.addFixedGrade(units::elevationMetres(0)), pipe(21.2, 0, 2 * k));
            return flowOf(solve(n), 0);
        };
        EXPECT_NEAR(flow(2.0 * first) / flow(first), std::sqrt(2.0), 1e-9);
    }
}

// One US gallon is 231 cubic inches of 25.4 mm: the same flow written in either unit gives the same answer.
TEST(NetworkProperty, UnitsOfTheInputDoNotMatter)
{
    const double cubicMetresPerGallon = 231.0 * 0.0254 * 0.0254 * 0.0254;
    for (double lph : {50.0, 900.0, 4000.0}) {
        const double gallonsPerMinute = lph / 1000.0 / 60.0 / cubicMetresPerGallon;
        const auto gradeFor = [](units::Flow draw) {
            Network n;
            n.viscosity = units::squareMetresPerSecond(1.0034e-6);
            const std::size_t tap = n.addJunction(-draw);
            n.addLink(n.addFixedGrade(units::elevationMetres(2)), tap, pipe(27.2, 8, 4));
            return solve(n).nodes[tap].grade->value();
        };
        EXPECT_NEAR(gradeFor(units::litresPerHour(lph)),
                    gradeFor(units::cubicMetresPerSecond(gallonsPerMinute * cubicMetresPerGallon / 60.0)), 1e-12);
    }
}

TEST(NetworkProperty, SameNetworkTwiceGivesTheSameBits)
{
    for (unsigned seed = 0; seed < 50; ++seed) {
        const Built built = grid(seed);
        const NetworkResult a = solve(built.network), b = solve(built.network);
        for (std::size_t k = 0; k < a.links.size(); ++k)
            EXPECT_EQ(flowOf(a, k), flowOf(b, k));
    }
}

} // namespace
} // namespace sumpwright::hydraulics
