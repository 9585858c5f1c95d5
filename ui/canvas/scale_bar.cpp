#include "ui/canvas/scale_bar.hpp"

#include <QFontMetricsF>

#include <cmath>

#include "ui/canvas/hatch.hpp"

namespace sumpwright::ui::canvas
{

ScaleBar scaleBarFor(double pixel, const Figures& figures, double longest)
{
    const bool feet = figures.system == units::UnitSystem::us;
    const double unit = feet ? 304.8 : 1000.0; // millimetres; the international foot is exact
    const double step = roundDown125(longest * pixel / unit);
    ScaleBar bar;
    bar.length = units::millimetres(step * unit);
    bar.pixels = step * unit / pixel;
    const double leading = step / std::pow(10.0, std::floor(std::log10(step) + 1e-9));
    bar.parts = std::abs(leading - 5.0) < 0.01 ? 5 : std::abs(leading - 2.0) < 0.01 ? 4 : 5;
    units::Look look;
    look.withoutTrailingZeros = true;
    look.smallInMillimetres = !feet;
    if (feet)
        look.unit = step >= 1.0 ? "ft" : "in";
    bar.text = figures.text(bar.length, look);
    return bar;
}

void paintScaleBar(QPainter& painter, const style::Theme& theme, const ScaleBar& bar)
{
    constexpr double top = 15.0;
    constexpr double height = 5.0;
    const double part = bar.pixels / bar.parts;
    painter.setPen(QPen(theme.ink, 1.0));
    for (int i = 0; i < bar.parts; ++i) {
        painter.setBrush(i % 2 == 0 ? theme.ink : theme.paper);
        painter.drawRect(QRectF(i * part, top, part, height));
    }
    painter.setFont(letterFont());
    painter.drawText(QPointF(0.0, top - 4.0), QStringLiteral("0"));
    const double width = QFontMetricsF(letterFont()).horizontalAdvance(bar.text);
    painter.drawText(QPointF(bar.pixels - width, top - 4.0), bar.text);
}

} // namespace sumpwright::ui::canvas
