// Plan files with one thing wrong: each is refused with its id, its line and its path.
#include <gtest/gtest.h>

#include "core/storage/plan_text.hpp"
#include "tests/support/source_file.hpp"

using namespace sumpwright;
using namespace sumpwright::storage;

namespace
{

struct Bad {
    const char* what; // in the sound file
    const char* by;   // put in its place, the first time it stands there
    const char* id;
    const char* place;
};

const Bad cases[] = {
    {"\"sumpwright-plan\"", "\"other-plan\"", "storage.other-format", "line 2, /format"},
    {"\"format\": \"sumpwright-plan\",", "", "storage.missing-key", "line 1, /"},
    {"\"version\": 1", "\"version\": 2", "storage.newer-version", "line 3, /version"},
    {"\"version\": 1", "\"version\": 0", "storage.no-version", "line 3, /version"},
    {"\"version\": 1", "\"version\": 1.5", "storage.not-whole", "line 3, /version"},
    {"\"version\": 1", "\"version\": \"1\"", "storage.wrong-kind", "line 3, /version"},
    {"\"altitude\": \"240 m\"", "\"altitude\": \"240\"", "units.missing-unit", "line 8, /site/altitude"},
    {"\"altitude\": \"240 m\"", "\"altitude\": 240", "storage.wrong-kind", "line 8, /site/altitude"},
    {"\"altitude\": \"240 m\"", "\"altitude\": \"240 kg\"", "units.wrong-kind", "line 8, /site/altitude"},
    {"\"altitude\": \"240 m\"", "\"altitude\": \"90 furlong\"", "units.unknown-unit", "line 8, /site/altitude"},
    {"\"altitude\": \"240 m\"", "\"altitude\": \"24000 m\"", "plan.out-of-range", "line 8, /site/altitude"},
    {"\"20 degC\"", "\"-400 degC\"", "units.below-absolute-zero", "line 9, /site/design_water"},
    {"\"in-service\"", "\"rusty\"", "storage.unknown-word", "line 13, /site/pipe_condition"},
    {"\"EUR\"", "\"euro\"", "plan.currency", "line 11, /site/currency"},
    {"[\"6 m\", \"0 m\"]", "[\"6 m\"]", "storage.not-a-pair", "line 21, /floor/outline/1"},
    {"[\"0 m\", \"0 m\"], [\"6 m\", \"0 m\"]", "[\"6 m\", \"0 m\"], [\"0 m\", \"0 m\"]", "plan.outline-crosses",
     "line 21, /floor/outline"},
    {"\"tag\": \"D1\"", "\"tag\": \"W1\"", "plan.tag-clash", "line 39, /fixtures/1/tag"},
    {"\"tag\": \"D1\"", "\"tag\": \"\"", "plan.text-missing", "line 39, /fixtures/1/tag"},
    {"\"id\": 27", "\"id\": 26", "plan.id-clash", "line 38, /fixtures/1/id"},
    {"\"id\": 27", "\"id\": 0", "storage.not-whole", "line 38, /fixtures/1/id"},
    {"\"id\": 27", "\"id\": -3", "storage.not-whole", "line 38, /fixtures/1/id"},
    {"\"id\": 27", "\"id\": 18446744073709551615", "storage.not-whole", "line 38, /fixtures/1/id"},
    {"\"id\": 2, \"tag\": \"I1\"", "\"id\": 1, \"tag\": \"I1\"", "plan.id-clash", "line 82, /vessels/0/ports/0/id"},
    {"\"wall_height\": \"0.9 m\"", "\"wall_height\": \"0.7 m\"", "plan.lip-above-rim",
     "line 83, /vessels/0/ports/1/level"},
    {"\"wall_height\": \"0.9 m\"", "\"wall_height\": \"-0.9 m\"", "plan.out-of-range",
     "line 78, /vessels/0/wall_height"},
    {"\"wall_thickness\": \"6 mm\"", "\"wall_thickness\": \"0.8 m\"", "plan.wall-too-thick",
     "line 79, /vessels/0/wall_thickness"},
    {"\"wall_height\": \"0.9 m\",", "", "storage.missing-key", "line 69, /vessels/0"},
    {"\"shape\": \"round\"", "\"shape\": \"square\"", "storage.unknown-word", "line 73, /vessels/0/shape"},
    {"\"diameter\": \"1.4 m\"", "\"diametre\": \"1.4 m\"", "storage.missing-key", "line 69, /vessels/0"},
    {"\"running_level\": \"0.3 m\"", "\"running_level\": \"0.61 m\"", "plan.level-outside-vessel",
     "line 99, /vessels/1/running_level"},
    {"\"offset\": [\"0.8 m\", \"0 m\"]", "\"offset\": [\"1.8 m\", \"0 m\"]", "plan.port-outside",
     "line 126, /vessels/2/ports/1/offset"},
    {"\"vessel\": 4", "\"vessel\": 44", "plan.dangling", "line 163, /pumps/0/vessel"},
    {"\"vessel\": 4", "\"vessel\": 12", "plan.dangling", "line 163, /pumps/0/vessel"},
    {"\"speed\": 1", "\"speed\": 2", "plan.out-of-range", "line 166, /pumps/0/speed"},
    {"\"speed\": 1", "\"speed\": \"1\"", "storage.wrong-kind", "line 166, /pumps/0/speed"},
    {"\"speed\": 1", "\"speed\": NaN", "storage.broken-json", "line 166"},
    {"\"speed\": 1", "\"speed\": 1e999", "storage.broken-json", "line 166"},
    {"\"running\": true", "\"running\": \"yes\"", "storage.wrong-kind", "line 168, /pumps/0/running"},
    {"\"model\": \"G4500\"", "\"own_curve\": [[\"0 L/h\", \"3 m\"], [\"9 L/h\", \"4 m\"]]", "plan.curve-head",
     "line 165, /pumps/0/own_curve/1/head"},
    {"{\"vessel\": 1, \"port\": 2}", "{\"vessel\": 1, \"port\": 5}", "plan.dangling", "line 182, /runs/0/to"},
    {"{\"vessel\": 1, \"port\": 2}", "{\"vessel\": 1}", "storage.missing-key", "line 182, /runs/0/to"},
    {"{\"vessel\": 1, \"port\": 2}", "{\"wall\": 1}", "storage.unknown-end", "line 182, /runs/0/to"},
    {"\"from\": {\"tee\": 15}", "\"from\": {\"tee\": 18}", "plan.end-off-place", "line 184, /runs/0/vertices/0"},
    {"\"station\": 0.3", "\"station\": 1.3", "plan.out-of-range", "line 202, /runs/1/valves/0/station"},
    {"\"count\": 2", "\"count\": 0", "plan.out-of-range", "line 189, /runs/0/extra_fittings/0/count"},
    {"[\"1.3 m\", \"1.5 m\"], \"level\": \"1.4 m\"", "[\"0.5 m\", \"1.5 m\"], \"level\": \"1.4 m\"", "plan.zero-leg",
     "line 214, /runs/2/vertices/2/at"},
    {"\"service\": \"gravity\"", "\"service\": \"gravity\", \"service\": \"gravity\"", "storage.duplicate-key",
     "line 248"},
    {"\"text\": \"north light\"", "\"text\": \"bell \\u0007\"", "plan.bad-characters", "line 289, /notes/0/text"},
    {"\"file\": \"shed.png\"", "\"file\": \"../shed.png\"", "plan.underlay-elsewhere", "line 294, /underlay/file"},
    {"\"runs\": [", "\"runs\": {}, \"old_runs\": [", "storage.wrong-kind", "line 175, /runs"},
};

std::string soundText() { return test::sourceText("tests/files/plans/version_1.sumpwright"); }

} // namespace

TEST(BadPlan, IsRefusedWithIdLineAndPath)
{
    const std::string sound = soundText();
    for (const Bad& bad : cases) {
        std::string text = sound;
        const auto at = text.find(bad.what);
        ASSERT_NE(at, std::string::npos) << bad.what;
        text.replace(at, std::string(bad.what).size(), bad.by);
        const auto loaded = loadText(text);
        ASSERT_FALSE(loaded.ok()) << bad.by << " was accepted";
        EXPECT_EQ(loaded.refusal().id, bad.id) << bad.by << ": " << base::oneLine(loaded.refusal());
        EXPECT_EQ(loaded.refusal().place, bad.place) << bad.by << ": " << base::oneLine(loaded.refusal());
        EXPECT_FALSE(loaded.refusal().what.empty() || loaded.refusal().accepts.empty()) << bad.by;
    }
}

TEST(BadPlan, OfANewerVersionSaysKindlyWhatToDo)
{
    std::string text = soundText();
    text.replace(text.find("\"version\": 1"), 12, "\"version\": 7");
    const auto loaded = loadText(text);
    EXPECT_NE(loaded.refusal().what.find("newer program"), std::string::npos);
    EXPECT_NE(loaded.refusal().accepts.find("untouched"), std::string::npos);
}

TEST(BadPlan, WithARootThatIsNoObjectIsRefused)
{
    for (const char* text : {"[]", "null", "3", "\"plan\"", "true"})
        EXPECT_EQ(loadText(text).refusal().id, "storage.wrong-kind") << text;
    EXPECT_EQ(loadText("").refusal().id, "storage.broken-json");
}

TEST(GoodPlan, OfVersion1IsReadAndSavedByteForByte)
{
    const std::string text = soundText();
    const auto loaded = loadText(text);
    ASSERT_TRUE(loaded.ok()) << base::oneLine(loaded.refusal());
    EXPECT_EQ(loaded->fromVersion, 1);
    EXPECT_TRUE(loaded->unknownKeys.empty());
    EXPECT_EQ(saveText(loaded->plan), text);
}
