// Walks over the whole window: keys that clash, words that are missing, parts the keyboard or a reader can't reach.
#include <map>
#include <set>

#include <QAccessible>
#include <QAccessibleWidget>
#include <QDockWidget>
#include <QGraphicsView>
#include <QLineEdit>
#include <QMenuBar>
#include <QToolBar>
#include <QToolButton>

#include "tests/ui/window_fixture.hpp"

namespace sumpwright::tests
{
namespace
{

using ui::window::Menu;
using ui::window::Scope;

// Work spaces, terminals, locking, entering characters by number (common practice, no source).
const std::set<std::string> keptByDesktops{"Ctrl+Alt+Left", "Ctrl+Alt+Right", "Ctrl+Alt+Up", "Ctrl+Alt+Down",
                                           "Ctrl+Alt+T",    "Ctrl+Alt+L",     "Ctrl+Alt+D",  "Ctrl+Alt+Del",
                                           "Ctrl+Shift+U",  "Alt+F4",         "Alt+Tab",     "Ctrl+Esc"};

TEST_F(OpenWindow, NoTwoCommandsShareAKey)
{
    std::map<QString, std::string> owner;
    for (const std::string& id : window.commands().order())
        for (const QKeySequence& key : window.commands().find(id)->shortcuts()) {
            const QString text = key.toString();
            EXPECT_FALSE(keptByDesktops.contains(text.toStdString())) << id;
            EXPECT_TRUE(owner.emplace(text, id).second)
                << text.toStdString() << " is the key of " << owner[text] << " and of " << id;
        }
    // "Ctrl+E, Left" can never be reached where "Ctrl+E" is a key of its own.
    for (const auto& [text, id] : owner) {
        const QString first = text.section(QStringLiteral(", "), 0, 0);
        EXPECT_TRUE(first == text || !owner.contains(first)) << text.toStdString();
    }
    // Keys the widgets bring along, not through the list of commands.
    for (const QAction* action : window.findChildren<QAction*>()) {
        const auto other = owner.find(action->shortcut().toString());
        if (other != owner.end()) {
            EXPECT_EQ(action->objectName().toStdString(), other->second) << action->text().toStdString();
        }
    }
}

TEST_F(OpenWindow, EveryCommandIsInAMenuWithAKeyATipAndWords)
{
    std::set<QAction*> inMenus;
    for (const QMenu* menu : window.menuBar()->findChildren<QMenu*>())
        for (QAction* action : menu->actions())
            inMenus.insert(action);
    for (const std::string& id : window.commands().order()) {
        const QAction* action = window.commands().find(id);
        EXPECT_TRUE(inMenus.contains(const_cast<QAction*>(action))) << id << " is in no menu";
        EXPECT_FALSE(action->shortcut().isEmpty()) << id << " has no key";
        EXPECT_FALSE(action->text().isEmpty()) << id;
        EXPECT_FALSE(window.commands().spec(id).tip.isEmpty()) << id << " has no tip";
        EXPECT_TRUE(action->toolTip().contains(action->shortcut().toString(QKeySequence::NativeText).toHtmlEscaped()))
            << id << "'s tip does not name its key";
    }
}

TEST_F(OpenWindow, MnemonicsAreTheirOwnInsideEachMenu)
{
    QList<QMenu*> menus = window.menuBar()->findChildren<QMenu*>();
    const auto letterOf = [](const QAction* action) {
        const QString text = action->text();
        for (qsizetype i = 0; i + 1 < text.size(); ++i)
            if (text[i] == u'&' && text[i + 1] != u'&')
                return QString(text[i + 1]).toUpper();
        return QString();
    };
    const auto walk = [&](const QString& where, const QList<QAction*>& actions) {
        std::map<QString, QString> used;
        for (const QAction* action : actions) {
            if (action->isSeparator() || letterOf(action).isEmpty())
                continue;
            EXPECT_TRUE(used.emplace(letterOf(action), action->text()).second)
                << where.toStdString() << ": " << action->text().toStdString() << " and "
                << used[letterOf(action)].toStdString();
        }
    };
    walk(QStringLiteral("menu bar"), window.menuBar()->actions());
    for (const QMenu* menu : menus)
        walk(menu->title(), menu->actions());
}

TEST_F(OpenWindow, SingleLettersWorkInThePlanOnlyAndCanBeTurnedOff)
{
    int letters = 0;
    for (const std::string& id : window.commands().order()) {
        const QAction* action = window.commands().find(id);
        const QString key = action->shortcut().toString();
        if (key.size() != 1 && key != QStringLiteral("Del"))
            continue;
        ++letters;
        EXPECT_EQ(action->shortcutContext(), Qt::WidgetWithChildrenShortcut) << id;
    }
    EXPECT_GT(letters, 5);

    window.planView().setFocus();
    QTest::keyClick(&window.planView(), Qt::Key_U);
    EXPECT_TRUE(command("place.sump")->isChecked());
    QTest::keyClick(&window.planView(), Qt::Key_Escape);
    command("select")->trigger();

    QLineEdit* field = nullptr; // any field where words are typed
    for (QLineEdit* each : window.findChildren<QLineEdit*>())
        if (each->isVisible() && each->isEnabled() && !each->isReadOnly())
            field = each;
    ASSERT_TRUE(field);
    field->setFocus();
    QTest::keyClick(field, Qt::Key_U);
    EXPECT_FALSE(command("place.sump")->isChecked());
    EXPECT_TRUE(field->text().endsWith(u'u'));

    command("view.letters")->trigger(); // off
    window.planView().setFocus();
    QTest::keyClick(&window.planView(), Qt::Key_U);
    EXPECT_FALSE(command("place.sump")->isChecked());
}

void walkNames(QAccessibleInterface* node, QStringList path, int& seen, std::set<std::string>& unnamed)
{
    if (!node || !node->isValid() || node->state().invisible)
        return;
    path << QStringLiteral("%1(%2)").arg(node->text(QAccessible::Name)).arg(node->role());
    if (node->state().focusable) {
        ++seen;
        if (node->text(QAccessible::Name).isEmpty())
            unnamed.insert(path.join(QStringLiteral(" / ")).toStdString());
    }
    for (int i = 0; i < node->childCount(); ++i)
        walkNames(node->child(i), path, seen, unnamed);
}

TEST_F(OpenWindow, EverythingFocusableHasAName)
{
    placeTank();
    place(plan::VesselKind::sump, 3.0);
    command("view.worksheets")->trigger();
    QTest::qWait(100);
    for (int round = 0; round < 2; ++round) { // site form, then a vessel's form
        int seen = 0;
        std::set<std::string> unnamed;
        walkNames(QAccessible::queryAccessibleInterface(&window), {}, seen, unnamed);
        EXPECT_GT(seen, 20);
        for (const std::string& path : unnamed)
            ADD_FAILURE() << "no name: " << path;
        work.document.select({work.document.committed().vessels.begin()->get()->id});
        QTest::qWait(50);
    }
}

TEST_F(OpenWindow, TabWalkComesBackToThePlanWithoutATrap)
{
    placeTank();
    work.document.select({work.document.committed().vessels.begin()->get()->id});
    QTest::qWait(100);
    window.planView().setFocus();
    std::set<QWidget*> seen;
    QWidget* last = nullptr;
    for (int i = 0; i < 400; ++i) {
        // The plan uses Tab to walk over its elements; Ctrl+Tab leaves it, as it leaves any text.
        QWidget* now = QApplication::focusWidget();
        ASSERT_TRUE(now) << "the keyboard is lost after " << i << " steps";
        seen.insert(now);
        if (now == &window.planView())
            command("view.next-part")->trigger();
        else
            QTest::keyClick(now, Qt::Key_Tab);
        ASSERT_NE(QApplication::focusWidget(), now)
            << "trapped in " << now->metaObject()->className() << " " << now->accessibleName().toStdString();
        last = QApplication::focusWidget();
        if (last == &window.planView() && i > 10)
            break;
    }
    EXPECT_EQ(last, &window.planView()) << "the walk never came back";
    EXPECT_GT(seen.size(), 10u);
}

TEST_F(OpenWindow, NextPartReachesEveryPanelAndComesBack)
{
    QTest::qWait(50);
    window.planView().setFocus();
    std::set<QString> reached;
    for (int i = 0; i < 8; ++i) {
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_F6);
        for (const QDockWidget* dock : window.findChildren<QDockWidget*>())
            if (dock->isAncestorOf(QApplication::focusWidget()))
                reached.insert(dock->windowTitle());
    }
    for (const char* title : {"Outline", "Properties", "Charts", "Findings"})
        EXPECT_TRUE(reached.contains(QString::fromLatin1(title))) << title;
}

TEST_F(OpenWindow, BarButtonsAreLargeEnoughToHit)
{
    int buttons = 0;
    for (const QToolBar* bar : window.findChildren<QToolBar*>())
        for (const QToolButton* button : bar->findChildren<QToolButton*>()) {
            if (!button->isVisible())
                continue;
            ++buttons;
            EXPECT_GE(button->width(), 24) << button->text().toStdString(); // WCAG 2.2, 2.5.8
            EXPECT_GE(button->height(), 24) << button->text().toStdString();
            EXPECT_FALSE(button->text().isEmpty() && button->accessibleName().isEmpty());
        }
    EXPECT_GT(buttons, 8);
}

TEST_F(OpenWindow, LayoutIsKeptAndCanBeReset)
{
    command("view.outline")->trigger();
    EXPECT_FALSE(window.findChild<QDockWidget*>(QStringLiteral("dock.outline"))->isVisible());
    window.close();
    ui::window::Workplace laterWork(state());
    ui::window::MainWindow later(laterWork);
    later.show();
    auto* outline = later.findChild<QDockWidget*>(QStringLiteral("dock.outline"));
    EXPECT_FALSE(outline->isVisible());
    EXPECT_FALSE(later.commands().find("view.outline")->isChecked());
    later.commands().find("view.reset")->trigger();
    EXPECT_TRUE(outline->isVisible());
    EXPECT_TRUE(later.commands().find("view.outline")->isChecked());
}

} // namespace
} // namespace sumpwright::tests
