#include "ui/canvas/pump_item.hpp"

#include "ui/canvas/scene_point.hpp"
#include "ui/canvas/symbols.hpp"

namespace sumpwright::ui::canvas
{

namespace
{
constexpr double usualBody = 160.0; // own inference: a submersible pump of a few thousand L/h is about this wide
constexpr double leastBody = 17.0;  // pixels
} // namespace

PumpItem::PumpItem(const Pointer& pump, const Drawing& drawing) : ElementItem(pump->id, drawing) {}

void PumpItem::show(Pointer pump, plan::Point place, double turn)
{
    if (pump == m_pump && toScene(place) == pos() && turn == m_turn)
        return;
    m_pump = std::move(pump);
    m_turn = turn;
    setPos(toScene(place));
    update();
}

double PumpItem::diameter() const { return drawing().ink().sign(usualBody, leastBody); }

QPainterPath PumpItem::outline() const
{
    QPainterPath path;
    path.addEllipse(QPointF(), diameter() / 2.0, diameter() / 2.0);
    return path;
}

void PumpItem::draw(QPainter& painter, const Ink& ink) const
{
    paintPump(painter, ink, {}, m_turn, diameter(), m_pump->running);
}

} // namespace sumpwright::ui::canvas
