#include <gtest/gtest.h>

#include <set>

#include "tests/support/edited_plan.hpp"

using namespace sumpwright;
using namespace sumpwright::plan;
using test::at;
using test::vertex;

TEST(Duplicate, GivesFreshTagsAndTakesPumpsAlong)
{
    test::SmallSystem system;
    const base::Id copy = system.apply(duplicate({system.sump}, at(3, 0)));
    EXPECT_EQ(tagOf(system.plan, copy), "S2");
    ASSERT_EQ(system.plan.pumps.size(), 2u);
    EXPECT_EQ((*(system.plan.pumps.begin() + 1))->vessel, copy);
    EXPECT_EQ((*(system.plan.pumps.begin() + 1))->tag, "P2");
    EXPECT_NE(system.vesselOf(copy).ports[0].id, system.vesselOf(system.sump).ports[0].id);
}

TEST(Duplicate, CopiesRunsOnlyWithWhatTheyMeet)
{
    test::SmallSystem system;
    EXPECT_EQ(runsLeftBehind(system.plan, {system.bedA, system.drainA}), std::vector<base::Id>{system.drainA});
    const std::size_t runs = system.plan.runs.size();
    system.apply(duplicate({system.bedA, system.drainA}, at(8, 0)));
    EXPECT_EQ(system.plan.runs.size(), runs);
    EXPECT_TRUE(runsLeftBehind(system.plan, {system.bedA, system.sump, system.drainA}).empty());
    system.apply(duplicate({system.bedA, system.sump, system.drainA}, at(8, 0)));
    EXPECT_EQ(system.plan.runs.size(), runs + 1);
    const base::Id free = system.run(Nowhere{}, Nowhere{}, {vertex(0, 0, 1), vertex(1, 0, 1)});
    system.apply(duplicate({free}, at(0, 1)));
    EXPECT_EQ(system.plan.runs.size(), runs + 3);
}

TEST(Duplicate, OfTheWholeSystemIsASecondWholeSystem)
{
    test::SmallSystem system;
    std::vector<base::Id> all{system.tank, system.sump, system.bedA, system.bedB};
    for (const auto& run : system.plan.runs)
        all.push_back(run->id);
    const Plan before = system.plan;
    system.apply(duplicate(all, at(20, 0)));
    EXPECT_EQ(system.plan.runs.size(), 2 * before.runs.size());
    EXPECT_EQ(system.plan.tees.size(), 2 * before.tees.size());
    EXPECT_EQ(system.plan.pumps.size(), 2 * before.pumps.size());
}

TEST(ArrayCopy, CountsTheOriginalAsTheFirst)
{
    test::EditedPlan drawn;
    const base::Id bed = drawn.vessel(VesselKind::mediaBed, 0, 0);
    drawn.apply(arrayCopy({bed}, 3, 2, at(2.5, 0), at(0, 1.5)));
    EXPECT_EQ(drawn.plan.vessels.size(), 6u);
    std::set<std::string> tags;
    for (const auto& vessel : drawn.plan.vessels)
        tags.insert(vessel->tag);
    EXPECT_EQ(tags.size(), 6u);
    EXPECT_EQ((*(drawn.plan.vessels.end() - 1))->centre, at(5, 1.5));
    EXPECT_EQ(drawn.refusalOf(arrayCopy({bed}, 1, 1, at(1, 0), at(0, 1))), "plan.copy-count");
    EXPECT_EQ(drawn.refusalOf(arrayCopy({bed}, 1000, 1000, at(1, 0), at(0, 1))), "plan.copy-count");
}

TEST(Align, MovesOutlinesToTheOutermost)
{
    test::EditedPlan drawn;
    const base::Id bed = drawn.vessel(VesselKind::mediaBed, 2, 1); // x 1 ... 3, y 0.5 ... 1.5
    const base::Id sump = drawn.vessel(VesselKind::sump, 6, 4);    // x 5.4 ... 6.6, y 3.6 ... 4.4
    const auto centre = [&](Alignment alignment, base::Id id) {
        return align({bed, sump}, alignment).apply(drawn.plan)->vessels.find(id)->centre;
    };
    EXPECT_EQ(centre(Alignment::left, sump), at(1.6, 4));
    EXPECT_EQ(centre(Alignment::right, bed), at(5.6, 1));
    EXPECT_EQ(centre(Alignment::top, bed), at(2, 3.9));
    EXPECT_EQ(centre(Alignment::bottom, sump), at(6, 0.9));
    EXPECT_EQ(centre(Alignment::centreX, bed), at(3.8, 1));
    EXPECT_EQ(centre(Alignment::centreX, sump), at(3.8, 4));
    EXPECT_EQ(centre(Alignment::centreY, sump), at(6, 2.45));
    EXPECT_EQ(drawn.refusalOf(align({bed}, Alignment::left)), "plan.too-few");
    EXPECT_EQ(drawn.refusalOf(align({bed, base::Id{99}}, Alignment::left)), "plan.no-such-element");
}

TEST(Align, CarriesRunsBetweenWhatMoves)
{
    test::SmallSystem system;
    system.apply(align({system.bedA, system.bedB, system.sump}, Alignment::left));
    EXPECT_NEAR(units::inMetres(boxOf(system.plan, system.bedB).low.x),
                units::inMetres(boxOf(system.plan, system.sump).low.x), 1e-9);
}

TEST(Distribute, LeavesEqualGapsBetweenOutlines)
{
    test::EditedPlan drawn;
    const base::Id a = drawn.vessel(VesselKind::sump, 1, 0);
    const base::Id b = drawn.vessel(VesselKind::mediaBed, 2, 0);
    const base::Id c = drawn.vessel(VesselKind::sump, 9, 0);
    drawn.apply(distribute({c, a, b}, Axis::x));
    const double gapLeft = units::inMetres(boxOf(drawn.plan, b).low.x - boxOf(drawn.plan, a).high.x);
    const double gapRight = units::inMetres(boxOf(drawn.plan, c).low.x - boxOf(drawn.plan, b).high.x);
    EXPECT_NEAR(gapLeft, gapRight, 1e-8);
    EXPECT_EQ(drawn.vesselOf(a).centre, at(1, 0));
    EXPECT_EQ(drawn.vesselOf(c).centre, at(9, 0));
    EXPECT_EQ(drawn.refusalOf(distribute({a, c}, Axis::x)), "plan.too-few");
}

TEST(Delete, OfAVesselTakesItsPumpAndOpensItsRuns)
{
    test::SmallSystem system;
    const auto told = detachedBy(system.plan, {system.sump});
    system.apply(deleteElements({system.sump}));
    EXPECT_TRUE(system.plan.pumps.empty());
    EXPECT_TRUE(std::holds_alternative<OpenEnd>(system.runOf(system.drainA).to));
    EXPECT_EQ(told.size(), 3u); // two drains and the pump's run
    EXPECT_TRUE(detachedBy(system.plan, {system.note}).empty());
}

TEST(Delete, OfEverythingLeavesNothingButTheSite)
{
    test::SmallSystem system;
    std::vector<base::Id> all;
    const auto add = [&all](const auto& table) {
        for (const auto& element : table)
            all.push_back(element->id);
    };
    add(system.plan.vessels);
    add(system.plan.runs);
    add(system.plan.tees);
    add(system.plan.fixtures);
    add(system.plan.notes);
    add(system.plan.dimensions);
    system.apply(deleteElements(all));
    EXPECT_TRUE(system.plan.vessels.empty() && system.plan.pumps.empty() && system.plan.runs.empty());
    EXPECT_TRUE(system.plan.tees.empty() && system.plan.fixtures.empty() && system.plan.notes.empty());
    EXPECT_EQ(system.refusalOf(deleteElements({system.tank})), "plan.no-such-element");
}

TEST(Sequence, IsOneStepAndRefusedAsAWhole)
{
    test::SmallSystem system;
    const Plan before = system.plan;
    system.apply(
        inSequence("edit.move", {moveElements({system.tank}, at(0.1, 0)), renameTag(system.tank, "Big tank")}));
    EXPECT_EQ(tagOf(system.plan, system.tank), "Big tank");
    const Edit bad = inSequence("edit.move", {moveElements({system.tank}, at(1, 0)), renameTag(system.tank, "S1")});
    EXPECT_EQ(bad.subjects, std::vector<base::Id>{system.tank});
    EXPECT_EQ(system.refusalOf(bad), "plan.tag-clash");
}
