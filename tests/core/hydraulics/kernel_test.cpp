// The solver's own parts: the sparse factorisation, and the damped path that full steps seldom need.
#include <gtest/gtest.h>

#include <Eigen/Dense>
#include <cmath>
#include <random>

#include "core/hydraulics/kernel/gradient_method.hpp"
#include "core/hydraulics/kernel/one_way_set.hpp"
#include "core/hydraulics/kernel/sparse_ldl.hpp"
#include "tests/core/hydraulics/example_pumps.hpp"

namespace sumpwright::hydraulics::kernel
{
namespace
{

// Oracle: Eigen's dense LDLT on the same matrix.
TEST(SparseLdl, SolvesAsTheDenseOneDoes)
{
    std::mt19937 random(20240607);
    std::uniform_real_distribution<double> part(0.0, 1.0);
    for (Index rows : {1, 2, 3, 5, 8, 13, 40, 90}) {
        std::vector<SparseLdl::Pair> pairs;
        for (Index i = 0; i + 1 < rows; ++i)
            pairs.emplace_back(i, i + 1);
        for (Index i = 0; i < rows; ++i)
            pairs.emplace_back(static_cast<Index>(part(random) * rows), static_cast<Index>(part(random) * rows));
        std::erase_if(pairs, [](const auto& pair) { return pair.first == pair.second; });
        SparseLdl sparse(rows, pairs);
        for (int again = 0; again < 2; ++again) {
            sparse.clear();
            Eigen::MatrixXd dense = Eigen::MatrixXd::Zero(rows, rows);
            Eigen::VectorXd right(rows);
            for (const auto& [a, b] : pairs) {
                const double g = std::pow(10.0, 6.0 * part(random) - 3.0);
                sparse.offDiagonal(sparse.offDiagonalPlace(a, b)) -= g;
                dense(a, b) -= g;
                dense(b, a) -= g;
                for (Index i : {a, b}) {
                    sparse.diagonal(sparse.placeOf(i)) += g;
                    dense(i, i) += g;
                }
            }
            for (Index i = 0; i < rows; ++i) {
                sparse.diagonal(sparse.placeOf(i)) += 0.1;
                dense(i, i) += 0.1;
                right[i] = part(random) - 0.5;
                sparse.rightSide(sparse.placeOf(i)) = right[i];
            }
            ASSERT_TRUE(sparse.solve());
            const Eigen::VectorXd expected = dense.ldlt().solve(right);
            for (Index i = 0; i < rows; ++i)
                EXPECT_NEAR(sparse.solution(sparse.placeOf(i)), expected[i], 1e-9 * (1.0 + std::fabs(expected[i])));
        }
    }
}

TEST(SparseLdl, RefusesAPivotThatIsNotAboveZero)
{
    SparseLdl matrix(2, {{0, 1}});
    matrix.diagonal(matrix.placeOf(0)) = 1.0;
    matrix.diagonal(matrix.placeOf(1)) = 1.0;
    matrix.offDiagonal(matrix.offDiagonalPlace(1, 0)) = -1.0;
    EXPECT_FALSE(matrix.solve());
}

// Flat at rest, a law would give Newton a step without end.
TEST(LinkLaw, NeverLiesFlat)
{
    const PumpCurve level = *PumpCurve::fromRatings(units::metresHead(2.5), units::litresPerHour(3000));
    EXPECT_GE(LinkLaw::ofPump(level, 1.0).at(0.0).slope, smallestResistance);
    EXPECT_GE(LinkLaw::ofPipe({0.02, 0.0, 0.0, 5.0}, 1e-6, false, 0.0).at(0.0).slope, smallestResistance);
    EXPECT_GE(LinkLaw::ofPipe({0.02, 0.0, 0.0, 0.0}, 1e-6, false, 0.0).at(1e-3).loss, 0.9e-6);
}

LinkLaw pipeLaw(double bore, double length, double sumK, bool oneWay = false)
{
    return LinkLaw::ofPipe({bore, length, 1.5e-6, sumK}, 1.0034e-6, oneWay, 0.0);
}

// Two rows of junctions with outlets at uneven heights, some out of reach.
FlowProblem ladder(const PumpCurve& pump, int steps, std::vector<double>& grades)
{
    FlowProblem problem;
    const auto node = [&](bool held, double grade) {
        problem.held.push_back(held);
        problem.supply.push_back(0.0);
        grades.push_back(grade);
        return static_cast<Index>(grades.size() - 1);
    };
    std::mt19937 random(7);
    std::uniform_real_distribution<double> part(0.0, 1.0);
    Index left = node(false, 0.0), right = node(false, 0.0);
    problem.links.push_back({node(true, 0.0), left, LinkLaw::ofPump(pump, 1.0)});
    problem.links.push_back({left, right, pipeLaw(0.021, 1.0, 0.4)});
    for (int i = 0; i < steps; ++i) {
        const Index nextLeft = node(false, 0.0), nextRight = node(false, 0.0);
        problem.links.push_back({left, nextLeft, pipeLaw(0.027, 1.0, 0.4)});
        problem.links.push_back({right, nextRight, pipeLaw(0.021, 1.0, 0.4)});
        problem.links.push_back({nextLeft, nextRight, pipeLaw(0.017, 0.6, 2.0)});
        problem.links.push_back({nextLeft, node(true, 0.5 + 3.0 * part(random)), pipeLaw(0.017, 1.0, 6.0, true)});
        problem.links.push_back({nextRight, node(true, 0.5 + 3.0 * part(random)), pipeLaw(0.017, 1.0, 6.0, true)});
        left = nextLeft;
        right = nextRight;
    }
    return problem;
}

FlowState startOf(const FlowProblem& problem, const std::vector<double>& grades, double times)
{
    FlowState state{grades, {}};
    for (const ProblemLink& link : problem.links)
        state.flow.push_back(times * link.law.start());
    return state;
}

// Damped steps lower the content every time, so they settle from any start and where full steps do.
TEST(GradientMethod, DampedStepsReachTheSameAnswer)
{
    const PumpCurve pump = examples::g4500();
    for (int steps : {1, 3, 10}) {
        std::vector<double> grades;
        FlowProblem problem = ladder(pump, steps, grades);
        const std::vector<bool> open(problem.links.size(), true), pinned(problem.held.size(), false);
        GradientMethod method(problem);
        FlowState full = startOf(problem, grades, 1.0);
        ASSERT_TRUE(method.run(open, pinned, full, {.dampedSteps = 0}).converged) << steps;
        for (double times : {-30.0, 0.0, 1.0, 1000.0}) {
            FlowState damped = startOf(problem, grades, times);
            const NewtonReport report = method.run(open, pinned, damped, {.fullSteps = 0});
            ASSERT_TRUE(report.converged) << steps << " " << times << " " << report.headResidual;
            for (std::size_t k = 0; k < full.flow.size(); ++k)
                EXPECT_NEAR(damped.flow[k], full.flow[k], 1e-12) << k;
        }
    }
}

// Links shut by mistake are opened again, and the other way round: the answer does not depend on the first guess.
TEST(OneWaySet, SettlesFromAnyFirstGuess)
{
    const PumpCurve pump = examples::g4500();
    std::mt19937 random(99);
    for (int steps : {1, 3, 10}) {
        std::vector<double> grades;
        FlowProblem problem = ladder(pump, steps, grades);
        const std::vector<bool> fed(problem.links.size(), true);
        const Settled expected = settle(problem, fed, fed, grades);
        ASSERT_EQ(expected.fault, SettleFault::None);
        for (int guess = 0; guess < 20; ++guess) {
            std::vector<bool> open = fed;
            for (std::size_t k = 0; k < open.size(); ++k)
                open[k] = !problem.links[k].law.oneWay() || (guess > 0 && random() % 2 == 0);
            const Settled settled = settle(problem, fed, open, grades);
            ASSERT_EQ(settled.fault, SettleFault::None) << steps << " " << guess;
            EXPECT_EQ(settled.open, expected.open) << steps << " " << guess;
            for (std::size_t k = 0; k < open.size(); ++k)
                EXPECT_NEAR(settled.state.flow[k], expected.state.flow[k], 1e-12) << k;
        }
    }
}

TEST(GradientMethod, SaysWhenItDidNotConverge)
{
    const PumpCurve pump = examples::g4500();
    std::vector<double> grades;
    FlowProblem problem = ladder(pump, 5, grades);
    const std::vector<bool> open(problem.links.size(), true), pinned(problem.held.size(), false);
    FlowState state = startOf(problem, grades, 1.0);
    const NewtonReport report = GradientMethod(problem).run(open, pinned, state, {.fullSteps = 2, .dampedSteps = 2});
    EXPECT_FALSE(report.converged);
    EXPECT_EQ(report.steps, 4);
    EXPECT_GT(report.headResidual, headAccepted);
}

} // namespace
} // namespace sumpwright::hydraulics::kernel
