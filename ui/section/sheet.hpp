// Sheet: from places along a drawing (metres) and levels (metres above datum) to pixels and back. Heights may be drawn
// larger than lengths; then it is written on the drawing.
#pragma once

#include <QPointF>
#include <QRectF>

#include "core/report/profile.hpp"

namespace sumpwright::ui::section
{

struct Sheet {
    double scale = 100.0; // pixels per metre along
    double heights = 1.0; // how many times larger heights are drawn
    double origin = 0.0;  // pixel of 0 along
    double datum = 0.0;   // pixel of level 0
    QRectF room{};        // of the drawing, pixels

    double tall() const { return scale * heights; } // pixels per metre of level
    double x(units::Length along) const { return origin + units::inMetres(along) * scale; }
    double y(units::Elevation level) const { return datum - units::inMetres(level) * tall(); }
    QPointF at(units::Length along, units::Elevation level) const { return {x(along), y(level)}; }
    QPointF at(const report::ProfilePoint& point) const { return at(point.along, point.level); }
    QRectF rect(units::Length left, units::Length right, units::Elevation low, units::Elevation high) const
    {
        return {at(left, high), at(right, low)};
    }
    double levelAt(double y) const { return (datum - y) / tall(); } // metres
    double alongAt(double x) const { return (x - origin) / scale; } // metres
    double wide(units::Length length) const { return units::inMetres(length) * scale; }
    double high(units::Length length) const { return units::inMetres(length) * tall(); }
};

} // namespace sumpwright::ui::section
