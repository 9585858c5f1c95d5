// Legend: the symbols of the drawing, each with its meaning.
#pragma once

#include <QSizeF>
#include <QString>

#include <functional>
#include <vector>

#include "ui/canvas/ink.hpp"

namespace sumpwright::ui::canvas
{

struct LegendRow {
    QString meaning;
    std::function<void(QPainter&, const Ink&)> paint; // in pixels around the origin, 36 x 16
};
const std::vector<LegendRow>& legendRows();

QSizeF legendSize(int columns = 1);
// In pixels from the origin down, on its own ground.
void paintLegend(QPainter& painter, const style::Theme& theme, int columns = 1);

} // namespace sumpwright::ui::canvas
