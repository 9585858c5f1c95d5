#include <gtest/gtest.h>

#include "tests/support/edited_plan.hpp"

using namespace sumpwright;
using namespace sumpwright::plan;
using test::at;

TEST(Place, GivesEveryKindASoundVesselWithItsOwnTag)
{
    test::EditedPlan drawn;
    const std::pair<VesselKind, const char*> kinds[] = {{VesselKind::fishTank, "T1"},
                                                        {VesselKind::sump, "S1"},
                                                        {VesselKind::mediaBed, "B1"},
                                                        {VesselKind::raftBed, "B2"},
                                                        {VesselKind::settler, "ST1"}};
    for (const auto& [kind, tag] : kinds) {
        const base::Id id = drawn.vessel(kind, 1, 1);
        EXPECT_EQ(tagOf(drawn.plan, id), tag);
        EXPECT_FALSE(drawn.vesselOf(id).ports.empty());
        EXPECT_EQ(drawn.vesselOf(id).runningLevel.has_value(), kind == VesselKind::sump);
        EXPECT_EQ(drawn.vesselOf(id).medium.has_value(), kind == VesselKind::mediaBed);
    }
}

TEST(Place, TakesTheLowestFreeTag)
{
    test::EditedPlan drawn;
    drawn.vessel(VesselKind::fishTank, 0, 0);
    const base::Id second = drawn.vessel(VesselKind::fishTank, 2, 0);
    drawn.vessel(VesselKind::fishTank, 4, 0);
    drawn.apply(deleteElements({second}));
    EXPECT_EQ(tagOf(drawn.plan, drawn.vessel(VesselKind::fishTank, 6, 0)), "T2");
    EXPECT_EQ(tagOf(drawn.plan, drawn.vessel(VesselKind::fishTank, 8, 0)), "T4");
}

TEST(Place, StandsVesselsOnTheFloorAndBedsOnLegsAboveIt)
{
    test::EditedPlan drawn;
    drawn.apply(setFloorLevel(units::elevationMetres(0.2)));
    EXPECT_NEAR(units::inMetres(drawn.vesselOf(drawn.vessel(VesselKind::sump, 1, 1)).baseLevel), 0.2, 1e-12);
    const Vessel& bed = drawn.vesselOf(drawn.vessel(VesselKind::mediaBed, 1, 1));
    EXPECT_NEAR(units::inMetres(bed.baseLevel), 0.8, 1e-12);
    EXPECT_EQ(bed.stand->kind, StandKind::legs);
}

// With gravel or clay of at most 55 % voids (common practice, no source) and 100 mm left over the bottom for a pump.
TEST(Place, AUsualSumpGivesAndTakesTheTideOfTwoUsualBeds)
{
    const Plan empty;
    const auto usual = [&empty](VesselKind kind) {
        VesselWish wish;
        wish.kind = kind;
        return usualVessel(empty, wish);
    };
    const Vessel bed = usual(VesselKind::mediaBed), sump = usual(VesselKind::sump);
    const Port* lip = mainLip(bed);
    ASSERT_TRUE(lip && lip->drainLevel && sump.runningLevel);
    const double tide =
        2.0 * 0.55 * units::inSquareMetres(insideArea(bed)) * units::inMetres(lip->level - *lip->drainLevel);
    const double area = units::inSquareMetres(insideArea(sump));
    EXPECT_GT(area * (units::inMetres(*sump.runningLevel - insideBottom(sump)) - 0.1), tide);
    EXPECT_GT(area * units::inMetres(rimLevel(sump) - *sump.runningLevel), tide);
}

TEST(Place, TakesWishedSizesAndKeepsPortsInside)
{
    test::EditedPlan drawn;
    VesselWish wish;
    wish.kind = VesselKind::mediaBed;
    wish.centre = at(1, 1);
    wish.shape = RectangleShape{units::metres(0.6), units::metres(0.4)};
    wish.wallHeight = units::metres(0.25);
    wish.baseLevel = units::elevationMetres(0.5);
    const Vessel& bed = drawn.vesselOf(drawn.apply(placeVessel(wish)));
    EXPECT_NEAR(units::inMetres(rimLevel(bed)), 0.75, 1e-12);
    EXPECT_TRUE(check(drawn.plan).empty());
}

TEST(Place, PutsAPumpWhereItWasClickedInATurnedVessel)
{
    test::EditedPlan drawn;
    const base::Id sump = drawn.vessel(VesselKind::sump, 2, 2);
    drawn.apply(setTurn({sump}, units::degrees(30)));
    const base::Id pump = drawn.apply(placePump(sump, at(2.2, 2.1), "G4500"));
    EXPECT_NEAR(units::inMetres(distanceBetween(anchorOf(drawn.plan, pump), at(2.2, 2.1))), 0.0, 1e-8);
    EXPECT_EQ(drawn.refusalOf(placePump(sump, at(5, 5), "G4500")), "plan.pump-outside");
    EXPECT_EQ(drawn.refusalOf(placePump(base::Id{77}, at(5, 5), "G4500")), "plan.no-such-element");
}

TEST(Place, GivesDoorsAndPowerPointsTheirHeights)
{
    test::EditedPlan drawn;
    const base::Id door = drawn.apply(placeFixture(FixtureKind::door, at(0, 0), at(0.9, 0)));
    const base::Id power = drawn.apply(placeFixture(FixtureKind::powerPoint, at(1, 0), at(7, 7)));
    EXPECT_NEAR(units::inMetres(drawn.plan.fixtures.find(door)->height), 2.0, 1e-12);
    EXPECT_EQ(drawn.plan.fixtures.find(power)->from, drawn.plan.fixtures.find(power)->to);
    EXPECT_EQ(drawn.refusalOf(placeFixture(FixtureKind::wall, at(1, 1), at(1, 1))), "plan.no-length");
}

TEST(Place, RefusesAnEmptyNoteAndADimensionOfNoLength)
{
    const test::EditedPlan drawn;
    EXPECT_EQ(drawn.refusalOf(placeNote(at(1, 1), "")), "plan.text-missing");
    EXPECT_EQ(drawn.refusalOf(placeDimension(at(1, 1), at(1, 1), units::metres(0))), "plan.no-length");
}

TEST(Place, RefusesPlacesThatAreNoNumbers)
{
    const test::EditedPlan drawn;
    VesselWish wish;
    wish.centre = at(std::nan(""), 0);
    EXPECT_EQ(drawn.refusalOf(placeVessel(wish)), "plan.not-finite");
    wish.centre = at(1e300, 0);
    EXPECT_EQ(drawn.refusalOf(placeVessel(wish)), "plan.out-of-range");
}
