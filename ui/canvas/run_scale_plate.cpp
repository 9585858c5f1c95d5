#include "ui/canvas/run_scale_plate.hpp"

#include <QCoreApplication>
#include <QFontMetricsF>

#include <algorithm>
#include <functional>
#include <vector>

#include "ui/canvas/symbols.hpp"

namespace sumpwright::ui::canvas
{

namespace
{
class RunScalePlate
{
    Q_DECLARE_TR_FUNCTIONS(RunScalePlate)
};

constexpr double rowHeight = 18.0;
constexpr double signWidth = 44.0;
constexpr double edge = 8.0;

struct Row {
    QString words;
    std::optional<int> which; // class; none: not computed
    RunMark mark = RunMark::none;
};

bool anyMarked(const Drawing& drawing, RunMark mark)
{
    const auto& runs = drawing.water.figures;
    return std::any_of(runs.begin(), runs.end(), [mark](const auto& run) { return run.second.mark == mark; });
}

std::vector<Row> rowsOf(const Drawing& drawing)
{
    std::vector<Row> rows;
    const RunScale& scale = drawing.scale;
    for (int i = scale.classes() - 1; i >= 0; --i)
        rows.push_back({scale.words(i, drawing.figures), i});
    rows.push_back({RunScalePlate::tr("not computed"), std::nullopt});
    if (anyMarked(drawing, RunMark::slow))
        rows.push_back({RunScalePlate::tr("slow: below %1 dirt settles").arg(drawing.figures.text(slowBelow)),
                        std::nullopt, RunMark::slow});
    if (anyMarked(drawing, RunMark::surcharged))
        rows.push_back({RunScalePlate::tr("gravity run that runs full"), std::nullopt, RunMark::surcharged});
    return rows;
}

QString staleWords() { return RunScalePlate::tr("older than the drawing"); }
} // namespace

QString runScaleTitle(const Drawing& drawing)
{
    switch (drawing.scale.measure()) {
    case RunMeasure::nothing:
        return {};
    case RunMeasure::velocity:
        return RunScalePlate::tr("Velocity in the runs, least flow");
    case RunMeasure::head:
        return RunScalePlate::tr("Hydraulic grade half-way along, least flow");
    }
    return {};
}

QSizeF runScaleSize(const Drawing& drawing)
{
    if (drawing.scale.measure() == RunMeasure::nothing)
        return {};
    const QFontMetricsF letters(letterFont()), strong(strongLetterFont());
    double width = std::max(strong.horizontalAdvance(runScaleTitle(drawing)), letters.horizontalAdvance(staleWords()));
    const auto rows = rowsOf(drawing);
    for (const Row& row : rows)
        width = std::max(width, signWidth + letters.horizontalAdvance(row.words));
    const double lines = static_cast<double>(rows.size()) + (drawing.water.stale ? 2.0 : 1.0);
    return {width + 2.0 * edge, lines * rowHeight + 2.0 * edge};
}

void paintRunScale(QPainter& painter, const Drawing& drawing)
{
    const auto& theme = *drawing.theme;
    const Ink ink{&theme, 1.0};
    const QSizeF size = runScaleSize(drawing);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(ink.pen(theme.faint, weight::thin));
    painter.setBrush(theme.paper);
    painter.drawRect(QRectF(QPointF(0.5, 0.5), size - QSizeF(1.0, 1.0)));
    QRectF line(edge, edge, size.width() - 2.0 * edge, rowHeight);
    const auto write = [&](const QString& words, double from, const QFont& font, const QColor& colour) {
        painter.setPen(colour);
        painter.setFont(font);
        painter.drawText(line.adjusted(from, 0.0, 0.0, 0.0), Qt::AlignVCenter | Qt::AlignLeft, words);
    };
    write(runScaleTitle(drawing), 0.0, strongLetterFont(), theme.ink);
    if (drawing.water.stale) {
        line.translate(0.0, rowHeight);
        write(staleWords(), 0.0, letterFont(), theme.stale);
    }
    for (const Row& row : rowsOf(drawing)) {
        line.translate(0.0, rowHeight);
        const QRectF swatch(line.left(), line.center().y() - 5.0, signWidth - 10.0, 10.0);
        painter.setPen(ink.pen(theme.waterLine, weight::thin));
        painter.setBrush(row.which ? colourOfClass(theme, *row.which, drawing.scale.classes(), drawing.water.stale)
                                   : theme.paper);
        painter.drawRect(swatch);
        for (double x = swatch.left() + 8.0; row.mark != RunMark::none && x < swatch.right(); x += 9.0)
            paintRunMark(painter, ink, row.mark, QPointF(x, swatch.center().y()), 0.0, swatch.height());
        write(row.words, signWidth, letterFont(), theme.ink);
    }
    painter.restore();
}

} // namespace sumpwright::ui::canvas
