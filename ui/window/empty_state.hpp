// EmptyState: what lies on an empty plan - two ways on, and nothing else. Goes as soon as something is drawn.
#pragma once

#include <QWidget>

QT_BEGIN_NAMESPACE
class QMenu;
QT_END_NAMESPACE

namespace sumpwright::plan
{
struct Plan;
}

namespace sumpwright::ui::window
{

bool isBlank(const plan::Plan& plan); // no floor and nothing on it

class EmptyState : public QWidget
{
    Q_OBJECT

public:
    // Lies in the middle of `over` and stays there when that is resized.
    EmptyState(QMenu* examples, QWidget* over);

Q_SIGNALS:
    void drawFloorAsked();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void settle();

    QWidget* m_over;
};

} // namespace sumpwright::ui::window
