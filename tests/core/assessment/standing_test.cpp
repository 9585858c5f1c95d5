// The level at which water stands in a vessel that passes on what it receives.
#include "core/assessment/standing.hpp"

#include "core/hydraulics/overflow.hpp"
#include "core/hydraulics/side_outlet.hpp"
#include "tests/core/assessment/assessing.hpp"

namespace
{

using namespace sumpwright;
using assessment::HeldBy;
using assessment::RunningState;

const base::Id vessel{1}, lowLip{2}, highLip{3};
constexpr units::Flow flow = units::litresPerHour(2000.0);

assessment::Basin basinWith(std::vector<assessment::BasinOutlet> outlets)
{
    assessment::Basin basin;
    basin.id = vessel;
    basin.plan = units::squareMetres(1.5);
    basin.bottom = units::elevationMetres(0.0);
    basin.rim = units::elevationMetres(1.0);
    basin.outlets = std::move(outlets);
    return basin;
}

assessment::BasinOutlet lip(base::Id id, double level, double bore)
{
    assessment::BasinOutlet outlet;
    outlet.port = id;
    outlet.lip = outlet.holds = units::elevationMetres(level);
    outlet.bore = units::metres(bore);
    return outlet;
}

// 2000 L/h over a lip of 47.3 mm: 16.098 mm by the weir alone (own case, Cd 0.62); the blend stands a little higher.
TEST(Standing, IsTheLipPlusTheHeadItsFlowNeeds)
{
    const auto through = assessment::throughflowOf(basinWith({lip(lowLip, 0.8, 0.0473)}), flow, RunningState::least);
    ASSERT_TRUE(through.standing.ok());
    EXPECT_EQ(through.standing->heldBy, HeldBy::lip);
    EXPECT_NEAR(units::inMetres(through.standing->overLip),
                units::inMetres(hydraulics::overflowLevel({units::metres(0.0473)}, flow)->predicted), 1e-15);
    EXPECT_NEAR(units::inMetres(through.standing->level), 0.8 + 0.0161, 0.004);
    EXPECT_EQ(*through.outlets[0], flow);
}

TEST(Standing, SharesTheFlowBetweenLipsByTheHeadOverEach)
{
    const auto through = assessment::throughflowOf(basinWith({lip(lowLip, 0.80, 0.0473), lip(highLip, 0.81, 0.0473)}),
                                                   flow, RunningState::least);
    ASSERT_TRUE(through.standing.ok());
    EXPECT_NEAR(units::inLitresPerHour(*through.outlets[0] + *through.outlets[1]), 2000.0, 1e-6);
    EXPECT_GT(*through.outlets[0], *through.outlets[1]);
    EXPECT_GT(*through.outlets[1], units::litresPerHour(0.0));
    const auto alone = assessment::throughflowOf(basinWith({lip(lowLip, 0.80, 0.0473)}), flow, RunningState::least);
    EXPECT_LT(through.standing->level, alone.standing->level);
}

TEST(Standing, SpillsOverTheRimWhatTheLipCannotTake)
{
    const auto through = assessment::throughflowOf(basinWith({lip(lowLip, 0.99, 0.0204)}), flow, RunningState::most);
    ASSERT_TRUE(through.standing.ok());
    EXPECT_EQ(through.standing->heldBy, HeldBy::rim);
    EXPECT_EQ(units::inMetres(through.standing->level), 1.0);
    EXPECT_LT(*through.outlets[0], flow);
}

TEST(Standing, EmptiesABedToItsDrainLevelInTheMostState)
{
    auto bell = lip(lowLip, 0.8, 0.0266);
    bell.drainLevel = units::elevationMetres(0.1);
    const auto most = assessment::throughflowOf(basinWith({bell}), flow, RunningState::most);
    EXPECT_EQ(units::inMetres(most.standing->level), 0.1);
    EXPECT_EQ(most.standing->heldBy, HeldBy::drainLevel);
    const auto least = assessment::throughflowOf(basinWith({bell}), flow, RunningState::least);
    EXPECT_GT(units::inMetres(least.standing->level), 0.8);
}

// 2000 L/h through a bore of 103.6 mm at critical depth with entry K 0.5: 35.2 mm over the invert (independent script,
// open-channel equations).
TEST(Standing, AtAnOutletThroughTheWallIsTheCriticalLevelOfItsFlow)
{
    auto side = lip(lowLip, 0.5, 0.1036);
    side.side = true;
    const auto runs = assessment::throughflowOf(basinWith({side}), flow, RunningState::least);
    EXPECT_NEAR(units::inMetres(runs.standing->level), 0.5352, 1.8e-4);
    EXPECT_EQ(runs.standing->heldBy, HeldBy::sideOutlet);
    const auto still = assessment::throughflowOf(basinWith({side}), {}, RunningState::least);
    EXPECT_EQ(units::inMetres(still.standing->level), 0.5);
}

TEST(Standing, DividesBetweenAWallOutletAndALipAtOneLevel)
{
    auto side = lip(lowLip, 0.5, 0.05);
    side.side = true;
    const auto lipOnly = lip(highLip, 0.53, 0.05);
    const auto through = assessment::throughflowOf(basinWith({side, lipOnly}), flow, RunningState::least);
    ASSERT_TRUE(through.standing.ok());
    const units::Flow bySide = *through.outlets[0], byLip = *through.outlets[1];
    EXPECT_NEAR(units::inLitresPerHour(bySide + byLip), 2000.0, 1e-9);
    EXPECT_GT(byLip, units::litresPerHour(100.0));
    const double level = units::inMetres(through.standing->level);
    EXPECT_NEAR(level, 0.5 + units::inMetres(hydraulics::sideOutletFlow(side.bore, bySide).levelOverInvert), 1e-9);
    EXPECT_NEAR(level, 0.53 + units::inMetres(hydraulics::overflowLevel({lipOnly.bore}, byLip)->predicted), 1e-9);
}

TEST(Standing, RisesWhereAScreenCoversPartOfTheLip)
{
    auto open = lip(lowLip, 0.8, 0.0473), screened = open;
    screened.openFraction = 0.5;
    const auto free = assessment::throughflowOf(basinWith({open}), flow, RunningState::least);
    const auto behind = assessment::throughflowOf(basinWith({screened}), flow, RunningState::least);
    EXPECT_NEAR(units::inMetres(behind.standing->level),
                0.8 + units::inMetres(hydraulics::overflowLevel({open.bore, 0.5}, flow)->predicted), 1e-12);
    EXPECT_GT(behind.standing->level, free.standing->level);
}

TEST(Standing, CrowdsTheWaterThroughWhatAScreenLeavesOfAWallOutlet)
{
    auto side = lip(lowLip, 0.5, 0.1036);
    side.side = true;
    side.openFraction = 0.5;
    const auto behind = assessment::throughflowOf(basinWith({side}), flow, RunningState::least);
    EXPECT_NEAR(units::inMetres(behind.standing->level),
                0.5 + units::inMetres(hydraulics::sideOutletFlow(side.bore, 2.0 * flow).levelOverInvert), 1e-12);
}

TEST(Standing, IsHeldByTheRunBehindTheLipWhereThatNeedsMore)
{
    const auto needs = [](const assessment::BasinOutlet&, units::Flow) { return units::elevationMetres(0.9); };
    const auto through =
        assessment::throughflowOf(basinWith({lip(lowLip, 0.8, 0.0473)}), flow, RunningState::least, needs);
    EXPECT_EQ(units::inMetres(through.standing->level), 0.9);
    EXPECT_EQ(*through.outlets[0], flow);
}

TEST(Standing, NamesWhatIsMissing)
{
    const auto nowhere = assessment::throughflowOf(basinWith({}), flow, RunningState::least);
    EXPECT_EQ(nowhere.standing.reason().id, "no-way-out");
    EXPECT_EQ(nowhere.standing.status(), assessment::Status::notSolved);
    const auto unknown = assessment::throughflowOf(basinWith({}), {}, RunningState::least);
    EXPECT_EQ(unknown.standing.reason().id, "level-unknown");
    const auto dry = assessment::throughflowOf(basinWith({lip(lowLip, 0.8, 0.05)}), -flow, RunningState::least);
    EXPECT_EQ(dry.standing.reason().id, "runs-dry");
}

TEST(Standing, CountsALipOfUnknownBoreWithoutHead)
{
    const auto through = assessment::throughflowOf(basinWith({lip(lowLip, 0.8, 0.0)}), flow, RunningState::least);
    EXPECT_EQ(units::inMetres(through.standing->level), 0.8);
    EXPECT_EQ(*through.outlets[0], flow);
}

} // namespace
