#include "ui/section/section_page.hpp"

#include <QObject>

#include <algorithm>

#include "ui/section/paint_profile.hpp"
#include "ui/section/section_marks.hpp"
#include "ui/text/subject.hpp"

namespace sumpwright::ui::section
{

namespace
{
constexpr double grip = 8.0; // pixels: least width of a pipe that is pointed at
} // namespace

void SectionPage::show(const Shown& shown)
{
    m_plan = shown.plan;
    m_path.reset();
    m_grade.clear();
    const auto wanted = m_choice ? m_choice : report::usualWay(shown.plan, shown.results);
    if (wanted)
        m_path = report::sectionOf(shown.plan, shown.results, shown.catalogue, *wanted);
    if (m_path && shown.results)
        m_grade = report::gradeLineOf(*m_path, *shown.results);
    collectHandles();
    collectMarks();
}

void SectionPage::addVesselHandles(const report::SectionVessel& vessel)
{
    using plan::LevelKind;
    const auto& profile = vessel.profile;
    for (const plan::LevelRef& level : plan::levelsOf(m_plan, profile.id)) {
        LevelHandle handle{level, profile.right, *plan::levelOf(m_plan, level), profile.left};
        if (level.port.valid()) {
            const auto port = std::find_if(profile.ports.begin(), profile.ports.end(),
                                           [&](const report::PortProfile& each) { return each.id == level.port; });
            if (port == profile.ports.end())
                continue; // not on the way
            handle.along = port->along;
        } else if (vessel.again) {
            continue;
        } else if (level.kind == LevelKind::running) {
            handle.along = profile.left + 0.8 * (profile.right - profile.left);
        }
        m_handles.push_back(handle);
    }
}

void SectionPage::collectHandles()
{
    m_handles.clear();
    if (!m_path)
        return;
    for (const auto& vessel : m_path->vessels)
        addVesselHandles(vessel);
    for (const plan::LevelRef& level : plan::levelsOf(m_plan, m_path->pump.id))
        m_handles.push_back({level, m_path->pump.along, *plan::levelOf(m_plan, level)});
    for (const auto& run : m_path->runs) {
        const plan::Run* drawn = m_plan.runs.find(run.id);
        const auto* tee = std::get_if<plan::TeeEnd>(run.forward ? &drawn->to : &drawn->from);
        for (std::size_t i = 0; i < run.centre.size(); ++i)
            if (!plan::isHeld(*drawn, run.vertices[i]))
                m_handles.push_back(
                    {{plan::LevelKind::vertex, run.id, {}, run.vertices[i]}, run.centre[i].along, run.centre[i].level});
        if (tee && !run.centre.empty())
            m_handles.push_back({{plan::LevelKind::tee, tee->tee}, run.centre.back().along, run.centre.back().level});
    }
}

void SectionPage::collectMarks()
{
    m_marks.clear();
    for (const LevelHandle& handle : m_handles)
        m_marks.push_back({handle.level.element, handle.along, handle.at});
    if (!m_path)
        return;
    for (const auto& vessel : m_path->vessels)
        for (const auto& level : {vessel.profile.water.least, vessel.profile.water.most, vessel.profile.water.stopped})
            if (level)
                m_marks.push_back({vessel.profile.id, vessel.profile.left, *level});
    m_marks.push_back({{}, m_path->floor.front().along, m_path->floor.front().level});
}

QRectF SectionPage::extent() const
{
    if (!m_path)
        return {};
    double low = units::inMetres(m_path->low.level), high = units::inMetres(m_path->high.level);
    for (const auto& stretch : m_grade)
        for (const auto& point : stretch.points)
            high = std::max(high, units::inMetres(point.level));
    return {QPointF(units::inMetres(m_path->low.along), low), QPointF(units::inMetres(m_path->high.along), high)};
}

void SectionPage::paint(QPainter& painter, const Sheet& sheet, const Pens& pens) const
{
    if (!m_path)
        return;
    for (std::size_t i = 1; i < m_path->floor.size(); ++i)
        if (m_path->floor[i].along > m_path->floor[i - 1].along)
            paintGround(painter, pens, sheet.at(m_path->floor[i - 1]), sheet.at(m_path->floor[i]));
    for (const auto& vessel : m_path->vessels)
        paintVessel(painter, sheet, pens, vessel.profile);
    paintPump(painter, sheet, pens, m_path->pump);
    for (const auto& run : m_path->runs)
        paintPipe(painter, sheet, pens, run.id, run.service, run.pipe.outside, lineOf(sheet, run));
    paintFalls(painter, sheet, pens, *m_path);
    paintGrade(painter, sheet, pens, m_grade);
    paintFreeBoards(painter, sheet, pens, *m_path);
    paintHighest(painter, sheet, pens, *m_path);
}

void SectionPage::letter(const Sheet& sheet, const Pens& pens, canvas::Clutter& clutter,
                         std::vector<canvas::LabelWish>& wishes) const
{
    if (m_path)
        letterSection(sheet, pens, m_plan, *m_path, m_grade, m_handles, clutter, wishes);
}

std::vector<Target> SectionPage::targets(const Sheet& sheet) const
{
    std::vector<Target> targets;
    if (!m_path)
        return targets;
    for (const auto& vessel : m_path->vessels) {
        const auto& profile = vessel.profile;
        targets.push_back({profile.id, sheet.rect(profile.left, profile.right, profile.base, profile.rim), 0.0});
    }
    targets.push_back({m_path->pump.id, bodyOf(sheet, m_path->pump), 0.0});
    for (const auto& run : m_path->runs)
        targets.push_back({run.id, lineOf(sheet, run), std::max(grip, sheet.wide(run.pipe.outside))});
    return targets;
}

QString SectionPage::empty() const
{
    if (m_path)
        return {};
    if (m_plan.pumps.begin() == m_plan.pumps.end())
        return QObject::tr("No pump yet: the section follows the water from a pump.");
    return QObject::tr("No pressure run leads from a pump to a vessel yet: the section follows the water from there.");
}

QString SectionPage::told() const
{
    if (!m_path)
        return empty();
    std::vector<base::Id> vessels;
    for (const auto& vessel : m_path->vessels)
        vessels.push_back(vessel.profile.id);
    QStringList names;
    for (const base::Id id : vessels)
        names << text::subject(m_plan, id);
    QString told =
        QObject::tr("Section along the water: %1.").arg(names.join(QObject::tr(", then ", "from vessel to vessel")));
    for (const auto& run : m_path->runs)
        for (const auto& fall : run.falls)
            if (fall.verdict == report::FallVerdict::rises)
                told += u' ' + QStringLiteral("%1: %2.").arg(text::subject(m_plan, run.id), fallWords(fall, {}));
    return told;
}

} // namespace sumpwright::ui::section
