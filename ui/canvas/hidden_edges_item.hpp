// HiddenEdgesItem: outlines of vessels that stand below others, dashed where the upper one covers them.
#pragma once

#include <QGraphicsItem>
#include <QPainterPath>

#include <vector>

#include "ui/canvas/drawing.hpp"

namespace sumpwright::ui::canvas
{

class HiddenEdgesItem final : public QGraphicsItem
{
public:
    explicit HiddenEdgesItem(const Drawing& drawing) : m_drawing(drawing) {}
    struct Pair {
        QPainterPath below; // scene coordinates
        QPainterPath above;
    };
    void show(std::vector<Pair> pairs);

    QRectF boundingRect() const override { return m_bounds; }
    QPainterPath shape() const override { return {}; }
    void paint(QPainter* painter, const QStyleOptionGraphicsItem*, QWidget*) override;

private:
    const Drawing& m_drawing;
    std::vector<Pair> m_pairs;
    QRectF m_bounds;
};

} // namespace sumpwright::ui::canvas
