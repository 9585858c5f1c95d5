// Friction over its whole range: continuous, rising, odd, additive; and against an independent law.
#include <gtest/gtest.h>

#include <cmath>

#include "core/hydraulics/friction.hpp"
#include "tests/properties/hydraulics_oracle.hpp"

namespace sumpwright::hydraulics
{
namespace
{

constexpr double roughnesses[] = {0.0, 1e-6, 1e-5, 1e-4, 1e-3, 5e-3, 0.02, 0.05};
const units::KinematicViscosity water = units::squareMetresPerSecond(1.0034e-6);

TEST(FrictionProperty, AgreesWithAnIndependentLaw)
{
    for (double e : roughnesses)
        for (double re = 1.0; re < 1e7; re *= 1.013)
            EXPECT_NEAR(frictionFactor(re, e) / oracle::frictionFactor(re, e), 1.0, 1e-11) << re << " " << e;
}

// The loss goes with f Re^2; its slope in logarithms lies between laminar (1) and the steepest transition (4.2).
TEST(FrictionProperty, LossRisesStrictlyAndWithoutJumps)
{
    for (double e : roughnesses) {
        const double step = 1.0005;
        double before = std::log(frictionFactor(1.0, e));
        for (double re = step; re < 1e7; re *= step) {
            const double now = std::log(frictionFactor(re, e)) + 2.0 * std::log(re);
            const double slope = (now - before) / std::log(step);
            EXPECT_GT(slope, 1.0 - 1e-6) << re << " " << e;
            EXPECT_LT(slope, 4.3) << re << " " << e;
            before = now;
        }
    }
}

TEST(FrictionProperty, RougherIsNeverSmootherPastTheTransition)
{
    for (double re : {3000.0, 4000.0, 1e4, 1e5, 1e7})
        for (std::size_t i = 1; i < std::size(roughnesses); ++i)
            EXPECT_GT(frictionFactor(re, roughnesses[i]), frictionFactor(re, roughnesses[i - 1])) << re;
}

TEST(FrictionProperty, LossIsOddInFlowAndAddsUpAlongThePipe)
{
    for (double bore : {4.0, 17.0, 27.2, 103.6})
        for (double lph = 0.5; lph < 1e5; lph *= 1.7) {
            const auto loss = [&](double flow, double length) {
                const StraightPipe pipe{units::millimetres(bore), units::metres(length), units::millimetres(0.0015)};
                return units::inMetresHead(frictionLoss(pipe, units::litresPerHour(flow), water));
            };
            EXPECT_EQ(loss(-lph, 3.0), -loss(lph, 3.0));
            EXPECT_NEAR((loss(lph, 1.1) + loss(lph, 1.9)) / loss(lph, 3.0), 1.0, 1e-12);
        }
}

} // namespace
} // namespace sumpwright::hydraulics
