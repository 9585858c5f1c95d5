// LabelLayer: all letters of the drawing, above everything drawn and below the tool's marks.
#pragma once

#include <QGraphicsItem>

#include <map>
#include <vector>

#include "ui/canvas/drawing.hpp"
#include "ui/canvas/label_placement.hpp"

namespace sumpwright::ui::canvas
{

class LabelLayer final : public QGraphicsItem
{
public:
    explicit LabelLayer(const Drawing& drawing) : m_drawing(drawing) { setFlag(ItemUsesExtendedStyleOption); }
    void show(std::vector<LabelWish> wishes, const Clutter& clutter);

    struct Shown {
        base::Id element;
        int part = 0;
        LabelText text;
        LabelSpot spot;
        QRectF rect; // scene
        friend bool operator==(const Shown& a, const Shown& b)
        {
            return a.element == b.element && a.part == b.part && a.text == b.text && a.rect == b.rect;
        }
    };
    const std::vector<Shown>& shown() const { return m_shown; }

    QRectF boundingRect() const override { return m_bounds; }
    QPainterPath shape() const override { return {}; }
    void paint(QPainter* painter, const QStyleOptionGraphicsItem* option, QWidget*) override;

private:
    const Drawing& m_drawing;
    std::vector<Shown> m_shown;
    std::map<LabelKey, std::size_t> m_former;
    QRectF m_bounds;
};

} // namespace sumpwright::ui::canvas
