#include "ui/canvas/run_colours.hpp"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace sumpwright::ui::canvas
{

namespace
{
class RunColours
{
    Q_DECLARE_TR_FUNCTIONS(RunColours)
};

constexpr int mostClasses = 5;
constexpr double leastStep = 0.01; // m of head

std::optional<double> meanGrade(const RunFigures& run)
{
    if (!run.gradeAtStart || !run.gradeAtEnd)
        return std::nullopt;
    return (units::inMetres(*run.gradeAtStart) + units::inMetres(*run.gradeAtEnd)) / 2.0;
}

// Round numbers that cut the span into at most five classes.
std::vector<double> roundLimits(double low, double high)
{
    std::vector<double> limits;
    double step = leastStep;
    for (int i = 1; (high - low) / step > mostClasses - 1.0; ++i)
        step *= i % 3 == 2 ? 2.5 : 2.0; // 1, 2, 5, 10
    for (double at = std::ceil(low / step + 1e-9) * step; at < high - 1e-9 && limits.size() + 1 < mostClasses;
         at += step)
        limits.push_back(at + 0.0); // no negative zero
    return limits;
}
} // namespace

RunScale::RunScale(RunMeasure measure, const std::vector<RunFigures>& runs) : m_measure(measure)
{
    switch (measure) {
    case RunMeasure::nothing:
        return;
    case RunMeasure::velocity:
        m_limits = {units::inMetresPerSecond(slowBelow), 0.6, 1.0, 1.5};
        return;
    case RunMeasure::head:
        break;
    }
    std::optional<double> low, high;
    for (const auto& run : runs)
        if (const auto grade = meanGrade(run)) {
            low = low ? std::min(*low, *grade) : *grade;
            high = high ? std::max(*high, *grade) : *grade;
        }
    if (low)
        m_limits = roundLimits(*low, *high);
}

std::optional<int> RunScale::classOf(const RunFigures& run) const
{
    std::optional<double> value;
    switch (m_measure) {
    case RunMeasure::nothing:
        break;
    case RunMeasure::velocity:
        if (run.velocity)
            value = units::inMetresPerSecond(*run.velocity);
        break;
    case RunMeasure::head:
        value = meanGrade(run);
        break;
    }
    if (!value)
        return std::nullopt;
    return static_cast<int>(std::upper_bound(m_limits.begin(), m_limits.end(), *value) - m_limits.begin());
}

QString RunScale::limitText(std::size_t limit, const Figures& figures) const
{
    return m_measure == RunMeasure::velocity ? figures.text(units::metresPerSecond(m_limits[limit]))
                                             : figures.text(units::elevationMetres(m_limits[limit]));
}

QString RunScale::words(int which, const Figures& figures) const
{
    const auto at = static_cast<std::size_t>(which);
    if (m_limits.empty())
        return RunColours::tr("all runs");
    if (at == 0)
        return RunColours::tr("below %1").arg(limitText(0, figures));
    if (at >= m_limits.size())
        return RunColours::tr("%1 and more").arg(limitText(m_limits.size() - 1, figures));
    return RunColours::tr("%1 to %2").arg(limitText(at - 1, figures), limitText(at, figures));
}

QColor colourOfClass(const style::Theme& theme, int which, int classes, bool stale)
{
    const double share = classes > 1 ? double(which) / (classes - 1) : 0.5;
    const QColor strong = theme.scheme == style::Scheme::light ? blend(theme.waterLine, Qt::black, 0.45)
                                                               : blend(theme.waterLine, Qt::white, 0.55);
    const QColor colour = share < 0.6 ? blend(blend(theme.paper, theme.waterLine, 0.12), theme.waterLine, share / 0.6)
                                      : blend(theme.waterLine, strong, (share - 0.6) / 0.4);
    if (!stale)
        return colour;
    const int grey = qGray(colour.rgb());
    return blend(colour, QColor(grey, grey, grey), 0.8);
}

QString figureText(RunMeasure measure, const RunFigures& run, const Figures& figures)
{
    QString text;
    switch (measure) {
    case RunMeasure::nothing:
        return {};
    case RunMeasure::velocity:
        if (run.velocity)
            text = figures.text(*run.velocity);
        break;
    case RunMeasure::head:
        if (run.gradeAtStart && run.gradeAtEnd) {
            const QString start = figures.text(*run.gradeAtStart), end = figures.text(*run.gradeAtEnd);
            text = start == end ? end : RunColours::tr("%1 to %2").arg(start, end);
        }
        break;
    }
    switch (run.mark) {
    case RunMark::none:
        return text;
    case RunMark::slow:
        return text + RunColours::tr(", slow");
    case RunMark::surcharged:
        return text.isEmpty() ? RunColours::tr("runs full") : text + RunColours::tr(", runs full");
    }
    return text;
}

void paintRunMark(QPainter& painter, const Ink& ink, RunMark mark, QPointF place, double turn, double width)
{
    const double across = (turn + 90.0) * units::pi / 180.0;
    const QPointF side(std::cos(across) * width * 0.7, std::sin(across) * width * 0.7);
    switch (mark) {
    case RunMark::none:
        return;
    case RunMark::slow:
        painter.setPen(ink.pen(ink.theme->ink, weight::thin));
        painter.setBrush(ink.theme->paper);
        painter.drawEllipse(place, ink.px(2.4), ink.px(2.4));
        return;
    case RunMark::surcharged:
        painter.setPen(ink.pen(ink.theme->ink, weight::bold));
        painter.drawLine(place - side, place + side);
        return;
    }
}

} // namespace sumpwright::ui::canvas
