// The strokes PlainStyle is made of: boxes, focus lines, arrows and crosses in a theme's colours.
#pragma once

#include <QIcon>
#include <QPainter>
#include <QRect>
#include <QStyleOption>

#include "ui/style/palette.hpp"

namespace sumpwright::ui::style
{

void paintBox(QPainter& painter, const QRect& rect, const QColor& fill, const QColor& line, int width = 1);
void paintArrow(QPainter& painter, const QRect& rect, Qt::ArrowType direction, const QColor& line);
// A field or button ground by its state: enabled, pressed, focused.
void paintGround(QPainter& painter, const QRect& rect, const Theme& theme, QStyle::State state, bool isButton);
QIcon crossIcon(const QColor& line);
QIcon windowIcon(const QColor& line);    // two overlapping sheets: loose panel
QIcon extensionIcon(const QColor& line); // more to the right

} // namespace sumpwright::ui::style
