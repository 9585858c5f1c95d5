// Walks over every form: names for assistive tools, Tab, and nothing clipped with large type.
#include <QAccessible>
#include <QCheckBox>
#include <QLabel>
#include <QScrollArea>
#include <QScrollBar>

#include "tests/ui/panel_bench.hpp"
#include "ui/style/type.hpp"

namespace sumpwright::tests
{
namespace
{

class FormWalk : public PanelBench
{
protected:
    // Results there and rows laid out, as a person finds them.
    void settle()
    {
        results();
        QTest::qWait(20);
    }

    // Every form, with its results there.
    template <class Visit> void forEachForm(const Visit& visit)
    {
        const base::Id tee = (*system.plan.tees.begin())->id;
        const std::vector<std::vector<base::Id>> choices{{},
                                                         {system.tank},
                                                         {system.sump},
                                                         {system.bedA},
                                                         {system.bedA, system.bedB},
                                                         {system.pump},
                                                         {system.main},
                                                         {system.tankDrain},
                                                         {system.toBed},
                                                         {tee},
                                                         {system.wall},
                                                         {system.note},
                                                         {system.line},
                                                         {system.tank, system.wall}};
        panel.showFloor();
        settle();
        visit("floor");
        panel.showSite();
        for (const auto& ids : choices) {
            document.select(ids);
            settle();
            visit(panel.form()->metaObject()->className());
        }
    }
};

TEST_F(FormWalk, EverythingThatTakesTheKeyboardHasAName)
{
    int found = 0;
    forEachForm([&](const char* form) {
        for (auto* widget : panel.findChildren<QWidget*>()) {
            if (!(widget->focusPolicy() & Qt::TabFocus) || !widget->isVisible() || widget->focusProxy())
                continue;
            ++found;
            auto* accessible = QAccessible::queryAccessibleInterface(widget);
            ASSERT_TRUE(accessible);
            EXPECT_FALSE(accessible->text(QAccessible::Name).isEmpty())
                << form << ": " << widget->metaObject()->className();
        }
    });
    EXPECT_GT(found, 100);
}

TEST_F(FormWalk, NoTwoEntriesOfAFormShareAName)
{
    forEachForm([&](const char* form) {
        QStringList names;
        for (auto* line : panel.form()->findChildren<QLineEdit*>())
            if (line->isVisible())
                names << line->accessibleName();
        QStringList once = names;
        once.removeDuplicates();
        EXPECT_EQ(names.size(), once.size()) << form << ": " << names.join(QStringLiteral(" | ")).toStdString();
    });
}

TEST_F(FormWalk, TabGoesDownTheFormAndComesRoundToItsStart)
{
    forEachForm([&](const char* form) {
        panel.takeFocus();
        QWidget* start = QApplication::focusWidget();
        ASSERT_TRUE(start) << form;
        const auto* area = panel.findChild<QScrollArea*>();
        const auto rowOf = [&](const QWidget* w) { return w->mapTo(panel.form(), QPoint(0, 0)).y(); };
        int stops = 0;
        int last = -1;
        do {
            QWidget* focus = QApplication::focusWidget();
            if (panel.form()->isAncestorOf(focus)) {
                EXPECT_GE(rowOf(focus), last - 12) << form << ": " << focus->accessibleName().toStdString();
                last = rowOf(focus);
                const QRect seen(area->viewport()->rect());
                EXPECT_TRUE(seen.intersects(QRect(focus->mapTo(area->viewport(), QPoint(0, 0)), focus->size())))
                    << form << ": hidden " << focus->accessibleName().toStdString();
            } else {
                last = -1;
            }
            QTest::keyClick(focus, Qt::Key_Tab);
            ++stops;
        } while (QApplication::focusWidget() != start && stops < 400);
        EXPECT_EQ(QApplication::focusWidget(), start) << form << ": Tab is caught";
    });
}

// Parts that stick out of what holds them are cut off.
void expectNothingSticksOut(const QWidget& form, const char* name)
{
    for (const auto* part : form.findChildren<QWidget*>()) {
        const auto* holder = part->parentWidget();
        if (part->isVisible() && (part->inherits("QLabel") || part->inherits("QLineEdit") ||
                                  part->inherits("QComboBox") || part->inherits("QAbstractButton"))) {
            EXPECT_TRUE(holder->rect().adjusted(-1, -1, 1, 1).contains(part->geometry()))
                << name << ": " << part->metaObject()->className() << " " << part->accessibleName().toStdString();
        }
    }
}

void expectNothingClipped(ui::properties::PropertiesPanel& panel, const char* form)
{
    expectNothingSticksOut(*panel.form(), form);
    for (auto* label : panel.form()->findChildren<QLabel*>()) {
        if (!label->isVisible() || label->text().isEmpty())
            continue;
        const int needed = label->wordWrap() ? label->heightForWidth(label->width()) : label->sizeHint().height();
        EXPECT_GE(label->height() + 1, needed) << form << ": " << label->text().toStdString();
        if (!label->wordWrap()) {
            EXPECT_GE(label->width() + 1, label->sizeHint().width()) << form << ": " << label->text().toStdString();
        }
    }
    for (auto* button : panel.form()->findChildren<QAbstractButton*>()) {
        if (!button->isVisible())
            continue;
        EXPECT_GE(button->width() + 1, button->sizeHint().width()) << form << ": " << button->text().toStdString();
    }
    for (auto* line : panel.form()->findChildren<QLineEdit*>()) {
        if (!line->isVisible() || line->text().isEmpty())
            continue;
        const int text = line->fontMetrics().horizontalAdvance(line->text());
        EXPECT_GE(line->width(), text) << form << ": " << line->accessibleName().toStdString() << " shows "
                                       << line->text().toStdString();
    }
}

TEST_F(FormWalk, NothingIsClippedAtTheUsualWidth)
{
    panel.resize(280, 900); // as docked on the first day
    forEachForm([&](const char* form) { expectNothingClipped(panel, form); });
}

TEST_F(FormWalk, NothingIsClippedWithTypeTwiceAsLarge)
{
    const QFont usual = QApplication::font();
    QFont large = usual;
    large.setPointSizeF(usual.pointSizeF() * 2.0);
    QApplication::setFont(large);
    forEachForm([&](const char* form) { expectNothingClipped(panel, form); });
    QApplication::setFont(usual);
}

TEST_F(FormWalk, EveryTargetIsLargeEnoughToHit)
{
    forEachForm([&](const char* form) {
        for (auto* widget : panel.form()->findChildren<QWidget*>()) {
            if (!(widget->focusPolicy() & Qt::TabFocus) || !widget->isVisible() || widget->focusProxy())
                continue;
            EXPECT_GE(widget->height(), ui::style::leastTarget)
                << form << ": " << widget->accessibleName().toStdString();
        }
    });
}

} // namespace
} // namespace sumpwright::tests
