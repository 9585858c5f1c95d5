#include "ui/canvas/hidden_edges_item.hpp"

#include <QPainter>

namespace sumpwright::ui::canvas
{

void HiddenEdgesItem::show(std::vector<Pair> pairs)
{
    if (pairs.empty() && m_pairs.empty())
        return;
    prepareGeometryChange();
    m_pairs = std::move(pairs);
    m_bounds = {};
    for (const auto& pair : m_pairs)
        m_bounds = m_bounds.united(pair.above.boundingRect());
    update();
}

void HiddenEdgesItem::paint(QPainter* painter, const QStyleOptionGraphicsItem*, QWidget*)
{
    const Ink ink = m_drawing.ink();
    painter->setBrush(Qt::NoBrush);
    painter->setPen(ink.dashed(ink.pen(ink.theme->ink, weight::thin), {6.0, 4.0}));
    for (const auto& pair : m_pairs) {
        painter->save();
        painter->setClipPath(pair.above, Qt::IntersectClip);
        painter->drawPath(pair.below);
        painter->restore();
    }
}

} // namespace sumpwright::ui::canvas
