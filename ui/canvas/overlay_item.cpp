#include "ui/canvas/overlay_item.hpp"

#include <QFontMetricsF>
#include <QPainter>

#include "ui/canvas/dimension_item.hpp"

namespace sumpwright::ui::canvas
{

namespace
{
constexpr double around = 300.0;    // pixels: letters beside the pointer
constexpr double handleSide = 10.0; // pixels drawn; the target is larger

// Letters on a small ground of paper, so that they read over any drawing.
void paintPlate(QPainter& painter, const style::Theme& theme, QPointF at, const QString& text, const QColor& colour)
{
    const QFontMetricsF metrics(letterFont());
    const QRectF plate(at, QSizeF(metrics.horizontalAdvance(text) + 10.0, metrics.height() + 4.0));
    painter.setPen(QPen(colour, 1.0));
    painter.setBrush(theme.paper);
    painter.drawRect(plate);
    painter.setPen(theme.ink);
    painter.setFont(letterFont());
    painter.drawText(plate, Qt::AlignCenter, text);
}
} // namespace

OverlayItem::OverlayItem(const Drawing& drawing) : m_drawing(drawing) { setZValue(100.0); }

void OverlayItem::show(Overlay overlay)
{
    if (overlay.empty() && m_overlay.empty())
        return;
    prepareGeometryChange();
    m_overlay = std::move(overlay);
    update();
}

void OverlayItem::drawingChanged()
{
    prepareGeometryChange();
    update();
}

QRectF OverlayItem::boundingRect() const
{
    if (m_overlay.empty())
        return {};
    const double grow = m_drawing.pixel * (m_overlay.cue || !m_overlay.readOut.isEmpty() ? around : 40.0);
    return m_overlay.extent().adjusted(-grow, -grow, grow, grow);
}

void OverlayItem::paint(QPainter* painter, const QStyleOptionGraphicsItem*, QWidget*)
{
    const Ink ink = m_drawing.ink();
    const auto& theme = *ink.theme;
    paintSketch(*painter, ink);
    painter->setPen(ink.dashed(ink.pen(theme.snap, weight::thin), {4.0, 3.0}));
    for (const auto& guide : m_overlay.guides)
        painter->drawLine(guide);
    for (const auto& figure : m_overlay.figures)
        paintDimension(*painter, ink, figure.from, figure.to, figure.offset, figure.text, theme.accent);
    if (m_overlay.marquee) {
        QColor wash = theme.selection;
        wash.setAlphaF(0.08F);
        const QPen pen = ink.pen(theme.selection, weight::thin);
        painter->setPen(m_overlay.marqueeTouching ? ink.dashed(pen, {5.0, 3.0}) : pen);
        painter->setBrush(wash);
        painter->drawRect(*m_overlay.marquee);
    }
    paintHandles(*painter, ink);
    if (m_overlay.crosshair) {
        inPixels(*painter, ink, *m_overlay.crosshair, 0.0, [&] {
            painter->setPen(QPen(theme.accent, weight::medium));
            painter->drawLine(QPointF(-20.0, 0.0), QPointF(20.0, 0.0));
            painter->drawLine(QPointF(0.0, -20.0), QPointF(0.0, 20.0));
        });
    }
    paintCue(*painter, ink);
    paintReadOut(*painter, ink);
}

void OverlayItem::paintSketch(QPainter& painter, const Ink& ink) const
{
    if (m_overlay.sketch.isEmpty())
        return;
    painter.setBrush(Qt::NoBrush);
    if (m_overlay.sketchWidth > 0.0) {
        QPen pipe =
            ink.truePen(blend(ink.theme->paper, ink.theme->waterLine, 0.4), ink.atLeast(m_overlay.sketchWidth, 3.0));
        pipe.setJoinStyle(Qt::RoundJoin);
        painter.setPen(pipe);
        painter.drawPolyline(m_overlay.sketch);
    }
    painter.setPen(ink.pen(ink.theme->accent, weight::medium));
    if (m_overlay.sketchClosed)
        painter.drawPolygon(m_overlay.sketch);
    else
        painter.drawPolyline(m_overlay.sketch);
    painter.setBrush(ink.theme->paper);
    for (const QPointF& corner : m_overlay.sketch)
        painter.drawEllipse(corner, ink.px(3.0), ink.px(3.0));
}

void OverlayItem::paintHandles(QPainter& painter, const Ink& ink) const
{
    for (const auto& handle : m_overlay.handles) {
        inPixels(painter, ink, handle.at, handle.turn, [&] {
            painter.setPen(QPen(ink.theme->selection, weight::medium));
            painter.setBrush(ink.theme->paper);
            const QRectF square(-handleSide / 2.0, -handleSide / 2.0, handleSide, handleSide);
            switch (handle.kind) {
            case HandleKind::corner:
            case HandleKind::side:
                painter.drawRect(square);
                break;
            case HandleKind::vertex:
                painter.drawEllipse(square);
                break;
            case HandleKind::turn:
                painter.drawEllipse(square);
                painter.drawArc(square.adjusted(-4.0, -4.0, 4.0, 4.0), 20 * 16, 140 * 16);
                break;
            }
        });
    }
}

void OverlayItem::paintCue(QPainter& painter, const Ink& ink) const
{
    if (!m_overlay.cue)
        return;
    const auto& cue = *m_overlay.cue;
    inPixels(painter, ink, cue.at, 0.0, [&] {
        painter.setPen(QPen(ink.theme->snap, weight::bold));
        painter.setBrush(Qt::NoBrush);
        const QRectF square(-7.0, -7.0, 14.0, 14.0);
        switch (cue.kind) {
        case CueKind::grid:
            painter.drawLine(QPointF(-6.0, 0.0), QPointF(6.0, 0.0));
            painter.drawLine(QPointF(0.0, -6.0), QPointF(0.0, 6.0));
            break;
        case CueKind::edge:
        case CueKind::line:
            painter.drawLine(QPointF(-6.0, -6.0), QPointF(6.0, 6.0));
            painter.drawLine(QPointF(-6.0, 6.0), QPointF(6.0, -6.0));
            break;
        case CueKind::centre:
        case CueKind::vertex:
            painter.drawPolygon(QPolygonF{{0.0, -8.0}, {8.0, 0.0}, {0.0, 8.0}, {-8.0, 0.0}});
            break;
        case CueKind::port:
        case CueKind::pump:
        case CueKind::tee:
            painter.drawEllipse(square);
            break;
        case CueKind::run:
            painter.drawRect(square);
            break;
        }
        if (!cue.name.isEmpty())
            paintPlate(painter, *ink.theme, QPointF(12.0, -30.0), cue.name, ink.theme->snap);
    });
}

void OverlayItem::paintReadOut(QPainter& painter, const Ink& ink) const
{
    if (m_overlay.readOut.isEmpty())
        return;
    inPixels(painter, ink, m_overlay.readOutAt, 0.0,
             [&] { paintPlate(painter, *ink.theme, QPointF(14.0, 14.0), m_overlay.readOut, ink.theme->faint); });
}

} // namespace sumpwright::ui::canvas
