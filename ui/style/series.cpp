#include "ui/style/series.hpp"

#include <algorithm>
#include <array>

#include <QCoreApplication>
#include <QPainter>
#include <QPixmap>

namespace sumpwright::ui::style
{

namespace
{

QString words(const char* text) { return QCoreApplication::translate("ColourNames", text); }

QColor blend(const QColor& from, const QColor& to, double part)
{
    const auto mix = [part](double a, double b) { return static_cast<float>(a + (b - a) * part); };
    return QColor::fromRgbF(mix(from.redF(), to.redF()), mix(from.greenF(), to.greenF()),
                            mix(from.blueF(), to.blueF()));
}

} // namespace

QPen SeriesStyle::pen(qreal width) const
{
    QPen pen(line, width);
    pen.setCosmetic(true);
    if (!dash.isEmpty())
        pen.setDashPattern(dash);
    return pen;
}

// Okabe and Ito's colours (2002). On dark, sky blue and white take the place of blue and black.
SeriesStyle seriesStyle(const Theme& t, int index)
{
    const bool dark = t.scheme == Scheme::dark;
    switch (index % seriesCount) {
    case 0:
        return {dark ? words("sky blue") : words("blue"), QColor(dark ? 0x56B4E9 : 0x0072B2), {}, Marker::circle};
    case 1:
        return {words("vermillion"), QColor(0xD55E00), {6, 3}, Marker::square};
    case 2:
        return {words("bluish green"), QColor(0x009E73), {2, 2}, Marker::triangle};
    case 3:
        return {words("reddish purple"), QColor(0xCC79A7), {8, 3, 2, 3}, Marker::diamond};
    default:
        return {dark ? words("white") : words("black"), QColor(dark ? 0xFFFFFF : 0x000000), {1, 3}, Marker::cross};
    }
}

FillStyle fillStyle(const Theme& t, int index)
{
    struct Row {
        const char* name;
        QRgb fill;
        Qt::BrushStyle hatch;
    };
    static constexpr std::array<Row, fillCount> rows{{
        {"sky blue", 0x56B4E9, Qt::SolidPattern},
        {"orange", 0xE69F00, Qt::BDiagPattern},
        {"yellow", 0xF0E442, Qt::SolidPattern},
        {"bluish green", 0x009E73, Qt::FDiagPattern},
        {"reddish purple", 0xCC79A7, Qt::SolidPattern},
        {"vermillion", 0xD55E00, Qt::HorPattern},
        {"blue", 0x0072B2, Qt::VerPattern},
    }};
    const Row& row = rows[static_cast<std::size_t>(index) % rows.size()];
    return {words(row.name), QColor(row.fill), t.ink, row.hatch};
}

QBrush brushOf(const FillStyle& style)
{
    if (style.hatch == Qt::SolidPattern)
        return style.fill;
    constexpr int tile = 8;
    QPixmap pixmap(tile, tile);
    pixmap.fill(style.fill);
    QPainter painter(&pixmap);
    QColor line = style.outline;
    line.setAlphaF(0.55F);
    painter.fillRect(pixmap.rect(), QBrush(line, style.hatch));
    return QBrush(pixmap);
}

QPainterPath markerPath(Marker marker, qreal size)
{
    const qreal r = size / 2;
    QPainterPath path;
    switch (marker) {
    case Marker::circle:
        path.addEllipse(QPointF(0, 0), r, r);
        break;
    case Marker::square:
        path.addRect(-r, -r, size, size);
        break;
    case Marker::triangle:
        path.addPolygon(QPolygonF({QPointF(0, -r), QPointF(r, r), QPointF(-r, r), QPointF(0, -r)}));
        break;
    case Marker::diamond:
        path.addPolygon(QPolygonF({QPointF(0, -r), QPointF(r, 0), QPointF(0, r), QPointF(-r, 0), QPointF(0, -r)}));
        break;
    case Marker::cross:
        path.moveTo(-r, -r);
        path.lineTo(r, r);
        path.moveTo(-r, r);
        path.lineTo(r, -r);
        break;
    }
    return path;
}

QColor loadShade(const Theme& t, double fraction)
{
    return blend(t.paper, t.waterLine, std::clamp(fraction, 0.0, 1.0));
}

} // namespace sumpwright::ui::style
