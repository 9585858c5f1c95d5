#include <gtest/gtest.h>

#include <set>

#include "core/plan/edits/intent.hpp"
#include "tests/support/edited_plan.hpp"

using namespace sumpwright;
using namespace sumpwright::plan;
using test::at;

TEST(Outline, IsKeptCounterClockwiseAndUncrossed)
{
    test::EditedPlan drawn;
    drawn.apply(setOutline({at(0, 0), at(0, 3), at(4, 3), at(4, 0), at(0, 0)}));
    ASSERT_EQ(drawn.plan.floor->outline.size(), 4u);
    EXPECT_EQ(drawn.plan.floor->outline[1], at(4, 3)); // turned round
    EXPECT_EQ(drawn.refusalOf(setOutline({at(0, 0), at(4, 3), at(4, 0), at(0, 3)})), "plan.outline-crosses");
    EXPECT_EQ(drawn.refusalOf(setOutline({at(0, 0), at(4, 3)})), "plan.corner-count");
    EXPECT_EQ(drawn.refusalOf(setOutline({at(0, 0), at(4, 0), at(8, 0)})), "plan.outline-flat");
    EXPECT_EQ(drawn.refusalOf(setOutline({at(0, 0), at(4, 0), at(std::nan(""), 2)})), "plan.not-finite");
    drawn.apply(setOutline({}));
    EXPECT_TRUE(drawn.plan.floor->outline.empty());
}

TEST(Floor, TakesFallDrainHeightAndThickness)
{
    test::EditedPlan drawn;
    drawn.apply(setFloorFall(units::metresPerMetre(0.01), units::degrees(-90)));
    drawn.apply(setDrainPoint(at(1, 1)));
    drawn.apply(setClearHeight(units::metres(2.3)));
    drawn.apply(setFloorThickness(units::metres(0.12)));
    EXPECT_EQ(drawn.refusalOf(setFloorFall(units::metresPerMetre(-0.01), {})), "plan.out-of-range");
    EXPECT_EQ(drawn.refusalOf(setClearHeight(units::metres(0))), "plan.out-of-range");
    EXPECT_EQ(drawn.refusalOf(setFloorThickness(units::metres(11))), "plan.out-of-range");
    drawn.apply(setDrainPoint(std::nullopt));
}

TEST(Site, KeepsTheColdestWaterBelowTheWarmest)
{
    test::EditedPlan drawn;
    drawn.apply(setColdestWater(units::celsius(6)));
    drawn.apply(setWarmestWater(units::celsius(27)));
    EXPECT_EQ(drawn.plan.site->coldestWater, units::celsius(6));
    EXPECT_EQ(drawn.plan.site->warmestWater, units::celsius(27));
    EXPECT_EQ(drawn.refusalOf(setColdestWater(units::celsius(28))), "plan.water-range");
    EXPECT_EQ(drawn.refusalOf(setWarmestWater(units::celsius(5))), "plan.water-range");
    drawn.apply(setWarmestWater(std::nullopt));
    drawn.apply(setColdestWater(units::celsius(28)));
}

TEST(Site, RefusesWhatNoSiteHas)
{
    test::EditedPlan drawn;
    drawn.apply(setSiteName("Shed"));
    drawn.apply(setClient("A client"));
    drawn.apply(setDesigner("A designer"));
    drawn.apply(setFloorUse("garage"));
    drawn.apply(setPipeCondition(PipeCondition::fouled));
    drawn.apply(setNorth(units::degrees(80)));
    drawn.apply(setCurrency("AUD"));
    EXPECT_EQ(drawn.refusalOf(setAltitude(units::metres(9000))), "plan.out-of-range");
    EXPECT_EQ(drawn.refusalOf(setDesignWater(units::celsius(41))), "plan.out-of-range");
    EXPECT_EQ(drawn.refusalOf(setColdestWater(units::celsius(-1))), "plan.out-of-range");
    EXPECT_EQ(drawn.refusalOf(setWarmestWater(units::celsius(41))), "plan.out-of-range");
    EXPECT_EQ(drawn.refusalOf(setDesignWater(units::celsius(std::nan("")))), "plan.not-finite");
    EXPECT_EQ(drawn.refusalOf(setDesignAir(units::celsius(-61))), "plan.out-of-range");
    EXPECT_EQ(drawn.refusalOf(setCurrency("Euro")), "plan.currency");
    EXPECT_EQ(drawn.refusalOf(setPowerPrice(units::perKilowattHour(-0.1))), "plan.out-of-range");
    EXPECT_EQ(drawn.refusalOf(setSiteName("two\nlines")), "plan.bad-characters");
    EXPECT_EQ(drawn.refusalOf(setSiteName(std::string(20'000, 'x'))), "plan.text-too-long");
    Clearances narrow;
    narrow.aisle = units::metres(-0.1);
    EXPECT_EQ(drawn.refusalOf(setClearances(narrow)), "plan.out-of-range");
}

TEST(Fixture, ChangesEndsKindAndSizes)
{
    test::SmallSystem system;
    system.apply(setFixtureEnds(system.wall, at(0, 8), at(6, 8)));
    system.apply(setFixtureKind({system.wall}, FixtureKind::post));
    EXPECT_EQ(system.plan.fixtures.find(system.wall)->to, at(0, 8));
    system.apply(setFixtureKind({system.wall}, FixtureKind::door));
    system.apply(setFixtureSize({system.wall}, units::metres(0.15)));
    system.apply(setFixtureHeight({system.wall}, units::metres(2.1)));
    system.apply(setFixtureLevel({system.wall}, units::elevationMetres(0.05)));
    EXPECT_EQ(system.refusalOf(setFixtureSize({system.wall}, units::metres(0))), "plan.out-of-range");
    EXPECT_EQ(system.refusalOf(setFixtureEnds(system.wall, at(1, 1), at(1, 1))), "plan.no-length");
}

TEST(Annotation, ChangesTextEndsAndOffset)
{
    test::SmallSystem system;
    system.apply(setNoteText(system.note, "door swings out"));
    system.apply(setDimensionEnds(system.line, at(0, 0), at(0, 9)));
    system.apply(setDimensionOffset({system.line}, units::metres(0.5)));
    EXPECT_EQ(system.refusalOf(setNoteText(system.note, "")), "plan.text-missing");
    EXPECT_EQ(system.refusalOf(setDimensionEnds(system.line, at(1, 1), at(1, 1))), "plan.no-length");
}

TEST(Underlay, IsScaledByTwoClickedPlaces)
{
    test::SmallSystem system;
    const units::Length before = system.plan.underlay->pixelSize;
    system.apply(moveUnderlay(at(1, 1)));
    system.apply(scaleUnderlay(at(2, 1), at(4, 1), units::metres(3)));
    EXPECT_NEAR(units::inMetres(system.plan.underlay->pixelSize / 1.5), units::inMetres(before), 1e-15);
    EXPECT_EQ(system.plan.underlay->corner, at(0.5, 1)); // the first place stays
    EXPECT_EQ(system.refusalOf(scaleUnderlay(at(2, 1), at(2, 1), units::metres(3))), "plan.no-length");
    EXPECT_EQ(system.refusalOf(scaleUnderlay(at(2, 1), at(3, 1), units::metres(0))), "plan.out-of-range");
    EXPECT_EQ(system.refusalOf(setUnderlayOpacity(0)), "plan.out-of-range");
    system.apply(turnUnderlay(units::degrees(5)));
    system.apply(removeUnderlay());
    EXPECT_EQ(system.refusalOf(turnUnderlay(units::degrees(5))), "plan.no-underlay");
}

TEST(Underlay, StaysBesideThePlan)
{
    const test::EditedPlan drawn;
    for (const char* name : {"/etc/passwd", "../photo.png", "a/../../b.png", "a\\b.png", ".."}) {
        Underlay underlay;
        underlay.fileName = name;
        EXPECT_EQ(drawn.refusalOf(setUnderlay(underlay)), "plan.underlay-elsewhere") << name;
    }
    Underlay underlay;
    underlay.fileName = "pictures/shed..final.png";
    EXPECT_EQ(drawn.refusalOf(setUnderlay(underlay)), "");
}

TEST(Rename, RefusesATagInUseAndTakesPortsPerVessel)
{
    test::SmallSystem system;
    system.apply(renameTag(system.bedA, "North bed"));
    EXPECT_EQ(system.refusalOf(renameTag(system.bedB, "North bed")), "plan.tag-clash");
    EXPECT_EQ(system.refusalOf(renameTag(system.bedB, "V1")), "plan.tag-clash");
    EXPECT_EQ(system.refusalOf(renameTag(system.bedB, "")), "plan.text-missing");
    EXPECT_EQ(system.refusalOf(renameTag(system.note, "N")), "plan.no-such-element");
    system.apply(renameTag(system.valve, "Bed valve"));
    EXPECT_EQ(system.refusalOf(renameTag(system.valve, "P1")), "plan.tag-clash");
    const base::Id inlet = system.portOf(system.sump, PortKind::inlet);
    system.apply(renameTag(inlet, "Return"));
    EXPECT_EQ(system.refusalOf(renameTag(inlet, "I2")), "plan.tag-clash");
    system.apply(renameTag(system.bedA, "North bed")); // its own tag again
}

TEST(Intents, AreNamedOnceEach)
{
    const std::set<std::string_view> unique(allIntents.begin(), allIntents.end());
    EXPECT_EQ(unique.size(), allIntents.size());
}
