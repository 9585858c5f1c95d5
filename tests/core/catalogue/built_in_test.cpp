#include "core/catalogue/catalogue.hpp"

#include <iostream>

#include <gtest/gtest.h>

#include "core/units/measures.hpp"

using namespace sumpwright;
using namespace sumpwright::units;
using catalogue::Catalogue;

namespace
{

template <class Entry> void countByBasis(const char* table, const std::vector<Entry>& entries)
{
    std::map<catalogue::Basis, int> counts;
    for (const Entry& entry : entries)
        ++counts[entry.provenance.basis];
    std::cout << table << ": " << entries.size() << " rows";
    for (const catalogue::Basis basis : catalogue::allBases)
        if (counts[basis] > 0)
            std::cout << ", " << catalogue::basisKey(basis) << " " << counts[basis];
    std::cout << '\n';
}

// Every row has a basis by its type and a source that fromJson has found; here it must also lead to a title.
template <class Entry> void expectSources(const Catalogue& tables, const std::vector<Entry>& entries)
{
    ASSERT_FALSE(entries.empty());
    for (const Entry& entry : entries) {
        const auto source = tables.source(entry.provenance.source);
        ASSERT_TRUE(source.ok()) << entry.id;
        EXPECT_FALSE((*source)->title.empty()) << entry.id;
    }
}

} // namespace

TEST(BuiltInTables, EveryRowLeadsToASourceAndCountsByBasisArePrinted)
{
    const auto tables = Catalogue::builtIn();
    countByBasis("pipes", tables->pipes());
    countByBasis("roughness", tables->roughness());
    countByBasis("fittings and valves", tables->fittings());
    countByBasis("pumps", tables->pumps());
    countByBasis("media", tables->media());
    countByBasis("live loads", tables->liveLoads());
    countByBasis("vessels", tables->vessels());
    countByBasis("supports", tables->supports());
    expectSources(*tables, tables->pipes());
    expectSources(*tables, tables->roughness());
    expectSources(*tables, tables->fittings());
    expectSources(*tables, tables->pumps());
    expectSources(*tables, tables->media());
    expectSources(*tables, tables->liveLoads());
    expectSources(*tables, tables->vessels());
    expectSources(*tables, tables->supports());
}

// Lists to choose from show the names: two alike could not be told apart.
TEST(BuiltInTables, NoTwoRowsOfATableShareAName)
{
    const auto tables = Catalogue::builtIn();
    const auto expectApart = [](const auto& entries) {
        std::map<std::string, std::string> idOf;
        for (const auto& entry : entries)
            EXPECT_TRUE(idOf.emplace(entry.name, entry.id).second)
                << entry.name << " is the name of " << idOf[entry.name] << " and of " << entry.id;
    };
    expectApart(tables->pipes());
    expectApart(tables->pumps());
    expectApart(tables->fittings());
    expectApart(tables->media());
}

TEST(BuiltInTables, AreParsedOnce) { EXPECT_EQ(Catalogue::builtIn(), Catalogue::builtIn()); }

// Bores as printed: DIN 8062 size chart; ASTM D1785 sizes in an open pipe table; EN 1329-1 and LDPE from memory.
TEST(BuiltInTables, BoresAreThoseOfTheStandards)
{
    const auto tables = Catalogue::builtIn();
    const std::map<std::string, double> printed = {
        {"pvcu-pn16-20", 17.0},    {"pvcu-pn16-25", 21.2}, {"pvcu-pn16-32", 27.2},  {"pvcu-pn16-40", 34.0},
        {"pvcu-pn16-50", 42.6},    {"pvcu-pn16-63", 53.6}, {"pvcu-pn16-110", 93.6}, {"pvcu-pn16-160", 136.2},
        {"pvcu-pn10-25", 22.0},    {"pvcu-pn10-32", 28.4}, {"pvcu-pn10-63", 57.0},  {"pvcu-pn10-160", 144.6},
        {"sch40-dn15", 15.80},     {"sch40-dn20", 20.93},  {"sch40-dn25", 26.64},   {"sch40-dn40", 40.89},
        {"sch80-dn15", 13.87},     {"sch80-dn50", 49.25},  {"sch80-dn150", 146.33}, {"waste-pvcu-50", 44.0},
        {"waste-pvcu-110", 103.6}, {"waste-pp-40", 36.4},  {"pe-sdr11-32", 26.0},   {"ldpe-bore-19", 19.0},
    };
    for (const auto& [id, bore] : printed) {
        const auto pipe = tables->pipe(id);
        ASSERT_TRUE(pipe.ok()) << id;
        EXPECT_NEAR(inMillimetres((*pipe)->bore), bore, 0.005) << id;
    }
}

// Bore = outside diameter less two walls, also where the row states its bore: inch tables round by 0.02 mm.
TEST(BuiltInTables, StatedBoresAgreeWithTheWalls)
{
    for (const catalogue::Pipe& pipe : Catalogue::builtIn()->pipes())
        EXPECT_NEAR(inMillimetres(pipe.bore), inMillimetres(pipe.outsideDiameter - 2.0 * pipe.wall), 0.02) << pipe.id;
}

// The rule of PE pressure pipe: SDR is outside diameter over wall (ISO 4065); walls are rounded up to 0.1 mm.
TEST(BuiltInTables, PolyethyleneWallsFollowTheirDiameterRatio)
{
    int seen = 0;
    for (const catalogue::Pipe& pipe : Catalogue::builtIn()->pipes()) {
        if (pipe.id.rfind("pe-sdr11-", 0) != 0)
            continue;
        ++seen;
        const double wall = inMillimetres(pipe.wall);
        EXPECT_NEAR(wall, std::max(inMillimetres(pipe.outsideDiameter) / 11.0, 2.0), 0.13) << pipe.id;
    }
    EXPECT_EQ(seen, 9);
}

TEST(BuiltInTables, HoldTheFittingsAndPumpsTheProgramNames)
{
    const auto tables = Catalogue::builtIn();
    for (const char* id : {"elbow-90", "elbow-90-sweep", "elbow-90-mitre", "elbow-45", "tee-run", "tee-branch",
                           "ball-valve", "gate-valve", "globe-valve", "swing-check", "spring-check", "foot-valve",
                           "union", "strainer", "entry-flush", "entry-reentrant", "entry-rounded", "exit", "barb"})
        EXPECT_TRUE(tables->fitting(id).ok()) << id;
    for (const char* id : {"G1000", "G2500", "G4500", "G8000", "G15000"}) {
        const auto pump = tables->pump(id);
        ASSERT_TRUE(pump.ok()) << id;
        EXPECT_EQ((*pump)->provenance.note, "invented, typical shape") << id;
        EXPECT_EQ((*pump)->provenance.basis, catalogue::Basis::Inference) << id;
        EXPECT_EQ((*pump)->points.size(), 5u) << id;
    }
    EXPECT_NEAR(inLitresPerHour((*tables->pump("G4500"))->points.back().flow), 4500.0, 1e-6);
}

TEST(BuiltInTables, ADrainagePipeSaysThatItHoldsNoPressureAndNoDrinkingWater)
{
    for (const catalogue::Pipe& pipe : Catalogue::builtIn()->pipes()) {
        EXPECT_EQ(pipe.gravityOnly, pipe.pressureClass == "none") << pipe.id;
        EXPECT_EQ(pipe.gravityOnly, pipe.drinkingWater == catalogue::DrinkingWaterMark::NotMeant) << pipe.id;
    }
}

// Gravel: EN 1991-1-1 Table A.6, 15 to 16 kN/m3 loose, grains of 2650 kg/m3: porosity = 1 - density / 2650.
TEST(BuiltInTables, GravelLiesAsDenseAsItsPorositySays)
{
    const auto gravel = Catalogue::builtIn()->medium("gravel");
    ASSERT_TRUE(gravel.ok());
    EXPECT_NEAR((*gravel)->porosity.low, 1.0 - 1500.0 / 2650.0, 0.0005);
    EXPECT_NEAR((*gravel)->porosity.high, 1.0 - 1600.0 / 2650.0, 0.0005);
    EXPECT_NEAR(inKilogramsPerCubicMetre((*gravel)->dryDensity.high), 1600.0, 1e-9);
}

// 40 psf is 1.915 kPa: IRC Table R301.5.
TEST(BuiltInTables, ADwellingFloorIsRatedLessThanTwoKilopascals)
{
    const auto load = Catalogue::builtIn()->liveLoad("dwelling-us");
    ASSERT_TRUE(load.ok());
    EXPECT_NEAR(inKilopascals((*load)->uniform), 40.0 * 0.04788, 0.01);
}
