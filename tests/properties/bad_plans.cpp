// Plans no water can run in as drawn: each gets findings that name the thing and the number that is missing; nothing
// is left uncomputed without a reason, and no number is no number. Then random plans by the thousand.
#include <gtest/gtest.h>

#include <algorithm>
#include <chrono>
#include <functional>
#include <iostream>
#include <random>

#include "core/engine/engine.hpp"
#include "core/report/assessment_text.hpp"
#include "core/report/words.hpp"
#include "tests/support/manifolds.hpp"
#include "tests/support/sound_plan.hpp"

namespace
{

using namespace sumpwright;
using namespace sumpwright::test;
using assessment::Finding;

std::shared_ptr<const assessment::Assessment> assessed(const plan::Plan& plan)
{
    const auto begin = std::chrono::steady_clock::now();
    auto result = engine::assess(plan, catalogue::Catalogue::builtIn());
    EXPECT_LT(std::chrono::steady_clock::now() - begin, std::chrono::seconds(20)) << "hangs";
    return result;
}

void expectNumbers(const assessment::Assessment& results, const std::string& where)
{
    const std::string text = report::assessmentJson(results);
    for (const char* bad : {":nan", ": nan", ":-nan", ":inf", ": inf", ": -inf", "NaN", "\"nan"})
        EXPECT_EQ(text.find(bad), std::string::npos) << where << ": " << bad;
    for (const Finding& finding : results.findings->list) {
        EXPECT_NE(finding.id, "program.fault") << where << ": " << finding.subject;
        const std::string words = report::wordsOf(finding, results).message;
        EXPECT_EQ(words.find("nan"), std::string::npos) << where << ": " << words;
    }
    for (const auto& run : results.flow->runs)
        for (const auto& flow : run.flow.values)
            EXPECT_TRUE(flow.ok() || !flow.reason().text.empty()) << where;
}

struct BadPlan {
    const char* name;
    const char* finding;                 // the one that must be told
    std::function<Id(SoundPlan&)> spoil; // gives the element it names
    bool saysNumber = true;              // in its value
};

void shut(SoundPlan& p, Id run) { p.drawn.valve(run, "ball-valve", 0.0); }

Id raised(SoundPlan& p, double level)
{
    p.drawn.changePort(p.tank, p.tankInlet, [&](plan::Port& port) { port.level = units::elevationMetres(level); });
    p.drawn.changeRun(p.tankBranch, [&](plan::Run& run) {
        run.vertices[1].level = run.vertices[2].level = units::elevationMetres(level);
    });
    return p.tank;
}

Id uphill(SoundPlan& p)
{
    p.drawn.changeRun(p.drain1, [](plan::Run& run) { run.vertices[1].level = units::elevationMetres(0.5); });
    return p.drain1;
}

// Three runs from tee to tee and back that no vessel, pump or open end belongs to.
Id lonelyLoop(SoundPlan& p)
{
    const Id a = p.drawn.tee({4.5, 4.0, 1}), b = p.drawn.tee({5.5, 4.0, 1}), c = p.drawn.tee({5.0, 4.6, 1});
    const auto side = [&](Id from, Id to, Place s, Place e) {
        return p.drawn.run(plan::Service::pressure, "pvcu-pn16-32", plan::TeeEnd{from, {}}, plan::TeeEnd{to, {}},
                           {s, e});
    };
    const Id first = side(a, b, {4.5, 4.0, 1}, {5.5, 4.0, 1});
    side(b, c, {5.5, 4.0, 1}, {5.0, 4.6, 1});
    side(c, a, {5.0, 4.6, 1}, {4.5, 4.0, 1});
    return first;
}

Id zeroLength(SoundPlan& p)
{
    return p.drawn.run(plan::Service::pressure, "pvcu-pn16-32", plan::TeeEnd{p.tee2, {}}, plan::OpenEnd{},
                       {{3.0, 2.2, 1.2}, {3.0, 2.2, 1.2}});
}

Id teeToItself(SoundPlan& p)
{
    return p.drawn.run(plan::Service::pressure, "pvcu-pn16-32", plan::TeeEnd{p.tee2, {}}, plan::TeeEnd{p.tee2, {}},
                       {{3.0, 2.2, 1.2}, {4.0, 2.2, 1.2}, {4.0, 3.0, 1.2}, {3.0, 2.2, 1.2}});
}

// The second pump pushes into the same tee, and is too weak against the first.
Id pumpAgainstPump(SoundPlan& p)
{
    const Id weak = p.drawn.pump(p.sump, "G1000", 0.1);
    p.drawn.run(plan::Service::pressure, "pvcu-pn16-25", plan::PumpEnd{weak}, plan::TeeEnd{p.tee1, {}},
                {{0.8, 1.0, 0.1}, {0.8, 1.0, 1.2}, {1.0, 2.2, 1.2}});
    return p.pump;
}

const std::vector<BadPlan>& badPlans()
{
    static const std::vector<BadPlan> plans{
        {"a run uphill by gravity", "gravity.rises", uphill},
        {"a loop with no free surface", "run.unfed", lonelyLoop, false},
        {"a pump too weak to reach any outlet", "pump.cannot-lift",
         [](SoundPlan& p) {
             p.drawn.changePump(p.pump, [](plan::Pump& pump) { pump.speed = 0.2; });
             return p.pump;
         }},
        {"everything shut", "valve.closed",
         [](SoundPlan& p) {
             for (const Id run : {p.riser, p.tankBranch, p.header, p.branch1, p.branch2})
                 shut(p, run);
             return p.riser;
         },
         false},
        {"an outlet above shut-off head", "outlet.no-flow", [](SoundPlan& p) { return raised(p, 6.0); }},
        {"a run without length", "run.open-end", zeroLength, false},
        {"two pumps against each other", "pump.parallel-without-check", pumpAgainstPump, false},
    };
    return plans;
}

TEST(BadPlans, GetAFindingThatNamesTheThingAndTheNumber)
{
    for (const BadPlan& bad : badPlans()) {
        SoundPlan plan;
        const Id thing = bad.spoil(plan);
        const auto results = assessed(plan.drawn.plan);
        expectNumbers(*results, bad.name);
        const auto& list = results->findings->list;
        const auto found = std::find_if(list.begin(), list.end(), [&](const Finding& finding) {
            return finding.id == bad.finding &&
                   std::find(finding.elements.begin(), finding.elements.end(), thing) != finding.elements.end();
        });
        ASSERT_NE(found, list.end()) << bad.name;
        const std::string words = report::wordsOf(*found, *results).message;
        EXPECT_NE(words.find(plan::tagOf(plan.drawn.plan, thing)), std::string::npos) << words;
        EXPECT_EQ(!std::holds_alternative<std::monostate>(found->value), bad.saysNumber) << bad.name << ": " << words;
    }
}

// A run from a tee to itself can carry nothing; the rest runs as before.
TEST(BadPlans, LeaveARunFromATeeToItselfStill)
{
    SoundPlan plan;
    const auto before = assessed(plan.drawn.plan);
    const Id loop = teeToItself(plan);
    const auto results = assessed(plan.drawn.plan);
    expectNumbers(*results, "a tee to itself");
    const auto* run = assessment::find(results->flow->runs, loop);
    ASSERT_NE(run, nullptr);
    for (const auto& flow : run->flow.values)
        if (flow) {
            EXPECT_NEAR(units::inLitresPerHour(flow->flow), 0.0, 1e-6);
        } else {
            EXPECT_FALSE(flow.reason().text.empty());
        }
    const auto riserFlow = [&](const assessment::Assessment& from) {
        const auto& flow = assessment::find(from.flow->runs, plan.riser)->flow[assessment::RunningState::least];
        return flow ? units::inLitresPerHour(flow->flow) : -1.0;
    };
    EXPECT_GT(riserFlow(*before), 100.0);
    EXPECT_NEAR(riserFlow(*results), riserFlow(*before), 0.02 * riserFlow(*before));
}

// With everything shut nothing runs, and the duty point lies at the pump's shut-off head.
TEST(BadPlans, LetNothingRunWhereEverythingIsShut)
{
    SoundPlan plan;
    for (const Id run : {plan.riser, plan.tankBranch, plan.header, plan.branch1, plan.branch2})
        shut(plan, run);
    const auto results = assessed(plan.drawn.plan);
    for (const auto& run : results->flow->runs)
        for (const auto& flow : run.flow.values)
            if (flow) {
                EXPECT_NEAR(units::inLitresPerHour(flow->flow), 0.0, 1e-6);
            }
}

// Everything of a plan made senseless at random: levels, ends, pipes, openings, pumps, lengths.
class Spoiler
{
public:
    explicit Spoiler(unsigned seed) : m_random(seed) {}

    plan::Plan plan()
    {
        for (int i = whole(1, 6); i > 0; --i)
            if (whole(0, 10) < 7)
                spoilRun();
            else
                spoilRest();
        return p.drawn.plan;
    }

private:
    int whole(int low, int high) { return std::uniform_int_distribution<int>(low, high)(m_random); }
    units::Elevation level(double low, double high)
    {
        return units::elevationMetres(std::uniform_real_distribution<double>(low, high)(m_random));
    }
    Id pick(const std::vector<Id>& ids)
    {
        return ids[static_cast<std::size_t>(whole(0, static_cast<int>(ids.size()) - 1))];
    }
    Id tee() { return pick({p.tee1, p.tee2}); }

    void change(plan::Run& run)
    {
        constexpr const char* pipes[] = {"pvcu-pn16-20", "pvcu-pn16-63", "waste-pvcu-50", "ldpe-16", "no-such-pipe"};
        switch (whole(0, 5)) {
        case 0:
            run.vertices[static_cast<std::size_t>(whole(0, static_cast<int>(run.vertices.size()) - 1))].level =
                level(-2.0, 6.0);
            break;
        case 1:
            run.to = plan::TeeEnd{tee(), {}};
            break;
        case 2:
            run.from = plan::TeeEnd{tee(), {}};
            break;
        case 3:
            run.pipeId = pipes[whole(0, 4)];
            break;
        case 4:
            run.service = whole(0, 1) ? plan::Service::gravity : plan::Service::pressure;
            break;
        case 5:
            run.vertices.assign(run.vertices.size(), run.vertices.front()); // no length left
            break;
        }
    }

    void spoilRun()
    {
        const Id run = pick({p.riser, p.tankBranch, p.header, p.branch1, p.branch2, p.tankDrain, p.drain1, p.drain2});
        if (whole(0, 6) == 0)
            p.drawn.valve(run, whole(0, 1) ? "ball-valve" : "spring-check", whole(0, 10) / 10.0);
        else
            p.drawn.changeRun(run, [this](plan::Run& r) { change(r); });
    }

    void spoilRest()
    {
        const Id vessel = pick({p.sump, p.tank, p.bed1, p.bed2});
        switch (whole(0, 3)) {
        case 0:
            p.drawn.changePump(p.pump, [this](plan::Pump& pump) { pump.speed = whole(1, 15) / 10.0; });
            break;
        case 1: {
            const Id second = p.drawn.pump(vessel, whole(0, 1) ? "G15000" : "G1000", whole(-10, 20) / 10.0);
            p.drawn.run(plan::Service::pressure, "pvcu-pn16-32", plan::PumpEnd{second}, plan::TeeEnd{tee(), {}},
                        {{1.0, 1.0, 0.1}, {1.0, 2.2, 1.2}});
            break;
        }
        case 2:
            p.drawn.changeVessel(vessel, [this](plan::Vessel& v) {
                for (plan::Port& port : v.ports)
                    port.level = level(-1.0, 4.0);
            });
            break;
        case 3:
            p.drawn.changeVessel(p.sump, [this](plan::Vessel& v) { v.runningLevel = level(-0.5, 1.0); });
            break;
        }
    }

    SoundPlan p;
    std::mt19937 m_random;
};

TEST(RandomPlans, AreSolvedOrSayWhyNot)
{
    constexpr unsigned plans = 1500;
    int solved = 0, reasons = 0;
    for (unsigned seed = 0; seed < plans; ++seed) {
        const auto results = assessed(Spoiler(seed).plan());
        expectNumbers(*results, "seed " + std::to_string(seed));
        for (const auto& run : results->flow->runs)
            for (const auto& flow : run.flow.values)
                ++(flow ? solved : reasons);
        if (testing::Test::HasFailure())
            break;
    }
    std::cout << plans << " random plans: " << solved << " flows solved, " << reasons << " with a reason\n";
    EXPECT_GT(solved, 5000);
    EXPECT_GT(reasons, 500);
}

} // namespace
