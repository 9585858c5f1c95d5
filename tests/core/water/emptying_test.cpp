#include "core/water/emptying.hpp"

#include <gtest/gtest.h>

#include <cmath>

#include "core/base/ensure.hpp"
#include "core/water/vessel_volume.hpp"

namespace sumpwright::water
{
namespace
{

Emptying tank() { return {units::squareMetres(1.2), roundArea(units::millimetres(20.0)), 0.61, units::Flow()}; }

// A flooded bed drawn down by its siphon: sum K 6.0 through 26.6 mm, with 400 L/h still coming in.
Emptying bed(double lph)
{
    return {units::squareMetres(0.45), roundArea(units::millimetres(26.6)), 1.0 / std::sqrt(6.0),
            units::litresPerHour(lph)};
}

double secondsFor(const Emptying& emptying, double from, double to)
{
    const auto time = emptying.timeFor(units::metres(from), units::metres(to));
    EXPECT_TRUE(time.has_value()) << from << " " << to;
    return time ? units::inSeconds(*time) : -1.0;
}

// Source: Torricelli's law integrated in an independent script; tolerance 0.1 %.
TEST(Emptying, TimesThroughAHole)
{
    EXPECT_NEAR(secondsFor(tank(), 0.8, 0.2), 1264.65, 0.05);
    EXPECT_NEAR(secondsFor(tank(), 0.8, 0.0), 2529.30, 0.05);
    EXPECT_NEAR(secondsFor(bed(0.0), 0.55, 0.33), 149.738, 5e-3);
    EXPECT_NEAR(secondsFor(bed(400.0), 0.55, 0.33), 180.224, 5e-3);
}

// A textbook identity: emptied at the flow it began with, a vessel would take half the time.
TEST(Emptying, TakesTwiceAsLongAsAtItsFirstFlow)
{
    const Emptying vessel = tank();
    const double atFirst = 1.2 * 0.8 / units::inCubicMetresPerSecond(vessel.flowAt(units::metres(0.8)));
    EXPECT_NEAR(secondsFor(vessel, 0.8, 0.0) / atFirst, 2.0, 1e-12);
}

// The same fall in small steps, each at its mean flow.
TEST(Emptying, AgreesWithTheSumOfSmallSteps)
{
    for (const double lph : {0.0, 1.0, 400.0, 900.0}) {
        const Emptying vessel = bed(lph);
        double seconds = 0.0;
        constexpr int steps = 20000;
        for (int i = 0; i < steps; ++i) {
            const units::Length middle = units::metres(0.33 + 0.22 * (i + 0.5) / steps);
            seconds += 0.45 * 0.22 / steps / units::inCubicMetresPerSecond(vessel.flowAt(middle) - vessel.inflow);
        }
        EXPECT_NEAR(secondsFor(vessel, 0.55, 0.33) / seconds, 1.0, 1e-7) << lph;
    }
}

TEST(Emptying, NeverFallsBelowWhatTheInflowHolds)
{
    const Emptying vessel = bed(900.0);
    const units::Length resting = vessel.restingLevel();
    EXPECT_NEAR(units::inLitresPerHour(vessel.flowAt(resting)), 900.0, 1e-9);
    EXPECT_FALSE(vessel.timeFor(units::metres(0.55), 0.999 * resting));
    EXPECT_TRUE(vessel.timeFor(units::metres(0.55), 1.001 * resting));
    EXPECT_FALSE(vessel.timeFor(units::metres(0.55), units::Length()));
}

TEST(Emptying, TakesNoTimeWhereNothingIsToFall)
{
    EXPECT_EQ(secondsFor(tank(), 0.2, 0.2), 0.0);
    EXPECT_EQ(secondsFor(tank(), 0.1, 0.2), 0.0);
    EXPECT_EQ(secondsFor(tank(), -0.1, -0.2), 0.0);
    EXPECT_EQ(units::inLitresPerHour(tank().flowAt(units::metres(-0.1))), 0.0);
    Emptying none = tank();
    none.hole = units::Area();
    EXPECT_THROW(none.timeFor(units::metres(0.5), units::metres(0.1)), base::BrokenPromise);
}

} // namespace
} // namespace sumpwright::water
