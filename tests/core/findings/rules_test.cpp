// Every rule has a plan that raises it and one that does not.
#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "core/assessment/stages.hpp"
#include "core/findings/alike.hpp"
#include "core/findings/rules.hpp"
#include "core/plan/check.hpp"
#include "tests/core/findings/fixtures.hpp"

namespace
{

using namespace sumpwright;
using namespace sumpwright::test;
using assessment::Finding;
using assessment::Severity;

std::vector<RuleFixture> allFixtures()
{
    std::vector<RuleFixture> all;
    for (const auto& fixtures : {pumpFixtures(), waterFixtures(), layoutFixtures(), spaceFixtures()})
        all.insert(all.end(), fixtures.begin(), fixtures.end());
    return all;
}

std::vector<Finding> findingsOf(const DrawnPlan& drawn)
{
    const auto result = assessment::Stages(catalogue::Catalogue::builtIn()).assess(drawn.plan);
    return findings::findingsOf(result).list;
}

const Finding* findIn(const std::vector<Finding>& list, const std::string& id)
{
    const auto at = std::find_if(list.begin(), list.end(), [&id](const Finding& finding) { return finding.id == id; });
    return at == list.end() ? nullptr : &*at;
}

TEST(Rules, AreEachRaisedByTheirFixture)
{
    for (const RuleFixture& fixture : allFixtures()) {
        SoundPlan plan;
        fixture.spoil(plan);
        const auto list = findingsOf(plan.drawn);
        const Finding* finding = findIn(list, fixture.id);
        ASSERT_NE(finding, nullptr) << fixture.id;
        EXPECT_EQ(finding->severity, fixture.severity) << fixture.id;
        EXPECT_FALSE(finding->source.empty()) << fixture.id;
    }
}

TEST(Rules, AreEachSilentInASoundOrEmptyPlan)
{
    const auto sound = findingsOf(SoundPlan().drawn), empty = findingsOf(DrawnPlan());
    for (const RuleFixture& fixture : allFixtures())
        EXPECT_TRUE(!findIn(sound, fixture.id) || !findIn(empty, fixture.id)) << fixture.id;
}

// Beds placed by typed numbers or by the grid are off by a rounding: that is no narrower aisle.
TEST(Rules, TakeALengthThatOnlyRoundsBelowTheLimitForEnough)
{
    for (const auto& [aisle, told] : {std::pair{0.6 - 1e-9, false}, std::pair{0.5996, false}, std::pair{0.598, true}}) {
        SoundPlan plan;
        const auto bed = *plan.drawn.plan.vessels.find(plan.bed1);
        const double top = units::inMetres(bed.centre.y) + 0.406; // both are 0.812 m wide outside
        plan.drawn.changeVessel(plan.bed2, [&](plan::Vessel& v) { v.centre.y = units::metres(top + aisle + 0.406); });
        EXPECT_EQ(findIn(findingsOf(plan.drawn), "layout.aisle") != nullptr, told) << aisle;
    }
}

// Water that stands above the sump's own overflow while running cannot stay there.
TEST(Rules, AskForASumpLevelBelowItsOwnOverflow)
{
    SoundPlan plan; // the sump's level is 0.35 m
    plan.drawn.port(plan.sump, plan::PortKind::lip, {1.0, 1.2, 0.40});
    EXPECT_EQ(findIn(findingsOf(plan.drawn), "sump.level-missing"), nullptr);
    SoundPlan low;
    low.drawn.port(low.sump, plan::PortKind::lip, {1.0, 1.2, 0.30});
    const auto list = findingsOf(low.drawn);
    const Finding* finding = findIn(list, "sump.level-missing");
    ASSERT_NE(finding, nullptr);
    EXPECT_NEAR(units::inMetres(std::get<units::Elevation>(finding->limit)), 0.30, 1e-12);
}

TEST(Rules, AllHaveAFixture)
{
    std::set<std::string> fixtures, rules;
    for (const RuleFixture& fixture : allFixtures())
        fixtures.insert(fixture.id);
    for (const findings::Rule* rule : findings::allRules())
        EXPECT_TRUE(rules.insert(std::string(rule->id)).second) << rule->id;
    EXPECT_EQ(fixtures, rules);
}

TEST(Rules, NameSourcesThatAreInTheTable)
{
    const auto catalogue = catalogue::Catalogue::builtIn();
    for (const findings::Rule* rule : findings::allRules())
        EXPECT_TRUE(rule->source == "common-practice" || catalogue->source(rule->source).ok())
            << rule->id << ": " << rule->source;
}

// The plan all fixtures start from keeps every promise of a plan and raises no more than remarks.
TEST(SoundPlan, RaisesNoErrorAndNoWarning)
{
    const SoundPlan plan;
    for (const plan::Fault& fault : plan::check(plan.drawn.plan))
        ADD_FAILURE() << fault.part << ' ' << fault.key << ": " << base::oneLine(fault.refusal);
    for (const Finding& finding : findingsOf(plan.drawn))
        EXPECT_EQ(finding.severity, Severity::note) << finding.id;
}

TEST(Findings, ThatSayTheSameOfSeveralElementsAreOne)
{
    SoundPlan plan; // both beds stand on six legs and are of one size
    const auto legs = [](const std::vector<Finding>& list) {
        std::vector<Finding> found;
        std::copy_if(list.begin(), list.end(), std::back_inserter(found),
                     [](const Finding& finding) { return finding.id == "floor.legs"; });
        return found;
    };
    auto found = legs(findingsOf(plan.drawn));
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].elements, (std::vector<Id>{plan.bed1, plan.bed2}));
    EXPECT_EQ(found[0].alike, 2U);
    plan.drawn.changeVessel(plan.bed2, [](plan::Vessel& v) { v.stand->legCount = 4; }); // more on each leg
    found = legs(findingsOf(plan.drawn));
    ASSERT_EQ(found.size(), 2U);
    EXPECT_EQ(found[1].elements, (std::vector<Id>{plan.bed2}));
    EXPECT_EQ(found[1].alike, 1U);
}

// Their ports come behind them, and what one finding says of two elements together is never joined to another.
TEST(Findings, KeepWhatTheyAreAboutWhenTheyAreJoined)
{
    const SoundPlan plan;
    const auto lipOf = [&](Id bed) { return plan::mainLip(*plan.drawn.plan.vessels.find(bed))->id; };
    std::vector<Finding> list(5);
    for (Finding& finding : list)
        finding.id = "x";
    list[0].elements = {plan.tank};
    list[1].elements = {plan.bed1, lipOf(plan.bed1)};
    list[2].elements = {plan.bed2, lipOf(plan.bed2)};
    list[3].elements = {plan.bed1, plan.tank};
    list[4].elements = {plan.bed2, plan.tank};
    findings::joinAlike(list, 1, plan.drawn.plan);
    ASSERT_EQ(list.size(), 4U);
    EXPECT_EQ(list[1].elements, (std::vector<Id>{plan.bed1, plan.bed2, lipOf(plan.bed1), lipOf(plan.bed2)}));
    EXPECT_EQ(list[1].alike, 2U);
    EXPECT_EQ(list[2].elements, (std::vector<Id>{plan.bed1, plan.tank}));
    list.resize(1);
    list.push_back(list[0]);
    list[1].elements = {plan.bed1};
    list[1].value = units::metres(1.0);
    findings::joinAlike(list, 0, plan.drawn.plan);
    EXPECT_EQ(list.size(), 2U) << "other amounts";
}

TEST(Findings, ComeErrorsFirst)
{
    SoundPlan plan;
    for (const RuleFixture& fixture : layoutFixtures())
        fixture.spoil(plan);
    const auto list = findingsOf(plan.drawn);
    EXPECT_TRUE(std::is_sorted(list.begin(), list.end(),
                               [](const Finding& a, const Finding& b) { return a.severity < b.severity; }));
    EXPECT_GT(list.size(), 10U);
}

TEST(Findings, TellLimitAndValueInTheSameKind)
{
    for (const RuleFixture& fixture : allFixtures()) {
        SoundPlan plan;
        fixture.spoil(plan);
        for (const Finding& finding : findingsOf(plan.drawn))
            if (finding.value.index() != 0 && finding.limit.index() != 0) {
                EXPECT_EQ(finding.value.index(), finding.limit.index()) << finding.id;
            }
    }
}

} // namespace
