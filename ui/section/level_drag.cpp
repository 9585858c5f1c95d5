#include "ui/section/level_drag.hpp"

#include <QKeyEvent>

#include <algorithm>
#include <cmath>

#include "core/plan/tidy.hpp"
#include "core/units/parse.hpp"

namespace sumpwright::ui::section
{

namespace
{
units::Length sizeOf(units::Length length) { return length < units::Length() ? -length : length; }

bool continues(const QString& begun, QChar typed)
{
    if (typed.isDigit() || typed == u'.' || typed == u',' || typed == u'-' || typed == u'+')
        return true;
    return !begun.isEmpty() && QStringLiteral("mcftin '\"/*").contains(typed);
}
} // namespace

units::Elevation toStep(units::Elevation level, units::Length step)
{
    const double steps = std::round(units::inMetres(level) / units::inMetres(step));
    return plan::tidy(units::elevationMetres(steps * units::inMetres(step)));
}

LevelDrag::LevelDrag(const LevelHandle& handle, units::Elevation grabbed, const std::vector<LevelMark>& marks)
    : m_handle(handle), m_off(handle.at - grabbed), m_level(handle.at)
{
    for (const LevelMark& mark : marks)
        if (mark.element != handle.level.element)
            m_marks.push_back(mark);
}

void LevelDrag::moveTo(units::Elevation pointer, const LevelRules& rules)
{
    const units::Elevation raw = pointer + m_off;
    m_guide.reset();
    m_level = plan::tidy(raw);
    if (!rules.snapping)
        return;
    m_level = toStep(raw, rules.step);
    units::Length nearest = rules.reach;
    for (const LevelMark& mark : m_marks)
        if (const units::Length off = sizeOf(mark.level - raw); off <= nearest) {
            nearest = off;
            m_guide = mark;
        }
    // A grid level that is nearer than the other element keeps its right.
    if (m_guide && sizeOf(m_level - raw) < nearest)
        m_guide.reset();
    if (m_guide)
        m_level = plan::tidy(m_guide->level);
}

bool LevelDrag::key(const QKeyEvent& event)
{
    if (event.modifiers() & (Qt::ControlModifier | Qt::AltModifier))
        return false;
    if (event.key() == Qt::Key_Backspace) {
        const bool had = !m_typed.isEmpty();
        m_typed.chop(1);
        return had;
    }
    const QString text = event.text();
    if (text.size() != 1 || !continues(m_typed, text.front()))
        return false;
    m_typed += text;
    return true;
}

units::Elevation LevelDrag::level(const canvas::Figures& figures) const
{
    if (m_typed.isEmpty())
        return m_level;
    units::Reading reading;
    reading.bareUnit = figures.system == units::UnitSystem::us ? "ft" : "m";
    reading.typed = figures.system;
    const auto read = units::parse<units::Elevation>(m_typed.trimmed().toStdString(), figures.numbers, reading);
    return read ? *read : m_level;
}

} // namespace sumpwright::ui::section
