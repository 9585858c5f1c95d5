#include <gtest/gtest.h>

#include <fstream>

#include "core/storage/kept_parts.hpp"
#include "tests/support/scratch_folder.hpp"

using namespace sumpwright;
using namespace sumpwright::storage;

namespace
{

plan::OwnParts parts(double k = 0.3)
{
    plan::OwnParts all;
    plan::OwnFitting joint;
    joint.id = "own-joint";
    joint.name = "Joint";
    joint.k = k;
    all.fittings = {joint};
    plan::OwnPump pump;
    pump.id = "own-pump";
    pump.name = "Pump";
    pump.curve = {{units::Flow(), units::metresHead(2)}, {units::litresPerHour(2000), units::Head()}};
    pump.twoNumbers = true;
    all.pumps = {pump};
    return all;
}

} // namespace

TEST(KeptParts, ComeBackFromTheirFileAndNoneIsNoFault)
{
    const test::ScratchFolder folder;
    const auto path = folder / "deep/er/parts.json";
    const auto none = readKeptParts(path);
    ASSERT_TRUE(none.ok());
    EXPECT_TRUE(none->empty());
    ASSERT_FALSE(writeKeptParts(path, parts()));
    const auto back = readKeptParts(path);
    ASSERT_TRUE(back.ok()) << base::oneLine(back.refusal());
    EXPECT_TRUE(*back == parts());
}

TEST(KeptParts, OfABadFileAreRefusedWithTheirLine)
{
    const std::string text = keptPartsText(parts());
    const auto spoilt = [&text](const std::string& what, const std::string& by) {
        std::string changed = text;
        changed.replace(changed.find(what), what.size(), by);
        const auto read = keptPartsFrom(changed);
        return read.ok() ? std::string() : read.refusal().id;
    };
    EXPECT_EQ(spoilt("sumpwright-parts", "sumpwright-plan"), "storage.other-format");
    EXPECT_EQ(spoilt("\"version\": 1", "\"version\": 9"), "storage.newer-version");
    EXPECT_EQ(spoilt("0.3", "-3"), "plan.out-of-range");
    EXPECT_EQ(spoilt("\"own-joint\"", "\"elbow-90\""), "plan.own-id");
    EXPECT_EQ(keptPartsFrom("{").refusal().id, "storage.broken-json");
}

TEST(KeptParts, CannotBeWrittenWhereThereIsNoFolder) { EXPECT_TRUE(writeKeptParts("/proc/none/parts.json", parts())); }

TEST(KeptParts, AreMergedByKindAndName)
{
    plan::OwnParts mine = parts(0.9);
    mine.fittings[0].id = "own-another-id";
    plan::OwnParts merged = mergedParts(mine, parts(0.3));
    ASSERT_EQ(merged.fittings.size(), 1u);
    EXPECT_EQ(merged.fittings[0].id, "own-another-id");
    EXPECT_EQ(merged.fittings[0].k, 0.3);
    plan::OwnParts other = parts();
    other.fittings[0].name = "Other joint";
    merged = mergedParts(parts(), other); // same id, another name: an id of its own
    ASSERT_EQ(merged.fittings.size(), 2u);
    EXPECT_EQ(merged.fittings[1].id, "own-other-joint");
}
