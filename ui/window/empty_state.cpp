#include "ui/window/empty_state.hpp"

#include <QEvent>
#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>

#include "core/plan/plan.hpp"
#include "ui/style/palette.hpp"
#include "ui/style/type.hpp"

namespace sumpwright::ui::window
{

bool isBlank(const plan::Plan& plan)
{
    return plan.floor->outline.empty() && plan.vessels.empty() && plan.fixtures.empty() && plan.runs.empty() &&
           plan.tees.empty() && plan.notes.empty() && plan.dimensions.empty() && !plan.underlay;
}

EmptyState::EmptyState(QMenu* examples, QWidget* over) : QWidget(over), m_over(over)
{
    setObjectName(QStringLiteral("emptyState"));
    auto* rows = new QVBoxLayout(this);
    rows->setContentsMargins(3 * style::step, 3 * style::step, 3 * style::step, 3 * style::step);
    rows->setSpacing(style::step);
    auto* title = new QLabel(tr("An empty plan"));
    title->setFont(style::titleFont());
    rows->addWidget(title);
    auto* text = new QLabel(tr("Draw the floor to scale, then place tank, sump and beds on it.\n"
                               "The numbers begin with the first vessel."));
    rows->addWidget(text);
    rows->addSpacing(style::step);
    auto* draw = new QPushButton(tr("Draw the &floor"));
    draw->setMinimumHeight(style::leastTarget + style::step);
    connect(draw, &QPushButton::clicked, this, &EmptyState::drawFloorAsked);
    rows->addWidget(draw);
    auto* open = new QPushButton(tr("Open an e&xample"));
    open->setMinimumHeight(style::leastTarget + style::step);
    open->setMenu(examples);
    rows->addWidget(open);
    over->installEventFilter(this);
    settle();
}

bool EmptyState::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == m_over && event->type() == QEvent::Resize)
        settle();
    return QWidget::eventFilter(watched, event);
}

void EmptyState::settle()
{
    adjustSize();
    const QSize room = m_over->size();
    move(qMax(0, (room.width() - width()) / 2), qMax(0, (room.height() - height()) * 2 / 5));
}

void EmptyState::paintEvent(QPaintEvent*)
{
    const style::Theme& theme = style::themeOf(*this);
    QPainter painter(this);
    painter.setPen(theme.faint);
    painter.setBrush(theme.paper);
    painter.drawRect(rect().adjusted(0, 0, -1, -1));
}

} // namespace sumpwright::ui::window
