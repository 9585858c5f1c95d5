// Every level of the plan by its reference: found, placed and set.
#include <gtest/gtest.h>

#include "core/plan/edits/level.hpp"
#include "tests/support/edited_plan.hpp"

using namespace sumpwright;
using namespace sumpwright::plan;
using test::at;
using test::vertex;

namespace
{

units::Elevation metres(double level) { return units::elevationMetres(level); }

struct Levels : test::EditedPlan {
    base::Id tank = vessel(VesselKind::fishTank, 0, 0);
    base::Id sump = vessel(VesselKind::sump, 4, 0);
    base::Id pump = apply(placePump(sump, at(4, 0), "G4500"));
    base::Id open = run(Nowhere{}, Nowhere{}, {vertex(0, 3, 1), vertex(2, 3, 1), vertex(2, 5, 0.5)});

    double of(const LevelRef& level) const { return units::inMetres(levelOf(plan, level).value()); }
    LevelRef of(base::Id element, LevelKind kind) const
    {
        for (const LevelRef& level : levelsOf(plan, element))
            if (level.kind == kind)
                return level;
        ADD_FAILURE() << "no such level";
        return {};
    }
};

} // namespace

TEST(Level, OfAVesselAreListedFromBelow)
{
    Levels drawn;
    drawn.apply(setVentLevel({{drawn.tank, drawn.of(drawn.tank, LevelKind::inlet).port}}, metres(1.15)));
    for (const base::Id id : {drawn.tank, drawn.sump}) {
        const auto levels = levelsOf(drawn.plan, id);
        EXPECT_EQ(levels.front().kind, LevelKind::base);
        for (std::size_t i = 1; i < levels.size(); ++i)
            EXPECT_LE(drawn.of(levels[i - 1]), drawn.of(levels[i]));
    }
    EXPECT_NEAR(drawn.of(drawn.of(drawn.tank, LevelKind::vent)), 1.15, 1e-12);
    EXPECT_NEAR(drawn.of(drawn.of(drawn.sump, LevelKind::running)), 0.3, 1e-12);
    EXPECT_EQ(levelsOf(drawn.plan, base::Id{999}).size(), 0U);
}

TEST(Level, EachIsSetToWhatWasAskedFor)
{
    Levels drawn;
    for (const base::Id id : {drawn.tank, drawn.sump, drawn.pump, drawn.open})
        for (const LevelRef& level : levelsOf(drawn.plan, id)) {
            const double wanted = drawn.of(level) + 0.013;
            const auto outcome = setLevel(level, metres(wanted)).apply(drawn.plan);
            ASSERT_TRUE(outcome) << base::oneLine(outcome.refusal());
            EXPECT_NEAR(units::inMetres(levelOf(*outcome, level).value()), wanted, 1e-9)
                << static_cast<int>(level.kind);
        }
}

TEST(Level, TheBaseTakesTheWholeVesselAlong)
{
    Levels drawn;
    const LevelRef base = drawn.of(drawn.sump, LevelKind::base), rim = drawn.of(drawn.sump, LevelKind::rim);
    const LevelRef outlet = drawn.of(drawn.pump, LevelKind::pumpOutlet);
    const double rimWas = drawn.of(rim), outletWas = drawn.of(outlet), baseWas = drawn.of(base);
    drawn.apply(setLevel(base, metres(baseWas - 0.2)));
    EXPECT_NEAR(drawn.of(rim), rimWas - 0.2, 1e-9);
    EXPECT_NEAR(drawn.of(outlet), outletWas - 0.2, 1e-9);
}

TEST(Level, TheRimLeavesTheBaseWhereItIs)
{
    Levels drawn;
    const LevelRef base = drawn.of(drawn.tank, LevelKind::base), rim = drawn.of(drawn.tank, LevelKind::rim);
    const double was = drawn.of(base);
    drawn.apply(setLevel(rim, metres(was + 1.25)));
    EXPECT_NEAR(drawn.of(base), was, 1e-12);
    EXPECT_NEAR(units::inMetres(drawn.plan.vessels.find(drawn.tank)->wallHeight), 1.25, 1e-9);
}

TEST(Level, AnAttachedRunFollowsItsLip)
{
    Levels drawn;
    const base::Id drain = drawn.run(drawn.lip(drawn.tank), drawn.inlet(drawn.sump),
                                     {vertex(0.56, 0, 0.78), vertex(3.6, 0, 0.7)}, Service::gravity);
    const LevelRef lip = drawn.of(drawn.tank, LevelKind::lip);
    drawn.apply(setLevel(lip, metres(drawn.of(lip) - 0.05)));
    EXPECT_NEAR(units::inMetres(drawn.runOf(drain).vertices.front().level), drawn.of(lip), 1e-9);
    EXPECT_TRUE(isHeld(drawn.runOf(drain), 0));
    for (const LevelRef& level : levelsOf(drawn.plan, drain))
        EXPECT_FALSE(isHeld(drawn.runOf(drain), level.vertex));
}

TEST(Level, OutsideItsVesselIsRefused)
{
    Levels drawn;
    const LevelRef lip = drawn.of(drawn.tank, LevelKind::lip), rim = drawn.of(drawn.tank, LevelKind::rim);
    EXPECT_EQ(drawn.refusalOf(setLevel(lip, metres(drawn.of(rim) + 0.1))), "plan.lip-above-rim");
    EXPECT_FALSE(drawn.refusalOf(setLevel(rim, metres(drawn.of(lip) - 0.1))).empty());
    EXPECT_FALSE(drawn.refusalOf(setLevel(lip, metres(1e6))).empty());
}

TEST(Level, ThatIsNotThereIsRefusedAndHasNoPlace)
{
    Levels drawn;
    for (const LevelRef& level :
         {LevelRef{LevelKind::lip, drawn.tank, base::Id{999}}, LevelRef{LevelKind::drain, drawn.tank},
          LevelRef{LevelKind::running, drawn.tank}, LevelRef{LevelKind::vertex, drawn.open, {}, 17},
          LevelRef{LevelKind::pumpOutlet, drawn.tank}}) {
        EXPECT_FALSE(drawn.refusalOf(setLevel(level, metres(0.5))).empty()) << static_cast<int>(level.kind);
        EXPECT_FALSE(placeOf(drawn.plan, level)) << static_cast<int>(level.kind);
    }
}

TEST(Level, LiesWhereItsElementLiesInPlan)
{
    Levels drawn;
    EXPECT_EQ(placeOf(drawn.plan, drawn.of(drawn.tank, LevelKind::rim)), drawn.plan.vessels.find(drawn.tank)->centre);
    EXPECT_EQ(placeOf(drawn.plan, {LevelKind::vertex, drawn.open, {}, 2}), at(2, 5));
    EXPECT_EQ(placeOf(drawn.plan, drawn.of(drawn.pump, LevelKind::pumpOutlet)), at(4, 0));
}
