// Edits that cancel out, and moves that keep shapes: over random plans.
#include <gtest/gtest.h>

#include "core/storage/plan_text.hpp"
#include "tests/support/edited_plan.hpp"
#include "tests/support/random_edits.hpp"

using namespace sumpwright;

namespace
{

plan::Plan randomPlan(unsigned seed, int edits)
{
    plan::Plan plan = test::SmallSystem().plan;
    test::RandomEdits random(seed);
    for (int i = 0; i < edits; ++i)
        if (const auto after = random.next(plan).apply(plan))
            plan = after.value();
    return plan;
}

std::vector<base::Id> everything(const plan::Plan& plan)
{
    std::vector<base::Id> ids;
    const auto add = [&ids](const auto& table) {
        for (const auto& element : table)
            ids.push_back(element->id);
    };
    add(plan.vessels);
    add(plan.pumps);
    add(plan.runs);
    add(plan.tees);
    add(plan.fixtures);
    add(plan.notes);
    add(plan.dimensions);
    return ids;
}

// Every place of the plan, in a fixed order.
std::vector<plan::Point> places(const plan::Plan& plan)
{
    std::vector<plan::Point> all;
    for (const auto& vessel : plan.vessels) {
        all.push_back(vessel->centre);
        for (const plan::Port& port : vessel->ports)
            all.push_back(plan::placeOf(*vessel, port));
    }
    for (const auto& pump : plan.pumps)
        all.push_back(plan::anchorOf(plan, pump->id));
    for (const auto& run : plan.runs)
        for (const plan::Vertex& vertex : run->vertices)
            all.push_back(vertex.at);
    for (const auto& fixture : plan.fixtures)
        all.insert(all.end(), {fixture->from, fixture->to});
    return all;
}

void expectCongruent(const plan::Plan& before, const plan::Plan& after)
{
    const auto was = places(before);
    const auto now = places(after);
    ASSERT_EQ(was.size(), now.size());
    for (std::size_t i = 0; i < was.size(); i += 3)
        for (std::size_t j = i + 1; j < was.size(); j += 5)
            ASSERT_NEAR(units::inMetres(plan::distanceBetween(was[i], was[j])),
                        units::inMetres(plan::distanceBetween(now[i], now[j])), 1e-8);
    for (const auto& run : before.runs) {
        const plan::Run& other = *after.runs.find(run->id);
        ASSERT_NEAR(units::inMetres(plan::lengthOf(*run)), units::inMetres(plan::lengthOf(other)), 1e-7);
        ASSERT_EQ(plan::bendsOf(*run).size(), plan::bendsOf(other).size());
        for (std::size_t i = 0; i < run->valves.size(); ++i)
            ASSERT_NEAR(run->valves[i].station, other.valves[i].station, 2e-9);
    }
}

} // namespace

TEST(WholePlan, MovedTurnedOrRaisedStaysCongruent)
{
    for (unsigned seed = 1; seed <= 40; ++seed) {
        const plan::Plan plan = randomPlan(seed, 30);
        const auto all = everything(plan);
        for (const plan::Edit& edit :
             {plan::moveElements(all, test::at(12.345, -3.21)), plan::raiseElements(all, units::metres(0.77)),
              plan::turnElements(all, test::at(3, 4), units::degrees(90)),
              plan::turnElements(all, test::at(1, 1), units::degrees(33.3))}) {
            const auto after = edit.apply(plan);
            ASSERT_TRUE(after.ok()) << "seed " << seed << ": " << base::oneLine(after.refusal());
            expectCongruent(plan, after.value());
            ASSERT_TRUE(plan::check(after.value()).empty());
        }
    }
}

TEST(Branch, DrawnOntoARunAndDeletedLeavesTheSameBytes)
{
    int tried = 0;
    for (unsigned seed = 1; seed <= 40; ++seed) {
        const plan::Plan plan = randomPlan(seed, 30);
        const std::string before = storage::saveText(plan);
        test::RandomEdits random(seed);
        for (const auto& run : plan.runs) {
            plan::RunWish wish;
            wish.pipeId = "pvcu-pn16-25";
            wish.from = plan::OntoRun{run->id, random.between(0.0, 1.0)};
            wish.vertices = {test::vertex(1, 1, 0.5), test::vertex(-7, 2, 0.9)};
            const auto with = plan::drawRun(wish).apply(plan);
            if (!with)
                continue; // too near an end
            const auto without = plan::deleteElements({base::Id{plan.nextId}}).apply(with.value());
            ASSERT_TRUE(without.ok()) << base::oneLine(without.refusal());
            ASSERT_EQ(storage::saveText(without.value()), before) << "seed " << seed << " run " << run->tag;
            ++tried;
        }
    }
    EXPECT_GT(tried, 100);
}

TEST(Branch, AtAVertexWithABendOfItsOwnGivesTheBendBack)
{
    test::SmallSystem system;
    system.apply(plan::setBendFitting(system.main, 2, "elbow-45"));
    system.apply(plan::setBendLoss(system.main, 2, 0.7));
    const std::string before = storage::saveText(system.plan);
    const plan::Run run = system.runOf(system.main);
    ASSERT_GT(run.vertices.size(), 3u);
    double reach = 0.0;
    for (std::size_t i = 1; i <= 2; ++i) {
        plan::Run leg;
        leg.vertices = {run.vertices[i - 1], run.vertices[i]};
        reach += units::inMetres(plan::lengthOf(leg));
    }
    const double station = reach / units::inMetres(plan::lengthOf(run));
    const base::Id branch = system.run(plan::OntoRun{system.main, station}, plan::Nowhere{},
                                       {test::vertex(0, 0, 1.4), test::vertex(-1, 2, 1.4)});
    EXPECT_NE(storage::saveText(system.plan), before);
    system.apply(plan::deleteElements({branch}));
    EXPECT_EQ(storage::saveText(system.plan), before);
}
