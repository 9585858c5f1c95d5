#include "ui/charts/readable_view.hpp"

#include <cmath>

#include <QBarCategoryAxis>
#include <QChart>
#include <QContextMenuEvent>
#include <QCoreApplication>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QValueAxis>
#include <QWheelEvent>

#include "ui/style/palette.hpp"

namespace sumpwright::ui::charts
{

namespace
{

// Least and most value of an axis; categories count -0.5 ... n-0.5.
std::pair<double, double> rangeOf(const QChart& chart, Qt::Orientation orientation)
{
    for (const QAbstractAxis* axis : chart.axes(orientation)) {
        if (const auto* value = qobject_cast<const QValueAxis*>(axis))
            return {value->min(), value->max()};
        if (const auto* rows = qobject_cast<const QBarCategoryAxis*>(axis))
            return {-0.5, static_cast<double>(rows->count()) - 0.5};
    }
    return {0.0, 1.0};
}

double distanceTo(const QRectF& box, const QPointF& at)
{
    const double dx = std::max({box.left() - at.x(), 0.0, at.x() - box.right()});
    const double dy = std::max({box.top() - at.y(), 0.0, at.y() - box.bottom()});
    return std::hypot(dx, dy);
}

} // namespace

ReadableView::ReadableView(QChart* chart, QWidget* parent) : QChartView(chart, parent)
{
    setFrameShape(QFrame::NoFrame);
    setRenderHint(QPainter::Antialiasing);
    setFocusPolicy(Qt::StrongFocus);
    viewport()->setFocusPolicy(Qt::NoFocus); // the view itself takes the keyboard, under its own name
    setMouseTracking(true);
    setContextMenuPolicy(Qt::NoContextMenu); // the panel has the menu
}

void ReadableView::mark(const QRectF& place, bool shown)
{
    m_mark = place;
    m_marked = shown;
    viewport()->update();
}

QRectF ReadableView::inScene(const QRectF& place) const
{
    const QRectF plot = chart()->mapRectToScene(chart()->plotArea());
    const auto [x0, x1] = rangeOf(*chart(), Qt::Horizontal);
    const auto [y0, y1] = rangeOf(*chart(), Qt::Vertical);
    if (x1 <= x0 || y1 <= y0)
        return {};
    const auto x = [&, left = x0, right = x1](double v) {
        return plot.left() + plot.width() * (v - left) / (right - left);
    };
    const auto y = [&, low = y0, high = y1](double v) {
        return plot.bottom() - plot.height() * (v - low) / (high - low);
    };
    return QRectF(QPointF(x(place.left()), y(place.bottom())), QPointF(x(place.right()), y(place.top())));
}

int ReadableView::nearest(const std::vector<Reading>& readings, const QPoint& at) const
{
    const QPointF point = mapToScene(at);
    int best = -1;
    double bestDistance = 24.0;
    for (std::size_t i = 0; i < readings.size(); ++i) {
        const double distance = distanceTo(inScene(readings[i].place), point);
        if (distance < bestDistance) {
            bestDistance = distance;
            best = static_cast<int>(i);
        }
    }
    return best;
}

void ReadableView::drawForeground(QPainter* painter, const QRectF& area)
{
    QChartView::drawForeground(painter, area);
    if (!m_marked)
        return;
    const style::Theme& theme = style::themeOf(*this);
    QRectF box = inScene(m_mark);
    painter->setPen(QPen(theme.accent, 2.0));
    painter->setBrush(Qt::NoBrush);
    if (m_mark.width() == 0.0 && m_mark.height() == 0.0) {
        painter->drawEllipse(box.center(), 6.0, 6.0);
    } else {
        painter->drawRect(box.adjusted(-1.5, -1.5, 1.5, 1.5));
    }
}

void ReadableView::mouseMoveEvent(QMouseEvent* event)
{
    Q_EMIT pointed(event->pos());
    QChartView::mouseMoveEvent(event);
}

void ReadableView::mouseDoubleClickEvent(QMouseEvent* event) { Q_EMIT activated(event->pos()); }

void ReadableView::leaveEvent(QEvent* event)
{
    Q_EMIT left();
    QChartView::leaveEvent(event);
}

void ReadableView::keyPressEvent(QKeyEvent* event)
{
    switch (event->key()) {
    case Qt::Key_Left:
    case Qt::Key_Right:
    case Qt::Key_Up:
    case Qt::Key_Down:
    case Qt::Key_Home:
    case Qt::Key_End:
    case Qt::Key_Return:
    case Qt::Key_Enter:
    case Qt::Key_Escape:
        Q_EMIT keyPressed(event->key());
        event->accept();
        return;
    case Qt::Key_F10: // the menu key's stand-in
        if (event->modifiers() != Qt::ShiftModifier)
            break;
        QContextMenuEvent wanted(QContextMenuEvent::Keyboard, rect().center(), mapToGlobal(rect().center()));
        QCoreApplication::sendEvent(parentWidget(), &wanted);
        event->accept();
        return;
    }
    QChartView::keyPressEvent(event);
}

void ReadableView::wheelEvent(QWheelEvent* event) { event->ignore(); } // the column scrolls

} // namespace sumpwright::ui::charts
