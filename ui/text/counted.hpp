// counted: a number with its noun, in the singular for one.
#pragma once

#include <QString>

namespace sumpwright::ui::text
{

inline QString counted(int number, const QString& one, const QString& several)
{
    return QStringLiteral("%1 %2").arg(number).arg(number == 1 ? one : several);
}

} // namespace sumpwright::ui::text
