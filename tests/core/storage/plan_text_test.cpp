#include <gtest/gtest.h>

#include <clocale>

#include "core/plan/edits/own_parts.hpp"
#include "core/plan/edits/pump.hpp"
#include "core/storage/plan_text.hpp"
#include "tests/support/edited_plan.hpp"

using namespace sumpwright;
using namespace sumpwright::storage;

namespace
{

LoadedPlan loaded(const std::string& text)
{
    auto outcome = loadText(text);
    EXPECT_TRUE(outcome.ok()) << base::oneLine(outcome.refusal());
    return std::move(outcome).value();
}

std::string replaced(std::string text, const std::string& what, const std::string& by)
{
    const auto at = text.find(what);
    EXPECT_NE(at, std::string::npos) << what;
    return text.replace(at, what.size(), by);
}

} // namespace

TEST(PlanText, GivesTheSamePlanAndTheSameBytesBack)
{
    const test::SmallSystem system;
    const std::string text = saveText(system.plan);
    const LoadedPlan back = loaded(text);
    EXPECT_TRUE(back.plan == system.plan);
    EXPECT_EQ(saveText(back.plan), text);
    EXPECT_TRUE(back.unknownKeys.empty());
    EXPECT_EQ(back.fromVersion, planVersion);
}

TEST(PlanText, KeepsTheScreenOfALip)
{
    test::SmallSystem system;
    plan::Vessel tank = *system.plan.vessels.find(system.tank);
    for (plan::Port& port : tank.ports)
        if (port.kind == plan::PortKind::lip)
            port.openFraction = 0.35;
    system.plan.vessels = system.plan.vessels.with(tank);
    const std::string text = saveText(system.plan);
    EXPECT_NE(text.find("\"open_fraction\": 0.35"), std::string::npos);
    EXPECT_TRUE(loaded(text).plan == system.plan);
}

TEST(PlanText, KeepsOwnPartsAndWhatPumpsStandTogether)
{
    test::SmallSystem system;
    plan::OwnPipe hose;
    hose.id = "own-hose";
    hose.name = "Hose";
    hose.origin = "the shop's list";
    hose.outsideDiameter = units::millimetres(32);
    hose.bore = units::millimetres(25.4);
    hose.corrugatedFactor = 0.07;
    plan::OwnFitting valve;
    valve.id = "own-check";
    valve.name = "Check";
    valve.kind = plan::OwnFittingKind::nonReturnValve;
    valve.flowFactor = units::litresPerHour(6300);
    valve.cracking = units::metresHead(0.05);
    plan::OwnPump pump;
    pump.id = "own-pump";
    pump.name = "Pump";
    pump.curve = {{units::Flow(), units::metresHead(3)}, {units::litresPerHour(4000), units::Head()}};
    pump.twoNumbers = true;
    pump.power = units::watts(60);
    pump.leastDepth = units::millimetres(60);
    system.apply(plan::putOwnPart(hose));
    system.apply(plan::putOwnPart(valve));
    system.apply(plan::putOwnPart(pump));
    system.apply(plan::setPumpArrangement({system.pump}, plan::PumpArrangement::twoParallel));
    system.apply(plan::setPumpRatings({system.pump}, units::metresHead(2), units::litresPerHour(2000), {}));
    const std::string text = saveText(system.plan);
    const LoadedPlan back = loaded(text);
    EXPECT_TRUE(back.plan == system.plan);
    EXPECT_EQ(saveText(back.plan), text);
    EXPECT_TRUE(back.unknownKeys.empty());
    EXPECT_TRUE(*back.plan.ownParts == *system.plan.ownParts);
}

TEST(PlanText, OfAPlanWithoutOwnPartsHasNoKeyOfThem)
{
    const std::string text = saveText(test::SmallSystem().plan);
    for (const char* key : {"own_parts", "arrangement", "two_numbers"})
        EXPECT_EQ(text.find(key), std::string::npos) << key;
}

TEST(PlanText, RefusesABadOwnPartWithItsLine)
{
    test::SmallSystem system;
    plan::OwnFitting joint;
    joint.id = "own-joint";
    joint.name = "Joint";
    joint.k = 0.25;
    system.apply(plan::putOwnPart(joint));
    const std::string text = saveText(system.plan);
    const auto minus = loadText(replaced(text, "\"k\": 0.25", "\"k\": -1"));
    ASSERT_FALSE(minus.ok());
    EXPECT_NE(minus.refusal().place.find("/own_parts/fittings/0/k"), std::string::npos) << minus.refusal().place;
    const auto word = loadText(replaced(text, "\"kind\": \"fitting\"", "\"kind\": \"gadget\""));
    ASSERT_FALSE(word.ok());
    EXPECT_EQ(word.refusal().id, "storage.unknown-word");
    EXPECT_EQ(loaded(replaced(text, "\"k\": 0.25", "\"k\": 0.25, \"colour\": \"red\"")).unknownKeys.size(), 1u);
}

TEST(PlanText, OfAnEmptyPlanIsShortAndComesBack)
{
    const plan::Plan empty;
    const std::string text = saveText(empty);
    EXPECT_TRUE(loaded(text).plan == empty);
    EXPECT_LT(text.size(), 1000u);
    EXPECT_NE(text.find("\"format\": \"sumpwright-plan\""), std::string::npos);
}

TEST(PlanText, WritesQuantitiesAsPeopleReadThem)
{
    const std::string text = saveText(test::SmallSystem().plan);
    for (const char* piece : {"\"altitude\": \"240 m\"", "\"diameter\": \"1.4 m\"", "\"base_level\": \"0.6 m\"",
                              "\"centre\": [\"4.5 m\", \"3 m\"]", "\"power_price\": \"0.31 /kWh\"",
                              "\"design_water\": \"20 degC\"", "\"station\": "})
        EXPECT_NE(text.find(piece), std::string::npos) << piece;
}

// Absent, as in files from before: the design temperature holds all year, and the file is written back without them.
TEST(PlanText, WritesTheYearsWaterOnlyWhereItIsGiven)
{
    test::SmallSystem system;
    EXPECT_EQ(saveText(system.plan).find("coldest_water"), std::string::npos);
    system.apply(plan::setColdestWater(units::celsius(6)));
    system.apply(plan::setWarmestWater(units::celsius(27)));
    const std::string text = saveText(system.plan);
    EXPECT_NE(text.find("\"coldest_water\": \"6 degC\""), std::string::npos);
    EXPECT_NE(text.find("\"warmest_water\": \"27 degC\""), std::string::npos);
    EXPECT_TRUE(loaded(text).plan == system.plan);
}

TEST(PlanText, GivesNewElementsIdsAboveAllInTheFile)
{
    const test::SmallSystem system;
    EXPECT_EQ(loaded(saveText(system.plan)).plan.nextId, system.plan.nextId);
}

TEST(PlanText, KeepsUnknownKeysEverywhereAndTellsOfThem)
{
    std::string text = saveText(test::SmallSystem().plan);
    text = replaced(text, "\"site\": {", "\"site\": {\"paint\": [1, 2.50, {\"deep\": null}],");
    text = replaced(text, "\"kind\": \"fish-tank\",", "\"kind\": \"fish-tank\", \"colour\": \"green\",");
    text = replaced(text, "\"legs\": 4,", "\"legs\": 4, \"brace\": true,");
    text = replaced(text, "{\"at\": [", "{\"glue\": \"yes\", \"at\": [");
    text = replaced(text, "\"from\": {\"pump\":", "\"from\": {\"hose\": 1, \"pump\":");
    text = replaced(text, "\"version\": 1,", "\"version\": 1, \"author_tool\": \"by hand\",");
    const LoadedPlan first = loaded(text);
    ASSERT_EQ(first.unknownKeys.size(), 6u);
    EXPECT_NE(first.unknownKeys[0].find("/site/paint"), std::string::npos) << first.unknownKeys[0];
    const std::string kept = saveText(first.plan);
    for (const char* piece : {"\"paint\": ", "2.50", "\"colour\": \"green\"", "\"brace\": true", "\"glue\": \"yes\"",
                              "\"hose\": 1", "\"author_tool\": \"by hand\""})
        EXPECT_NE(kept.find(piece), std::string::npos) << piece;
    EXPECT_EQ(saveText(loaded(kept).plan), kept);
}

TEST(PlanText, KeepsWordsOfEveryAlphabet)
{
    test::EditedPlan drawn;
    const std::string name = "Fischhaus \xC3\x84 \"Nord\" \\ \xF0\x9F\x90\x9F";
    drawn.apply(plan::setSiteName(name));
    drawn.apply(plan::placeNote(test::at(1, 1), "first line\nsecond\tline"));
    const std::string text = saveText(drawn.plan);
    EXPECT_EQ(loaded(text).plan.site->name, name);
    EXPECT_EQ((*loaded(text).plan.notes.begin())->text, "first line\nsecond\tline");
}

TEST(PlanText, MendsBrokenLettersWhenWriting)
{
    plan::Plan plan;
    plan::Site site;
    site.name = "half \xC3";
    plan.site = std::make_shared<const plan::Site>(site);
    EXPECT_EQ(loaded(saveText(plan)).plan.site->name, "half \xEF\xBF\xBD");
}

TEST(PlanText, IsTheSameUnderEveryLocale)
{
    const test::SmallSystem system;
    const std::string text = saveText(system.plan);
    bool comma = false;
    for (const char* name : {"de_DE.UTF-8", "fr_FR.UTF-8", "C.UTF-8", ""}) {
        if (!std::setlocale(LC_ALL, name))
            continue;
        comma = comma || std::string(std::localeconv()->decimal_point) == ",";
        EXPECT_EQ(saveText(system.plan), text) << name;
        EXPECT_TRUE(loaded(text).plan == system.plan) << name;
    }
    std::setlocale(LC_ALL, "C");
    if (!comma)
        GTEST_SKIP() << "no locale with a decimal comma is installed here; packaging/test.sh makes one";
}

TEST(PlanText, ReadsQuantitiesInOtherUnits)
{
    std::string text = saveText(test::SmallSystem().plan);
    text = replaced(text, "\"diameter\": \"1.4 m\"", "\"diameter\": \"4 ft 8 in\"");
    const auto plan = loaded(text).plan;
    const auto& tank = **plan.vessels.begin();
    EXPECT_NEAR(units::inMetres(std::get<plan::RoundShape>(tank.shape).diameter), 1.4224, 1e-12);
}
