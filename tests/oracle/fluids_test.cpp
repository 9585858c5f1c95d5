// Thousands of points against an independent library, Debian's python3-fluids (1.0.22), asked anew in every run.
// Without it the test fails and says what to install. What is asked stands in fluids_points.py beside this file.
#include <chrono>
#include <cmath>
#include <filesystem>
#include <functional>
#include <iterator>
#include <map>
#include <sstream>

#include <gtest/gtest.h>

#include "core/hydraulics/fittings.hpp"
#include "core/hydraulics/friction.hpp"
#include "core/hydraulics/network.hpp"
#include "core/hydraulics/round_channel.hpp"
#include "core/hydraulics/sloping_drain.hpp"
#include "tests/support/child.hpp"

using namespace sumpwright;
using namespace sumpwright::hydraulics;

namespace
{

constexpr const char* python = "/usr/bin/python3";
constexpr const char* install = "install it: apt-get install --no-install-recommends python3-fluids";

struct Point {
    std::string word; // a fitting, where one is asked about
    std::vector<double> of;
    double answer = 0.0;
};

using Points = std::map<std::string, std::vector<Point>>;

Points pointsOf(const std::string& text)
{
    Points points;
    std::istringstream lines(text);
    for (std::string line; std::getline(lines, line);) {
        std::istringstream words(line);
        std::string ask;
        words >> ask >> std::ws;
        Point point;
        if (std::isalpha(words.peek()))
            words >> point.word;
        point.of.assign(std::istream_iterator<double>(words), {});
        base::ensure(!point.of.empty() && words.eof(), "a line of numbers");
        point.answer = point.of.back();
        point.of.pop_back();
        points[ask].push_back(std::move(point));
    }
    return points;
}

// Asked once for all tests of this program.
const Points& allPoints()
{
    static const Points points = [] {
        const auto start = std::chrono::steady_clock::now();
        const auto result = tests::runProgram({SUMPWRIGHT_SOURCE "/tests/oracle/fluids_points.py"}, python);
        EXPECT_EQ(result.exitCode, 0) << result.errors << "\n" << install;
        const std::chrono::duration<double> took = std::chrono::steady_clock::now() - start;
        Points read = pointsOf(result.out);
        std::size_t count = 0;
        for (const auto& [ask, list] : read)
            count += list.size();
        std::cout << count << " points of " << read.size() << " kinds in " << took.count() << " s\n";
        return read;
    }();
    return points;
}

class FluidsOracle : public testing::Test
{
protected:
    void SetUp() override
    {
        ASSERT_TRUE(std::filesystem::exists(python)) << "install the Debian packages python3 and python3-fluids";
        static const auto found = tests::runProgram({"-c", "import fluids"}, python);
        ASSERT_EQ(found.exitCode, 0) << "python3-fluids is missing; " << install << "\n" << found.errors;
    }

    // At least so many points, each within this part of the library's answer.
    static void expectSame(const std::string& ask, std::size_t least, double tolerance,
                           const std::function<double(const Point&)>& own)
    {
        const auto found = allPoints().find(ask);
        ASSERT_NE(found, allPoints().end()) << ask;
        EXPECT_GE(found->second.size(), least) << ask;
        double worst = 0.0;
        for (const Point& point : found->second) {
            const double error = std::fabs(own(point) - point.answer) / std::fmax(std::fabs(point.answer), 1e-12);
            worst = std::fmax(worst, error);
            ASSERT_LE(error, tolerance) << ask << " " << point.word << " " << testing::PrintToString(point.of) << ": "
                                        << own(point) << ", fluids " << point.answer;
        }
        std::cout << ask << ": " << found->second.size() << " points, largest difference " << worst << '\n';
    }
};

double coefficientOf(const Point& point, LossMethod method, double reynolds)
{
    const units::Length bore = units::metres(point.of.at(0));
    return *lossCoefficient(fittingFromId(point.word).value(), method, {bore, bore, reynolds});
}

} // namespace

TEST_F(FluidsOracle, FrictionFactors)
{
    expectSame("friction", 2500, 1e-9, [](const Point& p) { return frictionFactor(p.of.at(0), p.of.at(1)); });
}

TEST_F(FluidsOracle, FittingsAfterHooper)
{
    expectSame("hooper", 500, 1e-12, [](const Point& p) { return coefficientOf(p, LossMethod::Hooper, p.of.at(1)); });
}

TEST_F(FluidsOracle, FittingsAfterDarby)
{
    expectSame("darby", 500, 1e-12, [](const Point& p) { return coefficientOf(p, LossMethod::Darby, p.of.at(1)); });
}

// The library takes a quick form of the friction factor here, good to 1e-5.
TEST_F(FluidsOracle, FittingsAfterCrane)
{
    expectSame("crane", 250, 1e-5, [](const Point& p) { return coefficientOf(p, LossMethod::Crane, 0.0); });
}

// Our default for a rounded entry is Rennels' value rounded to one digit.
TEST_F(FluidsOracle, RoundedEntry)
{
    expectSame("rounded-entry", 1, 0.02, [](const Point&) { return defaultCoefficient(FittingKind::EntryRounded); });
}

TEST_F(FluidsOracle, ChangesOfBore)
{
    expectSame("contraction", 400, 1e-9, [](const Point& p) {
        return contractionCoefficient(units::metres(p.of.at(0)), units::metres(p.of.at(1)));
    });
    expectSame("expansion", 400, 1e-9, [](const Point& p) {
        return expansionCoefficient(units::metres(p.of.at(0)), units::metres(p.of.at(1)));
    });
    expectSame("restated", 400, 1e-12, [](const Point& p) {
        return restated(p.of.at(0), units::metres(p.of.at(1)), units::metres(p.of.at(2)));
    });
}

// The constant K of a dividing tee lies among Crane's values for every share of the flow that goes off: the branch
// within a third of them, the run above them, on the safe side.
TEST_F(FluidsOracle, DividingTees)
{
    for (const Point& point : allPoints().at("tee-branch-divides"))
        EXPECT_NEAR(defaultCoefficient(FittingKind::TeeBranch) / point.answer, 1.0, 0.34) << point.of.at(0);
    for (const Point& point : allPoints().at("tee-run-divides"))
        EXPECT_GT(defaultCoefficient(FittingKind::TeeRun), point.answer) << point.of.at(0);
}

TEST_F(FluidsOracle, DrainsAfterManning)
{
    expectSame("section", 100, 1e-9, [](const Point& p) {
        return units::inSquareMetres(sectionAt(units::metres(p.of.at(0)), units::metres(p.of.at(1))).area);
    });
    expectSame("manning", 700, 1e-9, [](const Point& p) {
        return units::inCubicMetresPerSecond(normalFlow(units::metres(p.of.at(0)), units::metres(p.of.at(1)),
                                                        units::metresPerMetre(p.of.at(2)), p.of.at(3)));
    });
}

TEST_F(FluidsOracle, FlowsThroughOnePipe)
{
    expectSame("flow", 200, 1e-8, [](const Point& p) {
        Network network;
        network.viscosity = units::squareMetresPerSecond(1.0034e-6);
        const auto upper = network.addFixedGrade(units::elevationMetres(p.of.at(0)));
        const auto lower = network.addFixedGrade(units::elevationMetres(0.0));
        const auto link = network.addLink(upper, lower,
                                          PipeLink{units::metres(p.of.at(1)), units::metres(p.of.at(2)),
                                                   units::metres(p.of.at(3)), p.of.at(4), false, units::Head()});
        const NetworkResult result = solve(network);
        return result.solved() ? units::inCubicMetresPerSecond(result.links[link].flow) : -1.0;
    });
}
