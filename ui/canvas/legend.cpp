#include "ui/canvas/legend.hpp"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPainterPath>

#include <algorithm>
#include <cmath>

#include "ui/canvas/symbols.hpp"

namespace sumpwright::ui::canvas
{

namespace
{
class Legend
{
    Q_DECLARE_TR_FUNCTIONS(Legend)
};

constexpr double rowHeight = 22.0;
constexpr double signWidth = 48.0;
constexpr double edge = 10.0;

enum class Pipe { pressure, gravity, hidden };

void paintPipe(QPainter& painter, const Ink& ink, Pipe kind)
{
    QPainterPath path(QPointF(-18.0, 0.0));
    path.lineTo(18.0, 0.0);
    const auto& theme = *ink.theme;
    if (kind == Pipe::hidden) {
        painter.strokePath(path, ink.dashed(ink.pen(theme.waterLine, weight::thin), {4.0, 3.0}));
        return;
    }
    painter.strokePath(path, ink.pen(theme.waterLine, 9.0));
    painter.strokePath(path, ink.pen(blend(theme.paper, theme.water, 0.55), 7.0));
    const QPen centre = ink.pen(theme.waterLine, weight::hair);
    painter.strokePath(path, kind == Pipe::gravity ? ink.dashed(centre, {7.0, 4.0})
                                                   : ink.dashed(centre, {16.0, 3.0, 2.0, 3.0}));
}

LegendRow fittingRow(const QString& meaning, FittingSign sign, bool shut = false)
{
    return {meaning, [sign, shut](QPainter& painter, const Ink& ink) {
                painter.setPen(ink.pen(ink.theme->waterLine, weight::bold));
                painter.drawLine(QPointF(-18.0, 0.0), QPointF(18.0, 0.0));
                paintFitting(painter, ink, sign, {}, 0.0, 17.0, shut);
            }};
}

LegendRow placeRow(const QString& meaning, void (*paint)(QPainter&, const Ink&, QPointF, double), double size)
{
    return {meaning, [paint, size](QPainter& painter, const Ink& ink) { paint(painter, ink, {}, size); }};
}

std::vector<LegendRow> makeRows()
{
    const auto pipe = [](Pipe kind) { return [kind](QPainter& p, const Ink& ink) { paintPipe(p, ink, kind); }; };
    return {
        {Legend::tr("pressure run"), pipe(Pipe::pressure)},
        {Legend::tr("gravity run"), pipe(Pipe::gravity)},
        {Legend::tr("run below a vessel"), pipe(Pipe::hidden)},
        {Legend::tr("direction of flow"),
         [](QPainter& p, const Ink& ink) {
             paintFlowArrow(p, ink, {5.0, 0.0}, 0.0, 10.0, ink.theme->waterLine);
         }},
        placeRow(Legend::tr("rises here"), paintRising, 11.0),
        placeRow(Legend::tr("falls here"), paintFalling, 11.0),
        placeRow(Legend::tr("tee"), paintJoint, 7.0),
        {Legend::tr("open end"),
         [](QPainter& p, const Ink& ink) {
             p.setPen(ink.pen(ink.theme->waterLine, weight::bold));
             p.drawLine(QPointF(-12.0, 0.0), QPointF(4.0, 0.0));
             paintOpenEnd(p, ink, {4.0, 0.0}, 0.0, 9.0);
         }},
        fittingRow(Legend::tr("ball valve"), FittingSign::ball),
        fittingRow(Legend::tr("gate valve"), FittingSign::gate),
        fittingRow(Legend::tr("globe valve"), FittingSign::globe),
        fittingRow(Legend::tr("butterfly valve"), FittingSign::butterfly),
        fittingRow(Legend::tr("valve, shut"), FittingSign::ball, true),
        fittingRow(Legend::tr("non-return valve"), FittingSign::check),
        fittingRow(Legend::tr("other fitting"), FittingSign::other),
        {Legend::tr("pump"), [](QPainter& p, const Ink& ink) { paintPump(p, ink, {}, 0.0, 16.0, true); }},
        placeRow(Legend::tr("overflow or standpipe"), paintStandpipe, 10.0),
        placeRow(Legend::tr("standpipe with bell and media guard"), paintBell, 4.0),
        placeRow(Legend::tr("inlet"), paintInlet, 9.0),
        {Legend::tr("side outlet"), [](QPainter& p, const Ink& ink) { paintSideOutlet(p, ink, {}, 0.0, 9.0); }},
        placeRow(Legend::tr("drain point"), paintDrainPoint, 14.0),
        {Legend::tr("power point"),
         [](QPainter& p, const Ink& ink) {
             paintPowerPoint(p, ink, {0.0, 2.0}, 11.0);
         }},
        {Legend::tr("water level, floor level"),
         [](QPainter& p, const Ink& ink) {
             paintLevelMark(p, ink, {0.0, 4.0}, 9.0, ink.theme->ink);
         }},
        {Legend::tr("mean of a bell siphon's tide"),
         [](QPainter& p, const Ink& ink) {
             p.setPen(ink.theme->ink);
             p.setFont(letterFont());
             p.drawText(QRectF(-10.0, -8.0, 20.0, 16.0), Qt::AlignCenter, QStringLiteral("\u2300"));
         }},
    };
}

double columnWidth()
{
    const QFontMetricsF metrics(letterFont());
    double width = 0.0;
    for (const auto& row : legendRows())
        width = std::max(width, metrics.horizontalAdvance(row.meaning));
    return signWidth + width + edge;
}

int rowsIn(int columns)
{
    const auto count = static_cast<int>(legendRows().size());
    return (count + columns - 1) / columns;
}
} // namespace

const std::vector<LegendRow>& legendRows()
{
    static const std::vector<LegendRow> rows = makeRows();
    return rows;
}

QSizeF legendSize(int columns)
{
    return {2.0 * edge + columns * columnWidth(), 2.0 * edge + rowsIn(columns) * rowHeight};
}

void paintLegend(QPainter& painter, const style::Theme& theme, int columns)
{
    const Ink ink{&theme, 1.0};
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(ink.pen(theme.faint, weight::thin));
    painter.setBrush(theme.paper);
    painter.drawRect(QRectF(QPointF(0.5, 0.5), legendSize(columns) - QSizeF(1.0, 1.0)));
    const double column = columnWidth();
    for (int i = 0; i < static_cast<int>(legendRows().size()); ++i) {
        const auto& row = legendRows()[static_cast<std::size_t>(i)];
        const QPointF corner(edge + column * (i / rowsIn(columns)), edge + rowHeight * (i % rowsIn(columns)));
        painter.save();
        painter.translate(corner + QPointF(signWidth / 2.0 - 4.0, rowHeight / 2.0));
        row.paint(painter, ink);
        painter.restore();
        painter.setPen(theme.ink);
        painter.setFont(letterFont());
        painter.drawText(QRectF(corner + QPointF(signWidth, 0.0), QSizeF(column - signWidth, rowHeight)),
                         Qt::AlignVCenter | Qt::AlignLeft, row.meaning);
    }
    painter.restore();
}

} // namespace sumpwright::ui::canvas
