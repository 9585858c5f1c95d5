// Natural order of tags: runs of digits count as numbers, "B2" before "B10"; letters without regard to case first.
#pragma once

#include <QString>

namespace sumpwright::ui::outline
{

bool naturallyBefore(const QString& a, const QString& b);

} // namespace sumpwright::ui::outline
