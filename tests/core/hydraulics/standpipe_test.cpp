#include "core/hydraulics/standpipe.hpp"

#include <gtest/gtest.h>

#include "core/base/ensure.hpp"

namespace sumpwright::hydraulics
{
namespace
{

// Source: EN 12056-3, capacities of vertical rainwater pipes in L/s at filling degrees 0.33 and 0.20, from memory;
// tolerance 1 %.
TEST(Standpipe, CapacitiesOfTheStandard)
{
    constexpr double rows[][3] = {{50, 1.69, 0.73}, {70, 4.14, 1.80},   {75, 4.97, 2.16},
                                  {80, 5.91, 2.56}, {100, 10.71, 4.65}, {150, 31.6, 13.7}};
    for (const auto& row : rows) {
        const units::Length bore = units::millimetres(row[0]);
        EXPECT_NEAR(1e3 * units::inCubicMetresPerSecond(standpipeCapacity(bore)) / row[1], 1.0, 0.01) << row[0];
        EXPECT_NEAR(1e3 * units::inCubicMetresPerSecond(standpipeCapacity(bore, 0.20)) / row[2], 1.0, 0.01) << row[0];
    }
}

TEST(Standpipe, CarriesMoreWithBoreAndFilling)
{
    for (double bore = 16.0; bore < 200.0; bore += 7.0)
        for (double filling = 0.05; filling < 0.31; filling += 0.05) {
            const units::Flow flow = standpipeCapacity(units::millimetres(bore), filling);
            EXPECT_GT(standpipeCapacity(units::millimetres(bore + 1.0), filling), flow);
            EXPECT_GT(standpipeCapacity(units::millimetres(bore), filling + 0.01), flow);
        }
}

TEST(Standpipe, IsNoPipeRunningFull)
{
    EXPECT_THROW(standpipeCapacity(units::millimetres(50.0), 0.5), base::BrokenPromise);
    EXPECT_THROW(standpipeCapacity(units::Length(), 0.2), base::BrokenPromise);
}

} // namespace
} // namespace sumpwright::hydraulics
