// Units as a screen shows them: "20 °C", "1.2 m²", "37°", where files and the command line write degC, m2, deg.
// Every one of them can be typed and is read the same.
#pragma once

#include <QString>

namespace sumpwright::ui::text
{

QString unitsOnScreen(QString words);

} // namespace sumpwright::ui::text
