// BarModel: what a chart of horizontal stacked bars shows, as a value: rows, parts, segments, a limit line, words.
#pragma once

#include <optional>
#include <vector>

#include <QString>
#include <QStringList>

#include "ui/charts/reading.hpp"

namespace sumpwright::ui::charts
{

struct BarSegment {
    int row = 0;
    int part = 0;
    double value = 0.0; // in the axis unit, not negative
    QString reading;
    base::Id element;
    WorkingOf working = {};
};

struct LimitLine {
    double value = 0.0;
    QString label;
    WorkingOf working = {};
};

struct BarModel {
    QString sentence;
    WorkingOf working; // of the sentence's first figure
    QString axisTitle; // "Volume V (L)"
    QStringList rows;  // from the top
    QStringList parts; // in stacking order; the legend
    std::vector<BarSegment> segments;
    std::optional<LimitLine> limit;
    bool sideBySide = false; // parts beside each other instead of stacked
    ChartTable table;
};

} // namespace sumpwright::ui::charts
