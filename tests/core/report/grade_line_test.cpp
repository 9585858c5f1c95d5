// The grade line against the network that made it and against heads worked out by hand.
#include <gtest/gtest.h>

#include "core/report/grade_line.hpp"
#include "tests/core/report/assessed.hpp"

using namespace sumpwright;
using assessment::RunningState;
using report::GradeStretch;

namespace
{

double m(units::Length length) { return units::inMetres(length); }
double m(units::Elevation level) { return units::inMetres(level); }

// One run with a bend, a valve and extra fittings, from a sump to a tank above it.
struct OneRun {
    test::DrawnPlan drawn;
    base::Id sump = drawn.sump({0, 0, 0}, 1.0, 1.0, 0.5, 0.3);
    base::Id tank = drawn.vessel(plan::VesselKind::fishTank, {4, 0, 0}, 1.0, 1.0, 0.9);
    base::Id inlet = drawn.port(tank, plan::PortKind::inlet, {3.6, 0, 1.1});
    base::Id pump = drawn.pump(sump, "G4500", 0.1);
    base::Id run = drawn.run(plan::Service::pressure, "pvcu-pn16-32", plan::PumpEnd{pump},
                             plan::PortEnd{tank, inlet, {}}, {{0, 0, 0.1}, {0, 0, 1.2}, {3.6, 0, 1.2}, {3.6, 0, 1.1}});

    OneRun()
    {
        drawn.valve(run, "ball-valve", 0.6);
        drawn.drain(tank, sump, {4.4, 0, 0.7}, 0.0638, {0.2, 0, 0.4});
    }
    void turnRound()
    {
        drawn.changeRun(run, [](plan::Run& changed) {
            std::swap(changed.from, changed.to);
            std::reverse(changed.vertices.begin(), changed.vertices.end());
            for (auto& valve : changed.valves)
                valve.station = 1.0 - valve.station;
        });
    }
    std::vector<GradeStretch> line(assessment::Assessment& results) const
    {
        results = test::assessed(drawn);
        const auto path = report::sectionOf(drawn.plan, &results, results.catalogue.get(), {pump, tank, inlet}).value();
        return report::gradeLineOf(path, results);
    }
};

void expectDownhill(const std::vector<report::ProfilePoint>& points, std::size_t from)
{
    for (std::size_t i = from + 1; i < points.size(); ++i) {
        EXPECT_LE(m(points[i].level), m(points[i - 1].level) + 1e-9) << i;
        EXPECT_GE(m(points[i].along), m(points[i - 1].along) - 1e-9) << i;
    }
}

} // namespace

TEST(GradeLine, RisesByThePumpsHeadAndEndsAtTheMouth)
{
    assessment::Assessment results;
    const auto line = OneRun().line(results);
    ASSERT_EQ(line.size(), 2U);
    const auto& points = line[0].points;
    const double water = m(points[0].level);
    EXPECT_NEAR(m(points[2].level),
                water + units::inMetresHead(results.pumps->pumps[0].duty[RunningState::least]->head), 1e-9);
    EXPECT_NEAR(m(points.back().level), 1.1, 1e-6); // a free mouth: all head is spent there
    EXPECT_NEAR(m(points.back().along), 3.6, 1e-9);
    expectDownhill(points, 2);
}

TEST(GradeLine, DropsAtAValveWhereItSits)
{
    const OneRun plain;
    assessment::Assessment results;
    const auto points = plain.line(results)[0].points;
    const auto& run = results.flow->runs.front();
    const auto valve = std::find_if(run.fittings.begin(), run.fittings.end(),
                                    [](const auto& fitting) { return fitting.role == assessment::FittingRole::valve; });
    ASSERT_NE(valve, run.fittings.end());
    const double head = valve->k * units::inMetresHead(run.flow[RunningState::least]->losses->velocityHead);
    // Half of 1.1 + 3.6 + 0.1 m is 2.4 m: 1.3 m along the level leg.
    bool found = false;
    for (std::size_t i = 1; i < points.size(); ++i)
        found = found || (std::abs(m(points[i].along) - 1.3) < 1e-9 && m(points[i].along) == m(points[i - 1].along) &&
                          std::abs(m(points[i - 1].level) - m(points[i].level) - head) < 1e-9);
    EXPECT_TRUE(found);
}

TEST(GradeLine, IsTheSameForARunDrawnAgainstTheWater)
{
    OneRun plain, turned;
    turned.turnRound();
    assessment::Assessment results;
    const auto a = plain.line(results)[0].points;
    const auto b = turned.line(results)[0].points;
    ASSERT_EQ(a.size(), b.size());
    for (std::size_t i = 0; i < a.size(); ++i) {
        EXPECT_NEAR(m(a[i].along), m(b[i].along), 1e-9) << i;
        EXPECT_NEAR(m(a[i].level), m(b[i].level), 1e-6) << i;
    }
}

TEST(GradeLine, PassesTheNetworksGradeAtEveryTee)
{
    const test::SoundPlan sound;
    const auto results = test::assessed(sound.drawn);
    const base::Id port = sound.drawn.plan.vessels.find(sound.bed2)->ports[0].id;
    const auto path =
        report::sectionOf(sound.drawn.plan, &results, results.catalogue.get(), {sound.pump, sound.bed2, port}).value();
    const auto points = report::gradeLineOf(path, results).at(0).points;
    for (const base::Id tee : {sound.tee1, sound.tee2}) {
        const double grade = m(*assessment::find(results.flow->tees, tee)->grade[RunningState::least]);
        const double along = tee == sound.tee1 ? 1.2 : 3.2;
        // As the losses add up to it, not only where the line is set to it.
        std::size_t met = 0;
        for (const auto& point : points)
            met += std::abs(m(point.along) - along) < 1e-9 && std::abs(m(point.level) - grade) < 1e-6 ? 1 : 0;
        EXPECT_GE(met, 1U);
    }
    expectDownhill(points, 2);
    EXPECT_NEAR(m(points.back().level), 1.1, 1e-6);
}

TEST(GradeLine, OfAGravityRunFollowsTheWaterFoundInIt)
{
    assessment::Assessment results;
    const OneRun plain;
    const auto gravity = plain.line(results).at(1);
    const auto* tank = assessment::find(results.water->vessels, plain.tank);
    EXPECT_FALSE(gravity.pressure);
    EXPECT_FALSE(gravity.plain);
    EXPECT_NEAR(m(gravity.points.front().level), m(tank->water[assessment::WaterState::runningLeast]->level), 1e-12);
    const auto& drain = results.flow->runs.back();
    const auto& water = drain.flow[RunningState::least]->open->stretches;
    ASSERT_EQ(gravity.points.size(), 1 + 2 * water.size()); // the mouth is free: 0.4 m over 0.3 m
    for (std::size_t leg = 0; leg < water.size(); ++leg) {
        EXPECT_EQ(m(gravity.points[1 + 2 * leg].level), m(water[leg].startGrade)) << leg;
        EXPECT_EQ(m(gravity.points[2 + 2 * leg].level), m(water[leg].endGrade)) << leg;
    }
    EXPECT_NEAR(m(gravity.points.back().along), m(gravity.points.front().along) + 4.2, 1e-9);
    // The last water stands in the pipe: between its invert and its soffit.
    EXPECT_GT(m(gravity.points.back().level), 0.4 - m(drain.bore) / 2.0);
    EXPECT_LT(m(gravity.points.back().level), 0.4 + m(drain.bore) / 2.0);
}

TEST(GradeLine, OfAGravityRunDrawnAgainstTheWaterIsTheSame)
{
    assessment::Assessment results;
    OneRun plain, turned;
    const base::Id drain = plain.drawn.plan.runs.begin()->get()->id == plain.run
                               ? std::next(plain.drawn.plan.runs.begin())->get()->id
                               : plain.drawn.plan.runs.begin()->get()->id;
    turned.drawn.changeRun(drain, [](plan::Run& run) {
        std::swap(run.from, run.to);
        std::reverse(run.vertices.begin(), run.vertices.end());
    });
    const auto a = plain.line(results).at(1).points;
    const auto b = turned.line(results).at(1).points;
    ASSERT_EQ(a.size(), b.size());
    for (std::size_t i = 0; i < a.size(); ++i) {
        EXPECT_NEAR(m(a[i].along), m(b[i].along), 1e-9) << i;
        EXPECT_NEAR(m(a[i].level), m(b[i].level), 1e-6) << i;
    }
}

TEST(GradeLine, OfAGravityRunWithoutResultsGoesStraightToTheMouth)
{
    assessment::Assessment results;
    OneRun plain;
    for (const auto& run : plain.drawn.plan.runs)
        if (run->service == plan::Service::gravity)
            plain.drawn.changeRun(run->id, [](plan::Run& changed) { changed.pipeId = "no-such-pipe"; });
    for (const auto& stretch : plain.line(results))
        if (!stretch.pressure) {
            EXPECT_TRUE(stretch.plain);
            EXPECT_NEAR(m(stretch.points.back().level), 0.4, 1e-12);
        }
}

TEST(GradeLine, IsEmptyWhereTheFlowIsNotSolved)
{
    OneRun plain;
    plain.drawn.changePump(plain.pump, [](plan::Pump& pump) { pump.running = false; });
    assessment::Assessment results;
    for (const auto& stretch : plain.line(results))
        EXPECT_FALSE(stretch.pressure);
}
