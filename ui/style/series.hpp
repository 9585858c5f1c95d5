// How series and overlays are told apart: Okabe-Ito colour, dash and marker together, never colour alone.
#pragma once

#include <QColor>
#include <QList>
#include <QPainterPath>
#include <QPen>

#include "ui/style/palette.hpp"

namespace sumpwright::ui::style
{

enum class Marker { circle, square, triangle, diamond, cross };

constexpr int seriesCount = 5;
constexpr int fillCount = 7;

struct SeriesStyle {
    QString colourName; // in words, for legends and accessible names
    QColor line;
    QList<qreal> dash; // in pen widths; empty: solid
    Marker marker = Marker::circle;

    QPen pen(qreal width = 1.5) const; // cosmetic
};

// Filled areas and bars: the fill has an outline in ink and, from the second on, a hatch of its own.
struct FillStyle {
    QString colourName;
    QColor fill;
    QColor outline;
    Qt::BrushStyle hatch = Qt::SolidPattern; // drawn in outline colour over the fill when not solid
};

// index from 0; counts round after the last.
SeriesStyle seriesStyle(const Theme& theme, int index);
FillStyle fillStyle(const Theme& theme, int index);
QBrush brushOf(const FillStyle& style); // fill and hatch in one texture

QPainterPath markerPath(Marker marker, qreal size); // around the origin, size across

// One-hue scale for loads and pressures, from paper (0) to full water blue (1); print the number on it in inkOn().
QColor loadShade(const Theme& theme, double fraction);

} // namespace sumpwright::ui::style
