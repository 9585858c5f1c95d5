#include <gtest/gtest.h>

#include "core/storage/parts_table.hpp"
#include "core/units/measures.hpp"

using namespace sumpwright;
using namespace sumpwright::storage;

namespace
{

PartsPreview previewOf(const std::string& text, const plan::OwnParts& kept = {})
{
    const auto preview = previewParts(text, kept);
    EXPECT_TRUE(preview.ok()) << (preview.ok() ? "" : base::oneLine(preview.refusal()));
    return preview.ok() ? *preview : PartsPreview();
}

std::string fileRefusal(const std::string& text)
{
    const auto preview = previewParts(text, {});
    return preview.ok() ? "" : preview.refusal().id + " " + preview.refusal().place;
}

// "id place" of the one row under the header.
std::string rowRefusal(const std::string& header, const std::string& row)
{
    const PartsPreview preview = previewOf(header + "\n" + row + "\n");
    EXPECT_EQ(preview.coming.size() + preview.refused.size(), 1u) << row;
    if (preview.refused.empty())
        return "";
    EXPECT_FALSE(preview.refused[0].refusal.what.empty());
    EXPECT_FALSE(preview.refused[0].refusal.accepts.empty());
    return preview.refused[0].refusal.id + " " + preview.refused[0].refusal.place;
}

const std::string header = "kind,name,outside_diameter,bore,k,kv,curve,shut_off_head,greatest_flow,power";

plan::OwnParts everyKind()
{
    plan::OwnParts parts;
    plan::OwnPipe pipe;
    pipe.id = "own-hose";
    pipe.name = "Hose, \"green\"";
    pipe.origin = "catalogue of the shop; page 12";
    pipe.outsideDiameter = units::millimetres(32);
    pipe.bore = units::millimetres(25.4);
    pipe.corrugatedFactor = 0.07;
    pipe.gravityOnly = true;
    parts.pipes = {pipe};
    plan::OwnFitting valve;
    valve.id = "own-check";
    valve.name = "Check";
    valve.kind = plan::OwnFittingKind::nonReturnValve;
    valve.flowFactor = units::litresPerHour(6300);
    valve.cracking = units::metresHead(0.05);
    plan::OwnFitting elbow;
    elbow.id = "own-elbow";
    elbow.name = "Elbow";
    elbow.k = 0.7;
    parts.fittings = {valve, elbow};
    plan::OwnPump pump;
    pump.id = "own-pump";
    pump.name = "Pump";
    pump.curve = {{units::Flow(), units::metresHead(3.2)},
                  {units::litresPerHour(1000), units::metresHead(2.9)},
                  {units::litresPerHour(4500), units::Head()}};
    pump.power = units::watts(70);
    pump.leastDepth = units::millimetres(60);
    plan::OwnPump box = pump;
    box.id = "own-box";
    box.name = "Box";
    box.curve = {{units::Flow(), units::metresHead(2)}, {units::litresPerHour(2000), units::Head()}};
    box.twoNumbers = true;
    parts.pumps = {pump, box};
    return parts;
}

} // namespace

TEST(PartsTable, ComesBackAsItWasWritten)
{
    const plan::OwnParts parts = everyKind();
    const std::string text = partsTable(parts);
    const PartsPreview again = previewOf(text, parts);
    EXPECT_TRUE(again.refused.empty());
    ASSERT_EQ(again.coming.size(), parts.size());
    for (const IncomingPart& incoming : again.coming)
        EXPECT_TRUE(incoming.replaces);
    EXPECT_TRUE(again.parts() == parts); // the ids of those kept
    EXPECT_EQ(partsTable(previewOf(text).parts()), text);
}

TEST(PartsTable, TakesUnitsFromTheHeadingOrTheCell)
{
    const auto bore = [](const std::string& text) {
        const PartsPreview preview = previewOf(text);
        EXPECT_EQ(preview.coming.size(), 1u) << text;
        return preview.coming.empty() ? 0.0
                                      : units::inMillimetres(std::get<plan::OwnPipe>(preview.coming[0].part).bore);
    };
    EXPECT_NEAR(bore("kind,name,Outside Diameter (mm),Bore [mm]\npipe,A,32,27.2\n"), 27.2, 1e-9);
    EXPECT_NEAR(bore("kind,name,outside-diameter,bore\npipe,A,32 mm,1 in\n"), 25.4, 1e-9);
    EXPECT_NEAR(bore("kind,name,outside_diameter (mm),bore (mm)\npipe,A,32,2.72 cm\n"), 27.2, 1e-9);
    EXPECT_NEAR(bore("kind;name;outside_diameter (mm);bore (mm)\npipe;A;32,0;27,2\n"), 27.2, 1e-9);
    EXPECT_NEAR(bore("kind\tname\toutside_diameter\tbore\npipe\tA\t32 mm\t27,2 mm\n"), 27.2, 1e-9);
}

// "1.234" with decimal commas about may be meant as a thousand: refused, never read a thousandfold wrong.
TEST(PartsTable, DoesNotGuessWhichMarkIsMeant)
{
    const PartsPreview preview =
        previewOf("kind;name;shut_off_head;greatest_flow\npump;A;3,2 m;4.500 L/h\npump;B;2,5 m;2000 L/h\n");
    ASSERT_EQ(preview.refused.size(), 1u);
    EXPECT_EQ(preview.refused[0].line, 2u);
    EXPECT_EQ(preview.coming.size(), 1u);
    EXPECT_EQ(rowRefusal("kind,name,outside_diameter,bore", "pipe,A,32 mm,\"27,2 mm\""), "units.comma line 2, bore");
}

TEST(PartsTable, ReadsPumpsByPointsAndByTheBox)
{
    const PartsPreview preview = previewOf("kind;name;curve;shut_off_head (m);greatest_flow (L/h);power (W)\n"
                                           "pump;P1;\"0 L/h: 3,2 m; 1125 L/h: 2,9 m; 4500 L/h: 0 m\";;;70\n"
                                           "pump;P2;;2,5;2500;\n");
    ASSERT_EQ(preview.coming.size(), 2u);
    const auto& points = std::get<plan::OwnPump>(preview.coming[0].part);
    ASSERT_EQ(points.curve.size(), 3u);
    EXPECT_FALSE(points.twoNumbers);
    EXPECT_NEAR(units::inMetresHead(points.curve[1].head), 2.9, 1e-12);
    EXPECT_NEAR(units::inWatts(*points.power), 70.0, 1e-12);
    const auto& box = std::get<plan::OwnPump>(preview.coming[1].part);
    EXPECT_TRUE(box.twoNumbers);
    EXPECT_NEAR(units::inLitresPerHour(box.curve[1].flow), 2500.0, 1e-9);
}

TEST(PartsTable, SaysRowColumnAndCureOfEveryFault)
{
    EXPECT_EQ(rowRefusal(header, "pipe,A,32 mm,27.2 mm,,,,,,"), "");
    EXPECT_EQ(rowRefusal(header, "pipe,A,32 mm,,,,,,,"), "storage.table-empty-cell line 2, bore");
    EXPECT_EQ(rowRefusal(header, "pipe,A,32 mm,27.2,,,,,,"), "units.missing-unit line 2, bore");
    EXPECT_EQ(rowRefusal(header, "pipe,A,32 mm,3 kg,,,,,,"), "units.wrong-kind line 2, bore");
    EXPECT_EQ(rowRefusal(header, "pipe,A,32 mm,40 mm,,,,,,"), "plan.bore-too-large line 2, bore");
    EXPECT_EQ(rowRefusal(header, "pipe,A,32 mm,-2 mm,,,,,,"), "plan.out-of-range line 2, bore");
    EXPECT_EQ(rowRefusal(header, "pipe,,32 mm,27 mm,,,,,,"), "plan.text-missing line 2, name");
    EXPECT_EQ(rowRefusal(header, "pipe,A,32 mm,27 mm,0.3,,,,,"), "storage.table-other-kind line 2, k");
    EXPECT_EQ(rowRefusal(header, ",A,32 mm,27 mm,,,,,,"), "storage.table-bad-word line 2, kind");
    EXPECT_EQ(rowRefusal(header, "elbow,A,,,0.3,,,,,"), "storage.table-bad-word line 2, kind");
    EXPECT_EQ(rowRefusal(header, "fitting,A,,,,,,,,"), "plan.own-loss line 2, k");
    EXPECT_EQ(rowRefusal(header, "fitting,A,,,nan,,,,,"), "units.not-finite line 2, k");
    EXPECT_EQ(rowRefusal(header, "Ball valve,A,,,,6.3 m3/h,,,,"), "");
    EXPECT_EQ(rowRefusal(header, "pump,A,,,,,,3 m,,"), "storage.table-empty-cell line 2, greatest_flow");
    EXPECT_EQ(rowRefusal(header, "pump,A,,,,,,,,"), "storage.table-no-curve line 2, curve");
    EXPECT_EQ(rowRefusal(header, "pump,A,,,,,0 L/h 3 m,,,"), "storage.table-bad-curve line 2, curve");
    EXPECT_EQ(rowRefusal(header, "pump,A,,,,,0 L/h: 3 m; 500 L/h: 3 m,,,"), "plan.curve-head line 2, curve/1/head");
    EXPECT_EQ(rowRefusal(header, "pump,A,,,,,,3 m,2000 L/h,70 V"), "units.unknown-unit line 2, power");
}

TEST(PartsTable, RefusesAFileWithoutTheColumnsItNeeds)
{
    EXPECT_EQ(fileRefusal("name,bore\nA,2 mm\n"), "storage.table-no-column line 1, kind");
    EXPECT_EQ(fileRefusal("kind,name,bore (kg)\npipe,A,2\n"), "storage.table-bad-column line 1, bore");
    EXPECT_EQ(fileRefusal("kind,name,bore (mm + 1 kg)\npipe,A,2\n"), "storage.table-bad-column line 1, bore");
    EXPECT_EQ(fileRefusal("kind,name,bore ())(\npipe,A,2\n"), "");
    EXPECT_EQ(fileRefusal("kind,name,bore,Bore\npipe,A,2 mm,2 mm\n"), "storage.table-column-twice line 1, bore");
    const PartsPreview preview = previewOf("kind,name,k,colour\nfitting,A,0.3,red\n");
    EXPECT_EQ(preview.unknownColumns, std::vector<std::string>{"colour"});
    EXPECT_EQ(preview.coming.size(), 1u);
}

TEST(PartsTable, TellsDuplicatesAndWhatReplacesWhat)
{
    const plan::OwnParts kept = everyKind();
    const PartsPreview preview =
        previewOf("kind,name,k\nfitting,Elbow,0.8\nfitting,New,0.1\nfitting,New,0.2\nfitting,Pump,0.3\n", kept);
    ASSERT_EQ(preview.coming.size(), 2u);
    EXPECT_TRUE(preview.coming[0].replaces);
    EXPECT_EQ(std::get<plan::OwnFitting>(preview.coming[0].part).id, "own-elbow");
    EXPECT_FALSE(preview.coming[1].replaces);
    EXPECT_EQ(std::get<plan::OwnFitting>(preview.coming[1].part).id, "own-new");
    ASSERT_EQ(preview.refused.size(), 2u);
    EXPECT_EQ(preview.refused[0].refusal.id, "storage.table-name-twice");
    EXPECT_NE(preview.refused[0].refusal.what.find("line 3"), std::string::npos);
    EXPECT_EQ(preview.refused[1].refusal.id, "storage.table-name-taken");
}

TEST(PartsTable, OfTenThousandRowsComesInWhole)
{
    std::string text = "kind,name,outside_diameter (mm),bore (mm)\n";
    for (int i = 0; i < 10'000; ++i)
        text += "pipe,Pipe number " + std::to_string(i) + ",32," + (i == 5000 ? "32.5" : "27.2") + "\n";
    const PartsPreview preview = previewOf(text);
    EXPECT_EQ(preview.coming.size(), 9'999u);
    ASSERT_EQ(preview.refused.size(), 1u);
    EXPECT_EQ(preview.refused[0].line, 5'002u);
}

TEST(PartsTable, NoTextBreaksIt)
{
    for (const std::string text : {"\"", "kind,name\n\"", ";;;\n;;;", "kind,name\n\"\"\"\"\"\"", "kind,name,k\nfitting",
                                   "kind;name\nfitting;A;B;C"})
        (void)previewParts(text, {});
    std::string noise;
    unsigned state = 12345;
    for (int round = 0; round < 300; ++round) {
        noise = "kind,name,bore,k,curve\n";
        for (int i = 0; i < 60; ++i) {
            state = state * 1664525u + 1013904223u;
            noise += "pipe,;\"\n0 L/h:m.fitting"[(state >> 16) % 21];
        }
        const auto preview = previewParts(noise, {});
        if (preview.ok()) {
            EXPECT_LE(preview->coming.size() + preview->refused.size(), 80u);
        }
    }
}
