// Between the plan and the scene: one scene unit is one millimetre, x right; the scene's y runs down, the plan's up.
#pragma once

#include <QPointF>
#include <QPolygonF>

#include <vector>

#include "core/plan/point.hpp"

namespace sumpwright::ui::canvas
{

inline double toScene(units::Length length) { return units::inMillimetres(length); }
inline QPointF toScene(plan::Point place) { return {units::inMillimetres(place.x), -units::inMillimetres(place.y)}; }
inline units::Length lengthFromScene(double sceneUnits) { return units::millimetres(sceneUnits); }
inline plan::Point toPlan(QPointF scene) { return {units::millimetres(scene.x()), units::millimetres(-scene.y())}; }
// For QGraphicsItem::setRotation and QPainter::rotate: degrees, clockwise on screen.
// Never the negative zero.
inline double sceneRotation(units::Angle counterClockwise) { return 0.0 - units::inDegrees(counterClockwise); }
QPolygonF toScene(const std::vector<plan::Point>& corners);

} // namespace sumpwright::ui::canvas
