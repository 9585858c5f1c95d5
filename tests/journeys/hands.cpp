#include "tests/journeys/hands.hpp"

#include <cmath>

#include <gtest/gtest.h>

#include <QAbstractButton>
#include <QApplication>
#include <QComboBox>
#include <QFile>
#include <QFileDialog>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QRegularExpression>
#include <QTimer>
#include <QTreeView>
#include <QWheelEvent>
#include <QWindow>

#include "ui/canvas/plan_view.hpp"
#include "ui/canvas/scene_point.hpp"
#include "ui/document/document.hpp"
#include "ui/window/main_window.hpp"

namespace sumpwright::tests
{

double numberOf(const QString& text)
{
    QString plain = text;
    plain.remove(QRegularExpression(QStringLiteral("[\\s\u2009\u202f\u00a0\u00b1+]"))).replace(QChar(0x2212), u'-');
    static const QRegularExpression form(QStringLiteral("^(-?[0-9.]+)(.*)$"));
    const auto match = form.match(plain);
    if (!match.hasMatch())
        return std::nan("");
    const QString unit = match.captured(2);
    const double factor = unit == QStringLiteral("mm") ? 1e-3 : unit == QStringLiteral("%") ? 1e-2 : 1.0;
    return match.captured(1).toDouble() * factor;
}

bool saysTheSame(const QString& shown, const QString& wanted)
{
    const double a = numberOf(shown);
    const double b = numberOf(wanted);
    return std::isnan(b) ? shown == wanted : std::fabs(a - b) < 1e-9;
}

void Hands::key(Qt::Key key, Qt::KeyboardModifiers with)
{
    ++m_events;
    QWidget* top = QApplication::activePopupWidget();
    if (!top)
        top = QApplication::activeModalWidget();
    QTest::keyClick(top ? top->windowHandle() : m_window.windowHandle(), key, with);
}

void Hands::typeWords(const QString& text)
{
    QWidget* top = QApplication::activeModalWidget();
    for (const QChar c : text) {
        ++m_events;
        QTest::keyClick(top ? top->windowHandle() : m_window.windowHandle(), c.toLatin1());
    }
}

// Until the numbers of the last edit are shown: they may move the rows of the form.
void Hands::watch()
{
    const auto& document = m_window.planView().document();
    EXPECT_TRUE(QTest::qWaitFor([&] { return document.assessment() && !document.stale(); }, 20000));
    QApplication::processEvents();
}

void Hands::confirm() { key(Qt::Key_Return); }

void Hands::mouse(QWidget& widget, QPoint at, bool down)
{
    ++m_events;
    QWindow* over = widget.window()->windowHandle();
    const QPoint place = widget.mapTo(widget.window(), at);
    down ? QTest::mousePress(over, Qt::LeftButton, {}, place) : QTest::mouseRelease(over, Qt::LeftButton, {}, place);
}

void Hands::move(QWidget& widget, QPoint at, bool)
{
    ++m_events;
    QTest::mouseMove(widget.window()->windowHandle(), widget.mapTo(widget.window(), at));
}

void Hands::press(QWidget& widget, QPoint at)
{
    move(widget, at, false);
    mouse(widget, at, true);
    mouse(widget, at, false);
}

void Hands::wheel(QWidget& over, int by)
{
    ++m_events;
    const QPointF at = QRectF(over.rect()).center();
    QWheelEvent event(at, over.mapToGlobal(at), {}, {0, by}, Qt::NoButton, {}, Qt::NoScrollPhase, false);
    QApplication::sendEvent(&over, &event);
}

QPoint Hands::pixelOf(double x, double y) const
{
    return m_window.planView().mapFromScene(ui::canvas::toScene(plan::Point{units::metres(x), units::metres(y)}));
}

QWidget* Hands::named(const QString& name) const
{
    const qsizetype star = name.indexOf(u'*');
    for (QWidget* widget : m_window.findChildren<QWidget*>()) {
        if (!widget->isVisible() || widget->focusPolicy() == Qt::NoFocus)
            continue;
        const QString has = widget->accessibleName();
        if (star < 0 ? has == name : has.startsWith(name.left(star)) && has.endsWith(u' ' + name.mid(star + 1)))
            return widget;
    }
    return nullptr;
}

QString Hands::shownIn(const QString& name) const
{
    QWidget* widget = named(name);
    if (auto* line = qobject_cast<QLineEdit*>(widget))
        return line->text();
    if (auto* box = qobject_cast<QComboBox*>(widget))
        return box->currentText();
    return {};
}

QTreeView* Hands::outlineAt(const QString& tag, QModelIndex& line) const
{
    for (auto* tree : m_window.findChildren<QTreeView*>()) {
        if (!tree->isVisible())
            continue;
        const auto found = tree->model()->match(tree->model()->index(0, 0), Qt::DisplayRole, tag, 1,
                                                Qt::MatchExactly | Qt::MatchRecursive);
        if (found.isEmpty())
            continue;
        line = found[0];
        return tree;
    }
    ADD_FAILURE() << "the outline has no " << tag.toStdString();
    return nullptr;
}

QString Hands::toldOf(const QString& tag) const
{
    QModelIndex line;
    return outlineAt(tag, line) ? line.siblingAtColumn(1).data().toString() : QString();
}

void Hands::corner(double x, double y, double fromX, double fromY)
{
    const auto onGrid = [](double v) { return std::fabs(v * 10.0 - std::round(v * 10.0)) < 1e-6; };
    const bool sameX = std::fabs(x - fromX) < 1e-6;
    const bool sameY = std::fabs(y - fromY) < 1e-6;
    if ((sameX || (onGrid(x) && onGrid(fromX))) && (sameY || (onGrid(y) && onGrid(fromY))))
        return point(x, y);
    ASSERT_TRUE(sameX || sameY) << "lengths are typed along x or y";
    // Somewhere on that side, on the grid; what is typed says how far.
    const auto side = [](double v, double from) {
        return v > from ? std::ceil(v * 10.0) / 10.0 : std::floor(v * 10.0) / 10.0;
    };
    const double length = sameX ? std::fabs(y - fromY) : std::fabs(x - fromX);
    point(sameX ? x : side(x, fromX), sameY ? y : side(y, fromY), QString::number(length, 'f', 3));
}

void Hands::level(const QString& text)
{
    QWidget* field = named(QStringLiteral("Level"));
    ASSERT_TRUE(field);
    goTo(*field);
    ASSERT_EQ(QApplication::focusWidget(), field);
    key(Qt::Key_A, Qt::ControlModifier);
    typeWords(text);
    confirm();
    EXPECT_EQ(QApplication::focusWidget(), &m_window.planView()) << "level refused: " << text.toStdString();
}

void Hands::pipe(const QString& words) { choose(QStringLiteral("Pipe"), words); }

void Hands::saveAs(const QString& path)
{
    QTimer hands;
    QObject::connect(&hands, &QTimer::timeout, &hands, [&] {
        if (!qobject_cast<QFileDialog*>(QApplication::activeModalWidget()))
            return;
        hands.stop();
        key(Qt::Key_A, Qt::ControlModifier); // the name has the keyboard when the box opens
        typeWords(path);
        confirm();
    });
    hands.start(20);
    command("file.save");
    EXPECT_TRUE(QTest::qWaitFor([&] { return QFile::exists(path); }, 5000)) << "nothing was saved";
}

void Hands::enter(const QString& name, const QString& text)
{
    QWidget* widget = named(name);
    ASSERT_TRUE(widget) << "no field " << name.toStdString();
    if (saysTheSame(shownIn(name), text))
        return;
    goTo(*widget);
    ASSERT_EQ(QApplication::focusWidget(), widget) << name.toStdString();
    key(Qt::Key_A, Qt::ControlModifier);
    typeWords(text);
    confirm();
    EXPECT_TRUE(saysTheSame(shownIn(name), text))
        << name.toStdString() << " shows " << shownIn(name).toStdString() << " for " << text.toStdString();
}

void Hands::choose(const QString& name, const QString& words)
{
    auto* box = qobject_cast<QComboBox*>(named(name));
    ASSERT_TRUE(box) << "no choice " << name.toStdString();
    if (box->currentText() == words)
        return;
    const int index = box->findText(words);
    ASSERT_GE(index, 0) << name.toStdString() << " does not offer " << words.toStdString();
    goTo(*box);
    pick(*box, index);
    EXPECT_EQ(shownIn(name).toStdString(), words.toStdString());
}

} // namespace sumpwright::tests
