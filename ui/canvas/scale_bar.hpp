// ScaleBar: a bar of a round length, 1, 2 or 5 times a power of ten in the reader's unit, and its painting.
#pragma once

#include <QString>

#include "ui/canvas/figures.hpp"
#include "ui/canvas/ink.hpp"

namespace sumpwright::ui::canvas
{

struct ScaleBar {
    units::Length length;
    double pixels = 0.0; // its length on the sheet
    int parts = 4;       // blocks, filled and open by turns
    QString text;        // "2 m"
};
// The longest bar that takes at most `longest` pixels.
ScaleBar scaleBarFor(double pixel, const Figures& figures, double longest = 150.0);
constexpr double scaleBarHeight = 26.0; // pixels, letters included
// In pixels, the origin at its upper left; `extra` pixels on the right are for the last figure.
void paintScaleBar(QPainter& painter, const style::Theme& theme, const ScaleBar& bar);

} // namespace sumpwright::ui::canvas
