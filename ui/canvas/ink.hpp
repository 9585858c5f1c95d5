// Ink: pens and lettering of the drawing. Line weights and letters keep their size on the sheet whatever the zoom:
// they are given in pixels (1/96 inch) and turned into scene millimetres by `pixel`, so paper and SVG get true widths.
// Signs and notes shrink on small drawings.
#pragma once

#include <QColor>
#include <QFont>
#include <QPainter>
#include <QPen>

#include <initializer_list>

#include "ui/style/palette.hpp"

namespace sumpwright::ui::canvas
{

// Widths in steps of about 1:1.4, pixels.
namespace weight
{
constexpr double hair = 0.7;
constexpr double thin = 1.0;
constexpr double medium = 1.4;
constexpr double bold = 2.0;
} // namespace weight

struct Ink {
    const style::Theme* theme = nullptr;
    double pixel = 1.0; // scene millimetres per pixel

    double px(double pixels) const { return pixels * pixel; }
    // The larger of a true size in millimetres and a least size in pixels.
    double atLeast(double trueSize, double pixels) const { return qMax(trueSize, px(pixels)); }
    // Signs keep their size on the sheet down to 1:60; on smaller drawings they shrink with what is drawn, down to two
    // fifths, so that they do not cover it.
    double signShare() const { return qBound(0.4, 16.0 / pixel, 1.0); }
    double signPx(double pixels) const { return px(pixels * signShare()); }
    double sign(double trueSize, double leastPixels) const { return qMax(trueSize, signPx(leastPixels)); }
    QPen pen(const QColor& colour, double widthPixels) const;
    // A pen of true width in millimetres.
    QPen truePen(const QColor& colour, double width) const;
    // Dashes in pixels, not in pen widths.
    QPen dashed(QPen pen, std::initializer_list<double> pixels) const;
};

// One opaque colour between two: 0 gives the first, 1 the second.
QColor blend(const QColor& a, const QColor& b, double fraction);

QFont letterFont();       // labels and figures
QFont strongLetterFont(); // tags
// Runs `paint` in pixels around a scene place, turned clockwise in degrees.
template <class Paint> void inPixels(QPainter& painter, const Ink& ink, QPointF place, double turn, Paint&& paint)
{
    painter.save();
    painter.translate(place);
    painter.rotate(turn);
    painter.scale(ink.pixel, ink.pixel);
    paint();
    painter.restore();
}

} // namespace sumpwright::ui::canvas
