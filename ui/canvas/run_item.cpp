#include "ui/canvas/run_item.hpp"

#include <algorithm>
#include <cmath>

#include "ui/canvas/scene_point.hpp"
#include "ui/canvas/symbols.hpp"

namespace sumpwright::ui::canvas
{

namespace
{
constexpr double leastWidth = 2.0;    // pixels
constexpr double doubleFrom = 4.5;    // pixels: wide enough for two edges and a centre line
constexpr double socketsFrom = 7.0;   // pixels
constexpr double fittingLeast = 15.0; // pixels
constexpr double arrowLeast = 8.0;    // pixels
constexpr double arrowSmallest = 4.0; // pixels: smaller ones do not tell a direction
constexpr double arrowRoom = 30.0;    // pixels of straight pipe that an arrow needs
constexpr double colouredLeast = 6.0; // pixels: narrower no colour is told from another
constexpr double markEvery = 14.0;    // pixels between marks along a pipe
constexpr double marksUpTo = 40.0;    // scene millimetres per pixel: as labels
constexpr double bendRadius = 1.0;    // of the outside diameter, to the centre line
} // namespace

RunItem::RunItem(Pointer run, const Drawing& drawing) : ElementItem(run->id, drawing) { show(std::move(run)); }

void RunItem::show(Pointer run)
{
    prepareGeometryChange();
    m_run = std::move(run);
    m_line = runLineOf(*m_run, drawing().outsideDiameter(*m_run));
    refresh();
}

void RunItem::setSurroundings(RunSurroundings surroundings)
{
    if (surroundings == m_surroundings)
        return;
    m_surroundings = std::move(surroundings);
    refresh();
}

void RunItem::drawingChanged()
{
    ElementItem::drawingChanged();
    m_line = runLineOf(*m_run, drawing().outsideDiameter(*m_run));
    refresh();
}

void RunItem::refresh()
{
    const double air = std::max(m_line.width * 0.2, drawing().ink().px(2.5));
    m_stretches = stretchesOf(m_line.length(), m_surroundings.breaks, m_surroundings.hidden, air);
    m_path = pathOf(m_line, 0.0, m_line.length(), m_line.width * bendRadius);
    if (m_line.corners.size() == 1) // one vertical leg
        m_path.addEllipse(m_line.corners.front().at, m_line.width / 2.0, m_line.width / 2.0);
    update();
}

double RunItem::margin() const { return m_line.width / 2.0 + drawing().ink().px(10.0); }

bool RunItem::flowsBackwards() const
{
    const auto flow = drawing().water.run(m_run->id);
    return flow && *flow < units::litresPerHour(-0.5);
}

std::vector<RunItem::Straight> RunItem::straights() const
{
    std::vector<Straight> found;
    for (const auto& stretch : m_stretches) {
        if (stretch.kind == StretchKind::hidden)
            continue;
        for (std::size_t i = 0; i + 1 < m_line.corners.size(); ++i) {
            const double from = std::max(stretch.from, m_line.corners[i].distance);
            const double to = std::min(stretch.to, m_line.corners[i + 1].distance);
            if (to > from)
                found.push_back({(from + to) / 2.0, to - from});
        }
    }
    std::stable_sort(found.begin(), found.end(),
                     [](const Straight& a, const Straight& b) { return a.length > b.length + 1.0; });
    return found;
}

void RunItem::draw(QPainter& painter, const Ink& ink) const
{
    drawBody(painter, ink);
    if (m_line.width >= ink.px(socketsFrom))
        drawSockets(painter, ink);
    drawMarks(painter, ink);
    drawArrows(painter, ink);
    drawVerticals(painter, ink);
    drawEnds(painter, ink);
    drawFittings(painter, ink);
}

void RunItem::drawBody(QPainter& painter, const Ink& ink) const
{
    painter.setBrush(Qt::NoBrush);
    for (const auto& stretch : m_stretches)
        drawStretch(painter, ink, pathOf(m_line, stretch.from, stretch.to, m_line.width * bendRadius),
                    stretch.kind == StretchKind::hidden);
}

void RunItem::drawStretch(QPainter& painter, const Ink& ink, const QPainterPath& path, bool hidden) const
{
    const auto& theme = *ink.theme;
    const bool gravity = m_run->service == plan::Service::gravity;
    const auto strokeWith = [&](QPen pen) {
        pen.setJoinStyle(Qt::RoundJoin);
        painter.strokePath(path, pen);
    };
    if (drawing().coloursRuns() && !hidden) {
        const double width = ink.atLeast(m_line.width, colouredLeast);
        strokeWith(ink.truePen(theme.waterLine, width));
        strokeWith(ink.truePen(fill(ink), width - ink.px(2.0 * weight::thin)));
        return;
    }
    if (m_line.width < ink.px(doubleFrom)) {
        const QPen pen = ink.truePen(theme.waterLine, ink.atLeast(m_line.width * 0.8, hidden ? 1.2 : leastWidth));
        if (hidden)
            strokeWith(ink.dashed(pen, {2.5, 2.5}));
        else
            strokeWith(gravity ? ink.dashed(pen, {9.0, 3.5}) : pen);
        return;
    }
    if (hidden) {
        strokeWith(ink.dashed(ink.pen(theme.waterLine, weight::thin), {4.0, 3.0}));
        return;
    }
    strokeWith(ink.truePen(theme.waterLine, m_line.width));
    strokeWith(ink.truePen(blend(theme.paper, theme.water, 0.55), m_line.width - ink.px(2.0 * weight::thin)));
    const QPen centre = ink.pen(theme.waterLine, weight::hair);
    strokeWith(gravity ? ink.dashed(centre, {7.0, 4.0}) : ink.dashed(centre, {16.0, 3.0, 2.0, 3.0}));
}

QColor RunItem::fill(const Ink& ink) const
{
    const auto which = drawing().classOf(m_run->id);
    return which ? colourOfClass(*ink.theme, *which, drawing().scale.classes(), drawing().water.stale)
                 : ink.theme->paper;
}

// Rings or bars along the pipe: slow and surcharged runs are told by more than a colour.
void RunItem::drawMarks(QPainter& painter, const Ink& ink) const
{
    const auto* figures = drawing().water.figuresOf(m_run->id);
    if (!drawing().coloursRuns() || !figures || figures->mark == RunMark::none || drawing().pixel > marksUpTo)
        return;
    const double width = ink.atLeast(m_line.width, colouredLeast);
    for (const auto& straight : straights())
        for (double off = ink.px(markEvery) / 2.0; off < straight.length / 2.0; off += ink.px(markEvery))
            for (const double at : {straight.middle - off, straight.middle + off})
                paintRunMark(painter, ink, figures->mark, m_line.at(at), m_line.turnAt(at), width);
}

QString RunItem::description() const
{
    QString text = ElementItem::description();
    const Figures& figures = drawing().figures;
    if (const auto flow = drawing().water.run(m_run->id))
        text += QLatin1Char('\n') + figures.text(*flow < units::Flow() ? -*flow : *flow);
    if (const auto* known = drawing().water.figuresOf(m_run->id)) {
        if (const QString velocity = figureText(RunMeasure::velocity, *known, figures); !velocity.isEmpty())
            text += QLatin1Char('\n') + tr("velocity %1").arg(velocity);
        RunFigures bare = *known;
        bare.mark = RunMark::none;
        if (const QString grade = figureText(RunMeasure::head, bare, figures); !grade.isEmpty())
            text += QLatin1Char('\n') + tr("hydraulic grade %1").arg(grade);
    }
    if (drawing().water.stale)
        text += QLatin1Char('\n') + tr("older than the drawing");
    return text;
}

// The socket ends of a bend: short strokes across the pipe where the fitting begins and ends.
void RunItem::drawSockets(QPainter& painter, const Ink& ink) const
{
    painter.setPen(ink.pen(ink.theme->waterLine, weight::thin));
    const double half = m_line.width * 0.62;
    for (std::size_t i = 1; i + 1 < m_line.corners.size(); ++i) {
        const double at = m_line.corners[i].distance;
        const double turnIn = m_line.turnAt(at - 0.01);
        const double turnOut = m_line.turnAt(at + 0.01);
        if (std::abs(std::remainder(turnOut - turnIn, 360.0)) < 1.0)
            continue;
        for (const auto& [distance, turn] :
             {std::pair(at - m_line.width, turnIn), std::pair(at + m_line.width, turnOut)}) {
            const double across = (turn + 90.0) * units::pi / 180.0;
            const QPointF side(half * std::cos(across), half * std::sin(across));
            painter.drawLine(m_line.at(distance) - side, m_line.at(distance) + side);
        }
    }
}

void RunItem::drawArrows(QPainter& painter, const Ink& ink) const
{
    const auto flow = drawing().water.run(m_run->id);
    const bool still = flow && units::inLitresPerHour(*flow) < 0.5 && units::inLitresPerHour(*flow) > -0.5;
    if (still)
        return;
    const bool back = flowsBackwards();
    const double size = std::min(ink.sign(m_line.width * 0.8, arrowLeast), ink.px(16.0));
    if (size < ink.px(arrowSmallest))
        return;
    for (const auto& straight : straights()) {
        if (straight.length < ink.px(arrowRoom))
            break;
        const double turn = m_line.turnAt(straight.middle) + (back ? 180.0 : 0.0);
        const double radians = turn * units::pi / 180.0;
        const QPointF ahead(std::cos(radians) * size / 2.0, std::sin(radians) * size / 2.0);
        const QColor colour = drawing().coloursRuns() ? style::inkOn(*ink.theme, fill(ink)) : ink.theme->waterLine;
        paintFlowArrow(painter, ink, m_line.at(straight.middle) + ahead, turn, size, colour);
    }
}

void RunItem::drawVerticals(QPainter& painter, const Ink& ink) const
{
    const double diameter = ink.sign(m_line.width * 1.35, 9.0);
    const bool fromPump = std::holds_alternative<plan::PumpEnd>(m_run->from);
    for (const auto& corner : m_line.corners) {
        if (fromPump && corner.distance == 0.0)
            continue; // the pump's own sign stands there
        const double rise = units::inMetres(corner.after - corner.before) * (flowsBackwards() ? -1.0 : 1.0);
        if (rise > 0.005)
            paintRising(painter, ink, corner.at, diameter);
        else if (rise < -0.005)
            paintFalling(painter, ink, corner.at, diameter);
    }
}

void RunItem::drawEnds(QPainter& painter, const Ink& ink) const
{
    const double diameter = ink.sign(m_line.width, 6.0);
    const double length = m_line.length();
    if (std::holds_alternative<plan::OpenEnd>(m_run->from))
        paintOpenEnd(painter, ink, m_line.at(0.0), m_line.turnAt(0.0), diameter);
    if (std::holds_alternative<plan::OpenEnd>(m_run->to))
        paintOpenEnd(painter, ink, m_line.at(length), m_line.turnAt(length), diameter);
}

namespace
{
FittingSign signOf(const catalogue::Catalogue* tables, const std::string& fittingId)
{
    const auto fitting =
        tables ? tables->fitting(fittingId) : base::Outcome<const catalogue::Fitting*>(base::Refusal());
    if (!fitting)
        return FittingSign::other;
    switch ((*fitting)->valve) {
    case catalogue::ValveKind::Ball:
        return FittingSign::ball;
    case catalogue::ValveKind::Gate:
        return FittingSign::gate;
    case catalogue::ValveKind::Globe:
        return FittingSign::globe;
    case catalogue::ValveKind::Butterfly:
        return FittingSign::butterfly;
    case catalogue::ValveKind::Check:
        return FittingSign::check;
    case catalogue::ValveKind::NotAValve:
        return FittingSign::other;
    }
    return FittingSign::other;
}
} // namespace

double RunItem::fittingSize() const { return drawing().ink().sign(m_line.width * 2.6, fittingLeast); }

void RunItem::drawFittings(QPainter& painter, const Ink& ink) const
{
    const double size = fittingSize();
    for (const auto& valve : m_run->valves) {
        const double distance = distanceAtStation(*m_run, m_line, valve.station);
        paintFitting(painter, ink, signOf(drawing().catalogue.get(), valve.fittingId), m_line.at(distance),
                     m_line.turnAt(distance), size, valve.opening <= 0.0);
    }
}

} // namespace sumpwright::ui::canvas
