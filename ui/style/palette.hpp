// Theme: every colour of the window by its meaning, once for light and once for dark, and the QPalette made of it.
//
// A widget asks themeOf(*this) when it paints and repaints on QEvent::PaletteChange; nobody stores a colour.
// Text colours reach 4.5:1 on paper, panel and field; lines and marks reach 3:1 (WCAG 2.1, 1.4.3 and 1.4.11).
#pragma once

#include <QColor>
#include <QPalette>

QT_BEGIN_NAMESPACE
class QWidget;
QT_END_NAMESPACE

namespace sumpwright::ui::style
{

enum class Scheme { light, dark };

struct Theme {
    Scheme scheme = Scheme::light;

    // Grounds
    QColor paper;  // plan, charts
    QColor panel;  // bars, panels, rulers
    QColor field;  // entry fields, lists
    QColor notice; // message strips
    // Ink
    QColor ink;       // text and main outlines
    QColor quiet;     // secondary text, dimension lines
    QColor faint;     // control borders and separators; at least 3:1 where it bounds a control
    QColor gridFine;  // opaque, never alpha
    QColor gridHeavy; // opaque
    QColor stale;     // numbers that are not current
    // Drawing
    QColor floor;       // slab fill
    QColor wall;        // fixture fill
    QColor water;       // water surface fill
    QColor waterLine;   // water as a line: runs, levels, arrows
    QColor medium;      // growing medium fill
    QColor mediumHatch; // its fine hatch
    QColor shell;       // vessel wall, pump body fill
    // State
    QColor accent;        // the one accent: focus, links, chosen things
    QColor onAccent;      // text on accent
    QColor selection;     // outline of the selected
    QColor selectionWash; // fill behind the selected, opaque
    QColor snap;          // cue at a snapped place
    // Severity; text and marks
    QColor good;
    QColor caution;
    QColor fault;
};

const Theme& theme(Scheme scheme);
// The theme a widget's palette belongs to, told by the lightness of its ground.
const Theme& themeOf(const QPalette& palette);
const Theme& themeOf(const QWidget& widget);
QPalette paletteOf(const Theme& theme);

// Contrast ratio of two opaque colours, 1 to 21 (WCAG 2.1, "contrast ratio").
double contrast(const QColor& a, const QColor& b);
// The theme's ink or paper, whichever reads better on this ground; black or white where neither reaches 4.5:1.
QColor inkOn(const Theme& theme, const QColor& ground);

} // namespace sumpwright::ui::style
