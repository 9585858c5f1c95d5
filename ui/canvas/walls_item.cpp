#include "ui/canvas/walls_item.hpp"

#include <QLineF>
#include <QPainter>

#include <algorithm>

#include "ui/canvas/fixture_item.hpp"
#include "ui/canvas/scene_point.hpp"

namespace sumpwright::ui::canvas
{

namespace
{
constexpr auto meeting = units::millimetres(10.0); // ends closer than this make a corner

bool meetsAnother(const plan::Table<plan::Fixture>& fixtures, const plan::Fixture& wall, plan::Point end)
{
    return std::any_of(fixtures.begin(), fixtures.end(), [&](const auto& other) {
        return other->kind == plan::FixtureKind::wall && other->id != wall.id &&
               (plan::distanceBetween(other->from, end) < meeting || plan::distanceBetween(other->to, end) < meeting);
    });
}
} // namespace

void WallsItem::show(const plan::Table<plan::Fixture>& fixtures)
{
    prepareGeometryChange();
    m_body = {};
    for (const auto& wall : fixtures) {
        if (wall->kind != plan::FixtureKind::wall)
            continue;
        QLineF axis(toScene(wall->from), toScene(wall->to));
        const double half = toScene(wall->size) / 2.0;
        if (axis.length() < 1e-6)
            continue;
        const QPointF along = (axis.p2() - axis.p1()) * (half / axis.length());
        if (meetsAnother(fixtures, *wall, wall->from))
            axis.setP1(axis.p1() - along);
        if (meetsAnother(fixtures, *wall, wall->to))
            axis.setP2(axis.p2() + along);
        QPainterPath band;
        band.addPolygon(bandOf(axis.p1(), axis.p2(), 2.0 * half));
        band.closeSubpath();
        m_body = m_body.united(band);
    }
    update();
}

QRectF WallsItem::boundingRect() const
{
    const double around = m_drawing.ink().px(2.0);
    const QRectF rect = m_body.boundingRect();
    return rect.isNull() ? rect : rect.adjusted(-around, -around, around, around);
}

void WallsItem::paint(QPainter* painter, const QStyleOptionGraphicsItem*, QWidget*)
{
    const Ink ink = m_drawing.ink();
    painter->setPen(ink.pen(ink.theme->ink, weight::medium));
    painter->setBrush(ink.theme->wall);
    painter->drawPath(m_body);
}

} // namespace sumpwright::ui::canvas
