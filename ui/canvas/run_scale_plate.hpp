// The printed scale of the runs' colours: what they tell, of which state, each class with its limits, and the marks.
#pragma once

#include <QSizeF>

#include "ui/canvas/drawing.hpp"

namespace sumpwright::ui::canvas
{

QSizeF runScaleSize(const Drawing& drawing); // pixels; empty where runs are coloured by nothing
// In pixels from the origin down, on its own ground.
void paintRunScale(QPainter& painter, const Drawing& drawing);
QString runScaleTitle(const Drawing& drawing); // "Velocity in the runs, least flow"

} // namespace sumpwright::ui::canvas
