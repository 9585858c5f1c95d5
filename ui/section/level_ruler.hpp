// The ruler of levels along the left edge of a sheet, in the reader's unit, with the datum; and its lines across.
#pragma once

#include <QString>

#include <vector>

#include "ui/section/page.hpp"

namespace sumpwright::ui::section
{

constexpr double rulerWidth = 56.0; // pixels

struct LevelTick {
    units::Elevation level = units::elevationMetres(0.0);
    bool main = false;
    QString text; // of main ticks, without the unit
};
// From the lower to the upper level; `tall` pixels a metre.
std::vector<LevelTick> levelTicks(double low, double high, double tall, const canvas::Figures& figures);

void paintLevelLines(QPainter& painter, const Sheet& sheet, const Pens& pens);
void paintLevelRuler(QPainter& painter, const Sheet& sheet, const Pens& pens, const QRectF& strip);

} // namespace sumpwright::ui::section
