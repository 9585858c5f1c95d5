#include "core/catalogue/catalogue.hpp"

#include <gtest/gtest.h>

#include "core/catalogue/nearest.hpp"

using namespace sumpwright;
using catalogue::Catalogue;
using catalogue::TableTexts;

namespace
{

const std::string goodPipe = R"({"id": "p-32", "name": "P", "standard": "S", "material": "PVC-U",
    "outside_diameter": "32 mm", "wall": "2.4 mm", "roughness_new": "0.0015 mm", "pressure_class": "PN16",
    "stock_length": "5 m", "drinking_water": "ask-maker", "source": "known", "basis": "seen"})";

TableTexts textsWith(const std::string& file, const std::string& row)
{
    return {{"sources.json", R"({"sources": {"known": {"title": "A known text", "basis": "seen"}}})"},
            {file, "{\"groups\": [{\"rows\": [" + row + "]}]}"}};
}

// The refusal of a row made from the good one by replacing one piece of text.
base::Refusal refusalOfPipe(const std::string& piece, const std::string& instead)
{
    std::string row = goodPipe;
    const std::size_t at = row.find(piece);
    EXPECT_NE(at, std::string::npos) << piece;
    row.replace(at, piece.size(), instead);
    const auto made = Catalogue::fromJson(textsWith("pipes.json", row));
    EXPECT_FALSE(made.ok()) << row;
    return made.ok() ? base::Refusal{} : made.refusal();
}

} // namespace

TEST(BadRow, TheGoodRowOfTheseTestsIsGood)
{
    const auto made = Catalogue::fromJson(textsWith("pipes.json", goodPipe));
    ASSERT_TRUE(made.ok()) << base::oneLine(made.refusal());
    EXPECT_EQ((*made)->pipes().size(), 1u);
}

TEST(BadRow, WithoutSourceIsRefusedByFileRowAndField)
{
    const base::Refusal refusal = refusalOfPipe(R"("source": "known", )", "");
    EXPECT_EQ(refusal.id, "catalogue.bad-row");
    EXPECT_EQ(refusal.place, "pipes.json, row 1 (p-32), source");
}

TEST(BadRow, WithAnUnknownSourceNamesTheNearestKey)
{
    const base::Refusal refusal = refusalOfPipe(R"("source": "known")", R"("source": "knwon")");
    EXPECT_EQ(refusal.id, "catalogue.unknown-source");
    EXPECT_EQ(refusal.accepts, "a key of sources.json, nearest: known");
}

TEST(BadRow, WithoutBasisOrWithAnUnknownBasisIsRefused)
{
    EXPECT_EQ(refusalOfPipe(R"(, "basis": "seen")", "").place, "pipes.json, row 1 (p-32), basis");
    EXPECT_EQ(refusalOfPipe(R"("basis": "seen")", R"("basis": "guess")").accepts,
              "one of seen, memory, computed, inference, common-practice, own");
}

TEST(BadRow, QuantitiesWithoutUnitOrOfAnotherKindAreRefused)
{
    EXPECT_EQ(refusalOfPipe("32 mm", "32").place, "pipes.json, row 1 (p-32), outside_diameter");
    EXPECT_EQ(refusalOfPipe(R"("32 mm")", "32").place, "pipes.json, row 1 (p-32), outside_diameter");
    EXPECT_EQ(refusalOfPipe("32 mm", "32 kg").place, "pipes.json, row 1 (p-32), outside_diameter");
    EXPECT_EQ(refusalOfPipe("32 mm", "-32 mm").place, "pipes.json, row 1 (p-32), outside_diameter");
}

TEST(BadRow, AWallThickerThanThePipeIsRefused)
{
    EXPECT_EQ(refusalOfPipe("2.4 mm", "16 mm").place, "pipes.json, row 1 (p-32), bore");
}

TEST(BadRow, AMisspeltFieldIsRefusedInsteadOfIgnored)
{
    EXPECT_EQ(refusalOfPipe(R"("source")", R"("raneg": "x", "source")").place, "pipes.json, row 1 (p-32), raneg");
}

TEST(BadRow, AnIdMayNotComeTwice)
{
    const auto made = Catalogue::fromJson(textsWith("pipes.json", goodPipe + "," + goodPipe));
    ASSERT_FALSE(made.ok());
    EXPECT_EQ(made.refusal().place, "pipes.json, row 2 (p-32), id");
}

TEST(BadRow, APumpWhoseHeadRisesIsRefused)
{
    const auto made = Catalogue::fromJson(textsWith("pumps.json", R"({"id": "G", "name": "G", "points":
        [{"flow": "0 L/h", "head": "1 m"}, {"flow": "100 L/h", "head": "1.1 m"}], "power": "10 W",
        "minimum_depth": "60 mm", "dry_run_depth": "30 mm", "solids_passage": "2 mm", "outlet_size": "13 mm",
        "source": "known", "basis": "inference"})"));
    ASSERT_FALSE(made.ok());
    EXPECT_EQ(made.refusal().place, "pumps.json, row 1 (G), points");
}

TEST(BadRow, AMediumThatHoldsMoreThanItsPoresIsRefused)
{
    const auto made = Catalogue::fromJson(textsWith("media.json", R"({"id": "M", "name": "M",
        "dry_density": {"low": "300 kg/m3", "typical": "400 kg/m3", "high": "450 kg/m3"},
        "absorption": {"low": 0.1, "typical": 0.2, "high": 0.3}, "porosity": {"low": 0.4, "typical": 0.4, "high": 0.4},
        "retained": {"low": 0.05, "typical": 0.05, "high": 0.5}, "source": "known", "basis": "memory"})"));
    ASSERT_FALSE(made.ok());
    EXPECT_EQ(made.refusal().place, "media.json, row 1 (M), porosity");
}

TEST(BadRow, TextThatIsNotJsonNamesItsLine)
{
    const auto made = Catalogue::fromJson({{"pipes.json", "{\n\"groups\": [\n}"}});
    ASSERT_FALSE(made.ok());
    EXPECT_EQ(made.refusal().id, "catalogue.bad-file");
    EXPECT_EQ(made.refusal().place, "pipes.json, line 3");
}

TEST(BadRow, AnythingElseThanATableIsRefusedWithoutACrash)
{
    for (const char* text : {"", "null", "[]", "{}", "{\"groups\": 1}", "{\"groups\": [1]}", "{\"groups\": [{}]}",
                             "{\"groups\": [{\"rows\": [1]}]}", "{\"groups\": [{\"common\": 2, \"rows\": [{}]}]}",
                             "{\"groups\": [{\"rows\": [{}]}]}"})
        for (const char* file : {"sources.json", "pipes.json", "roughness.json", "fittings.json", "valves.json",
                                 "pumps.json", "media.json", "live_loads.json", "vessels.json", "supports.json"})
            EXPECT_FALSE(Catalogue::fromJson({{file, text}}).ok()) << file << " " << text;
}

TEST(Lookup, AnUnknownIdNamesTheNearest)
{
    const auto found = Catalogue::builtIn()->fitting("elbow90");
    ASSERT_FALSE(found.ok());
    EXPECT_EQ(found.refusal().id, "catalogue.unknown-id");
    EXPECT_EQ(found.refusal().what, "there is no fitting \"elbow90\"");
    EXPECT_EQ(found.refusal().accepts.rfind("nearest: elbow-90, ", 0), 0u) << found.refusal().accepts;
}

TEST(Lookup, AVeryLongIdIsCutInTheMessage)
{
    const auto found = Catalogue::builtIn()->pipe(std::string(100000, 'x'));
    ASSERT_FALSE(found.ok());
    EXPECT_LT(found.refusal().what.size(), 80u);
}

TEST(NearestNames, CountLettersChangedAddedDroppedAndSwapped)
{
    const std::vector<std::string> known = {"pump", "pipe", "sump"};
    EXPECT_EQ(catalogue::nearestNames("pmup", known, 1), std::vector<std::string>{"pump"});
    EXPECT_EQ(catalogue::nearestNames("PIPES", known, 1), std::vector<std::string>{"pipe"});
    EXPECT_EQ(catalogue::nearestNames("", known, 2), (std::vector<std::string>{"pump", "pipe"}));
    EXPECT_EQ(catalogue::nearestNames("x", {}, 2), std::vector<std::string>{});
}
