// UnderlayItem: the site sketch or photograph under the plan, at its scale; a frame with its name where it is missing.
#pragma once

#include <QGraphicsItem>
#include <QPixmap>

#include <memory>

#include "ui/canvas/drawing.hpp"

namespace sumpwright::ui::canvas
{

class UnderlayItem final : public QGraphicsItem
{
public:
    using Pointer = std::shared_ptr<const plan::Underlay>;
    explicit UnderlayItem(const Drawing& drawing) : m_drawing(drawing) {}
    void show(Pointer underlay); // null: none

    QRectF boundingRect() const override;
    QPainterPath shape() const override { return {}; } // not picked with the pointer
    void paint(QPainter* painter, const QStyleOptionGraphicsItem*, QWidget*) override;

private:
    const Drawing& m_drawing;
    Pointer m_underlay;
    QString m_loaded; // the path the picture came from
    QPixmap m_picture;
    QSizeF m_fullSize; // of the picture as stored: large ones are kept smaller
};

} // namespace sumpwright::ui::canvas
