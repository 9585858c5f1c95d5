// Grid: the two steps of the grid lines at a zoom, and their painting. Fine lines are never closer than 9 px.
#pragma once

#include <QRectF>

#include "ui/canvas/ink.hpp"

namespace sumpwright::ui::canvas
{

struct GridSteps {
    double fine = 0.0; // scene millimetres
    double heavy = 0.0;
};
// `snapStep` is shown itself where there is room; further out multiples of it by 1, 2, 5, 10 ...
GridSteps gridStepsFor(double pixel, double snapStep);
void paintGrid(QPainter& painter, const Ink& ink, const QRectF& area, const GridSteps& steps);

} // namespace sumpwright::ui::canvas
