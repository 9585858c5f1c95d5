#include "ui/canvas/label_wishes.hpp"

#include <algorithm>
#include <cmath>
#include <optional>

#include "core/plan/edits/arrange.hpp"
#include "ui/canvas/scene_point.hpp"

namespace sumpwright::ui::canvas
{

namespace
{
enum Priority { chosenDetail, vesselLabel, pumpLabel, runLabel, fixtureLabel, valveLabel };

constexpr double leastStraight = 22.0; // pixels of pipe that a label needs beside it
constexpr std::size_t mostStraights = 4;
// What it costs a label to tell less or to stand less well; `cover` has what covering something costs.
constexpr int oneLine = 10;    // volume and level beside the tag, not below it
constexpr int twoLines = 6;    // the number below the tag
constexpr int volumeOnly = 13; // without its level
constexpr int oneNumber = 13;  // without its flow
constexpr int tagOnly = 16;    // without its number
constexpr int outside = 30;    // a vessel's tag beside the vessel
constexpr int standing = 4;    // letters turned along an upright pipe
constexpr int overhang = 6;    // longer than the straight pipe beside it

LabelSpan tagSpan(const std::string& tag) { return {QString::fromStdString(tag), SpanKind::tag}; }

LabelSpan resultSpan(const QString& text, const Drawing& drawing, bool levelMark = false)
{
    return {text, drawing.water.stale ? SpanKind::staleResult : SpanKind::result, levelMark};
}

bool fits(const LabelText& text, const QSizeF& room) // pixels
{
    return text.size.width() + 4.0 <= room.width() && text.size.height() + 4.0 <= room.height();
}

// Spots inside a box: the middle first, then off the middle where a pipe runs through it.
void addInside(LabelWish& wish, std::size_t text, const QRectF& box, int cost)
{
    for (const auto& [x, y] : {std::pair(0.0, 0.0),
                               {0.0, -0.25},
                               {0.0, 0.25},
                               {-0.22, 0.0},
                               {0.22, 0.0},
                               {-0.22, -0.25},
                               {0.22, -0.25},
                               {-0.22, 0.25},
                               {0.22, 0.25}})
        wish.spots.push_back({text, box.center() + QPointF(x * box.width(), y * box.height()), 0.0,
                              cost + (x == 0.0 && y == 0.0 ? 0 : 3)});
}

void addAround(LabelWish& wish, std::size_t text, const QRectF& box, double pixel, int cost, double gap)
{
    const QSizeF size = wish.texts[text].size * pixel;
    const double dx = box.width() / 2.0 + size.width() / 2.0 + gap * pixel;
    const double dy = box.height() / 2.0 + size.height() / 2.0 + gap * pixel;
    for (const QPointF& off : {QPointF(dx, 0.0), QPointF(-dx, 0.0), QPointF(0.0, dy), QPointF(0.0, -dy),
                               QPointF(dx, -dy), QPointF(dx, dy), QPointF(-dx, dy), QPointF(-dx, -dy)})
        wish.spots.push_back({text, box.center() + off, 0.0, cost++});
}
} // namespace

LabelWish vesselWish(const plan::Vessel& vessel, const Drawing& drawing)
{
    LabelWish wish{vessel.id, 0, vesselLabel, {}, {}};
    wish.dispensable = drawing.pixel > farPixel;
    const LabelLine tag{tagSpan(vessel.tag)};
    const auto box = plan::boxOf(drawing.plan, vessel.id);
    const QRectF rect = QRectF(toScene(box.low), toScene(box.high)).normalized();
    const QSizeF room = rect.size() / drawing.pixel;
    const auto add = [&](std::vector<LabelLine> lines, int cost) {
        LabelText text = layOut(std::move(lines));
        const bool inside = fits(text, room);
        wish.texts.push_back(std::move(text));
        if (inside)
            addInside(wish, wish.texts.size() - 1, rect, cost);
    };
    if (const auto* water = drawing.water.vessel(vessel.id)) {
        const LabelSpan volume = resultSpan(drawing.figures.text(water->volume), drawing);
        const LabelSpan level = resultSpan(drawing.figures.text(water->level), drawing, true);
        const LabelSpan gap{QStringLiteral("   "), SpanKind::words};
        add({tag, {volume}, {level}}, 0);
        add({{tag.front(), gap, volume, gap, level}}, oneLine);
        add({tag, {volume}}, volumeOnly);
    }
    add({tag}, tagOnly);
    if (room.width() > 12.0 || room.height() > 12.0)
        addAround(wish, wish.texts.size() - 1, rect, drawing.pixel, outside, 6.0);
    return wish;
}

namespace
{
// A tag with a number: side by side, below each other where the room is narrow, or the tag alone.
void addTagged(LabelWish& wish, const std::string& tag, const std::optional<LabelSpan>& number,
               const std::optional<LabelSpan>& further = std::nullopt)
{
    const LabelSpan gap{QStringLiteral("  "), SpanKind::words};
    if (number && further) {
        wish.texts.push_back(layOut({{tagSpan(tag), gap, *number, gap, *further}}));
        wish.texts.push_back(layOut({{tagSpan(tag), gap, *number}, {*further}}));
        wish.texts.push_back(layOut({{tagSpan(tag)}, {*further}}));
        wish.texts.push_back(layOut({{tagSpan(tag)}}));
        return;
    }
    if (number) {
        wish.texts.push_back(layOut({{tagSpan(tag), {QStringLiteral("  "), SpanKind::words}, *number}}));
        wish.texts.push_back(layOut({{tagSpan(tag)}, {*number}}));
    }
    wish.texts.push_back(layOut({{tagSpan(tag)}}));
}

int costOfTagged(const LabelWish& wish, std::size_t text)
{
    if (text == 0)
        return 0;
    if (text + 1 == wish.texts.size())
        return tagOnly;
    return text == 1 ? twoLines : oneNumber;
}
} // namespace

LabelWish pumpWish(const plan::Pump& pump, QPointF place, const Drawing& drawing)
{
    LabelWish wish{pump.id, 0, pumpLabel, {}, {}};
    std::optional<LabelSpan> number;
    if (const auto flow = drawing.water.pump(pump.id))
        number = resultSpan(drawing.figures.text(*flow), drawing);
    addTagged(wish, pump.tag, number);
    const double body = std::max(160.0, 17.0 * drawing.pixel);
    const QRectF rect(place - QPointF(body, body) / 2.0, QSizeF(body, body));
    for (std::size_t i = 0; i < wish.texts.size(); ++i)
        if (drawing.pixel <= farPixel)
            addAround(wish, i, rect, drawing.pixel, costOfTagged(wish, i), 3.0);
    return wish;
}

namespace
{
// Beside the pipe, on both sides and at several places along it; beside upright pipes also turned along the pipe.
void addAlong(LabelWish& wish, std::size_t text, const RunItem& run, const RunItem::Straight& straight, double pixel,
              int cost)
{
    const auto& line = run.line();
    const double turn = line.turnAt(straight.middle) * units::pi / 180.0;
    const double rise = std::abs(std::sin(turn));
    const double reach = std::abs(std::cos(turn));
    const QSizeF size = wish.texts[text].size;
    const auto addAt = [&](double along, double thickness, double labelTurn, int extra) {
        const double off = std::max(line.width, 3.0 * pixel) / 2.0 + (thickness / 2.0 + 4.0) * pixel;
        const QPointF side(-std::sin(turn) * off, std::cos(turn) * off);
        const QPointF at = line.at(straight.middle + along * straight.length);
        wish.spots.push_back({text, at - side, labelTurn, cost + extra});
        wish.spots.push_back({text, at + side, labelTurn, cost + extra});
    };
    const double length = straight.length / pixel;
    const bool upright = rise > 0.85;
    const int tight = length >= size.width() * 0.8 ? 0 : overhang;
    // Short pipes are looked along more closely: the room beside them is narrow.
    const double step = length < 60.0 ? std::clamp(3.0 / length, 0.07, 0.14) : 0.14;
    for (double along = 0.0; along<0.45; along = along> 0.0 ? -along : step - along) {
        const int further = static_cast<int>(std::lround(7.0 * std::abs(along)));
        if (upright || length >= size.width() * 0.4)
            addAt(along, size.height() * reach + size.width() * rise, 0.0, further + (upright ? 0 : tight));
        if (upright && tight == 0)
            addAt(along, size.height() * rise + size.width() * reach, -90.0, further + standing);
    }
}
} // namespace

LabelWish runWish(const RunItem& item, const Drawing& drawing)
{
    const auto& run = *item.run();
    LabelWish wish{run.id, 0, runLabel, {}, {}};
    std::optional<LabelSpan> number;
    if (const auto flow = drawing.water.run(run.id)) {
        const auto magnitude =
            *flow < units::litresPerHour(0.0) ? units::litresPerHour(-units::inLitresPerHour(*flow)) : *flow;
        const auto tidal = drawing.water.tidal.find(run.id);
        const QString mean =
            tidal != drawing.water.tidal.end() && tidal->second ? QStringLiteral("\u2300 ") : QString();
        number = resultSpan(mean + drawing.figures.text(magnitude), drawing);
    }
    std::optional<LabelSpan> further;
    if (const auto* figures = drawing.water.figuresOf(run.id); figures && drawing.coloursRuns())
        if (const QString text = figureText(drawing.scale.measure(), *figures, drawing.figures); !text.isEmpty())
            further = resultSpan(text, drawing);
    addTagged(wish, run.tag, number, further);
    const auto straights = item.straights();
    wish.spots.reserve(160);
    for (std::size_t i = 0; i < wish.texts.size(); ++i)
        for (std::size_t k = 0; k < std::min(straights.size(), mostStraights); ++k)
            if (straights[k].length / drawing.pixel >= leastStraight)
                addAlong(wish, i, item, straights[k], drawing.pixel, static_cast<int>(2 * k) + costOfTagged(wish, i));
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
    addAround(wish, 0, rect, drawing.pixel, 0, 3.0);
    addAround(wish, 0, rect, drawing.pixel, 8, 14.0);
    return wish;
}

std::vector<LabelWish> runDetailWishes(const RunItem& item, const Drawing& drawing)
{
    std::vector<LabelWish> wishes;
    const auto& line = item.line();
    const double half = std::max(line.width, 10.0 * drawing.pixel) / 2.0;
    const auto add = [&](QPointF place, Priority priority, LabelSpan span) {
        LabelWish wish{item.id(), static_cast<int>(wishes.size()) + 1, priority, {layOut({{std::move(span)}})}, {}};
        addAround(wish, 0, QRectF(place - QPointF(half, half), QSizeF(2.0 * half, 2.0 * half)), drawing.pixel, 0, 3.0);
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
