#include "ui/text/units_on_screen.hpp"

#include <QRegularExpression>

namespace sumpwright::ui::text
{

QString unitsOnScreen(QString words)
{
    static const QRegularExpression both(QStringLiteral("\\bdeg([CF]) \\(°\\1\\)")); // told in both ways
    static const QRegularExpression degrees(QStringLiteral("\\bdeg([CF])\\b"));
    static const QRegularExpression angle(QStringLiteral("(?<=\\d) deg\\b"));
    static const QRegularExpression power(QStringLiteral("(?<=\\d |/|\\()(m|cm|mm|ft|in|s)([23])\\b"));
    words.replace(both, QStringLiteral("°\\1"));
    words.replace(degrees, QStringLiteral("°\\1"));
    words.replace(angle, QStringLiteral("°"));
    for (auto match = power.match(words); match.hasMatch(); match = power.match(words, match.capturedEnd()))
        words.replace(match.capturedStart(2), 1, match.captured(2) == QLatin1String("2") ? u'²' : u'³');
    return words;
}

} // namespace sumpwright::ui::text
