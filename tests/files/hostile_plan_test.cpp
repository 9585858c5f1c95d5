// Files made to hurt: huge, endlessly nested, cut off, of random bytes. Each is refused within a second or read
// soundly; none crashes.
#include <gtest/gtest.h>

#include <ctime>
#include <random>

#include "core/plan/check.hpp"
#include "core/storage/plan_text.hpp"
#include "tests/support/source_file.hpp"

using namespace sumpwright;
using namespace sumpwright::storage;

namespace
{

std::string soundText() { return test::sourceText("tests/files/plans/version_1.sumpwright"); }

// The refusal's id; fails the test when it took a second or more of the processor's time, so that a busy machine does
// not count.
std::string refusedInTime(const std::string& text)
{
    const std::clock_t start = std::clock();
    const auto loaded = loadText(text);
    EXPECT_LT(static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC, 1.0);
    return loaded.ok() ? std::string() : loaded.refusal().id;
}

void expectReadSoundlyOrRefused(const std::string& text)
{
    const auto loaded = loadText(text);
    if (!loaded) {
        EXPECT_FALSE(loaded.refusal().id.empty() || loaded.refusal().what.empty());
        return;
    }
    EXPECT_TRUE(plan::check(loaded->plan).empty());
    const std::string again = saveText(loaded->plan);
    const auto back = loadText(again);
    ASSERT_TRUE(back.ok()) << base::oneLine(back.refusal());
    EXPECT_EQ(saveText(back->plan), again);
}

} // namespace

TEST(HostilePlan, Of50MegabytesIsRefusedInTime)
{
    EXPECT_EQ(refusedInTime(std::string(50'000'000, ' ')), "storage.too-large");
    EXPECT_EQ(refusedInTime("{\"format\": \"" + std::string(50'000'000, 'x') + "\"}"), "storage.too-large");
}

TEST(HostilePlan, Of20MegabytesOfValuesIsRefusedInTime)
{
    std::string text = "[0";
    while (text.size() < largestPlanBytes - 10)
        text += ",0";
    EXPECT_EQ(refusedInTime(text + "]"), "storage.too-many");
}

TEST(HostilePlan, NestedAHundredThousandDeepIsRefusedInTime)
{
    EXPECT_EQ(refusedInTime(std::string(100'000, '[')), "storage.too-deep");
    EXPECT_EQ(refusedInTime(std::string(100'000, '[') + std::string(100'000, ']')), "storage.too-deep");
    std::string objects;
    for (int i = 0; i < 100'000; ++i)
        objects += "{\"a\":";
    EXPECT_EQ(refusedInTime(objects), "storage.too-deep");
}

TEST(HostilePlan, WithTooManyElementsIsRefusedInTime)
{
    std::string notes;
    for (std::size_t i = 0; i <= mostElements; ++i)
        notes += std::string(i ? "," : "") + "{\"id\":" + std::to_string(100 + i) +
                 ",\"at\":[\"0 m\",\"0 m\"],\"text\":\"n\"}";
    std::string text = soundText();
    const auto at = text.find("\"notes\": [") + 10;
    text.insert(at, notes + ",");
    EXPECT_EQ(refusedInTime(text), "storage.too-many");
}

TEST(HostilePlan, CutOffAnywhereIsRefused)
{
    const std::string sound = soundText();
    const std::size_t whole = sound.find_last_of('}');
    for (std::size_t length = 0; length <= whole; length += 7)
        ASSERT_FALSE(loadText(sound.substr(0, length)).ok()) << length;
    EXPECT_TRUE(loadText(sound.substr(0, whole + 1)).ok());
}

TEST(HostilePlan, ThatIsNoTextIsRefused)
{
    EXPECT_EQ(refusedInTime(std::string("\x89PNG\r\n\x1a\n\0\0\0\rIHDR", 16)), "storage.not-utf8");
    EXPECT_EQ(refusedInTime(std::string(1000, '\0')), "storage.broken-json");
    EXPECT_EQ(refusedInTime("\xFF\xFE{\0}\0"), "storage.not-utf8");
    std::mt19937 random(3);
    std::string noise(100'000, ' ');
    for (char& byte : noise)
        byte = static_cast<char>(random() % 256);
    EXPECT_NE(refusedInTime(noise), "");
}

TEST(HostilePlan, WithBytesChangedAtRandomIsReadSoundlyOrRefused)
{
    const std::string sound = soundText();
    std::mt19937 random(5);
    static constexpr char likely[] = "0123456789.-+eE\"{}[],: mk\\/";
    for (int round = 0; round < 4000; ++round) {
        std::string text = sound;
        for (auto left = 1 + random() % 3; left > 0; --left)
            text[random() % text.size()] =
                random() % 8 ? likely[random() % (sizeof likely - 1)] : static_cast<char>(random() % 256);
        expectReadSoundlyOrRefused(text);
    }
}

TEST(HostilePlan, WithLinesDroppedOrSwappedIsReadSoundlyOrRefused)
{
    std::vector<std::string> lines(1);
    for (const char byte : soundText()) {
        if (byte == '\n')
            lines.emplace_back();
        else
            lines.back().push_back(byte);
    }
    std::mt19937 random(9);
    for (int round = 0; round < 2000; ++round) {
        std::vector<std::string> changed = lines;
        const std::size_t a = random() % changed.size();
        const std::size_t b = random() % changed.size();
        if (round % 2)
            changed.erase(changed.begin() + static_cast<std::ptrdiff_t>(a));
        else
            std::swap(changed[a], changed[b]);
        std::string text;
        for (const std::string& line : changed)
            text += line + "\n";
        expectReadSoundlyOrRefused(text);
    }
}
