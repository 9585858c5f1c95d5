// The two type sizes of the window: body and title. Inter where it is installed, else the desktop's own face.
#pragma once

#include <QFont>

namespace sumpwright::ui::style
{

constexpr qreal bodyPoints = 9.5;
constexpr qreal titlePoints = 13.0;

QString face(); // family name
QFont bodyFont();
QFont strongFont(); // body size, half bold: column heads, vital figures
QFont titleFont();  // title size, half bold: chart and panel titles, empty state

// The 8-px rhythm, device-independent pixels.
constexpr int step = 8;
constexpr int halfStep = 4;
constexpr int leastTarget = 24; // smallest side of a button or handle (WCAG 2.2, 2.5.8)

} // namespace sumpwright::ui::style
