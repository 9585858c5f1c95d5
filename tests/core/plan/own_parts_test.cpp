// The person's own parts: put in, changed, refused, taken out, and their checks.
#include <gtest/gtest.h>

#include <algorithm>

#include "core/plan/check.hpp"
#include "core/plan/edits/own_parts.hpp"
#include "core/plan/edits/run.hpp"
#include "tests/support/edited_plan.hpp"

using namespace sumpwright;
using namespace sumpwright::plan;

namespace
{

OwnPipe hose()
{
    OwnPipe pipe;
    pipe.id = "own-green-hose";
    pipe.name = "Green hose";
    pipe.origin = "measured with a drill bit";
    pipe.outsideDiameter = units::millimetres(32);
    pipe.bore = units::millimetres(25.4);
    return pipe;
}

OwnFitting joint()
{
    OwnFitting fitting;
    fitting.id = "own-joint";
    fitting.name = "Quick joint";
    fitting.k = 0.3;
    return fitting;
}

OwnPump pump()
{
    OwnPump own;
    own.id = "own-pump";
    own.name = "Old pump";
    own.curve = {{units::Flow(), units::metresHead(2.4)}, {units::litresPerHour(3000), units::Head()}};
    own.twoNumbers = true;
    return own;
}

std::string faultWith(const std::function<void(OwnParts&)>& spoil)
{
    OwnParts parts;
    parts.pipes = {hose()};
    parts.fittings = {joint()};
    parts.pumps = {pump()};
    spoil(parts);
    Plan plan;
    plan.ownParts = std::make_shared<const OwnParts>(parts);
    const auto faults = check(plan);
    return faults.empty() ? "" : faults.front().refusal.id + " " + faults.front().key;
}

} // namespace

TEST(OwnParts, ArePutInChangedAndTakenOut)
{
    test::SmallSystem system;
    system.apply(putOwnPart(hose()));
    system.apply(putOwnPart(joint()));
    system.apply(putOwnPart(pump()));
    EXPECT_EQ(system.plan.ownParts->size(), 3u);
    OwnPipe wider = hose();
    wider.bore = units::millimetres(26);
    system.apply(putOwnPart(wider));
    ASSERT_EQ(system.plan.ownParts->pipes.size(), 1u);
    EXPECT_EQ(system.plan.ownParts->pipes[0].bore, units::millimetres(26));
    system.apply(removeOwnPart("own-green-hose"));
    EXPECT_TRUE(system.plan.ownParts->pipes.empty());
    EXPECT_EQ(findOwn(*system.plan.ownParts, "own-joint")->name, "Quick joint");
}

TEST(OwnParts, StayWhileTheyAreUsedAndTheRefusalSaysWhere)
{
    test::SmallSystem system;
    system.apply(putOwnPart(hose()));
    system.apply(setRunPipe({system.main, system.toBed}, "own-green-hose"));
    const auto outcome = removeOwnPart("own-green-hose").apply(system.plan);
    ASSERT_FALSE(outcome.ok());
    EXPECT_EQ(outcome.refusal().id, "plan.own-in-use");
    EXPECT_EQ(outcome.refusal().place, "Green hose");
    for (const base::Id run : {system.main, system.toBed})
        EXPECT_NE(outcome.refusal().what.find(system.runOf(run).tag), std::string::npos);
    system.apply(setRunPipe({system.main, system.toBed}, "pvcu-pn16-32"));
    system.apply(removeOwnPart("own-green-hose"));
    EXPECT_TRUE(system.plan.ownParts->empty());
    EXPECT_EQ(system.refusalOf(removeOwnPart("own-green-hose")), "plan.no-such-part");
}

TEST(OwnParts, OfEveryUseAreFound)
{
    test::SmallSystem system;
    system.apply(putOwnPart(joint()));
    system.apply(setExtraFittings({system.toBed}, {{"own-joint", 2, {}}}));
    EXPECT_EQ(usersOf(system.plan, "own-joint"), std::vector<std::string>{system.runOf(system.toBed).tag});
    system.apply(putOwnPart(pump()));
    system.apply(setPumpModel({system.pump}, "own-pump"));
    EXPECT_EQ(usersOf(system.plan, "own-pump").size(), 1u);
    EXPECT_TRUE(usersOf(system.plan, "own-nothing").empty());
}

TEST(OwnParts, OfOneKindDoNotTakeTheIdOfAnother)
{
    test::SmallSystem system;
    system.apply(putOwnPart(hose()));
    OwnFitting fitting = joint();
    fitting.id = "own-green-hose";
    EXPECT_EQ(system.refusalOf(putOwnPart(fitting)), "plan.own-kind");
}

TEST(OwnParts, AreImportedInOneStepOrNotAtAll)
{
    test::SmallSystem system;
    OwnParts parts;
    parts.pipes = {hose()};
    parts.pumps = {pump()};
    system.apply(importOwnParts(parts));
    EXPECT_EQ(system.plan.ownParts->size(), 2u);
    parts.pipes[0].name = "Blue hose";
    parts.fittings = {joint()};
    parts.fittings[0].k = -1.0;
    EXPECT_FALSE(importOwnParts(parts).apply(system.plan).ok());
    EXPECT_EQ(system.plan.ownParts->pipes[0].name, "Green hose");
}

TEST(OwnParts, AreCheckedLikeEverythingElse)
{
    EXPECT_EQ(faultWith([](OwnParts&) {}), "");
    EXPECT_EQ(faultWith([](OwnParts& p) { p.pipes[0].id = "pvcu-pn16-32"; }), "plan.own-id pipes/0/id");
    EXPECT_EQ(faultWith([](OwnParts& p) { p.fittings[0].id = "own-pump"; }), "plan.own-id-clash pumps/0/id");
    EXPECT_EQ(faultWith([](OwnParts& p) { p.fittings[0].name = "Old pump"; }), "plan.own-name-clash pumps/0/name");
    EXPECT_EQ(faultWith([](OwnParts& p) { p.pipes[0].name.clear(); }), "plan.text-missing pipes/0/name");
    EXPECT_EQ(faultWith([](OwnParts& p) { p.pipes[0].bore = units::millimetres(33); }),
              "plan.bore-too-large pipes/0/bore");
    EXPECT_EQ(faultWith([](OwnParts& p) { p.pipes[0].bore = units::metres(0.0); }), "plan.out-of-range pipes/0/bore");
    EXPECT_EQ(faultWith([](OwnParts& p) { p.pipes[0].roughness = units::millimetres(std::nan("")); }),
              "plan.not-finite pipes/0/roughness");
    EXPECT_EQ(faultWith([](OwnParts& p) { p.pipes[0].corrugatedFactor = 3.0; }),
              "plan.out-of-range pipes/0/corrugated_factor");
    EXPECT_EQ(faultWith([](OwnParts& p) { p.fittings[0].flowFactor = units::litresPerHour(6300); }),
              "plan.own-loss fittings/0/k");
    EXPECT_EQ(faultWith([](OwnParts& p) { p.fittings[0].k.reset(); }), "plan.own-loss fittings/0/k");
    EXPECT_EQ(faultWith([](OwnParts& p) { p.fittings[0].cracking = units::metresHead(0.1); }),
              "plan.own-cracking fittings/0/cracking_head");
    EXPECT_EQ(faultWith([](OwnParts& p) { p.pumps[0].curve[1].head = units::metresHead(1); }),
              "plan.two-numbers pumps/0/curve");
    EXPECT_EQ(faultWith([](OwnParts& p) {
                  p.pumps[0].twoNumbers = false;
                  p.pumps[0].curve[1].head = units::metresHead(9);
              }),
              "plan.curve-head pumps/0/curve/1/head");
    EXPECT_EQ(faultWith([](OwnParts& p) { p.pumps[0].curve.pop_back(); }), "plan.curve-count pumps/0/curve");
    EXPECT_EQ(faultWith([](OwnParts& p) { p.pipes.resize(20'001); }), "plan.own-count ");
}

TEST(OwnIds, AreMadeOfTheNameAndNeverTwice)
{
    OwnParts parts;
    parts.pipes = {hose()};
    OwnIds ids(parts);
    EXPECT_EQ(ids.next("Green hose"), "own-green-hose-2");
    EXPECT_EQ(ids.next("Green  Hose!"), "own-green-hose-3");
    EXPECT_EQ(ids.next("\xC3\x84 \xC3\xB6"), "own-part");
    const std::string id = ids.next(std::string(200, 'x'));
    EXPECT_LE(id.size(), 40u);
    EXPECT_TRUE(isOwn(id));
}

TEST(Pump, IsOneUnitOrTwoAndMayHaveTheTwoNumbersOfItsBox)
{
    test::SmallSystem system;
    const auto now = [&] { return *system.plan.pumps.find(system.pump); };
    system.apply(setPumpArrangement({system.pump}, PumpArrangement::twoInSeries));
    EXPECT_EQ(now().arrangement, PumpArrangement::twoInSeries);
    system.apply(setPumpRatings({system.pump}, units::metresHead(3.2), units::litresPerHour(4500), units::watts(70)));
    EXPECT_TRUE(now().twoNumbers);
    EXPECT_TRUE(now().modelId.empty());
    ASSERT_EQ(now().ownCurve.size(), 2u);
    EXPECT_EQ(now().ownCurve.back().flow, units::litresPerHour(4500));
    EXPECT_EQ(system.refusalOf(setPumpRatings({system.pump}, units::Head(), units::litresPerHour(4500), {})),
              "plan.curve-head");
    system.apply(setPumpModel({system.pump}, "G2500"));
    EXPECT_FALSE(now().twoNumbers);
    EXPECT_EQ(now().arrangement, PumpArrangement::twoInSeries);
}
