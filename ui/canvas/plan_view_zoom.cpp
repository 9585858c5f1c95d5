// PlanView: zoom, pan, and the room to scroll in.
#include <QScrollBar>
#include <QWheelEvent>

#include <algorithm>
#include <cmath>

#include "ui/canvas/furniture.hpp"
#include "ui/canvas/overlay_item.hpp"
#include "ui/canvas/plan_scene.hpp"
#include "ui/canvas/plan_view.hpp"
#include "ui/document/document.hpp"

namespace sumpwright::ui::canvas
{

namespace
{
constexpr double leastZoom = 0.004;
constexpr double mostZoom = 4.0;
constexpr double step = 1.25;
constexpr double sheetPixels = 96.0 / 25.4;                // pixels per millimetre of screen
const QRectF emptyPlan(-1000.0, -7000.0, 11000.0, 8000.0); // what an empty plan shows: 11 x 8 m
} // namespace

QRectF PlanView::visibleScene() const { return {mapToScene(QPoint()), QSizeF(viewport()->size()) * pixel()}; }

void PlanView::makeRoom(const QRectF& wanted)
{
    const QRectF content = m_scene->content();
    const QSizeF view = QSizeF(viewport()->size()) * pixel();
    const QRectF all =
        (content.isNull() ? emptyPlan : content).adjusted(-view.width(), -view.height(), view.width(), view.height());
    const QRectF needed =
        all.united(wanted.adjusted(-view.width() / 4.0, -view.height() / 4.0, view.width() / 4.0, view.height() / 4.0));
    if (needed != sceneRect())
        setSceneRect(needed);
}

void PlanView::setZoom(double zoom, QPointF scenePlace, QPointF viewPlace)
{
    m_fittedTo.reset();
    const double kept = std::clamp(zoom, leastZoom, mostZoom);
    const QSizeF size = QSizeF(viewport()->size()) / kept;
    const QRectF wanted(scenePlace - viewPlace / kept, size);
    setTransform(QTransform::fromScale(kept, kept));
    makeRoom(wanted);
    horizontalScrollBar()->setValue(static_cast<int>(std::lround(wanted.left() * kept)));
    verticalScrollBar()->setValue(static_cast<int>(std::lround(wanted.top() * kept)));
    m_scene->setPixel(pixel());
    m_overlayItem->drawingChanged();
    resetCachedContent();
    viewport()->update();
    m_furniture->refresh();
    if (m_tool)
        m_tool->planChanged();
    Q_EMIT zoomChanged();
}

void PlanView::zoomAbout(QPoint fixed, double factor)
{
    const QPointF place = mapToScene(QPoint()) + QPointF(fixed) * pixel();
    setZoom(zoom() * factor, place, fixed);
}

void PlanView::zoomIn() { zoomAbout(viewport()->rect().center(), step); }

void PlanView::zoomOut() { zoomAbout(viewport()->rect().center(), 1.0 / step); }

void PlanView::zoomToRect(const QRectF& scene)
{
    const double margin = 48.0;
    const QSizeF room(std::max(50.0, viewport()->width() - 2.0 * margin),
                      std::max(50.0, viewport()->height() - 2.0 * margin));
    const double fit =
        std::min(room.width() / std::max(scene.width(), 50.0), room.height() / std::max(scene.height(), 50.0));
    setZoom(fit, scene.center(), QPointF(viewport()->width(), viewport()->height()) / 2.0);
}

void PlanView::zoomToFit()
{
    const QRectF content = m_scene->content();
    const QRectF shown = content.isNull() ? emptyPlan : content;
    zoomToRect(shown);
    m_fitted = true;
    m_fittedTo = shown;
}

void PlanView::zoomToSelection()
{
    const QRectF extent = m_scene->extentOf(m_document.selection());
    if (extent.isNull())
        zoomToFit();
    else
        zoomToRect(extent.adjusted(-300.0, -300.0, 300.0, 300.0));
}

void PlanView::zoomToScale(double denominator)
{
    const QPointF centre(viewport()->width() / 2.0, viewport()->height() / 2.0);
    setZoom(sheetPixels / denominator, mapToScene(QPoint()) + centre * pixel(), centre);
}

double PlanView::scaleDenominator() const { return sheetPixels / zoom(); }

void PlanView::showElements(const std::vector<base::Id>& ids)
{
    const QRectF extent = m_scene->extentOf(ids);
    if (extent.isNull())
        return;
    const double air = 40.0 * pixel();
    const QRectF wanted = extent.adjusted(-air, -air, air, air);
    const QRectF visible = visibleScene();
    if (visible.contains(wanted))
        return;
    if (wanted.width() > visible.width() || wanted.height() > visible.height()) {
        zoomToRect(extent);
        return;
    }
    setZoom(zoom(), extent.center(), QPointF(viewport()->width(), viewport()->height()) / 2.0);
}

void PlanView::panBy(QPoint pixels)
{
    m_fittedTo.reset();
    const QRectF wanted = visibleScene().translated(QPointF(pixels) * pixel());
    makeRoom(wanted);
    horizontalScrollBar()->setValue(horizontalScrollBar()->value() + pixels.x());
    verticalScrollBar()->setValue(verticalScrollBar()->value() + pixels.y());
}

// The wheel zooms about the pointer; with Shift it pans across, with Ctrl it zooms finely.
void PlanView::wheelEvent(QWheelEvent* event)
{
    event->accept();
    const QPoint turn = event->angleDelta();
    if (event->modifiers() & Qt::ShiftModifier) {
        panBy(QPoint(-(turn.x() + turn.y()), 0));
        return;
    }
    if (turn.y() == 0)
        return;
    const double strength = event->modifiers() & Qt::ControlModifier ? 1.0004 : 1.0017;
    zoomAbout(event->position().toPoint(), std::pow(strength, turn.y()));
}

void PlanView::scrollContentsBy(int dx, int dy)
{
    QGraphicsView::scrollContentsBy(dx, dy);
    if (m_furniture)
        m_furniture->refresh();
}

void PlanView::resizeEvent(QResizeEvent* event)
{
    QGraphicsView::resizeEvent(event);
    makeRoom(visibleScene());
    if (m_furniture)
        m_furniture->layOut();
    if (const auto shown = m_fittedTo) {
        zoomToRect(*shown);
        m_fittedTo = shown;
    }
}

void PlanView::showEvent(QShowEvent* event)
{
    QGraphicsView::showEvent(event);
    if (!m_fitted)
        zoomToFit();
}

} // namespace sumpwright::ui::canvas
