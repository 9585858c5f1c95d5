#include "ui/tools/typed_lengths.hpp"

#include <QKeyEvent>

#include <algorithm>

#include "core/units/parse.hpp"

namespace sumpwright::ui::tools
{

namespace
{
// Letters of units continue a number that was begun; alone they stay keys of the tool.
bool continues(const QString& begun, QChar typed)
{
    if (typed.isDigit() || typed == u'.' || typed == u',')
        return true;
    return !begun.isEmpty() && (QStringLiteral("mcftin '\"/+*").contains(typed));
}
} // namespace

bool TypedLengths::key(const QKeyEvent& event)
{
    if (event.modifiers() & (Qt::ControlModifier | Qt::AltModifier))
        return false;
    if (event.key() == Qt::Key_Backspace) {
        if (m_texts[m_at].isEmpty() && m_at > 0)
            --m_at;
        const bool had = !m_texts[m_at].isEmpty();
        m_texts[m_at].chop(1);
        return had;
    }
    const QString typed = event.text();
    const bool onward = typed == QLatin1String("x");
    if (onward && !m_texts[m_at].isEmpty() && m_at + 1 < m_texts.size()) {
        ++m_at;
        return true;
    }
    if (typed.size() != 1 || !continues(m_texts[m_at], typed.front()))
        return false;
    m_texts[m_at] += typed;
    return true;
}

void TypedLengths::clear()
{
    for (auto& text : m_texts)
        text.clear();
    m_at = 0;
}

bool TypedLengths::empty() const
{
    return std::all_of(m_texts.begin(), m_texts.end(), [](const QString& text) { return text.isEmpty(); });
}

std::optional<units::Length> TypedLengths::length(int index, const canvas::Figures& figures) const
{
    const auto read = coordinate(index, figures);
    return read && *read > units::metres(0.0) ? read : std::nullopt;
}

std::optional<units::Length> TypedLengths::coordinate(int index, const canvas::Figures& figures) const
{
    units::Reading reading;
    reading.bareUnit = figures.system == units::UnitSystem::us ? "ft" : "m";
    reading.typed = figures.system;
    const auto read = units::parse<units::Length>(m_texts[index].trimmed().toStdString(), figures.numbers, reading);
    return read ? std::optional(*read) : std::nullopt;
}

QString TypedLengths::text() const
{
    QStringList typed;
    for (int i = 0; i <= m_at; ++i)
        typed.append(m_texts[i]);
    return typed.join(QStringLiteral(" \u00d7 "));
}

} // namespace sumpwright::ui::tools
