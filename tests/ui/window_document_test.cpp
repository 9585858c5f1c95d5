#include <gtest/gtest.h>

#include <QSignalSpy>
#include <QTest>
#include <QUndoStack>

#include "core/plan/edits/delete.hpp"
#include "core/plan/edits/move.hpp"
#include "core/plan/edits/place.hpp"
#include "ui/document/document.hpp"
#include "ui/text/undo_names.hpp"

namespace sumpwright::ui::document
{
namespace
{

plan::Point at(double x, double y) { return {units::metres(x), units::metres(y)}; }
plan::Edit placeSump(double x = 1.0)
{
    plan::VesselWish wish;
    wish.kind = plan::VesselKind::sump;
    wish.centre = at(x, 1.0);
    return plan::placeVessel(wish);
}
plan::Edit move(base::Id id, double dx) { return plan::moveElements({id}, at(dx, 0.0)); }
plan::Edit refusedEdit() { return move(base::Id{9999}, 1.0); }

class WithDocument : public testing::Test
{
protected:
    WithDocument() { document.nameEditsBy(text::editName); }
    base::Id sump()
    {
        document.commit(placeSump());
        return document.committed().vessels.begin()->get()->id;
    }

    Document document;
};

TEST_F(WithDocument, CommitMakesOneNamedUndoStep)
{
    sump();
    EXPECT_EQ(document.undoStack().count(), 1);
    EXPECT_FALSE(document.undoStack().undoText().isEmpty());
    EXPECT_TRUE(document.undoStack().undoText().contains(QStringLiteral("S1")))
        << document.undoStack().undoText().toStdString();
}

TEST_F(WithDocument, UndoGivesTheEarlierValueBackAndRedoTheLater)
{
    const plan::Plan empty = document.committed();
    sump();
    const plan::Plan placed = document.committed();
    document.undoStack().undo();
    EXPECT_EQ(document.committed(), empty);
    document.undoStack().redo();
    EXPECT_EQ(document.committed(), placed);
}

TEST_F(WithDocument, PreviewShowsWithoutAStepAndIsDroppedWhole)
{
    const base::Id id = sump();
    const plan::Plan before = document.committed();
    const quint64 revision = document.revision();
    EXPECT_FALSE(document.preview(move(id, 0.5)));
    EXPECT_FALSE(document.shown() == before);
    EXPECT_EQ(document.committed(), before);
    EXPECT_EQ(document.undoStack().count(), 1);
    EXPECT_GT(document.revision(), revision);
    document.dropPreview();
    EXPECT_EQ(document.shown(), before);
    EXPECT_FALSE(document.previewing());
}

TEST_F(WithDocument, PreviewAppliesToTheCommittedPlanNotToTheLastPreview)
{
    const base::Id id = sump();
    document.preview(move(id, 0.5));
    document.preview(move(id, 0.5));
    EXPECT_NEAR(units::inMetres(document.shown().vessels.find(id)->centre.x), 1.5, 1e-12);
}

TEST_F(WithDocument, RefusedPreviewKeepsTheLastGoodOne)
{
    const base::Id id = sump();
    document.preview(move(id, 0.5));
    const plan::Plan good = document.shown();
    EXPECT_TRUE(document.preview(refusedEdit()));
    EXPECT_EQ(document.shown(), good);
}

TEST_F(WithDocument, RefusedCommitLeavesNoStepAndSaysWhatWasWrong)
{
    sump();
    QSignalSpy refused(&document, &Document::refused);
    EXPECT_FALSE(document.commit(refusedEdit()));
    EXPECT_EQ(document.undoStack().count(), 1);
    ASSERT_EQ(refused.count(), 1);
    EXPECT_FALSE(refused.at(0).at(1).toString().isEmpty());
}

TEST_F(WithDocument, EditThatChangesNothingLeavesNoStep)
{
    const base::Id id = sump();
    EXPECT_TRUE(document.commit(move(id, 0.0)));
    EXPECT_EQ(document.undoStack().count(), 1);
}

TEST_F(WithDocument, BurstIsOneStep)
{
    const base::Id id = sump();
    for (int i = 0; i < 50; ++i)
        document.commit(move(id, 0.1), QStringLiteral("nudge"));
    EXPECT_EQ(document.undoStack().count(), 2);
    document.undoStack().undo();
    EXPECT_NEAR(units::inMetres(document.committed().vessels.find(id)->centre.x), 1.0, 1e-9);
}

TEST_F(WithDocument, BurstEndsAtAPauseASelectionAndAnUndo)
{
    const base::Id id = sump();
    document.commit(move(id, 0.1), QStringLiteral("nudge"));
    document.select({id});
    document.commit(move(id, 0.1), QStringLiteral("nudge"));
    EXPECT_EQ(document.undoStack().count(), 3);
    document.undoStack().undo();
    document.commit(move(id, 0.1), QStringLiteral("nudge"));
    EXPECT_EQ(document.undoStack().count(), 3);
    QTest::qWait(1200);
    document.commit(move(id, 0.1), QStringLiteral("nudge"));
    EXPECT_EQ(document.undoStack().count(), 4);
}

TEST_F(WithDocument, BurstThereAndBackLeavesNoStep)
{
    const base::Id id = sump();
    document.commit(move(id, 0.5), QStringLiteral("nudge"));
    document.commit(move(id, -0.5), QStringLiteral("nudge"));
    EXPECT_EQ(document.undoStack().count(), 1);
    EXPECT_NEAR(units::inMetres(document.committed().vessels.find(id)->centre.x), 1.0, 1e-12);
}

TEST_F(WithDocument, SelectionLeavesOutWhatIsNotThereAndLosesWhatGoes)
{
    const base::Id id = sump();
    document.select({id, base::Id{777}});
    EXPECT_EQ(document.selection(), std::vector<base::Id>{id});
    QSignalSpy changed(&document, &Document::selectionChanged);
    document.commit(plan::deleteElements({id}));
    EXPECT_TRUE(document.selection().empty());
    EXPECT_EQ(changed.count(), 1);
}

TEST_F(WithDocument, SelectionIsNoEdit)
{
    const base::Id id = sump();
    document.undoStack().setClean();
    const quint64 revision = document.revision();
    document.select({id});
    document.highlight(id);
    EXPECT_TRUE(document.undoStack().isClean());
    EXPECT_EQ(document.undoStack().count(), 1);
    EXPECT_EQ(document.revision(), revision);
}

TEST_F(WithDocument, ReadOnlyRefusesEveryEdit)
{
    const base::Id id = sump();
    document.setReadOnly(true);
    const plan::Plan before = document.committed();
    EXPECT_FALSE(document.commit(move(id, 1.0)));
    EXPECT_TRUE(document.preview(move(id, 1.0)));
    EXPECT_EQ(document.shown(), before);
    EXPECT_EQ(document.undoStack().count(), 1);
}

TEST_F(WithDocument, PlanChangedTellsTheElementsThatChangedByTheirPointers)
{
    const base::Id first = sump();
    plan::VesselWish wish;
    wish.kind = plan::VesselKind::fishTank;
    wish.centre = at(4.0, 4.0);
    document.commit(plan::placeVessel(wish));
    document.commit(move(first, 0.2));
    const plan::Plan& before = document.previouslyShown();
    int changed = 0;
    for (const auto& vessel : document.shown().vessels)
        if (before.vessels.share(vessel->id) != vessel)
            ++changed;
    EXPECT_EQ(changed, 1);
}

TEST_F(WithDocument, ResultsComeByThemselvesAndCatchUpWithTheNewestEdit)
{
    const base::Id id = sump();
    for (int i = 0; i < 20; ++i)
        document.commit(move(id, 0.01));
    EXPECT_TRUE(document.stale());
    EXPECT_TRUE(QTest::qWaitFor([this] { return !document.stale(); }, 5000));
    ASSERT_TRUE(document.assessment());
    EXPECT_EQ(document.assessment()->plan, document.shown());
}

TEST_F(WithDocument, ResultsComeAtMostOncePerFrame)
{
    const base::Id id = sump();
    ASSERT_TRUE(QTest::qWaitFor([this] { return !document.stale(); }, 5000));
    QSignalSpy came(&document, &Document::assessmentChanged);
    QElapsedTimer clock;
    clock.start();
    while (clock.elapsed() < 320) {
        document.preview(move(id, 0.001 * static_cast<double>(clock.elapsed())));
        QTest::qWait(1);
    }
    EXPECT_GT(came.count(), 0);
    // One frame is 16 ms; announcements of staleness come at most once in 120 ms.
    EXPECT_LE(came.count(), static_cast<int>(clock.elapsed() / 16 + clock.elapsed() / 120) + 2);
}

TEST_F(WithDocument, ResetEmptiesUndoAndSelection)
{
    const base::Id id = sump();
    document.select({id});
    document.reset({});
    EXPECT_EQ(document.undoStack().count(), 0);
    EXPECT_TRUE(document.selection().empty());
    EXPECT_TRUE(document.committed() == plan::Plan{});
}

} // namespace
} // namespace sumpwright::ui::document
