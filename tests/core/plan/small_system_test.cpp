#include <gtest/gtest.h>

#include "tests/support/edited_plan.hpp"

using namespace sumpwright;
using namespace sumpwright::plan;

TEST(SmallSystem, IsDrawnByEditsAlone)
{
    const test::SmallSystem system;
    EXPECT_EQ(system.plan.vessels.size(), 4u);
    EXPECT_EQ(system.plan.tees.size(), 2u);
    EXPECT_EQ(system.plan.runs.size(), 8u);
    EXPECT_EQ(tagOf(system.plan, system.main), "R1");
    EXPECT_EQ(tagOf(system.plan, system.tank), "T1");
    EXPECT_EQ(tagOf(system.plan, system.bedB), "B2");
    EXPECT_EQ(tagOf(system.plan, system.wall), "W1");
}
