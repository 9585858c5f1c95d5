// A stage runs when, and only when, its own input differs.
#include <map>

#include "tests/core/assessment/assessing.hpp"
#include "tests/support/sound_plan.hpp"

namespace
{

using namespace sumpwright;
using namespace sumpwright::test;
using assessment::StageName;

// Which stages ran since the last look.
class Watched
{
public:
    explicit Watched(const DrawnPlan& first) { stagesRun(first); }
    std::vector<std::string> stagesRun(const DrawnPlan& drawn)
    {
        m_result = m_stages.assess(drawn.plan);
        std::vector<std::string> ran;
        for (const StageName stage : assessment::allStages)
            if (m_stages.runsOf(stage) != m_runs[stage]) {
                m_runs[stage] = m_stages.runsOf(stage);
                ran.emplace_back(assessment::nameOf(stage));
            }
        return ran;
    }
    const assessment::Assessment& result() const { return m_result; }

private:
    assessment::Stages m_stages{catalogue::Catalogue::builtIn()};
    assessment::Assessment m_result;
    std::map<StageName, std::uint64_t> m_runs;
};

using Names = std::vector<std::string>;

TEST(Stages, RunNothingForTheSamePlan)
{
    const SoundPlan plan;
    Watched watched(plan.drawn);
    EXPECT_EQ(watched.stagesRun(plan.drawn), Names{});
    const SoundPlan again; // equal, but drawn anew: other pointers
    EXPECT_EQ(watched.stagesRun(again.drawn), Names{});
}

TEST(Stages, RunTheirWayThroughOnce)
{
    const SoundPlan plan;
    assessment::Stages stages(catalogue::Catalogue::builtIn());
    stages.assess(plan.drawn.plan);
    for (const StageName stage : assessment::allStages)
        EXPECT_EQ(stages.runsOf(stage), 1U) << assessment::nameOf(stage);
}

TEST(Stages, AltitudeTouchesTheAirAlone)
{
    SoundPlan plan;
    Watched watched(plan.drawn);
    plan.drawn.changeSite([](plan::Site& site) { site.altitude = units::metres(900.0); });
    EXPECT_EQ(watched.stagesRun(plan.drawn), Names{"site"});
}

TEST(Stages, PriceTouchesThePumpsAlone)
{
    SoundPlan plan;
    Watched watched(plan.drawn);
    const auto flow = watched.result().flow;
    plan.drawn.changeSite([](plan::Site& site) { site.powerPrice = units::perKilowattHour(0.5); });
    EXPECT_EQ(watched.stagesRun(plan.drawn), Names{"pumps"});
    EXPECT_EQ(watched.result().flow, flow);
}

TEST(Stages, MovingAVesselWithoutItsPipesSolvesNoNetwork)
{
    SoundPlan plan;
    const Id extra = plan.drawn.vessel(plan::VesselKind::settler, {5.0, 4.0, 0.0}, 0.5, 0.5, 0.5);
    Watched watched(plan.drawn);
    plan.drawn.changeVessel(extra, [](plan::Vessel& v) { v.centre.x = units::metres(5.2); });
    EXPECT_EQ(watched.stagesRun(plan.drawn), (Names{"pipework", "basins", "floor"}));
}

TEST(Stages, AHigherWallChangesWhatItTouches)
{
    SoundPlan plan;
    Watched watched(plan.drawn);
    plan.drawn.changeVessel(plan.tank, [](plan::Vessel& v) { v.wallHeight = units::metres(1.0); });
    const Names ran = watched.stagesRun(plan.drawn);
    EXPECT_EQ(std::count(ran.begin(), ran.end(), "flow"), 0); // the flows are the same, so nothing after them ran
    EXPECT_EQ(std::count(ran.begin(), ran.end(), "pumps"), 0);
    EXPECT_EQ(std::count(ran.begin(), ran.end(), "water"), 1);
}

TEST(Stages, AThrottledValveRunsEverythingButTheSite)
{
    SoundPlan plan;
    plan.drawn.valve(plan.tankBranch, "ball-valve", 1.0);
    Watched watched(plan.drawn);
    plan.drawn.changeRun(plan.tankBranch, [](plan::Run& run) { run.valves[0].opening = 0.5; });
    const Names ran = watched.stagesRun(plan.drawn);
    EXPECT_EQ(std::count(ran.begin(), ran.end(), "site"), 0);
    for (const char* stage : {"pipework", "circuits", "pump-stop", "water", "flow", "sumps", "pumps", "head-paths"})
        EXPECT_EQ(std::count(ran.begin(), ran.end(), stage), 1) << stage;
}

TEST(Stages, NotesTouchNothing)
{
    SoundPlan plan;
    Watched watched(plan.drawn);
    plan.drawn.plan.notes = plan.drawn.plan.notes.with(plan::Note{Id{999}, {}, "ask the client", {}});
    EXPECT_EQ(watched.stagesRun(plan.drawn), Names{});
}

} // namespace
