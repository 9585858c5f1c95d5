#include <gtest/gtest.h>

#include "tests/support/edited_plan.hpp"

using namespace sumpwright;
using namespace sumpwright::plan;
using test::at;
using test::vertex;

namespace
{

units::Slope slope(double value) { return units::metresPerMetre(value); }

struct Drain : test::EditedPlan {
    base::Id tank = vessel(VesselKind::fishTank, 0, 0);
    base::Id sump = vessel(VesselKind::sump, 8, 0);
    double level(base::Id id, std::size_t i) const { return units::inMetres(runOf(id).vertices[i].level); }
};

} // namespace

TEST(Fall, GoesDownByPlanLengthFromTheKeptEnd)
{
    test::EditedPlan drawn;
    const base::Id id =
        drawn.run(Nowhere{}, Nowhere{}, {vertex(0, 0, 1), vertex(3, 0, 1), vertex(3, 4, 1)}, Service::gravity);
    drawn.apply(setFall({id}, slope(1.0 / 50), RunSide::from));
    EXPECT_NEAR(units::inMetres(drawn.runOf(id).vertices[1].level), 0.94, 1e-9);
    EXPECT_NEAR(units::inMetres(drawn.runOf(id).vertices[2].level), 0.86, 1e-9);
    drawn.apply(setFall({id}, slope(0.01), RunSide::to));
    EXPECT_NEAR(units::inMetres(drawn.runOf(id).vertices[2].level), 0.86, 1e-9);
    EXPECT_NEAR(units::inMetres(drawn.runOf(id).vertices[0].level), 0.93, 1e-9);
}

TEST(Fall, KeepsTheDropOfVerticalLegs)
{
    test::EditedPlan drawn;
    const base::Id id =
        drawn.run(Nowhere{}, Nowhere{}, {vertex(0, 0, 1), vertex(0, 0, 0.4), vertex(5, 0, 0.4)}, Service::gravity);
    drawn.apply(setFall({id}, slope(0.02), RunSide::from));
    EXPECT_NEAR(units::inMetres(drawn.runOf(id).vertices[1].level), 0.4, 1e-9);
    EXPECT_NEAR(units::inMetres(drawn.runOf(id).vertices[2].level), 0.3, 1e-9);
}

TEST(Fall, IsTakenUpByTheLastDropBeforeAHeldEnd)
{
    Drain drawn;
    const base::Id id = drawn.run(drawn.lip(drawn.tank), drawn.inlet(drawn.sump),
                                  {vertex(0.56, 0, 0.78), vertex(7.52, 0, 0.78)}, Service::gravity);
    ASSERT_EQ(drawn.runOf(id).vertices.size(), 4u); // drop, level, drop
    const double inlet = drawn.level(id, 3);
    drawn.apply(setFall({id}, slope(0.01), RunSide::from));
    EXPECT_NEAR(drawn.level(id, 3), inlet, 1e-9);
    EXPECT_NEAR(drawn.level(id, 1) - drawn.level(id, 2), 0.0696, 1e-9);
    EXPECT_EQ(drawn.refusalOf(setFall({id}, slope(0.03), RunSide::from)), "plan.climbs");
}

TEST(Fall, MakesADropWhereThereIsNone)
{
    Drain drawn;
    drawn.apply(setPortLevel({{drawn.sump, drawn.portOf(drawn.sump, PortKind::inlet)}}, units::elevationMetres(0.4)));
    const base::Id id =
        drawn.run(Nowhere{}, drawn.inlet(drawn.sump), {vertex(0, 0, 0.4), vertex(7.52, 0, 0.4)}, Service::gravity);
    ASSERT_EQ(drawn.runOf(id).vertices.size(), 2u);
    drawn.apply(setVertexLevel(id, 0, units::elevationMetres(0.6)));
    drawn.apply(setFall({id}, slope(0.01), RunSide::from));
    ASSERT_EQ(drawn.runOf(id).vertices.size(), 3u);
    EXPECT_NEAR(drawn.level(id, 1), 0.6 - 0.0752, 1e-9);
    EXPECT_NEAR(drawn.level(id, 2), 0.4, 1e-12);
    EXPECT_EQ(drawn.runOf(id).vertices[1].at, drawn.runOf(id).vertices[2].at);
}

TEST(Fall, IsForGravityRunsAndNeverRises)
{
    test::SmallSystem system;
    EXPECT_EQ(system.refusalOf(setFall({system.main}, slope(0.01), RunSide::from)), "plan.not-gravity");
    EXPECT_EQ(system.refusalOf(setFall({system.drainB}, slope(-0.01), RunSide::from)), "plan.out-of-range");
    EXPECT_EQ(system.refusalOf(setFall({system.drainB}, slope(std::nan("")), RunSide::from)), "plan.out-of-range");
}

TEST(Invert, MovesAnOpenRunByItsUnderside)
{
    test::EditedPlan drawn;
    const base::Id id = drawn.run(Nowhere{}, Nowhere{}, {vertex(0, 0, 1), vertex(3, 0, 0.95)}, Service::gravity);
    drawn.apply(setInvert(id, RunSide::from, units::elevationMetres(0.5), units::millimetres(50)));
    EXPECT_NEAR(units::inMetres(drawn.runOf(id).vertices[0].level), 0.525, 1e-12);
    EXPECT_NEAR(units::inMetres(drawn.runOf(id).vertices[1].level), 0.475, 1e-12);
    const test::SmallSystem system;
    EXPECT_EQ(system.refusalOf(setInvert(system.drainA, RunSide::from, {}, units::millimetres(50))), "plan.end-held");
}
