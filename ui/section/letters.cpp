#include "ui/section/letters.hpp"

#include <QObject>

#include <algorithm>

#include "ui/text/level_names.hpp"

namespace sumpwright::ui::section
{

namespace
{
using canvas::LabelSpot;
using canvas::LabelText;
using canvas::LabelWish;
using canvas::SpanKind;

constexpr double air = 3.0; // pixels

double halfWidth(const LabelText& text) { return text.size.width() / 2.0; }
double halfHeight(const LabelText& text) { return text.size.height() / 2.0; }
} // namespace

LabelText words(const QString& text) { return canvas::layOut({{{text, SpanKind::words, false}}}); }
LabelText strong(const QString& text) { return canvas::layOut({{{text, SpanKind::tag, false}}}); }
LabelText levelText(const QString& text, bool stale)
{
    return canvas::layOut({{{text, stale ? SpanKind::staleResult : SpanKind::result, true}}});
}

void around(LabelWish& wish, QPointF place, double off, bool sidesFirst)
{
    for (std::size_t i = 0; i < wish.texts.size(); ++i) {
        const double w = halfWidth(wish.texts[i]) + off, h = halfHeight(wish.texts[i]) + off;
        const int worse = static_cast<int>(i) * 4;
        const int side = sidesFirst ? 0 : 2, upright = sidesFirst ? 2 : 0;
        wish.spots.push_back({i, place + QPointF(w, 0.0), 0.0, worse + side});
        wish.spots.push_back({i, place - QPointF(w, 0.0), 0.0, worse + side});
        wish.spots.push_back({i, place - QPointF(0.0, h), 0.0, worse + upright});
        wish.spots.push_back({i, place + QPointF(0.0, h), 0.0, worse + upright + 1});
        for (const double x : {w, -w})
            for (const double y : {-h, h})
                wish.spots.push_back({i, place + QPointF(x, y), 0.0, worse + 3});
    }
}

void letterVessel(const Sheet& sheet, const Pens& pens, const report::VesselProfile& vessel, const QString& tag,
                  const QString& water, std::vector<LabelWish>& wishes)
{
    const QRectF outside = sheet.rect(vessel.left, vessel.right, vessel.base, vessel.rim);
    LabelWish name{vessel.id, part::tag, pens.chosen(vessel.id) ? 0 : 1, {strong(tag)}, {}, false};
    const double h = halfHeight(name.texts[0]), w = halfWidth(name.texts[0]);
    const double above = outside.top() - h - air;
    for (const double x : {outside.center().x(), outside.left() + w + air, outside.right() - w - air,
                           outside.left() + outside.width() * 0.3, outside.left() + outside.width() * 0.7}) {
        name.spots.push_back({0, {x, above}, 0.0, name.spots.empty() ? 0 : 2});
        name.spots.push_back({0, {x, outside.top() + h + air}, 0.0, 4});
        name.spots.push_back({0, {x, outside.bottom() - h - air}, 0.0, 6});
        name.spots.push_back({0, {x, above - 2.0 * h}, 0.0, 8});
    }
    wishes.push_back(std::move(name));
    if (water.isEmpty() || !vessel.water.least)
        return;
    LabelWish level{vessel.id, part::water, 3, {levelText(water, pens.stale)}, {}, true};
    const double y = sheet.y(*vessel.water.least), half = halfWidth(level.texts[0]), high = halfHeight(level.texts[0]);
    for (const double x : {outside.center().x(), outside.left() + half + 8.0, outside.right() - half - 8.0}) {
        level.spots.push_back({0, {x, y - high - 1.0}, 0.0, level.spots.empty() ? 0 : 2});
        level.spots.push_back({0, {x, y + high + air}, 0.0, 3});
    }
    for (const double x : {outside.left() - half - 6.0, outside.right() + half + 6.0})
        level.spots.push_back({0, {x, y}, 0.0, 6});
    wishes.push_back(std::move(level));
}

namespace
{
QString named(const Pens& pens, const plan::Plan& plan, const LevelHandle& handle)
{
    return QObject::tr("%1 %2", "name of a level and the level")
        .arg(text::levelName(plan, handle.level), pens.figures.text(handle.at));
}

// From above; where there is no room for all, the rim, the lips and the base.
void letterList(const Sheet& sheet, const Pens& pens, const plan::Plan& plan, const std::vector<LevelHandle>& handles,
                std::vector<LabelWish>& wishes)
{
    std::vector<canvas::LabelLine> all, main;
    for (auto handle = handles.rbegin(); handle != handles.rend(); ++handle) {
        const canvas::LabelLine line{{named(pens, plan, *handle), SpanKind::words, false}};
        all.push_back(line);
        using plan::LevelKind;
        const LevelKind kind = handle->level.kind;
        if (kind == LevelKind::rim || kind == LevelKind::lip || kind == LevelKind::base || kind == LevelKind::running)
            main.push_back(line);
    }
    LabelWish wish{
        handles.front().level.element, part::level, 2, {canvas::layOut(all), canvas::layOut(main)}, {}, false};
    double left = 1e9, right = -1e9, top = 1e9, bottom = -1e9;
    for (const LevelHandle& handle : handles) {
        const QPointF at = sheet.at(handle.along, handle.at);
        left = std::min(left, sheet.x(handle.left));
        right = std::max(right, at.x());
        top = std::min(top, at.y());
        bottom = std::max(bottom, at.y());
    }
    for (std::size_t i = 0; i < wish.texts.size(); ++i) {
        const double w = halfWidth(wish.texts[i]), h = halfHeight(wish.texts[i]);
        const int worse = static_cast<int>(i) * 4;
        for (double y = top + h - 8.0; y >= top - 4.0 * h; y -= 12.0)
            for (const double x : {right + w + 12.0, left - w - 12.0, right + w + 60.0, left - w - 60.0})
                wish.spots.push_back({i, {x, y}, 0.0, worse + 1});
        for (double y = top + h; y <= bottom + 4.0 * h; y += 12.0)
            for (const double x : {right + w + 12.0, left - w - 12.0})
                wish.spots.push_back({i, {x, y}, 0.0, worse + 2});
    }
    wishes.push_back(std::move(wish));
}
} // namespace

void letterLevels(const Sheet& sheet, const Pens& pens, const plan::Plan& plan, const std::vector<LevelHandle>& handles,
                  bool everywhere, std::vector<LabelWish>& wishes)
{
    for (std::size_t i = 0, end = 0; i < handles.size(); i = end) {
        const base::Id element = handles[i].level.element;
        while (end < handles.size() && handles[end].level.element == element)
            ++end;
        const bool chosen = pens.chosen(element);
        if (!chosen && !everywhere)
            continue;
        const auto first = handles.begin() + static_cast<std::ptrdiff_t>(i);
        if (chosen && plan.vessels.find(element)) {
            letterList(sheet, pens, plan, {first, handles.begin() + static_cast<std::ptrdiff_t>(end)}, wishes);
            continue;
        }
        for (std::size_t each = i; each < end; ++each) {
            LabelWish wish{element, part::level + static_cast<int>(each - i), chosen ? 2 : 6, {}, {}, !chosen};
            if (chosen)
                wish.texts.push_back(words(named(pens, plan, handles[each])));
            wish.texts.push_back(words(pens.figures.text(handles[each].at)));
            around(wish, sheet.at(handles[each].along, handles[each].at), 7.0, true);
            wishes.push_back(std::move(wish));
        }
    }
}

QString waterText(const Pens& pens, std::optional<units::Elevation> low, std::optional<units::Elevation> high)
{
    if (!low || !high)
        return {};
    const QString from = pens.figures.text(*low), to = pens.figures.text(*high);
    return from == to ? from : QObject::tr("%1 to %2", "lowest and highest level").arg(from, to);
}

void addClutter(const Sheet& sheet, const report::VesselProfile& vessel, canvas::Clutter& clutter)
{
    const QRectF outside = sheet.rect(vessel.left, vessel.right, vessel.base, vessel.rim);
    clutter.add({QLineF(outside.topLeft(), outside.bottomLeft()), QLineF(outside.bottomLeft(), outside.bottomRight()),
                 QLineF(outside.bottomRight(), outside.topRight())},
                canvas::cover::edge);
    std::vector<QLineF> levels;
    for (const auto& level : {vessel.water.least, vessel.water.most, vessel.water.stopped})
        if (level)
            levels.emplace_back(sheet.at(vessel.left, *level), sheet.at(vessel.right, *level));
    clutter.add(levels, canvas::cover::edge / 2);
    for (const report::PortProfile& port : vessel.ports) {
        const QPointF at = sheet.at(port.along, port.level);
        clutter.add({QLineF(at - QPointF(5.0, 0.0), at + QPointF(5.0, 0.0))}, canvas::cover::mark, 2.0);
    }
}

void addClutter(const QPolygonF& line, double half, canvas::Clutter& clutter)
{
    std::vector<QLineF> strokes;
    for (qsizetype i = 1; i < line.size(); ++i)
        strokes.emplace_back(line[i - 1], line[i]);
    clutter.add(strokes, canvas::cover::mark, half);
}

} // namespace sumpwright::ui::section
