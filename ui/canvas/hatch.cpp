#include "ui/canvas/hatch.hpp"

#include <algorithm>
#include <cmath>

namespace sumpwright::ui::canvas
{

namespace
{
constexpr double slack = 1e-9;
}

double roundUp125(double atLeast)
{
    const double decade = std::pow(10.0, std::floor(std::log10(std::max(atLeast, 1e-9))));
    for (const double step : {1.0, 2.0, 5.0})
        if (step * decade >= atLeast * (1.0 - slack))
            return step * decade;
    return 10.0 * decade;
}

double roundDown125(double atMost)
{
    const double decade = std::pow(10.0, std::floor(std::log10(std::max(atMost, 1e-9)) + slack));
    for (const double step : {5.0, 2.0})
        if (step * decade <= atMost * (1.0 + slack))
            return step * decade;
    return decade;
}

std::vector<QLineF> hatchLines(const QRectF& rect, double spacing)
{
    std::vector<QLineF> lines;
    // x + y = c; the step along c is spacing * sqrt(2), anchored at the origin.
    const double step = spacing * std::sqrt(2.0);
    const double last = rect.right() + rect.bottom();
    for (double c = std::ceil((rect.left() + rect.top()) / step) * step; c < last; c += step) {
        const double x1 = std::max(rect.left(), c - rect.bottom());
        const double x2 = std::min(rect.right(), c - rect.top());
        if (x2 > x1)
            lines.emplace_back(x1, c - x1, x2, c - x2);
    }
    return lines;
}

} // namespace sumpwright::ui::canvas
