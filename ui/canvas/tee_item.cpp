#include "ui/canvas/tee_item.hpp"

#include "ui/canvas/scene_point.hpp"
#include "ui/canvas/symbols.hpp"

namespace sumpwright::ui::canvas
{

TeeItem::TeeItem(const Pointer& tee, const Drawing& drawing) : ElementItem(tee->id, drawing) {}

void TeeItem::show(Pointer tee, double pipeWidth)
{
    if (tee == m_tee && pipeWidth == m_pipeWidth)
        return;
    if (pipeWidth != m_pipeWidth)
        prepareGeometryChange();
    m_tee = std::move(tee);
    m_pipeWidth = pipeWidth;
    setPos(toScene(m_tee->at));
    update();
}

double TeeItem::diameter() const { return drawing().ink().sign(m_pipeWidth * 1.1, 6.5); }

QPainterPath TeeItem::outline() const
{
    QPainterPath path;
    path.addEllipse(QPointF(), diameter() / 2.0, diameter() / 2.0);
    return path;
}

void TeeItem::draw(QPainter& painter, const Ink& ink) const { paintJoint(painter, ink, {}, diameter()); }

} // namespace sumpwright::ui::canvas
