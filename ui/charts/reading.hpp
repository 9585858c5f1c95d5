// Reading: one value of a chart as it is read aloud, with its place in the chart and the element it belongs to.
// ChartTable: all values of a chart as a table, for CSV export: full precision, the unit in the second row.
#pragma once

#include <functional>
#include <optional>
#include <vector>

#include <QPointF>
#include <QRectF>
#include <QString>
#include <QStringList>

#include "core/assessment/working.hpp"
#include "core/base/id.hpp"

namespace sumpwright::ui::charts
{

// The worksheet a value comes from, made when it is asked for; empty, or nothing: it has none.
using WorkingOf = std::function<std::optional<assessment::Working>(const assessment::Assessment&)>;

struct Reading {
    QString text;     // "Grow beds, beds flooded: 812 L"
    base::Id element; // lights up in plan; none: nothing to show there
    QRectF place;     // in axis values: a bar's extent, or a point with no size
    WorkingOf working = {};
};

struct ChartTable {
    QStringList heads;
    QStringList units; // as many as heads
    std::vector<QStringList> rows;

    // RFC 4180: comma, CRLF, quotes where needed; numbers with the point.
    QString toCsv() const;
    static QString number(double value); // shortest text that reads back the same
};

} // namespace sumpwright::ui::charts
