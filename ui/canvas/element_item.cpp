#include "ui/canvas/element_item.hpp"

#include <QPainter>
#include <QPainterPathStroker>

#include "core/plan/edits/move.hpp"
#include "ui/text/subject.hpp"

namespace sumpwright::ui::canvas
{

namespace
{
constexpr double leastPick = 8.0;   // pixels
constexpr double markAround = 10.0; // pixels: small signs, the selection's outline
} // namespace

ElementItem::ElementItem(base::Id id, const Drawing& drawing) : m_id(id), m_drawing(drawing) {}

QString ElementItem::name() const { return text::subject(m_drawing.plan, m_id); }

QString ElementItem::description() const
{
    const auto place = plan::anchorOf(m_drawing.plan, m_id);
    return tr("at %1, %2").arg(m_drawing.figures.text(place.x), m_drawing.figures.text(place.y));
}

void ElementItem::setChosen(bool chosen)
{
    if (chosen == m_chosen)
        return;
    m_chosen = chosen;
    update();
}

void ElementItem::setLit(bool lit)
{
    if (lit == m_lit)
        return;
    m_lit = lit;
    update();
}

double ElementItem::margin() const { return m_drawing.ink().px(markAround); }

QRectF ElementItem::boundingRect() const
{
    const double around = margin();
    return outline().boundingRect().adjusted(-around, -around, around, around);
}

QPainterPath ElementItem::shape() const
{
    const QPainterPath path = outline();
    QPainterPathStroker around;
    around.setWidth(m_drawing.ink().px(leastPick));
    QPainterPath wide = around.createStroke(path);
    wide.setFillRule(Qt::WindingFill);
    if (!isLine())
        wide.addPath(path);
    return wide;
}

void ElementItem::paint(QPainter* painter, const QStyleOptionGraphicsItem*, QWidget*)
{
    const Ink ink = m_drawing.ink();
    if (m_lit)
        drawMark(*painter, ink, m_drawing.theme->accent);
    draw(*painter, ink);
    if (m_chosen)
        drawMark(*painter, ink, m_drawing.theme->selection);
}

void ElementItem::drawMark(QPainter& painter, const Ink& ink, const QColor& colour) const
{
    QPen pen = ink.pen(colour, isLine() ? 2.0 : 2.4);
    pen.setJoinStyle(Qt::RoundJoin);
    painter.setBrush(Qt::NoBrush);
    if (!isLine()) {
        painter.setPen(pen);
        painter.drawPath(outline());
        return;
    }
    QPainterPathStroker around;
    around.setWidth(ink.px(9.0) + 2.0 * (margin() - ink.px(markAround)));
    around.setCapStyle(Qt::FlatCap);
    painter.setPen(ink.pen(colour, weight::medium));
    painter.drawPath(around.createStroke(outline()).simplified());
}

void ElementItem::drawingChanged()
{
    prepareGeometryChange();
    update();
}

} // namespace sumpwright::ui::canvas
