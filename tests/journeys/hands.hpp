// Hands: a person at the window, by the mouse or by the keys alone. Every act goes as events to the window on screen;
// what is looked at is what is shown: texts, the places of widgets, the pointer's figures in the status line.
#pragma once

#include <QPoint>
#include <QRect>
#include <QString>
#include <QTest>

QT_BEGIN_NAMESPACE
class QComboBox;
class QModelIndex;
class QTreeView;
class QWidget;
QT_END_NAMESPACE

namespace sumpwright::ui::window
{
class MainWindow;
}

namespace sumpwright::tests
{

// Reads "450 mm", "+0.93 m", "45 %", "0.28 /kWh" as a bare number in SI; NaN where there is none.
double numberOf(const QString& text);
bool saysTheSame(const QString& shown, const QString& wanted); // as numbers of one kind or as words

class Hands
{
public:
    explicit Hands(ui::window::MainWindow& window) : m_window(window) {}
    virtual ~Hands() = default;

    virtual void command(const char* id) = 0; // from its menu, or by its key
    // On the plan, in metres; connects where something is near. A length typed counts from the point before.
    virtual void point(double x, double y, const QString& typed = {}) = 0;
    virtual void drag(double x0, double y0, double x1, double y1) = 0; // or the two corners, one after the other
    virtual void select(const QString& tag) = 0;                       // an element
    virtual void goTo(QWidget& widget) = 0;                            // gives it the keyboard
    virtual void push(const QString& name) = 0;                        // a button of the form
    virtual void pick(QComboBox& box, int index) = 0;                  // the box has the keyboard
    virtual void backToPlan() = 0;
    virtual void endLine() = 0; // of walls, that would go on

    // The next corner of a line from the last one: to the grid, or by its length typed.
    void corner(double x, double y, double fromX, double fromY);
    void enter(const QString& name, const QString& text); // into the field of that name, unless it is there already
    void choose(const QString& name, const QString& words);
    void level(const QString& text); // of the run being drawn
    void pipe(const QString& words);
    void typeWords(const QString& text); // where the keyboard is
    void confirm();                      // Enter
    void saveAs(const QString& path);

    QWidget* named(const QString& name) const; // visible; "Level, *I1" where the middle is not told. Null: none
    QString shownIn(const QString& name) const;
    QString toldOf(const QString& tag) const; // what the outline says it is
    int events() const { return m_events; }
    void wheel(QWidget& over, int by);

protected:
    void key(Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier);
    void press(QWidget& widget, QPoint at); // by the mouse, where it lies on screen
    void mouse(QWidget& widget, QPoint at, bool down);
    void move(QWidget& widget, QPoint at, bool held);
    void watch();
    QTreeView* outlineAt(const QString& tag, QModelIndex& line) const;
    QPoint pixelOf(double x, double y) const;
    ui::window::MainWindow& window() const { return m_window; }

private:
    ui::window::MainWindow& m_window;
    int m_events = 0;
};

class MouseHands final : public Hands
{
public:
    using Hands::Hands;
    void command(const char* id) override;
    void point(double x, double y, const QString& typed = {}) override;
    void drag(double x0, double y0, double x1, double y1) override;
    void select(const QString& tag) override;
    void goTo(QWidget& widget) override;
    void push(const QString& name) override;
    void pick(QComboBox& box, int index) override;
    void backToPlan() override {}
    void endLine() override {} // taking another tool does

private:
    bool reveal(QWidget& widget);
};

class KeyHands final : public Hands
{
public:
    using Hands::Hands;
    void command(const char* id) override;
    void point(double x, double y, const QString& typed = {}) override;
    void drag(double x0, double y0, double x1, double y1) override;
    void select(const QString& tag) override;
    void goTo(QWidget& widget) override;
    void push(const QString& name) override;
    void pick(QComboBox& box, int index) override;
    void backToPlan() override;
    void endLine() override { key(Qt::Key_Escape); }

private:
    bool moveOnce(double x, double y);
    bool m_fresh = true; // the tool was just taken: its crosshair is still to be called
};

} // namespace sumpwright::tests
