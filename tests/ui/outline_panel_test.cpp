// The outline: one selection with the plan, renaming, filtering, order, reach by keyboard.
#include <QSignalSpy>
#include <QTreeView>

#include "tests/ui/panel_bench.hpp"
#include "ui/outline/outline_panel.hpp"

namespace sumpwright::tests
{
namespace
{

class Outline : public testing::Test
{
protected:
    Outline()
    {
        document.view().setNumberStyle(units::NumberStyle::point());
        document.reset(system.plan);
        panel.resize(360, 700);
        panel.show();
        EXPECT_TRUE(QTest::qWaitForWindowExposed(&panel));
        panel.activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&panel));
        tree.setFocus();
    }

    // The row whose first column reads so.
    QModelIndex row(const QString& words)
    {
        const auto found = tree.model()->match(tree.model()->index(0, 0), Qt::DisplayRole, words, 1,
                                               Qt::MatchExactly | Qt::MatchRecursive);
        EXPECT_FALSE(found.isEmpty()) << words.toStdString();
        return found.value(0);
    }
    QStringList titlesUnder(const QModelIndex& group)
    {
        QStringList titles;
        for (int i = 0; i < tree.model()->rowCount(group); ++i)
            titles << tree.model()->index(i, 0, group).data().toString();
        return titles;
    }
    std::vector<base::Id> chosen() { return document.selection(); }

    test::SmallSystem system;
    ui::document::Document document;
    ui::outline::OutlinePanel panel{document};
    QTreeView& tree = panel.tree();
};

TEST_F(Outline, ListsEveryElementUnderItsKind)
{
    EXPECT_EQ(titlesUnder(row(QStringLiteral("Grow beds (2)"))),
              (QStringList{QStringLiteral("B1"), QStringLiteral("B2")}));
    EXPECT_EQ(titlesUnder(row(QStringLiteral("Notes (1)"))), QStringList{QStringLiteral("north light")});
    int elements = 0;
    for (int i = 0; i < tree.model()->rowCount(); ++i)
        elements += tree.model()->rowCount(tree.model()->index(i, 0));
    const auto& plan = document.shown();
    EXPECT_EQ(static_cast<std::size_t>(elements), plan.vessels.size() + plan.pumps.size() + plan.runs.size() +
                                                      plan.tees.size() + plan.fixtures.size() + plan.notes.size() +
                                                      plan.dimensions.size());
}

TEST_F(Outline, OrdersTagsAsAPersonCounts)
{
    document.commit(plan::renameTag(system.bedA, "B10"));
    EXPECT_EQ(titlesUnder(row(QStringLiteral("Grow beds (2)"))),
              (QStringList{QStringLiteral("B2"), QStringLiteral("B10")}));
}

TEST_F(Outline, SelectionGoesBothWays)
{
    tree.setCurrentIndex(row(QStringLiteral("B1")));
    EXPECT_EQ(chosen(), std::vector<base::Id>{system.bedA});
    QTest::keyClick(&tree, Qt::Key_Down, Qt::ShiftModifier);
    EXPECT_EQ(chosen().size(), 2u);
    document.select({system.pump});
    const auto rows = tree.selectionModel()->selectedRows();
    ASSERT_EQ(rows.size(), 1);
    EXPECT_EQ(rows[0].data().toString().toStdString(), plan::tagOf(document.shown(), system.pump));
    document.select({});
    EXPECT_TRUE(tree.selectionModel()->selectedRows().isEmpty());
}

TEST_F(Outline, AGroupStandsForAllItHolds)
{
    tree.setCurrentIndex(row(QStringLiteral("Grow beds (2)")));
    EXPECT_EQ(chosen(), (std::vector<base::Id>{system.bedA, system.bedB}));
}

TEST_F(Outline, RenamesInPlaceAsOneStepAndRefusesATakenTag)
{
    const auto typeTag = [&](const QString& tag) {
        QTest::keyClick(&tree, Qt::Key_F2);
        auto* editor = tree.viewport()->findChild<QLineEdit*>();
        ASSERT_TRUE(editor);
        editor->selectAll();
        QTest::keyClicks(editor, tag);
        QTest::keyClick(editor, Qt::Key_Return);
        QCoreApplication::processEvents();
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    };
    tree.setCurrentIndex(row(QStringLiteral("B1")));
    typeTag(QStringLiteral("Basil"));
    EXPECT_EQ(plan::tagOf(document.committed(), system.bedA), "Basil");
    EXPECT_EQ(document.undoStack().index(), 1);
    EXPECT_EQ(chosen(), std::vector<base::Id>{system.bedA}); // still
    typeTag(QStringLiteral("B2"));
    EXPECT_EQ(plan::tagOf(document.committed(), system.bedA), "Basil");
    EXPECT_EQ(document.undoStack().index(), 1);
    EXPECT_FALSE(panel.refusalText().isEmpty());
    QTest::keyClick(&tree, Qt::Key_Escape);
    EXPECT_TRUE(panel.refusalText().isEmpty());
}

TEST_F(Outline, FilteringHidesRowsAndChangesNoChoice)
{
    document.select({system.tank});
    QTest::keyClicks(&panel.filter(), QStringLiteral("pump"));
    EXPECT_FALSE(tree.model()
                     ->match(tree.model()->index(0, 0), Qt::DisplayRole, QStringLiteral("P1"), 1,
                             Qt::MatchExactly | Qt::MatchRecursive)
                     .isEmpty());
    EXPECT_TRUE(tree.model()
                    ->match(tree.model()->index(0, 0), Qt::DisplayRole, QStringLiteral("T1"), 1,
                            Qt::MatchExactly | Qt::MatchRecursive)
                    .isEmpty());
    EXPECT_EQ(chosen(), std::vector<base::Id>{system.tank});
    panel.filter().clear();
    ASSERT_EQ(tree.selectionModel()->selectedRows().size(), 1);
    EXPECT_EQ(tree.selectionModel()->selectedRows()[0].data().toString().toStdString(), "T1");
}

TEST_F(Outline, EnterGoesToTheElement)
{
    std::vector<base::Id> wanted;
    QObject::connect(&document, &ui::document::Document::goToRequested,
                     [&](const std::vector<base::Id>& ids) { wanted = ids; });
    tree.setCurrentIndex(row(QStringLiteral("B2")));
    QTest::keyClick(&tree, Qt::Key_Return);
    EXPECT_EQ(wanted, std::vector<base::Id>{system.bedB});
}

TEST_F(Outline, FollowsAMoveWithoutLosingFoldOrPlace)
{
    const QModelIndex beds = row(QStringLiteral("Grow beds (2)"));
    tree.collapse(beds);
    tree.setCurrentIndex(row(QStringLiteral("T1")));
    int resets = 0;
    QObject::connect(tree.model(), &QAbstractItemModel::modelReset, [&] { ++resets; });
    document.commit(plan::moveElements({system.bedA}, {units::metres(0.1), units::metres(0)}));
    EXPECT_EQ(resets, 0);
    plan::VesselWish wish;
    wish.kind = plan::VesselKind::mediaBed;
    wish.centre = test::at(4.5, 7.5);
    document.commit(plan::placeVessel(wish));
    EXPECT_EQ(resets, 1);
    EXPECT_FALSE(tree.isExpanded(row(QStringLiteral("Grow beds (3)"))));
    EXPECT_EQ(chosen(), std::vector<base::Id>{system.tank});
}

TEST_F(Outline, MenuKeyAsksForTheMenuOfWhatIsChosen)
{
    int asked = 0;
    QObject::connect(&panel, &ui::outline::OutlinePanel::menuRequested, [&](QPoint) { ++asked; });
    tree.setCurrentIndex(row(QStringLiteral("B1")));
    QContextMenuEvent byKey(QContextMenuEvent::Keyboard, QPoint(1, 1), QPoint(1, 1));
    QCoreApplication::sendEvent(tree.viewport(), &byKey);
    EXPECT_EQ(asked, 1);
    EXPECT_EQ(chosen(), std::vector<base::Id>{system.bedA});
}

TEST_F(Outline, SiteAndFloorCanBeAskedFor)
{
    std::vector<ui::outline::TopPart> asked;
    QObject::connect(&panel, &ui::outline::OutlinePanel::partWanted,
                     [&](ui::outline::TopPart part) { asked.push_back(part); });
    document.select({system.tank});
    tree.setCurrentIndex(row(QStringLiteral("Floor")));
    ASSERT_EQ(asked.size(), 1u);
    EXPECT_EQ(asked[0], ui::outline::TopPart::floor);
    EXPECT_TRUE(chosen().empty());
}

TEST_F(Outline, TabLeavesTheTree)
{
    panel.filter().setFocus();
    QTest::keyClick(&panel.filter(), Qt::Key_Tab);
    EXPECT_EQ(QApplication::focusWidget(), &tree);
    QTest::keyClick(&tree, Qt::Key_Tab);
    EXPECT_EQ(QApplication::focusWidget(), &panel.filter());
}

} // namespace
} // namespace sumpwright::tests
