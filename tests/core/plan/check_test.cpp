// Plans that were never drawn by edits: each breaks one thing, and the check names it.
#include <gtest/gtest.h>

#include <algorithm>
#include <functional>

#include "tests/support/edited_plan.hpp"

using namespace sumpwright;
using namespace sumpwright::plan;
using test::at;

namespace
{

struct Broken {
    const char* id;
    const char* key;
    std::function<void(test::SmallSystem&)> how;
};

template <class Element, class Change> void change(Table<Element>& table, base::Id id, Change how)
{
    Element element = *table.find(id);
    how(element);
    table.put(element);
}

const Broken cases[] = {
    {"plan.dangling", "to", [](auto& s) { s.plan.vessels.erase(s.tank); }},
    {"plan.dangling", "vessel",
     [](auto& s) { change(s.plan.pumps, s.pump, [](Pump& p) { p.vessel = base::Id{4444}; }); }},
    {"plan.end-off-place", "vertices/0",
     [](auto& s) {
         change(s.plan.runs, s.drainA, [](plan::Run& r) { r.vertices.front().at.x += units::metres(0.001); });
     }},
    {"plan.end-off-place", "vertices/0",
     [](auto& s) {
         change(s.plan.runs, s.drainA, [](plan::Run& r) { r.vertices.front().level += units::metres(0.001); });
     }},
    {"plan.lonely-tee", "",
     [](auto& s) {
         Tee tee = **s.plan.tees.begin();
         tee.id = {900};
         tee.tag = "J9";
         s.plan.tees.put(tee);
     }},
    {"plan.tag-clash", "tag", [](auto& s) { change(s.plan.vessels, s.tank, [](Vessel& v) { v.tag = "P1"; }); }},
    {"plan.tag-clash", "ports/1/tag",
     [](auto& s) { change(s.plan.vessels, s.tank, [](Vessel& v) { v.ports[1].tag = v.ports[0].tag; }); }},
    {"plan.id-clash", "ports/0/id",
     [](auto& s) { change(s.plan.vessels, s.tank, [](Vessel& v) { v.ports[0].id = v.id; }); }},
    {"plan.id-clash", "valves/0/id",
     [](auto& s) {
         for (const auto& run : Table<plan::Run>(s.plan.runs))
             if (!run->valves.empty())
                 change(s.plan.runs, run->id, [](plan::Run& r) { r.valves[0].id = {}; });
     }},
    {"plan.vertex-count", "vertices",
     [](auto& s) { change(s.plan.runs, s.drainB, [](plan::Run& r) { r.vertices.resize(1); }); }},
    {"plan.pump-outside", "offset",
     [](auto& s) { change(s.plan.pumps, s.pump, [](Pump& p) { p.offset = at(1, 1); }); }},
    {"plan.two-curves", "own_curve",
     [](auto& s) {
         change(s.plan.pumps, s.pump, [](Pump& p) {
             p.ownCurve = {{units::litresPerHour(0), units::metresHead(2)},
                           {units::litresPerHour(9), units::metresHead(1)}};
         });
     }},
    {"plan.outline-clockwise", "outline",
     [](auto& s) {
         Floor floor;
         floor.outline = {at(0, 0), at(0, 2), at(2, 2)};
         s.plan.floor = std::make_shared<const Floor>(floor);
     }},
    {"plan.two-places", "to",
     [](auto& s) { change(s.plan.fixtures, s.wall, [](Fixture& f) { f.kind = FixtureKind::post; }); }},
    {"plan.text-too-long", "tag",
     [](auto& s) { change(s.plan.vessels, s.tank, [](Vessel& v) { v.tag = std::string(50, 't'); }); }},
};

} // namespace

TEST(Check, NamesEachBrokenPromiseWithItsKey)
{
    for (const Broken& broken : cases) {
        test::SmallSystem system;
        broken.how(system);
        const auto faults = check(system.plan);
        const bool found = std::any_of(faults.begin(), faults.end(), [&](const Fault& fault) {
            return fault.refusal.id == broken.id && fault.key == broken.key;
        });
        EXPECT_TRUE(found) << broken.id << " at " << broken.key << "; first fault: "
                           << (faults.empty() ? "none"
                                              : base::oneLine(faults.front().refusal) + " " + faults.front().key);
    }
}

TEST(Check, IsContentWithAnEmptyPlan) { EXPECT_TRUE(check(Plan()).empty()); }

TEST(NewFault, LeavesOutWhatWasBrokenBefore)
{
    test::SmallSystem system;
    change(system.plan.vessels, system.tank, [](Vessel& v) { v.tag = "P1"; });
    ASSERT_FALSE(check(system.plan).empty());
    EXPECT_EQ(system.refusalOf(setClient("Someone")), "");
    EXPECT_EQ(system.refusalOf(renameTag(system.bedA, "S1")), "plan.tag-clash");
}
