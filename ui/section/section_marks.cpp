#include "ui/section/section_marks.hpp"

#include <QObject>

#include <algorithm>
#include <cmath>

#include "ui/canvas/symbols.hpp"
#include "ui/section/letters.hpp"
#include "ui/section/paint_profile.hpp"
#include "ui/style/series.hpp"
#include "ui/text/subject.hpp"

namespace sumpwright::ui::section
{

namespace
{
using report::FallVerdict;
namespace weight = canvas::weight;

constexpr double markSize = 7.0; // pixels
constexpr double crossApart = 26.0;
constexpr double invertsApart = 260.0; // pixels of a leg that has room for a level at each end

// Where the free-board of a vessel is dimensioned: inside its right-hand wall.
struct FreeBoard {
    QPointF water;
    QPointF rim;
};
std::optional<FreeBoard> freeBoardOf(const Sheet& sheet, const report::SectionVessel& vessel)
{
    const auto& profile = vessel.profile;
    if (vessel.again || !profile.water.freeBoard || *profile.water.freeBoard <= units::Length())
        return std::nullopt;
    const double x = sheet.x(profile.right) - std::min(14.0, sheet.wide(profile.right - profile.left) / 5.0);
    return FreeBoard{{x, sheet.y(profile.rim - *profile.water.freeBoard)}, {x, sheet.y(profile.rim)}};
}

void paintCross(QPainter& painter, QPointF at)
{
    constexpr double half = markSize / 2.0;
    painter.drawLine(at - QPointF(half, half), at + QPointF(half, half));
    painter.drawLine(at - QPointF(half, -half), at + QPointF(half, -half));
}

QString ratioOf(const report::Fall& fall)
{
    const double ratio = units::inMetres(fall.length) / units::inMetres(fall.drop);
    return QStringLiteral("1:%1").arg(static_cast<int>(std::lround(std::min(ratio, 9999.0))));
}
} // namespace

QPolygonF lineOf(const Sheet& sheet, const report::SectionRun& run)
{
    QPolygonF line;
    for (const auto& point : run.centre)
        line << sheet.at(point);
    return line;
}

QString fallWords(const report::Fall& fall, const canvas::Figures& figures)
{
    const auto whole = [&](units::Length length) {
        return figures.size(units::millimetres(std::round(units::inMillimetres(length))));
    };
    switch (fall.verdict) {
    case FallVerdict::falls:
        return ratioOf(fall);
    case FallVerdict::little:
        return fall.drop < units::millimetres(1.0)
                   ? QObject::tr("level, needs %1 of fall").arg(whole(fall.missing))
                   : QObject::tr("little fall %1, needs %2 more").arg(ratioOf(fall), whole(fall.missing));
    case FallVerdict::rises:
        return QObject::tr("rises %1, needs %2 more fall").arg(whole(-fall.drop), whole(fall.missing));
    }
    return {};
}

// By line style: a run that rises is struck out with crosses, one with little fall is underlined with dashes.
void paintFalls(QPainter& painter, const Sheet& sheet, const Pens& pens, const report::SectionPath& path)
{
    const auto& theme = *pens.ink.theme;
    for (const auto& run : path.runs)
        for (const auto& fall : run.falls) {
            if (fall.verdict == FallVerdict::falls)
                continue;
            const QLineF leg(sheet.at(run.centre[fall.leg]), sheet.at(run.centre[fall.leg + 1]));
            const bool rises = fall.verdict == FallVerdict::rises;
            const double below = std::max(3.0, sheet.wide(run.pipe.outside) / 2.0 + 3.0);
            painter.setPen(
                pens.ink.dashed(pens.ink.pen(rises ? theme.fault : theme.caution, weight::bold), {5.0, 3.0}));
            painter.drawLine(leg.translated(0.0, below));
            if (!rises)
                continue;
            painter.setPen(pens.ink.pen(theme.fault, weight::bold));
            const int count = std::max(1, static_cast<int>(leg.length() / crossApart));
            for (int i = 0; i < count; ++i)
                paintCross(painter, leg.pointAt((i + 0.5) / count));
        }
}

void paintGrade(QPainter& painter, const Sheet& sheet, const Pens& pens, const std::vector<report::GradeStretch>& grade)
{
    for (const auto& stretch : grade) {
        QPolygonF line;
        for (const auto& point : stretch.points)
            line << sheet.at(point);
        painter.setPen(penOf(stretch.plain ? LineKind::plainGrade : LineKind::grade, pens));
        painter.setBrush(Qt::NoBrush);
        painter.drawPolyline(line);
        if (stretch.plain || line.size() < 4)
            continue;
        const auto style = style::seriesStyle(*pens.ink.theme, 3);
        const QPointF top = line[2]; // above the pump
        painter.setPen(pens.ink.pen(style.line, weight::thin));
        painter.setBrush(pens.ink.theme->paper);
        painter.drawPath(style::markerPath(style.marker, markSize).translated(top));
    }
}

void paintFreeBoards(QPainter& painter, const Sheet& sheet, const Pens& pens, const report::SectionPath& path)
{
    painter.setPen(pens.ink.pen(pens.ink.theme->quiet, weight::thin));
    for (const auto& vessel : path.vessels)
        if (const auto board = freeBoardOf(sheet, vessel)) {
            painter.drawLine(board->rim, board->water);
            for (const QPointF end : {board->rim, board->water})
                painter.drawLine(end - QPointF(3.0, -3.0), end + QPointF(3.0, -3.0));
        }
}

void paintHighest(QPainter& painter, const Sheet& sheet, const Pens& pens, const report::SectionPath& path)
{
    if (!path.highest)
        return;
    const QPointF at = sheet.at(*path.highest);
    painter.setPen(pens.ink.pen(pens.ink.theme->ink, weight::thin));
    painter.setBrush(pens.ink.theme->paper);
    painter.drawPolygon(QPolygonF{at + QPointF(0.0, -4.0), at + QPointF(-4.0, -10.0), at + QPointF(4.0, -10.0)});
}

namespace
{
class Lettering
{
public:
    Lettering(const Sheet& sheet, const Pens& pens, const plan::Plan& plan, std::vector<canvas::LabelWish>& wishes)
        : m_sheet(sheet), m_pens(pens), m_plan(plan), m_wishes(wishes)
    {
    }

    void vessel(const report::SectionVessel& vessel, int number)
    {
        const auto& profile = vessel.profile;
        const QString tag = QString::fromStdString(profile.tag);
        const std::size_t before = m_wishes.size();
        letterVessel(m_sheet, m_pens, profile,
                     vessel.again ? QObject::tr("%1 again", "a vessel drawn before").arg(tag) : tag,
                     waterText(m_pens, profile.water.least, profile.water.least), m_wishes);
        for (std::size_t i = before; vessel.again && i < m_wishes.size(); ++i) {
            canvas::LabelWish& wish = m_wishes[i]; // its levels were told before
            wish.priority = wish.part == part::water ? 7 : wish.priority;
            wish.part += part::note + 20 * number;
        }
        if (const auto board = freeBoardOf(m_sheet, vessel)) {
            const QString size = m_pens.figures.size(*profile.water.freeBoard);
            canvas::LabelWish wish{
                profile.id, part::freeBoard, 5, {words(QObject::tr("free-board %1").arg(size)), words(size)}, {}, true};
            around(wish, (board->water + board->rim) / 2.0, 5.0, true);
            m_wishes.push_back(std::move(wish));
        }
        if (vessel.drowns && !profile.ports.empty())
            note(profile.id, number, m_sheet.at(profile.ports.front().along, profile.ports.front().level),
                 QObject::tr("the water here stands %1 above the outlet it should come from")
                     .arg(m_pens.figures.size(*vessel.drowns)),
                 1);
    }

    void run(const report::SectionRun& run)
    {
        std::size_t longest = 0;
        double most = -1.0;
        for (std::size_t i = 0; i + 1 < run.centre.size(); ++i)
            if (const double size = leg(run, i).length(); size > most) {
                most = size;
                longest = i;
            }
        const QLineF line = leg(run, longest);
        canvas::LabelWish wish{
            run.id, part::tag, m_pens.chosen(run.id) ? 1 : 4, {strong(QString::fromStdString(run.tag))}, {}, true};
        const bool upright = std::abs(line.dy()) > std::abs(line.dx());
        for (const double share : {0.5, 0.3, 0.7})
            around(wish, line.pointAt(share), 4.0 + m_sheet.wide(run.pipe.outside) / 2.0, upright);
        m_wishes.push_back(std::move(wish));
        int number = 0;
        for (const auto& fall : run.falls)
            letterFall(run, fall, number++);
    }

    void note(base::Id element, int number, QPointF at, const QString& text, int priority)
    {
        canvas::LabelWish wish{element, part::note + number, priority, {words(text)}, {}, false};
        around(wish, at, 8.0);
        for (const double y : {-26.0, 26.0, -42.0, 42.0})
            wish.spots.push_back({0, at + QPointF(0.0, y), 0.0, 8});
        m_wishes.push_back(std::move(wish));
    }

private:
    QLineF leg(const report::SectionRun& run, std::size_t i) const
    {
        return {m_sheet.at(run.centre[i]), m_sheet.at(run.centre[std::min(i + 1, run.centre.size() - 1)])};
    }

    void letterFall(const report::SectionRun& run, const report::Fall& fall, int number)
    {
        const QLineF line = leg(run, fall.leg);
        const double off = 5.0 + m_sheet.wide(run.pipe.outside) / 2.0;
        const bool wrong = fall.verdict != FallVerdict::falls;
        const QString said = fallWords(fall, m_pens.figures);
        const QString full = QObject::tr("%1 over %2", "fall and length").arg(said, m_pens.figures.size(fall.length));
        const bool wide = line.length() >= invertsApart;
        canvas::LabelWish wish{run.id, part::fall + number, wrong ? 1 : 5, {}, {}, !wrong};
        if (!wide)
            wish.texts.push_back(
                canvas::layOut({{{full, canvas::SpanKind::words, false}},
                                {{QObject::tr("inverts %1, %2", "levels at the ends of a pipe")
                                      .arg(m_pens.figures.text(fall.invertStart), m_pens.figures.text(fall.invertEnd)),
                                  canvas::SpanKind::words, false}}}));
        wish.texts.push_back(words(full));
        wish.texts.push_back(words(said));
        for (const double share : {0.5, 0.35, 0.65, 0.2, 0.8})
            around(wish, line.pointAt(share), off);
        // What is wrong is told in any case: farther off, where nearer there is no room.
        const double half = wish.texts.back().size.width() / 2.0;
        for (const double y : {24.0, 38.0, 52.0, 66.0, -24.0, -38.0, -52.0, -66.0})
            for (const double x : {0.0, -0.5 * half, 0.5 * half, -half, half})
                if (wrong)
                    wish.spots.push_back({wish.texts.size() - 1, line.center() + QPointF(x, y), 0.0, 6});
        m_wishes.push_back(std::move(wish));
        if (wide)
            letterInverts(run, fall, line, off, number);
    }

    void letterInverts(const report::SectionRun& run, const report::Fall& fall, const QLineF& line, double off,
                       int number)
    {
        int end = 0;
        for (const auto& [at, level] : {std::pair{line.p1(), fall.invertStart}, std::pair{line.p2(), fall.invertEnd}}) {
            canvas::LabelWish invert{run.id, part::invert + 2 * number + end,
                                     6,      {words(QObject::tr("invert %1").arg(m_pens.figures.text(level)))},
                                     {},     true};
            const double half = invert.texts[0].size.width() / 2.0;
            const double inward = (end == 0) == (line.dx() > 0.0) ? half : -half;
            for (const double y : {off + 7.0, -off - 7.0, off + 22.0, -off - 22.0}) {
                invert.spots.push_back({0, at + QPointF(inward, y), 0.0, y > 0.0 ? 0 : 1});
                invert.spots.push_back({0, at + QPointF(-inward, y), 0.0, 2});
            }
            m_wishes.push_back(std::move(invert));
            ++end;
        }
    }

    const Sheet& m_sheet;
    const Pens& m_pens;
    const plan::Plan& m_plan;
    std::vector<canvas::LabelWish>& m_wishes;
};
} // namespace

void letterSection(const Sheet& sheet, const Pens& pens, const plan::Plan& plan, const report::SectionPath& path,
                   const std::vector<report::GradeStretch>& grade, const std::vector<LevelHandle>& handles,
                   canvas::Clutter& clutter, std::vector<canvas::LabelWish>& wishes)
{
    Lettering lettering(sheet, pens, plan, wishes);
    int number = 0;
    for (const auto& vessel : path.vessels) {
        addClutter(sheet, vessel.profile, clutter);
        if (const auto board = freeBoardOf(sheet, vessel))
            clutter.add({QLineF(board->rim, board->water)}, canvas::cover::mark, 1.0);
        lettering.vessel(vessel, number++);
    }
    for (std::size_t i = 1; i < path.floor.size(); ++i)
        clutter.add({QLineF(sheet.at(path.floor[i - 1]), sheet.at(path.floor[i]))}, canvas::cover::edge, 3.0);
    for (const auto& run : path.runs) {
        addClutter(lineOf(sheet, run), std::max(1.0, sheet.wide(run.pipe.outside) / 2.0), clutter);
        lettering.run(run);
    }
    for (const auto& stretch : grade) {
        QPolygonF line;
        for (const auto& point : stretch.points)
            line << sheet.at(point);
        addClutter(line, 1.0, clutter);
    }
    if (path.highest)
        lettering.note({}, 0, sheet.at(*path.highest) - QPointF(0.0, 8.0),
                       QObject::tr("highest point %1").arg(pens.figures.text(path.highest->level)), 4);
    if (!path.way.closed && !path.vessels.empty())
        lettering.note({}, 1, sheet.at(path.vessels.back().profile.right, path.vessels.back().profile.bottom),
                       QObject::tr("nothing leads the water on from here"), 2);
    canvas::LabelWish pump{path.pump.id, part::tag, 2, {strong(QString::fromStdString(path.pump.tag))}, {}, true};
    around(pump, bodyOf(sheet, path.pump).center(), bodyOf(sheet, path.pump).width() / 2.0 + 2.0, true);
    wishes.push_back(std::move(pump));
    letterLevels(sheet, pens, plan, handles, false, wishes);
}

} // namespace sumpwright::ui::section
