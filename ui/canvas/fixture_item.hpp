// FixtureItem: wall, door with its swing, post, power point.
#pragma once

#include <memory>

#include "ui/canvas/element_item.hpp"

namespace sumpwright::ui::canvas
{

class FixtureItem final : public ElementItem
{
public:
    using Pointer = std::shared_ptr<const plan::Fixture>;
    FixtureItem(Pointer fixture, const Drawing& drawing);
    void show(Pointer fixture);

protected:
    QPainterPath outline() const override { return m_outline; }
    double margin() const override;
    void draw(QPainter& painter, const Ink& ink) const override;
    void drawingChanged() override;

private:
    void refresh();
    void drawDoor(QPainter& painter, const Ink& ink) const;

    Pointer m_fixture;
    QPainterPath m_outline;
};

// Corners of a wall's or a door's opening, scene coordinates.
QPolygonF bandOf(QPointF from, QPointF to, double thickness);

} // namespace sumpwright::ui::canvas
