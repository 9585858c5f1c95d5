// The hand with the mouse: menus opened and pressed, places clicked, forms scrolled by the wheel.
#include <gtest/gtest.h>

#include <QAbstractItemView>
#include <QApplication>
#include <QComboBox>
#include <QMenu>
#include <QMenuBar>
#include <QScrollArea>
#include <QTreeView>

#include "tests/journeys/hands.hpp"
#include "ui/canvas/plan_view.hpp"
#include "ui/window/commands.hpp"
#include "ui/window/main_window.hpp"

namespace sumpwright::tests
{

void MouseHands::command(const char* id)
{
    QAction* wanted = window().commands().find(id);
    const int menuIndex = static_cast<int>(window().commands().spec(id).menu);
    QMenuBar* bar = window().menuBar();
    press(*bar, bar->actionGeometry(bar->actions().at(menuIndex)).center());
    auto* menu = qobject_cast<QMenu*>(QApplication::activePopupWidget());
    ASSERT_TRUE(menu) << "no menu opened for " << id;
    ASSERT_TRUE(menu->actions().contains(wanted)) << id << " is not in " << menu->title().toStdString();
    press(*menu, menu->actionGeometry(wanted).center());
}

void MouseHands::point(double x, double y, const QString& typed)
{
    QWidget& paper = *window().planView().viewport();
    const QPoint at = pixelOf(x, y);
    ASSERT_TRUE(paper.rect().contains(at)) << "off the screen: " << x << ", " << y;
    move(paper, at, false);
    typeWords(typed);
    mouse(paper, at, true);
    mouse(paper, at, false);
}

void MouseHands::drag(double x0, double y0, double x1, double y1)
{
    QWidget& paper = *window().planView().viewport();
    const QPoint from = pixelOf(x0, y0);
    const QPoint to = pixelOf(x1, y1);
    ASSERT_TRUE(paper.rect().contains(from) && paper.rect().contains(to));
    move(paper, from, false);
    mouse(paper, from, true);
    for (int i = 1; i <= 4; ++i)
        move(paper, from + (to - from) * i / 4, true);
    mouse(paper, to, false);
}

// By its line in the outline.
void MouseHands::select(const QString& tag)
{
    QModelIndex line;
    QTreeView* tree = outlineAt(tag, line);
    ASSERT_TRUE(tree);
    QWidget& paper = *tree->viewport();
    const auto place = [&] { return tree->visualRect(line).center(); };
    for (int i = 0; i < 200 && !paper.rect().contains(place()); ++i)
        wheel(paper, place().y() < 0 ? 120 : -120);
    press(paper, place());
    EXPECT_EQ(shownIn(QStringLiteral("Tag")).toStdString(), tag.toStdString());
}

bool MouseHands::reveal(QWidget& widget)
{
    for (QWidget* at = widget.parentWidget(); at; at = at->parentWidget()) {
        auto* area = qobject_cast<QScrollArea*>(at);
        if (!area)
            continue;
        watch();
        QWidget& paper = *area->viewport();
        const auto middle = [&] { return widget.mapTo(&paper, widget.rect().center()).y(); };
        int turns = 0;
        while (turns++ < 200 && (middle() < 20 || middle() > paper.height() - 20))
            wheel(paper, middle() < 20 ? 120 : -120);
        return turns < 200;
    }
    return true;
}

void MouseHands::goTo(QWidget& widget)
{
    ASSERT_TRUE(reveal(widget)) << widget.accessibleName().toStdString();
    press(widget, widget.rect().center());
}

void MouseHands::push(const QString& name)
{
    QWidget* button = named(name);
    ASSERT_TRUE(button) << "no button " << name.toStdString();
    goTo(*button);
}

void MouseHands::pick(QComboBox& box, int index)
{
    if (!box.view()->isVisible())
        press(box, box.rect().center());
    ASSERT_TRUE(box.view()->isVisible());
    QWidget& paper = *box.view()->viewport();
    const auto line = [&] { return box.view()->visualRect(box.model()->index(index, 0)); };
    for (int i = 0; i < 100 && !paper.rect().contains(line().center()); ++i)
        wheel(paper, line().center().y() < 0 ? 120 : -120);
    press(paper, line().center());
}

} // namespace sumpwright::tests
