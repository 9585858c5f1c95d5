// Hatching by straight lines at 45 degrees inside a rectangle, spaced by a round number of millimetres so that it
// keeps still while one zooms.
#pragma once

#include <QLineF>
#include <QRectF>

#include <vector>

namespace sumpwright::ui::canvas
{

// The smallest of 1, 2, 5, 10, 20, 50 ... that is at least this.
double roundUp125(double atLeast);
// The largest of them that is at most this.
double roundDown125(double atMost);

std::vector<QLineF> hatchLines(const QRectF& rect, double spacing);

} // namespace sumpwright::ui::canvas
