#include "ui/canvas/ink.hpp"

#include "ui/style/type.hpp"

namespace sumpwright::ui::canvas
{

QPen Ink::truePen(const QColor& colour, double width) const
{
    QPen pen(colour, width);
    pen.setCapStyle(Qt::FlatCap);
    pen.setJoinStyle(Qt::MiterJoin);
    return pen;
}

QPen Ink::pen(const QColor& colour, double widthPixels) const { return truePen(colour, px(widthPixels)); }

QPen Ink::dashed(QPen pen, std::initializer_list<double> pixels) const
{
    QList<qreal> pattern;
    for (const double length : pixels)
        pattern.append(px(length) / qMax(pen.widthF(), 1e-6));
    pen.setDashPattern(pattern);
    return pen;
}

QColor blend(const QColor& a, const QColor& b, double fraction)
{
    const auto mix = [fraction](double x, double y) { return static_cast<float>(x + (y - x) * fraction); };
    return QColor::fromRgbF(mix(a.redF(), b.redF()), mix(a.greenF(), b.greenF()), mix(a.blueF(), b.blueF()));
}

namespace
{
// Lettering is laid out in pixels, whatever the resolution of the paper it lands on.
QFont inPixelSize(QFont font, int pixels)
{
    font.setPixelSize(pixels);
    font.setStyleStrategy(QFont::PreferAntialias);
    return font;
}
} // namespace

QFont letterFont() { return inPixelSize(style::bodyFont(), 12); }
QFont strongLetterFont() { return inPixelSize(style::strongFont(), 13); }

} // namespace sumpwright::ui::canvas
