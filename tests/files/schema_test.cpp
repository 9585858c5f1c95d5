// Saved plans against resources/schema/plan.schema.json, judged by an independent library: python3-jsonschema
// (JSON Schema 2020-12). Without it the test fails and says what to install.
#include <gtest/gtest.h>

#include "core/plan/edits/own_parts.hpp"
#include "core/storage/file.hpp"
#include "core/storage/plan_text.hpp"
#include "tests/support/child.hpp"
#include "tests/support/edited_plan.hpp"
#include "tests/support/scratch_folder.hpp"
#include "tests/support/source_file.hpp"

using namespace sumpwright;

namespace
{

constexpr const char* python = "/usr/bin/python3";

// Arguments: schema, "open" or "closed" (no key beside those named), plan files. Prints one line a fault.
constexpr const char* judge = R"(
import json, sys
from jsonschema import Draft202012Validator
def close(node):
    if isinstance(node, dict):
        if "properties" in node:
            node["additionalProperties"] = False
        for value in node.values():
            close(value)
    if isinstance(node, list):
        for value in node:
            close(value)
schema = json.load(open(sys.argv[1]))
Draft202012Validator.check_schema(schema)
if sys.argv[2] == "closed":
    close(schema)
bad = 0
for name in sys.argv[3:]:
    for error in Draft202012Validator(schema).iter_errors(json.load(open(name))):
        print(name, "/".join(map(str, error.absolute_path)), error.message[:200])
        bad = 1
sys.exit(3 if bad else 0)
)";

tests::ChildResult judged(const char* mode, const std::vector<std::string>& files)
{
    std::vector<std::string> arguments{"-c", judge, test::sourcePath("resources/schema/plan.schema.json"), mode};
    arguments.insert(arguments.end(), files.begin(), files.end());
    return tests::runProgram(arguments, python);
}

class PlanSchema : public ::testing::Test
{
protected:
    void SetUp() override
    {
        ASSERT_TRUE(std::filesystem::exists(python)) << "install the Debian packages python3 and python3-jsonschema";
        const auto found = tests::runProgram({"-c", "from jsonschema import Draft202012Validator"}, python);
        ASSERT_EQ(found.exitCode, 0) << "install the Debian package python3-jsonschema\n" << found.errors;
    }
    std::string saved(const std::string& name, const std::string& text)
    {
        EXPECT_FALSE(storage::writeFile(m_folder / name, text));
        return m_folder / name;
    }

private:
    test::ScratchFolder m_folder;
};

// One of each kind with every key.
void addOwnParts(test::SmallSystem& system)
{
    plan::OwnPipe hose;
    hose.id = "own-hose";
    hose.name = "Hose";
    hose.origin = "measured";
    hose.outsideDiameter = units::millimetres(32);
    hose.bore = units::millimetres(25.4);
    hose.corrugatedFactor = 0.07;
    hose.gravityOnly = true;
    system.apply(plan::putOwnPart(hose));
    plan::OwnFitting check;
    check.id = "own-check";
    check.name = "Check";
    check.kind = plan::OwnFittingKind::nonReturnValve;
    check.flowFactor = units::litresPerHour(6300);
    check.cracking = units::metresHead(0.05);
    system.apply(plan::putOwnPart(check));
    plan::OwnFitting joint;
    joint.id = "own-joint";
    joint.name = "Joint";
    joint.k = 0.3;
    system.apply(plan::putOwnPart(joint));
    plan::OwnPump box;
    box.id = "own-box";
    box.name = "Box";
    box.curve = {{units::Flow(), units::metresHead(3)}, {units::litresPerHour(4000), units::Head()}};
    box.twoNumbers = true;
    box.power = units::watts(60);
    box.leastDepth = units::millimetres(60);
    system.apply(plan::putOwnPart(box));
}

// A plan that uses every optional key.
std::string fullText()
{
    test::SmallSystem system;
    const plan::PortRef lip{system.bedA, system.portOf(system.bedA, plan::PortKind::lip)};
    const plan::PortRef inlet{system.bedA, system.portOf(system.bedA, plan::PortKind::inlet)};
    system.apply(plan::setPortBore({lip}, units::millimetres(40)));
    system.apply(plan::setVentLevel({inlet}, units::elevationMetres(1.2)));
    system.apply(plan::setTargetFlow({inlet}, units::litresPerHour(600)));
    system.apply(plan::setMeasuredTare({system.tank}, units::kilograms(60)));
    plan::Stand stand;
    stand.mass = units::kilograms(30);
    system.apply(plan::setStand({system.bedB}, stand));
    system.apply(plan::setShape({system.bedB}, plan::CagedShape{}));
    system.apply(plan::setPumpCurve(
        {system.pump},
        {{units::litresPerHour(0), units::metresHead(3)}, {units::litresPerHour(3000), units::metresHead(1)}},
        units::watts(40)));
    system.apply(plan::setPumpArrangement({system.pump}, plan::PumpArrangement::twoInSeries));
    addOwnParts(system);
    system.apply(plan::setLeastDepth({system.pump}, units::millimetres(60)));
    system.apply(plan::setBendFitting(system.main, 1, "elbow-90"));
    system.apply(plan::setBendLoss(system.main, 1, 0.5));
    system.apply(plan::setEndLoss(system.toBed, plan::RunSide::from, 1.2));
    system.apply(plan::setEndLoss(system.drainA, plan::RunSide::to, 1.0));
    system.apply(plan::setExtraFittings({system.toBed}, {{"union", 1, 0.1}}));
    for (const auto& run : plan::Table<plan::Run>(system.plan.runs))
        if (!run->valves.empty())
            system.apply(plan::setValveLoss({{run->id, system.valve}}, 0.3));
    system.apply(plan::setDrainPoint(test::at(1, 1)));
    system.apply(plan::setClearHeight(units::metres(2.4)));
    system.apply(plan::setFloorThickness(units::metres(0.1)));
    system.apply(plan::setFloorUse("garage"));
    system.apply(plan::setColdestWater(units::celsius(6)));
    system.apply(plan::setWarmestWater(units::celsius(27)));
    const plan::Run main = system.runOf(system.main);
    system.run(plan::OntoRun{system.main, units::inMetres(main.vertices[1].at.y - main.vertices[0].at.y) /
                                              units::inMetres(plan::lengthOf(main))},
               plan::Nowhere{}, {test::vertex(0, 0, 1.4), test::vertex(-1, 8, 1.4)});
    const std::string text = storage::saveText(system.plan);
    EXPECT_NE(text.find("on_vertex"), std::string::npos);
    return text;
}

} // namespace

TEST_F(PlanSchema, TakesWhatIsSavedAndNamesEveryKey)
{
    const auto verdict =
        judged("closed", {saved("empty.json", storage::saveText(plan::Plan())),
                          saved("small.json", storage::saveText(test::SmallSystem().plan)),
                          saved("full.json", fullText()), test::sourcePath("tests/files/plans/version_1.sumpwright")});
    EXPECT_EQ(verdict.exitCode, 0) << verdict.out << verdict.errors;
}

TEST_F(PlanSchema, LetsUnknownKeysBeAndRefusesWrongOnes)
{
    const std::string text = fullText();
    const auto with = [&](const std::string& what, const std::string& by) {
        std::string changed = text;
        const auto at = changed.find(what);
        EXPECT_NE(at, std::string::npos) << what;
        return changed.replace(at, what.size(), by);
    };
    EXPECT_EQ(judged("open", {saved("a.json", with("\"site\": {", "\"site\": {\"paint\": 1, "))}).exitCode, 0);
    EXPECT_EQ(judged("open", {saved("b.json", with("\"fish-tank\"", "\"pond\""))}).exitCode, 3);
    EXPECT_EQ(judged("open", {saved("c.json", with("\"version\": 1", "\"version\": 2"))}).exitCode, 3);
    EXPECT_EQ(judged("open", {saved("d.json", with("\"turn\": \"0 deg\"", "\"turn\": 0"))}).exitCode, 3);
    EXPECT_EQ(judged("open", {saved("e.json", with("\"station\": ", "\"station\": 7"))}).exitCode, 3);
    EXPECT_EQ(judged("open", {saved("f.json", with("\"tag\": \"T1\",", ""))}).exitCode, 3);
}
