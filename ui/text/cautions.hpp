// Cautions that stand wherever work can hurt someone; always shown in full.
#pragma once

#include <QString>

namespace sumpwright::ui::text
{

QString loadCaution();
QString electricalCaution();
QString drinkingWaterCaution();
QString legCaution(); // real legs do not share a load evenly

} // namespace sumpwright::ui::text
