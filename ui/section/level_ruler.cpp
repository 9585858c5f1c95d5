#include "ui/section/level_ruler.hpp"

#include <QFontMetricsF>

#include <algorithm>
#include <cmath>

#include "ui/canvas/hatch.hpp"

namespace sumpwright::ui::section
{

namespace
{
constexpr double mainRoom = 30.0; // pixels between figures at least
constexpr double footInMetres = 0.3048;

QString textOf(double value, double step, const canvas::Figures& figures)
{
    const int decimals = std::clamp(static_cast<int>(std::ceil(-std::log10(step) - 1e-9)), 0, 3);
    QString text = QString::number(std::abs(value), 'f', decimals);
    text.replace(QLatin1Char('.'), QString::fromStdString(figures.numbers.decimalMark));
    const QChar sign = value == 0.0 ? QChar(0x00B1) : value < 0.0 ? QChar(0x2212) : QLatin1Char('+');
    return sign + text;
}
} // namespace

std::vector<LevelTick> levelTicks(double low, double high, double tall, const canvas::Figures& figures)
{
    const double unit = figures.system == units::UnitSystem::us ? footInMetres : 1.0;
    const double milli = canvas::roundUp125(std::max(1.0, mainRoom / tall / unit * 1000.0));
    const double step = milli / 1000.0;
    const double leading = milli / std::pow(10.0, std::floor(std::log10(milli) + 1e-9));
    const int parts = std::abs(leading - 2.0) < 0.01 ? 4 : 5;
    std::vector<LevelTick> ticks;
    const auto last = static_cast<long>(std::floor(high / unit / step * parts));
    for (auto i = static_cast<long>(std::ceil(low / unit / step * parts)); i <= last; ++i) {
        const double value = static_cast<double>(i) * step / parts;
        const bool main = i % parts == 0;
        ticks.push_back({units::elevationMetres(value * unit), main, main ? textOf(value, step, figures) : QString()});
    }
    return ticks;
}

namespace
{
std::vector<LevelTick> ticksOf(const Sheet& sheet, const Pens& pens)
{
    return levelTicks(sheet.levelAt(sheet.room.bottom()), sheet.levelAt(sheet.room.top()), sheet.tall(), pens.figures);
}
} // namespace

void paintLevelLines(QPainter& painter, const Sheet& sheet, const Pens& pens)
{
    const auto& theme = *pens.ink.theme;
    for (const LevelTick& tick : ticksOf(sheet, pens)) {
        if (!tick.main)
            continue;
        const double y = std::round(sheet.y(tick.level)) + 0.5;
        const bool datum = units::inMetres(tick.level) == 0.0;
        painter.setPen(pens.ink.pen(datum ? theme.gridHeavy : theme.gridFine, canvas::weight::thin));
        painter.drawLine(QPointF(sheet.room.left(), y), QPointF(sheet.room.right(), y));
    }
}

void paintLevelRuler(QPainter& painter, const Sheet& sheet, const Pens& pens, const QRectF& strip)
{
    const auto& theme = *pens.ink.theme;
    painter.fillRect(strip, theme.panel);
    painter.setPen(pens.ink.pen(theme.faint, canvas::weight::thin));
    painter.drawLine(strip.topRight(), strip.bottomRight());
    painter.setFont(canvas::letterFont());
    const bool us = pens.figures.system == units::UnitSystem::us;
    const double unitRoom = strip.top() + 18.0;
    painter.setPen(theme.quiet);
    painter.drawText(QRectF(strip.left(), strip.top() + 1.0, strip.width() - 10.0, 16.0),
                     Qt::AlignRight | Qt::AlignVCenter, us ? QStringLiteral("ft") : QStringLiteral("m"));
    for (const LevelTick& tick : ticksOf(sheet, pens)) {
        const double y = std::round(sheet.y(tick.level)) + 0.5;
        painter.setPen(pens.ink.pen(theme.quiet, canvas::weight::thin));
        painter.drawLine(QPointF(strip.right() - (tick.main ? 7.0 : 3.0), y), QPointF(strip.right(), y));
        if (tick.text.isEmpty() || y - 8.0 < unitRoom || y + 8.0 > strip.bottom())
            continue;
        painter.setPen(theme.ink);
        painter.drawText(QRectF(strip.left(), y - 8.0, strip.width() - 10.0, 16.0), Qt::AlignRight | Qt::AlignVCenter,
                         tick.text);
    }
}

} // namespace sumpwright::ui::section
