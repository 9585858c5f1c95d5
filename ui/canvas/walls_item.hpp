// WallsItem: all walls as one drawn body, so that corners and junctions close.
#pragma once

#include <QGraphicsItem>
#include <QPainterPath>

#include "ui/canvas/drawing.hpp"

namespace sumpwright::ui::canvas
{

class WallsItem final : public QGraphicsItem
{
public:
    explicit WallsItem(const Drawing& drawing) : m_drawing(drawing) {}
    void show(const plan::Table<plan::Fixture>& fixtures);

    QRectF body() const { return m_body.boundingRect(); }

    QRectF boundingRect() const override;
    QPainterPath shape() const override { return {}; } // each wall's own item is picked
    void paint(QPainter* painter, const QStyleOptionGraphicsItem*, QWidget*) override;

private:
    const Drawing& m_drawing;
    QPainterPath m_body;
};

} // namespace sumpwright::ui::canvas
