#include "ui/canvas/label_wishes.hpp"

#include <algorithm>
#include <cmath>

#include "core/plan/edits/arrange.hpp"
#include "ui/canvas/scene_point.hpp"

namespace sumpwright::ui::canvas
{

namespace
{
enum Priority { chosenDetail, vesselLabel, pumpLabel, runLabel, fixtureLabel, valveLabel };

constexpr double leastStraight = 22.0; // pixels of pipe that a label needs beside it

LabelSpan tagSpan(const std::string& tag) { return {QString::fromStdString(tag), SpanKind::tag}; }

LabelSpan resultSpan(const QString& text, const Drawing& drawing, bool levelMark = false)
{
    return {text, drawing.water.stale ? SpanKind::staleResult : SpanKind::result, levelMark};
}

bool fits(const LabelText& text, const QSizeF& room) // pixels
{
    return text.size.width() + 10.0 <= room.width() && text.size.height() + 6.0 <= room.height();
}

// Spots inside a box: the middle first, then off the middle where a pipe runs through it.
void addInside(LabelWish& wish, std::size_t text, const QRectF& box)
{
    wish.spots.push_back({text, box.center()});
    for (const auto& [x, y] : {std::pair(0.0, -0.25),
                               {0.0, 0.25},
                               {-0.22, 0.0},
                               {0.22, 0.0},
                               {-0.22, -0.25},
                               {0.22, -0.25},
                               {-0.22, 0.25},
                               {0.22, 0.25}})
        wish.spots.push_back({text, box.center() + QPointF(x * box.width(), y * box.height())});
}

void addAround(LabelWish& wish, std::size_t text, const QRectF& box, double pixel, double gap = 6.0)
{
    const QSizeF size = wish.texts[text].size * pixel;
    const double dx = box.width() / 2.0 + size.width() / 2.0 + gap * pixel;
    const double dy = box.height() / 2.0 + size.height() / 2.0 + gap * pixel;
    for (const QPointF& off : {QPointF(dx, 0.0), QPointF(-dx, 0.0), QPointF(0.0, dy), QPointF(0.0, -dy),
                               QPointF(dx, -dy), QPointF(dx, dy), QPointF(-dx, dy), QPointF(-dx, -dy)})
        wish.spots.push_back({text, box.center() + off});
}
} // namespace

LabelWish vesselWish(const plan::Vessel& vessel, const Drawing& drawing)
{
    LabelWish wish{vessel.id, 0, vesselLabel, {}, {}};
    const LabelLine tag{tagSpan(vessel.tag)};
    if (const auto* water = drawing.water.vessel(vessel.id)) {
        const LabelLine volume{resultSpan(drawing.figures.text(water->volume), drawing)};
        const LabelLine level{resultSpan(drawing.figures.text(water->level), drawing, true)};
        wish.texts.push_back(layOut({tag, volume, level}));
        wish.texts.push_back(layOut({{tagSpan(vessel.tag),
                                      {QStringLiteral("   "), SpanKind::words},
                                      volume.front(),
                                      {QStringLiteral("   "), SpanKind::words},
                                      level.front()}}));
    }
    wish.texts.push_back(layOut({tag}));
    const auto box = plan::boxOf(drawing.plan, vessel.id);
    const QRectF rect = QRectF(toScene(box.low), toScene(box.high)).normalized();
    const QSizeF room = rect.size() / drawing.pixel;
    for (std::size_t i = 0; i < wish.texts.size(); ++i)
        if (fits(wish.texts[i], room))
            addInside(wish, i, rect);
    if (room.width() > 12.0 || room.height() > 12.0)
        addAround(wish, wish.texts.size() - 1, rect, drawing.pixel);
    return wish;
}

LabelWish pumpWish(const plan::Pump& pump, QPointF place, const Drawing& drawing)
{
    LabelWish wish{pump.id, 0, pumpLabel, {}, {}};
    if (const auto flow = drawing.water.pump(pump.id))
        wish.texts.push_back(layOut({{tagSpan(pump.tag),
                                      {QStringLiteral("  "), SpanKind::words},
                                      resultSpan(drawing.figures.text(*flow), drawing)}}));
    wish.texts.push_back(layOut({{tagSpan(pump.tag)}}));
    const double body = std::max(160.0, 17.0 * drawing.pixel);
    const QRectF rect(place - QPointF(body, body) / 2.0, QSizeF(body, body));
    for (std::size_t i = 0; i < wish.texts.size(); ++i)
        if (drawing.pixel < 40.0)
            addAround(wish, i, rect, drawing.pixel, 3.0);
    return wish;
}

namespace
{
// Beside the pipe, on both sides and at several places along it; beside upright pipes also lying, where it reads best.
void addAlong(LabelWish& wish, std::size_t text, const RunItem& run, const RunItem::Straight& straight, double pixel)
{
    const auto& line = run.line();
    const double turn = std::remainder(line.turnAt(straight.middle), 180.0); // -90 ... 90
    const bool upright = std::abs(turn) > 60.0;
    const double across = (line.turnAt(straight.middle) + 90.0) * units::pi / 180.0;
    const QSizeF size = wish.texts[text].size;
    const auto addAt = [&](double along, double thickness, double labelTurn) {
        const double off = std::max(line.width, 3.0 * pixel) / 2.0 + (thickness / 2.0 + 4.0) * pixel;
        const QPointF side(std::cos(across) * off, std::sin(across) * off);
        const QPointF at = line.at(straight.middle + along * straight.length);
        wish.spots.push_back({text, at - side, labelTurn});
        wish.spots.push_back({text, at + side, labelTurn});
    };
    const bool fitsAlong = straight.length / pixel >= size.width() * 0.8;
    const double lying = std::abs(turn) < 30.0 ? size.height() : size.width() * 0.7;
    for (const double along : {0.0, -0.25, 0.25, -0.4, 0.4}) {
        if (upright)
            addAt(along, size.width() + 4.0, 0.0);
        if (fitsAlong)
            addAt(along, upright ? size.height() : lying, upright ? -90.0 : 0.0);
    }
}
} // namespace

LabelWish runWish(const RunItem& item, const Drawing& drawing)
{
    const auto& run = *item.run();
    LabelWish wish{run.id, 0, runLabel, {}, {}};
    if (const auto flow = drawing.water.run(run.id)) {
        const auto magnitude =
            *flow < units::litresPerHour(0.0) ? units::litresPerHour(-units::inLitresPerHour(*flow)) : *flow;
        const auto tidal = drawing.water.tidal.find(run.id);
        const QString mean =
            tidal != drawing.water.tidal.end() && tidal->second ? QStringLiteral("\u2300 ") : QString();
        wish.texts.push_back(layOut({{tagSpan(run.tag),
                                      {QStringLiteral("  "), SpanKind::words},
                                      resultSpan(mean + drawing.figures.text(magnitude), drawing)}}));
    }
    wish.texts.push_back(layOut({{tagSpan(run.tag)}}));
    const auto straights = item.straights();
    for (std::size_t i = 0; i < wish.texts.size(); ++i)
        for (std::size_t k = 0; k < std::min<std::size_t>(straights.size(), 3); ++k)
            if (straights[k].length / drawing.pixel >= leastStraight)
                addAlong(wish, i, item, straights[k], drawing.pixel);
    return wish;
}

LabelWish fixtureWish(const plan::Fixture& fixture, const Drawing& drawing)
{
    LabelWish wish{fixture.id, 0, fixtureLabel, {}, {}};
    if (fixture.kind == plan::FixtureKind::wall || drawing.pixel > 14.0)
        return wish;
    wish.texts.push_back(layOut({{{QString::fromStdString(fixture.tag), SpanKind::words}}}));
    const QPointF from = toScene(fixture.from);
    const QPointF to = toScene(fixture.to);
    QRectF rect = QRectF(from, fixture.kind == plan::FixtureKind::door ? to : from).normalized();
    const double half = std::max(toScene(fixture.size), 12.0 * drawing.pixel) / 2.0;
    rect.adjust(-half, -half, half, half);
    addAround(wish, 0, rect, drawing.pixel, 2.0);
    return wish;
}

std::vector<LabelWish> runDetailWishes(const RunItem& item, const Drawing& drawing)
{
    std::vector<LabelWish> wishes;
    const auto& line = item.line();
    const double half = std::max(line.width, 10.0 * drawing.pixel) / 2.0;
    const auto add = [&](QPointF place, Priority priority, LabelSpan span) {
        LabelWish wish{item.id(), static_cast<int>(wishes.size()) + 1, priority, {layOut({{std::move(span)}})}, {}};
        addAround(wish, 0, QRectF(place - QPointF(half, half), QSizeF(2.0 * half, 2.0 * half)), drawing.pixel, 2.0);
        wishes.push_back(std::move(wish));
    };
    if (item.chosen()) {
        for (const auto& corner : line.corners) {
            QString level = drawing.figures.text(corner.before);
            if (units::inMetres(corner.after - corner.before) * units::inMetres(corner.after - corner.before) > 1e-8)
                level += QStringLiteral(" \u2192 ") + drawing.figures.text(corner.after);
            add(corner.at, chosenDetail, {level, SpanKind::words, true});
        }
    }
    if (drawing.pixel < 12.0)
        for (const auto& valve : item.run()->valves)
            add(line.at(distanceAtStation(*item.run(), line, valve.station)), valveLabel,
                {QString::fromStdString(valve.tag), SpanKind::words});
    return wishes;
}

} // namespace sumpwright::ui::canvas
