// The drawing's plain geometry: steps, bars, rulers, hatching, lines of runs.
#include <gtest/gtest.h>

#include <cmath>

#include "tests/ui/canvas_sample.hpp"
#include "ui/canvas/grid.hpp"
#include "ui/canvas/hatch.hpp"
#include "ui/canvas/ruler.hpp"
#include "ui/canvas/run_line.hpp"
#include "ui/canvas/scale_bar.hpp"
#include "ui/canvas/scene_point.hpp"

namespace sumpwright::ui::canvas
{

namespace
{
using test::at;

plan::Vertex vertex(double x, double y, double level)
{
    plan::Vertex made;
    made.at = at(x, y);
    made.level = units::elevationMetres(level);
    return made;
}

RunLine lineOf(std::vector<plan::Vertex> vertices, double diameter = 50.0)
{
    plan::Run run;
    run.vertices = std::move(vertices);
    return runLineOf(run, units::millimetres(diameter));
}

bool isOneTwoFive(double value)
{
    const double leading = value / std::pow(10.0, std::floor(std::log10(value) + 1e-9));
    return std::abs(leading - 1.0) < 1e-6 || std::abs(leading - 2.0) < 1e-6 || std::abs(leading - 5.0) < 1e-6;
}
} // namespace

TEST(ScenePoint, TurnsMetresUpIntoMillimetresDownAndBack)
{
    EXPECT_EQ(toScene(at(1.2, 3.4)), QPointF(1200.0, -3400.0));
    EXPECT_EQ(toPlan(toScene(at(-0.7, 2.5))), at(-0.7, 2.5));
    EXPECT_DOUBLE_EQ(sceneRotation(units::degrees(30.0)), -30.0);
}

TEST(RoundSteps, AreOneTwoFiveOnTheAskedSide)
{
    for (double value = 0.0137; value < 5e5; value *= 1.37) {
        EXPECT_TRUE(isOneTwoFive(roundUp125(value))) << value;
        EXPECT_GE(roundUp125(value), value * (1.0 - 1e-9));
        EXPECT_LT(roundUp125(value), value * 2.5 * (1.0 + 1e-9));
        EXPECT_TRUE(isOneTwoFive(roundDown125(value))) << value;
        EXPECT_LE(roundDown125(value), value * (1.0 + 1e-9));
        EXPECT_GT(roundDown125(value), value / 2.5 * (1.0 - 1e-9));
    }
    EXPECT_DOUBLE_EQ(roundUp125(20.0), 20.0);
    EXPECT_DOUBLE_EQ(roundDown125(20.0), 20.0);
}

TEST(Grid, ShowsTheSnapStepItselfWhereThereIsRoomAndNeverCrowds)
{
    EXPECT_DOUBLE_EQ(gridStepsFor(5.0, 100.0).fine, 100.0);
    for (double pixel = 0.3; pixel < 300.0; pixel *= 1.3) {
        const auto steps = gridStepsFor(pixel, 100.0);
        EXPECT_GE(steps.fine / pixel, 9.0 - 1e-9) << "lines closer than 9 px at " << pixel;
        EXPECT_NEAR(std::remainder(steps.fine, 100.0), 0.0, 1e-6);
        EXPECT_NEAR(std::remainder(steps.heavy, steps.fine), 0.0, 1e-6) << "heavy lines lie on fine ones";
        EXPECT_GE(steps.heavy / steps.fine, 3.0);
    }
}

TEST(ScaleBar, HasARoundLengthWhosePixelsMatchTheZoom)
{
    const Figures metric;
    for (double pixel = 0.3; pixel < 300.0; pixel *= 1.3) {
        const auto bar = scaleBarFor(pixel, metric);
        EXPECT_TRUE(isOneTwoFive(units::inMetres(bar.length))) << units::inMetres(bar.length);
        EXPECT_NEAR(bar.pixels * pixel, units::inMillimetres(bar.length), 1e-6);
        EXPECT_LE(bar.pixels, 150.0 + 1e-6);
        EXPECT_GT(bar.pixels, 150.0 / 2.5 - 1e-6);
        EXPECT_GE(bar.parts, 4);
    }
    EXPECT_EQ(scaleBarFor(10.0, metric).text.toStdString(), "1 m");
    const auto feet = scaleBarFor(10.0, {units::UnitSystem::us, {}});
    // 1 ft = 0.3048 m exactly (international yard and pound agreement, 1959)
    EXPECT_NEAR(units::inMetres(feet.length) / 0.3048, 2.0, 1e-9);
}

TEST(Ruler, WritesItsFiguresUpwardAlongY)
{
    const Figures metric;
    const auto ticks = rulerTicks(-2100.0, 1100.0, 10.0, true, metric);
    QStringList figures;
    for (const auto& tick : ticks)
        if (tick.main)
            figures.append(tick.text);
    EXPECT_EQ(figures.join(QLatin1Char(' ')), QStringLiteral("2 1 0 \u22121"));
    Figures comma;
    comma.numbers = units::NumberStyle::ofDesktop(",", " ");
    const auto fine = rulerTicks(0.0, 600.0, 2.0, false, comma);
    EXPECT_TRUE(
        std::any_of(fine.begin(), fine.end(), [](const RulerTick& t) { return t.text == QLatin1String("0,2"); }));
}

TEST(Hatch, StaysInsideItsRectangleAndKeepsItsSpacing)
{
    const QRectF rect(-600.0, -800.0, 1200.0, 1600.0);
    const auto lines = hatchLines(rect, 50.0);
    ASSERT_GT(lines.size(), 30U);
    for (const auto& line : lines) {
        EXPECT_TRUE(rect.adjusted(-1e-6, -1e-6, 1e-6, 1e-6).contains(line.p1()));
        EXPECT_TRUE(rect.adjusted(-1e-6, -1e-6, 1e-6, 1e-6).contains(line.p2()));
    }
    const auto offset = [](const QLineF& line) { return (line.x1() + line.y1()) / std::sqrt(2.0); };
    EXPECT_NEAR(offset(lines[11]) - offset(lines[10]), 50.0, 1e-6);
}

TEST(RunLine, FoldsVerticalLegsIntoOneCorner)
{
    const auto line = lineOf({vertex(0, 0, 0.3), vertex(0, 0, 1.2), vertex(3, 0, 1.2), vertex(3, 4, 0.8)});
    ASSERT_EQ(line.corners.size(), 3U);
    EXPECT_DOUBLE_EQ(units::inMetres(line.corners[0].before), 0.3);
    EXPECT_DOUBLE_EQ(units::inMetres(line.corners[0].after), 1.2);
    EXPECT_DOUBLE_EQ(line.length(), 7000.0);
    EXPECT_EQ(line.at(4000.0), QPointF(3000.0, -1000.0));
    EXPECT_NEAR(units::inMetres(line.levelAt(5000.0)), 1.0, 1e-12);
    EXPECT_DOUBLE_EQ(std::remainder(line.turnAt(1.0), 360.0), 0.0);
    EXPECT_DOUBLE_EQ(std::remainder(line.turnAt(6000.0), 360.0), -90.0);
}

TEST(RunLine, PutsAStationOfTrueLengthWhereItLiesInPlan)
{
    plan::Run run;
    run.vertices = {vertex(0, 0, 0.0), vertex(0, 0, 2.0), vertex(2, 0, 2.0)}; // 2 m up, then 2 m along
    const auto line = runLineOf(run, units::millimetres(50.0));
    EXPECT_DOUBLE_EQ(distanceAtStation(run, line, 0.25), 0.0) << "on the vertical leg";
    EXPECT_DOUBLE_EQ(distanceAtStation(run, line, 0.75), 1000.0);
    EXPECT_DOUBLE_EQ(distanceAtStation(run, line, 1.0), 2000.0);
}

TEST(RunLine, IsBrokenOnlyWhereAnotherPassesClearAbove)
{
    const auto low = lineOf({vertex(0, 0, 0.2), vertex(4, 0, 0.2)});
    const auto high = lineOf({vertex(1, -1, 0.5), vertex(1, 1, 0.5)}, 32.0);
    const auto breaks = breaksUnder(low, high);
    ASSERT_EQ(breaks.size(), 1U);
    EXPECT_NEAR(breaks[0].centre, 1000.0, 1e-6);
    EXPECT_TRUE(breaksUnder(high, low).empty()) << "the upper one is drawn through";
    const auto touching = lineOf({vertex(1, -1, 0.22), vertex(1, 1, 0.22)}, 32.0);
    EXPECT_TRUE(breaksUnder(low, touching).empty()) << "0.02 m above is no clear crossing of 50 mm and 32 mm pipes";

    const auto drawn = stretchesOf(low.length(), breaks, {}, 10.0);
    ASSERT_EQ(drawn.size(), 2U);
    EXPECT_NEAR(drawn[0].to, 1000.0 - 16.0 - 10.0, 1e-6);
    EXPECT_NEAR(drawn[1].from, 1000.0 + 16.0 + 10.0, 1e-6);
}

TEST(RunLine, IsHiddenWhereItPassesBelowAVessel)
{
    plan::Vessel bed;
    bed.shape = plan::RectangleShape{units::metres(1.0), units::metres(1.0)};
    bed.centre = at(2.0, 0.0);
    bed.baseLevel = units::elevationMetres(0.6);
    const auto hidden = hiddenUnder(lineOf({vertex(0, 0, 0.3), vertex(4, 0, 0.3)}), bed);
    ASSERT_EQ(hidden.size(), 1U);
    EXPECT_NEAR(hidden[0].from, 1500.0, 1e-6);
    EXPECT_NEAR(hidden[0].to, 2500.0, 1e-6);
    EXPECT_TRUE(hiddenUnder(lineOf({vertex(0, 0, 0.7), vertex(4, 0, 0.7)}), bed).empty()) << "above the underside";
}

} // namespace sumpwright::ui::canvas
