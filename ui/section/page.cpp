#include "ui/section/page.hpp"

#include <QPainterPath>

#include <algorithm>
#include <cmath>

namespace sumpwright::ui::section
{

namespace
{
double distanceTo(const QLineF& line, QPointF place)
{
    const QPointF along = line.p2() - line.p1();
    const double size = QPointF::dotProduct(along, along);
    const double share = size > 0.0 ? std::clamp(QPointF::dotProduct(place - line.p1(), along) / size, 0.0, 1.0) : 0.0;
    const QPointF off = line.p1() + share * along - place;
    return std::hypot(off.x(), off.y());
}
} // namespace

bool Pens::chosen(base::Id id) const { return std::find(selection.begin(), selection.end(), id) != selection.end(); }

bool Target::holds(QPointF place) const
{
    if (width <= 0.0)
        return shape.containsPoint(place, Qt::OddEvenFill);
    for (qsizetype i = 1; i < shape.size(); ++i)
        if (distanceTo(QLineF(shape[i - 1], shape[i]), place) <= width / 2.0)
            return true;
    return shape.size() == 1 && distanceTo(QLineF(shape[0], shape[0]), place) <= width / 2.0;
}

} // namespace sumpwright::ui::section
