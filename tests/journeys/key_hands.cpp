// The hand with the keys: commands by their keys, the crosshair by the arrows, fields by Tab.
#include <cmath>

#include <gtest/gtest.h>

#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>

#include "tests/journeys/hands.hpp"
#include "ui/canvas/plan_view.hpp"
#include "ui/properties/properties_panel.hpp"
#include "ui/window/commands.hpp"
#include "ui/window/main_window.hpp"
#include "ui/window/panels.hpp"

namespace sumpwright::tests
{

void KeyHands::command(const char* id)
{
    const QKeySequence keys = window().commands().find(id)->shortcut();
    ASSERT_EQ(keys.count(), 1) << id;
    backToPlan();
    key(keys[0].key(), keys[0].keyboardModifiers());
    m_fresh = true;
}

void KeyHands::backToPlan()
{
    const auto& plan = window().planView();
    // Where a box has just gone the desktop takes a moment to give the keyboard back.
    (void)QTest::qWaitFor([] { return QApplication::focusWidget() != nullptr; }, 3000);
    for (int i = 0; i < 8 && QApplication::focusWidget() != &plan; ++i)
        key(plan.isAncestorOf(QApplication::focusWidget()) ? Qt::Key_Escape : Qt::Key_F6); // out of a field on the plan
    const QWidget* with = QApplication::focusWidget();
    ASSERT_EQ(with, &plan) << (with ? with->accessibleName().toStdString() : "nothing has the keyboard");
}

namespace
{
double pointer(const ui::window::MainWindow& window, const char* name)
{
    for (const auto* label : window.findChildren<QLabel*>())
        if (label->accessibleName() == QString::fromLatin1(name))
            return numberOf(label->text().mid(1));
    return std::nan("");
}
} // namespace

bool KeyHands::moveOnce(double x, double y)
{
    const double off[2] = {x - pointer(window(), "Pointer, across"), y - pointer(window(), "Pointer, up the sheet")};
    for (const int axis : {0, 1}) {
        if (std::isnan(off[axis]) || std::fabs(off[axis]) < 0.0006)
            continue;
        const double size = std::fabs(off[axis]);
        const auto with = size > 0.75 ? Qt::ShiftModifier : size > 0.06 ? Qt::NoModifier : Qt::ControlModifier;
        key(axis == 0 ? (off[0] > 0.0 ? Qt::Key_Right : Qt::Key_Left) : (off[1] > 0.0 ? Qt::Key_Up : Qt::Key_Down),
            with);
        return true;
    }
    return false;
}

void KeyHands::point(double x, double y, const QString& typed)
{
    backToPlan();
    if (m_fresh) {
        key(Qt::Key_Right); // calls the crosshair
        if (x >= 0.0 && y >= 0.0) {
            typeWords(QStringLiteral("%1x%2").arg(x, 0, 'f', 3).arg(y, 0, 'f', 3));
            key(Qt::Key_Return);
        }
    }
    m_fresh = false;
    if (!typed.isEmpty()) { // the crosshair stands where the line came to: one step says to which side
        moveOnce(x, y);
        typeWords(typed);
        return key(Qt::Key_Return);
    }
    int moves = 0;
    while (moves < 400 && moveOnce(x, y))
        ++moves;
    ASSERT_LT(moves, 400) << "the crosshair does not come to " << x << ", " << y;
    key(Qt::Key_Return);
}

void KeyHands::drag(double x0, double y0, double x1, double y1)
{
    point(x0, y0);
    point(x1, y0);
    point(x1, y1);
    point(x0, y1);
    point(x0, y0);
}

// Over what is drawn, one after the other, until the form shows the tag.
void KeyHands::select(const QString& tag)
{
    backToPlan();
    for (int i = 0; i < 120 && shownIn(QStringLiteral("Tag")) != tag; ++i)
        key(Qt::Key_N);
    ASSERT_EQ(shownIn(QStringLiteral("Tag")).toStdString(), tag.toStdString());
}

void KeyHands::goTo(QWidget& widget)
{
    if (window().planView().isAncestorOf(&widget)) { // a field of the tool
        if (widget.accessibleName() == QStringLiteral("Level"))
            return key(Qt::Key_L);
        for (int i = 0; i < 30 && QApplication::focusWidget() != &widget; ++i)
            key(Qt::Key_Tab);
        return;
    }
    const auto& form = window().panels().properties();
    for (int i = 0; i < 8 && !form.isAncestorOf(QApplication::focusWidget()); ++i)
        key(Qt::Key_F6);
    const auto height = [&](const QWidget* part) { return part->mapTo(&window(), QPoint(0, 0)).y(); };
    ASSERT_TRUE(form.isAncestorOf(QApplication::focusWidget()));
    const bool above = height(QApplication::focusWidget()) > height(&widget);
    for (int i = 0; i < 150 && QApplication::focusWidget() != &widget; ++i)
        key(above ? Qt::Key_Backtab : Qt::Key_Tab, above ? Qt::ShiftModifier : Qt::NoModifier);
}

void KeyHands::push(const QString& name)
{
    QWidget* button = named(name);
    ASSERT_TRUE(button) << "no button " << name.toStdString();
    goTo(*button);
    ASSERT_EQ(QApplication::focusWidget(), button) << name.toStdString();
    key(Qt::Key_Space);
}

void KeyHands::pick(QComboBox& box, int index)
{
    key(Qt::Key_Down, Qt::AltModifier);
    key(Qt::Key_Home);
    for (int i = 0; i < index; ++i)
        key(Qt::Key_Down);
    key(Qt::Key_Return);
    EXPECT_EQ(box.currentIndex(), index);
}

} // namespace sumpwright::tests
