// FloorItem: the slab - outline, level to datum, fall arrow with its slope, drain point. Its ground is filled below the
// grid.
#pragma once

#include <QGraphicsItem>

#include <memory>
#include <vector>

#include "ui/canvas/drawing.hpp"

namespace sumpwright::ui::canvas
{

class FloorItem final : public QGraphicsItem
{
public:
    using Pointer = std::shared_ptr<const plan::Floor>;
    explicit FloorItem(const Drawing& drawing) : m_drawing(drawing) {}
    void show(Pointer floor);
    void drawingChanged();
    // Walls that stand along the lower edge push the letters there further down.
    void standClearOf(const QRectF& walls);
    const QPolygonF& outline() const { return m_outline; }
    std::vector<QRectF> letterRooms() const; // of level and fall, scene

    QRectF boundingRect() const override;
    QPainterPath shape() const override { return {}; } // not picked with the pointer
    void paint(QPainter* painter, const QStyleOptionGraphicsItem*, QWidget*) override;

private:
    void drawFall(QPainter& painter, const Ink& ink) const;
    void drawLevel(QPainter& painter, const Ink& ink) const;
    QString level() const;
    QString fall() const;
    QPointF levelPlace() const;
    QPointF fallPlace() const;

    const Drawing& m_drawing;
    Pointer m_floor;
    QPolygonF m_outline;
    double m_clear = 0.0; // scene, below the outline
};

} // namespace sumpwright::ui::canvas
