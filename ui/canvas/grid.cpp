#include "ui/canvas/grid.hpp"

#include <QVarLengthArray>

#include <cmath>

#include "ui/canvas/hatch.hpp"

namespace sumpwright::ui::canvas
{

namespace
{
constexpr double closest = 9.0; // pixels

void paintLines(QPainter& painter, const QRectF& area, double step)
{
    QVarLengthArray<QLineF, 512> lines;
    for (double i = std::ceil(area.left() / step); i * step <= area.right(); ++i)
        lines.append(QLineF(i * step, area.top(), i * step, area.bottom()));
    for (double i = std::ceil(area.top() / step); i * step <= area.bottom(); ++i)
        lines.append(QLineF(area.left(), i * step, area.right(), i * step));
    painter.drawLines(lines.constData(), static_cast<int>(lines.size()));
}
} // namespace

GridSteps gridStepsFor(double pixel, double snapStep)
{
    const double factor = std::max(1.0, roundUp125(closest * pixel / snapStep));
    const double fine = factor * snapStep;
    const double decade = std::pow(10.0, std::ceil(std::log10(fine * 1.0001)));
    return {fine, decade / fine < 3.0 ? decade * 10.0 : decade};
}

void paintGrid(QPainter& painter, const Ink& ink, const QRectF& area, const GridSteps& steps)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing, false);
    for (const auto& [step, colour] :
         {std::pair(steps.fine, ink.theme->gridFine), std::pair(steps.heavy, ink.theme->gridHeavy)}) {
        QPen pen = ink.pen(colour, 1.0);
        pen.setCosmetic(true);
        pen.setWidthF(0.0);
        painter.setPen(pen);
        paintLines(painter, area, step);
    }
    painter.restore();
}

} // namespace sumpwright::ui::canvas
