// 200 seeds of random edits over all intents: no edit breaks what must hold, each earlier plan keeps its bytes, and the
// same edits made again give the same bytes.
#include <gtest/gtest.h>

#include <map>
#include <set>

#include "core/plan/edits/intent.hpp"
#include "core/storage/plan_text.hpp"
#include "tests/support/edited_plan.hpp"
#include "tests/support/random_edits.hpp"

using namespace sumpwright;

namespace
{

constexpr unsigned seeds = 200;
constexpr int editsPerSeed = 60;

// What a person's session leaves: the plans on the undo stack and the edits that led there.
struct Session {
    std::vector<plan::Plan> plans;
    std::vector<plan::Edit> edits;
    std::vector<std::string> texts;
};

std::map<std::string, int>& accepted()
{
    static std::map<std::string, int> counts;
    return counts;
}

Session randomSession(unsigned seed)
{
    Session session;
    session.plans.push_back(seed % 2 ? test::SmallSystem().plan : plan::Plan());
    session.texts.push_back(storage::saveText(session.plans.back()));
    test::RandomEdits random(seed);
    for (int i = 0; i < editsPerSeed; ++i) {
        const plan::Edit edit = random.next(session.plans.back());
        const auto after = edit.apply(session.plans.back());
        if (!after) {
            EXPECT_FALSE(after.refusal().id.empty() || after.refusal().what.empty() || after.refusal().accepts.empty())
                << edit.intent << ": " << base::oneLine(after.refusal());
            continue;
        }
        ++accepted()[edit.intent];
        session.edits.push_back(edit);
        session.plans.push_back(after.value());
        session.texts.push_back(storage::saveText(after.value()));
        const std::vector<plan::Fault> faults = plan::check(after.value());
        EXPECT_TRUE(faults.empty()) << "seed " << seed << " " << edit.intent << ": "
                                    << base::oneLine(faults.front().refusal);
        if (!faults.empty())
            break;
    }
    return session;
}

class UndoFuzz : public ::testing::TestWithParam<unsigned>
{
};

} // namespace

TEST_P(UndoFuzz, UndoAllGivesTheFirstBytesAndRedoAllTheLast)
{
    for (unsigned seed = GetParam(); seed < GetParam() + 20; ++seed) {
        const Session session = randomSession(seed);
        for (std::size_t step = session.plans.size(); step-- > 0;)
            ASSERT_EQ(storage::saveText(session.plans[step]), session.texts[step]) << "seed " << seed;
        plan::Plan again = session.plans.front();
        for (const plan::Edit& edit : session.edits) {
            const auto after = edit.apply(again);
            ASSERT_TRUE(after.ok()) << "seed " << seed << " " << edit.intent;
            again = after.value();
        }
        ASSERT_EQ(storage::saveText(again), session.texts.back()) << "seed " << seed;
        ASSERT_TRUE(again == session.plans.back()) << "seed " << seed;
    }
}

TEST_P(UndoFuzz, WhatWasSavedIsReadAndSavedAgainByteForByte)
{
    for (unsigned seed = GetParam(); seed < GetParam() + 20; ++seed) {
        const Session session = randomSession(seed);
        const auto back = storage::loadText(session.texts.back());
        ASSERT_TRUE(back.ok()) << "seed " << seed << ": " << base::oneLine(back.refusal());
        ASSERT_TRUE(back->plan == session.plans.back()) << "seed " << seed;
        ASSERT_EQ(storage::saveText(back->plan), session.texts.back()) << "seed " << seed;
    }
}

INSTANTIATE_TEST_SUITE_P(Seeds, UndoFuzz, ::testing::Range(0u, seeds, 20u));

TEST(UndoFuzzCoverage, EveryIntentIsDrawnAndAccepted)
{
    accepted().clear();
    for (unsigned seed = 1000; seed < 1060; ++seed)
        randomSession(seed);
    std::set<std::string> known;
    for (const std::string_view intent : plan::allIntents) {
        known.emplace(intent);
        EXPECT_GT(accepted()[std::string(intent)], 0) << intent << " was never accepted";
    }
    for (const auto& [intent, count] : accepted())
        EXPECT_TRUE(known.count(intent)) << intent << " is missing from allIntents";
}
