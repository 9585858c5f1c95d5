// DimensionItem: a dimension line with extension lines, oblique end strokes and its figure above the line.
#pragma once

#include <QLineF>

#include <memory>
#include <vector>

#include "ui/canvas/element_item.hpp"

namespace sumpwright::ui::canvas
{

class DimensionItem final : public ElementItem
{
public:
    using Pointer = std::shared_ptr<const plan::DimensionLine>;
    DimensionItem(Pointer dimension, const Drawing& drawing);
    void show(Pointer dimension);
    std::vector<QLineF> lines() const; // the line itself and its extension lines, scene
    QRectF figureRoom() const;         // where the figure stands, scene

protected:
    QPainterPath outline() const override;
    bool isLine() const override { return true; }
    double margin() const override { return drawing().ink().px(26.0); }
    void draw(QPainter& painter, const Ink& ink) const override;

private:
    QString figure() const;

    Pointer m_dimension;
};

// The dimension line itself, moved off the measured points. Scene coordinates.
QLineF dimensionLine(QPointF from, QPointF to, double offset);
// Draws it with its figure; also used while one is being drawn.
void paintDimension(QPainter& painter, const Ink& ink, QPointF from, QPointF to, double offset, const QString& figure,
                    const QColor& colour);

} // namespace sumpwright::ui::canvas
