// The outline of a vessel as a path around its centre: own x right, own y up (drawn down), scene millimetres, unturned.
#pragma once

#include <QPainterPath>
#include <QPointF>

#include <vector>

#include "core/plan/vessel.hpp"

namespace sumpwright::ui::canvas
{

QPainterPath outsidePath(const plan::Vessel& vessel);
QPainterPath insidePath(const plan::Vessel& vessel); // empty where the walls leave nothing
QRectF outsideRect(const plan::Vessel& vessel);
// Centres of legs or piers, spread over the corners first, then along the longer sides. Square pads of `padSide`.
std::vector<QPointF> legPlaces(const plan::Vessel& vessel);
// The wall nearest to a port: the direction out of the vessel there, degrees clockwise, unturned.
double outwardTurn(const plan::Vessel& vessel, QPointF offset);

} // namespace sumpwright::ui::canvas
