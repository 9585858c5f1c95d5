#include "ui/canvas/label_layer.hpp"

#include <QPainter>
#include <QStyleOptionGraphicsItem>

#include <algorithm>

namespace sumpwright::ui::canvas
{

void LabelLayer::show(std::vector<LabelWish> wishes, const Clutter& clutter)
{
    const auto placed = placeLabels(wishes, clutter, m_drawing.pixel, m_former);
    std::vector<Shown> shown;
    shown.reserve(placed.size());
    m_former.clear();
    QRectF bounds;
    for (const auto& label : placed) {
        auto& wish = wishes[label.wish];
        const auto& spot = wish.spots[label.spot];
        m_former[{wish.element, wish.part}] = label.spot;
        shown.push_back({wish.element, wish.part, std::move(wish.texts[spot.text]), spot, label.rect});
        bounds = bounds.united(label.rect);
    }
    if (!m_bounds.contains(bounds)) {
        prepareGeometryChange();
        m_bounds = m_bounds.united(bounds);
    }
    // Only what is new or gone is painted again.
    for (const auto& [some, others] : {std::pair(&shown, &m_shown), std::pair(&m_shown, &shown)})
        for (const auto& label : *some)
            if (std::find(others->begin(), others->end(), label) == others->end())
                update(label.rect);
    m_shown = std::move(shown);
}

void LabelLayer::paint(QPainter* painter, const QStyleOptionGraphicsItem* option, QWidget*)
{
    const Ink ink = m_drawing.ink();
    for (const auto& label : m_shown)
        if (option->exposedRect.intersects(label.rect))
            inPixels(*painter, ink, label.spot.centre, label.spot.turn, [&] { paintLabel(*painter, ink, label.text); });
}

} // namespace sumpwright::ui::canvas
