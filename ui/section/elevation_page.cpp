#include "ui/section/elevation_page.hpp"

#include <QObject>

#include <algorithm>
#include <array>
#include <cmath>
#include <map>

#include "core/report/tag_spans.hpp"
#include "ui/canvas/symbols.hpp"
#include "ui/section/letters.hpp"
#include "ui/section/paint_profile.hpp"
#include "ui/text/subject.hpp"

namespace sumpwright::ui::section
{

namespace
{
constexpr double levelsFrom = 110.0;      // pixels per metre: from there on levels of all vessels find room
constexpr std::size_t letteredRuns = 300; // of larger plans letters do not look out for pipes
constexpr double grip = 8.0;              // pixels: least width of a pipe that is pointed at

QPolygonF lineOf(const Sheet& sheet, const std::vector<report::ProfilePoint>& points)
{
    QPolygonF line;
    for (const auto& point : points)
        line << sheet.at(point);
    return line;
}

QString tagsOf(const std::vector<std::string>& tags)
{
    QStringList words;
    for (const report::TagSpan& span : report::spansOf(tags))
        words << (span.count > 2 ? QObject::tr("%1 to %2", "first and last of a row of tags")
                                       .arg(QString::fromStdString(span.first), QString::fromStdString(span.last))
                  : span.count == 2 ? QStringLiteral("%1, %2").arg(QString::fromStdString(span.first),
                                                                   QString::fromStdString(span.last))
                                    : QString::fromStdString(span.first));
    return words.join(QStringLiteral(", "));
}
} // namespace

void ElevationPage::show(const Shown& shown)
{
    m_plan = shown.plan;
    m_elevation = report::elevationOf(shown.plan, shown.results, shown.catalogue);
    m_vesselAt.clear();
    m_runAt.clear();
    for (std::size_t i = 0; i < m_elevation.vessels.size(); ++i)
        m_vesselAt.emplace(m_elevation.vessels[i].id, i);
    for (std::size_t i = 0; i < m_elevation.runs.size(); ++i)
        m_runAt.emplace(m_elevation.runs[i].id, i);
    group();
    collectHandles();
    collectMarks();
}

void ElevationPage::group()
{
    std::map<std::array<long, 4>, Group> groups;
    const auto mm = [](double metres) { return std::lround(metres * 1000.0); };
    for (std::size_t i = 0; i < m_elevation.vessels.size(); ++i) {
        const auto& vessel = m_elevation.vessels[i];
        Group& group = groups[{mm(units::inMetres(vessel.left)), mm(units::inMetres(vessel.right)),
                               mm(units::inMetres(vessel.base)), mm(units::inMetres(vessel.rim))}];
        group.front = i;
        group.tags.push_back(vessel.tag);
        if (const auto& level = vessel.water.least) {
            group.low = std::min(group.low.value_or(*level), *level);
            group.high = std::max(group.high.value_or(*level), *level);
        }
    }
    m_groups.clear();
    for (auto& [key, group] : groups)
        m_groups.push_back(std::move(group));
}

// Base and rim at the right-hand wall, the running level between; everything else where it lies.
void ElevationPage::collectHandles()
{
    m_handles.clear();
    const auto add = [this](base::Id element) {
        for (const plan::LevelRef& level : plan::levelsOf(m_plan, element)) {
            LevelHandle handle{level, plan::placeOf(m_plan, level)->x, *plan::levelOf(m_plan, level), {}};
            if (const auto vessel = m_vesselAt.find(element); vessel != m_vesselAt.end()) {
                const auto& profile = m_elevation.vessels[vessel->second];
                handle.left = profile.left;
                if (level.kind == plan::LevelKind::base || level.kind == plan::LevelKind::rim)
                    handle.along = profile.right;
                if (level.kind == plan::LevelKind::running)
                    handle.along = profile.left + 0.8 * (profile.right - profile.left);
            }
            m_handles.push_back(handle);
        }
    };
    std::vector<std::pair<units::Length, base::Id>> elements;
    for (const auto& vessel : m_elevation.vessels)
        elements.emplace_back(vessel.left, vessel.id);
    for (const auto& pump : m_elevation.pumps)
        elements.emplace_back(pump.along, pump.id);
    for (const auto& tee : m_elevation.tees)
        elements.emplace_back(tee.at.along, tee.id);
    for (const auto& run : m_elevation.runs)
        if (!run.centre.empty())
            elements.emplace_back(run.centre.front().along, run.id);
    std::stable_sort(elements.begin(), elements.end());
    for (const auto& [along, id] : elements)
        add(id);
}

void ElevationPage::collectMarks()
{
    m_marks.clear();
    for (const LevelHandle& handle : m_handles)
        m_marks.push_back({handle.level.element, handle.along, handle.at});
    for (const auto& vessel : m_elevation.vessels)
        for (const auto& level : {vessel.water.least, vessel.water.most, vessel.water.stopped})
            if (level)
                m_marks.push_back({vessel.id, vessel.left, *level});
    if (m_elevation.floor)
        m_marks.push_back({{}, m_elevation.floor->first.along, m_elevation.floor->first.level});
}

QRectF ElevationPage::extent() const
{
    const auto &low = m_elevation.low, &high = m_elevation.high;
    return {QPointF(units::inMetres(low.along), units::inMetres(low.level)),
            QPointF(units::inMetres(high.along), units::inMetres(high.level))};
}

bool ElevationPage::hidden(const report::VesselProfile& vessel) const
{
    for (std::size_t i = m_vesselAt.at(vessel.id) + 1; i < m_elevation.vessels.size(); ++i) {
        const auto& nearer = m_elevation.vessels[i];
        if (nearer.left <= vessel.left && nearer.right >= vessel.right && nearer.base <= vessel.base &&
            nearer.rim >= vessel.rim)
            return true;
    }
    return false;
}

// What is written before another vessel would be read as that one's.
void ElevationPage::keepToItsOwn(const Sheet& sheet, const report::VesselProfile& vessel, canvas::LabelWish& wish) const
{
    const std::size_t own = m_vesselAt.at(vessel.id);
    for (canvas::LabelSpot& spot : wish.spots)
        for (std::size_t i = m_elevation.vessels.size(); i-- > 0;) {
            const auto& other = m_elevation.vessels[i];
            if (!sheet.rect(other.left, other.right, other.base, other.rim).contains(spot.centre))
                continue;
            if (i != own)
                spot.cost += 2 * canvas::cover::mark;
            break;
        }
}

void ElevationPage::paintBuilding(QPainter& painter, const Sheet& sheet, const Pens& pens) const
{
    const auto& theme = *pens.ink.theme;
    painter.setBrush(Qt::NoBrush);
    for (const auto& fixture : m_elevation.fixtures) {
        const bool lit = pens.lit(fixture.id);
        painter.setPen(pens.ink.pen(lit ? theme.selection : theme.gridHeavy, lit ? 2.0 : 1.0));
        if (fixture.kind == plan::FixtureKind::powerPoint)
            canvas::paintPowerPoint(painter, pens.ink, sheet.at(fixture.left, fixture.bottom), 10.0);
        else
            painter.drawRect(sheet.rect(fixture.left, fixture.right, fixture.bottom, fixture.top));
    }
    if (m_elevation.floor)
        paintGround(painter, pens, sheet.at(m_elevation.floor->first), sheet.at(m_elevation.floor->second));
}

void ElevationPage::paintElement(QPainter& painter, const Sheet& sheet, const Pens& pens, base::Id id) const
{
    if (const auto vessel = m_vesselAt.find(id); vessel != m_vesselAt.end()) {
        paintVessel(painter, sheet, pens, m_elevation.vessels[vessel->second]);
        for (const auto& pump : m_elevation.pumps)
            if (pump.vessel == id)
                paintPump(painter, sheet, pens, pump);
    } else if (const auto run = m_runAt.find(id); run != m_runAt.end()) {
        const auto& profile = m_elevation.runs[run->second];
        paintPipe(painter, sheet, pens, id, profile.service, profile.pipe.outside, lineOf(sheet, profile.centre));
    }
}

void ElevationPage::paint(QPainter& painter, const Sheet& sheet, const Pens& pens) const
{
    paintBuilding(painter, sheet, pens);
    for (const base::Id id : m_elevation.order)
        paintElement(painter, sheet, pens, id);
    for (const base::Id id : m_elevation.order)
        if (pens.chosen(id))
            paintElement(painter, sheet, pens, id);
    for (const auto& tee : m_elevation.tees)
        if (pens.lit(tee.id)) {
            painter.setPen(pens.ink.pen(pens.ink.theme->selection, canvas::weight::bold));
            painter.setBrush(pens.ink.theme->paper);
            painter.drawEllipse(sheet.at(tee.at), 5.0, 5.0);
        }
}

void ElevationPage::letter(const Sheet& sheet, const Pens& pens, canvas::Clutter& clutter,
                           std::vector<canvas::LabelWish>& wishes) const
{
    for (const auto& vessel : m_elevation.vessels)
        addClutter(sheet, vessel, clutter);
    if (m_elevation.floor)
        clutter.add({QLineF(sheet.at(m_elevation.floor->first), sheet.at(m_elevation.floor->second))},
                    canvas::cover::edge, 3.0);
    if (m_elevation.runs.size() <= letteredRuns)
        for (const auto& run : m_elevation.runs)
            addClutter(lineOf(sheet, run.centre), std::max(1.0, sheet.wide(run.pipe.outside) / 2.0), clutter);
    for (const Group& group : m_groups) {
        const auto& vessel = m_elevation.vessels[group.front];
        if (!pens.chosen(vessel.id) && hidden(vessel))
            continue;
        const std::size_t before = wishes.size();
        letterVessel(sheet, pens, vessel, tagsOf(group.tags), waterText(pens, group.low, group.high), wishes);
        for (std::size_t i = before; i < wishes.size(); ++i)
            keepToItsOwn(sheet, vessel, wishes[i]);
    }
    for (const auto& pump : m_elevation.pumps) {
        canvas::LabelWish wish{pump.id, part::tag, 2, {strong(QString::fromStdString(pump.tag))}, {}, true};
        const QRectF body = bodyOf(sheet, pump);
        around(wish, body.center(), std::max(body.width(), body.height()) / 2.0, true);
        wishes.push_back(std::move(wish));
    }
    letterLevels(sheet, pens, m_plan, m_handles, sheet.scale >= levelsFrom && m_elevation.vessels.size() <= 12, wishes);
    if (m_elevation.floor) {
        canvas::LabelWish floor{
            {}, part::note,
            5,  {levelText(QObject::tr("floor %1").arg(pens.figures.text(m_elevation.floor->first.level)), false)},
            {}, true};
        const QPointF from = sheet.at(m_elevation.floor->first), to = sheet.at(m_elevation.floor->second);
        const double half = floor.texts[0].size.width() / 2.0 + 4.0;
        for (const double x :
             {std::min(to.x(), sheet.room.right()) - half, std::max(from.x(), sheet.room.left()) + half})
            for (const double y : {-9.0, 15.0})
                floor.spots.push_back({0, {x, from.y() + y}, 0.0, y > 0.0 ? 1 : 0});
        wishes.push_back(std::move(floor));
    }
}

std::vector<Target> ElevationPage::targets(const Sheet& sheet) const
{
    std::vector<Target> targets;
    for (const auto& fixture : m_elevation.fixtures) {
        const QRectF rect = sheet.rect(fixture.left, fixture.right, fixture.bottom, fixture.top);
        targets.push_back(
            {fixture.id,
             QPolygonF{rect.topLeft(), rect.topRight(), rect.bottomRight(), rect.bottomLeft(), rect.topLeft()}, grip});
    }
    for (const base::Id id : m_elevation.order) {
        if (const auto vessel = m_vesselAt.find(id); vessel != m_vesselAt.end()) {
            const auto& profile = m_elevation.vessels[vessel->second];
            targets.push_back({id, sheet.rect(profile.left, profile.right, profile.base, profile.rim), 0.0});
            for (const auto& pump : m_elevation.pumps)
                if (pump.vessel == id)
                    targets.push_back({pump.id, bodyOf(sheet, pump), 0.0});
        } else if (const auto run = m_runAt.find(id); run != m_runAt.end()) {
            const auto& profile = m_elevation.runs[run->second];
            targets.push_back({id, lineOf(sheet, profile.centre), std::max(grip, sheet.wide(profile.pipe.outside))});
        }
    }
    return targets;
}

QString ElevationPage::empty() const
{
    return m_elevation.vessels.empty() && m_elevation.runs.empty() && !m_elevation.floor
               ? QObject::tr("Nothing drawn yet: what is placed on the plan stands here at its level.")
               : QString();
}

QString ElevationPage::told() const
{
    std::vector<base::Id> vessels;
    for (const auto& vessel : m_plan.vessels)
        vessels.push_back(vessel->id);
    return vessels.empty() ? empty() : QObject::tr("Front elevation of %1.").arg(text::allSubjects(m_plan, vessels));
}

} // namespace sumpwright::ui::section
