// OverlayItem: paints the active tool's overlay above the drawing.
#pragma once

#include <QGraphicsItem>

#include "ui/canvas/drawing.hpp"
#include "ui/canvas/overlay.hpp"

namespace sumpwright::ui::canvas
{

class OverlayItem final : public QGraphicsItem
{
public:
    explicit OverlayItem(const Drawing& drawing);
    void show(Overlay overlay);
    void drawingChanged();
    const Overlay& overlay() const { return m_overlay; }

    QRectF boundingRect() const override;
    QPainterPath shape() const override { return {}; }
    void paint(QPainter* painter, const QStyleOptionGraphicsItem*, QWidget*) override;

private:
    void paintSketch(QPainter& painter, const Ink& ink) const;
    void paintHandles(QPainter& painter, const Ink& ink) const;
    void paintCue(QPainter& painter, const Ink& ink) const;
    void paintReadOut(QPainter& painter, const Ink& ink) const;

    const Drawing& m_drawing;
    Overlay m_overlay;
};

} // namespace sumpwright::ui::canvas
