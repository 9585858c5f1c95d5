#include "ui/canvas/ruler.hpp"

#include <QPainter>

#include <cmath>
#include <limits>

#include "ui/canvas/hatch.hpp"
#include "ui/canvas/ink.hpp"
#include "ui/canvas/plan_view.hpp"

namespace sumpwright::ui::canvas
{

namespace
{
constexpr double mainRoom = 64.0; // pixels between figures at least

struct Steps {
    double main = 1.0;
    double fine = 0.2;
};

// In the reader's unit. Below a foot the steps are twelfths and halves.
Steps stepsFor(double pixel, double unit, bool feet)
{
    const double least = mainRoom * pixel / unit;
    if (feet && least < 1.0) {
        for (const double inches : {1.0, 2.0, 3.0, 6.0, 12.0})
            if (inches / 12.0 >= least)
                return {inches / 12.0, inches / 48.0};
    }
    const double main = roundUp125(least);
    const double leading = main / std::pow(10.0, std::floor(std::log10(main) + 1e-9));
    return {main, main / (std::abs(leading - 2.0) < 0.01 ? 4.0 : 5.0)};
}

QString textOf(double value, double step, const Figures& figures)
{
    if (figures.system == units::UnitSystem::us && step < 1.0) {
        units::Look look;
        look.withoutTrailingZeros = true;
        return figures.text(units::millimetres(value * 304.8), look);
    }
    const int decimals = std::max(0, static_cast<int>(std::ceil(-std::log10(step) - 1e-9)));
    QString text = QString::number(value == 0.0 ? 0.0 : value, 'f', decimals);
    text.replace(QLatin1Char('.'), QString::fromStdString(figures.numbers.decimalMark));
    return text.replace(QLatin1Char('-'), QChar(0x2212));
}
} // namespace

std::vector<RulerTick> rulerTicks(double from, double to, double pixel, bool flipped, const Figures& figures)
{
    const bool feet = figures.system == units::UnitSystem::us;
    const double unit = feet ? 304.8 : 1000.0;
    const Steps steps = stepsFor(pixel, unit, feet);
    const auto perMain = std::lround(steps.main / steps.fine);
    std::vector<RulerTick> ticks;
    const auto last = static_cast<long>(std::floor(to / unit / steps.fine));
    for (auto i = static_cast<long>(std::ceil(from / unit / steps.fine)); i <= last; ++i) {
        const bool main = i % perMain == 0;
        const double value = static_cast<double>(i / perMain) * steps.main;
        ticks.push_back({static_cast<double>(i) * steps.fine * unit, main,
                         main ? textOf(flipped ? -value : value, steps.main, figures) : QString()});
    }
    return ticks;
}

Ruler::Ruler(Qt::Orientation orientation, PlanView& view)
    : QWidget(&view), m_view(view), m_orientation(orientation), m_mark(std::numeric_limits<double>::quiet_NaN())
{
    setAttribute(Qt::WA_OpaquePaintEvent);
    setAccessibleName(orientation == Qt::Horizontal ? tr("Ruler along x") : tr("Ruler along y"));
}

void Ruler::setMark(double scene)
{
    m_mark = scene;
    update();
}

void Ruler::paintEvent(QPaintEvent*)
{
    const auto& theme = style::themeOf(*this);
    const bool flat = m_orientation == Qt::Horizontal;
    QPainter painter(this);
    painter.fillRect(rect(), theme.panel);
    const QRectF visible = m_view.visibleScene();
    const auto toPixel = [&](double scene) {
        const QPointF at = m_view.mapFromScene(flat ? QPointF(scene, 0.0) : QPointF(0.0, scene));
        return flat ? at.x() : at.y();
    };
    QFont font = letterFont();
    font.setPixelSize(10);
    painter.setFont(font);
    painter.setPen(theme.quiet);
    const auto ticks = rulerTicks(flat ? visible.left() : visible.top(), flat ? visible.right() : visible.bottom(),
                                  m_view.pixel(), !flat, m_view.figures());
    for (const auto& tick : ticks) {
        const double at = std::floor(toPixel(tick.place)) + 0.5;
        const double length = tick.main ? thickness - 12.0 : 5.0;
        painter.drawLine(flat ? QLineF(at, thickness, at, thickness - length)
                              : QLineF(thickness, at, thickness - length, at));
        if (!tick.main)
            continue;
        painter.save();
        painter.translate(flat ? QPointF(at, 0.0) : QPointF(0.0, at));
        if (!flat)
            painter.rotate(-90.0);
        painter.drawText(QPointF(3.0, 10.0), tick.text);
        painter.restore();
    }
    if (!std::isnan(m_mark)) {
        const double at = std::floor(toPixel(m_mark)) + 0.5;
        painter.setPen(QPen(theme.accent, 1.0));
        painter.drawLine(flat ? QLineF(at, 0.0, at, thickness) : QLineF(0.0, at, thickness, at));
    }
    painter.setPen(theme.gridHeavy);
    painter.drawLine(flat ? QLineF(0.0, thickness - 0.5, width(), thickness - 0.5)
                          : QLineF(thickness - 0.5, 0.0, thickness - 0.5, height()));
}

} // namespace sumpwright::ui::canvas
