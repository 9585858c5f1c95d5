#include "ui/style/palette.hpp"

#include <algorithm>
#include <cmath>

#include <QWidget>

namespace sumpwright::ui::style
{

namespace
{

Theme lightTheme()
{
    Theme t;
    t.scheme = Scheme::light;
    t.paper = QColor(0xFEFDFB);
    t.panel = QColor(0xF1EFEA);
    t.field = QColor(0xFFFFFF);
    t.notice = QColor(0xFBEFD5);
    t.ink = QColor(0x1F2427);
    t.quiet = QColor(0x575E63);
    t.faint = QColor(0x85857F);
    t.gridFine = QColor(0xEFEDE7);
    t.gridHeavy = QColor(0xDDDAD1);
    t.stale = QColor(0x5F666B);
    t.floor = QColor(0xF5F3ED);
    t.wall = QColor(0x85827B);
    t.water = QColor(0xBBDDF0);
    t.waterLine = QColor(0x0072B2);
    t.medium = QColor(0xE4D9C6);
    t.mediumHatch = QColor(0x94795A);
    t.shell = QColor(0xFFFFFF);
    t.accent = QColor(0xAB4200);
    t.onAccent = QColor(0xFFFFFF);
    t.selection = QColor(0xAB4200);
    t.selectionWash = QColor(0xF8E3D3);
    t.snap = QColor(0x8A3A8F);
    t.good = QColor(0x00694C);
    t.caution = QColor(0x7A5200);
    t.fault = QColor(0xB00020);
    return t;
}

Theme darkTheme()
{
    Theme t;
    t.scheme = Scheme::dark;
    t.paper = QColor(0x1B1F22);
    t.panel = QColor(0x24292D);
    t.field = QColor(0x181B1E);
    t.notice = QColor(0x3A3222);
    t.ink = QColor(0xE9E6DF);
    t.quiet = QColor(0xA9AEB1);
    t.faint = QColor(0x7A8187);
    t.gridFine = QColor(0x24292D);
    t.gridHeavy = QColor(0x333A3F);
    t.stale = QColor(0x9EA4A9);
    t.floor = QColor(0x20262A);
    t.wall = QColor(0x6F757A);
    t.water = QColor(0x1D4D6B);
    t.waterLine = QColor(0x56B4E9);
    t.medium = QColor(0x423A2E);
    t.mediumHatch = QColor(0xA38B6B);
    t.shell = QColor(0x2C3338);
    t.accent = QColor(0xF0955A);
    t.onAccent = QColor(0x1B1F22);
    t.selection = QColor(0xF0955A);
    t.selectionWash = QColor(0x4A3426);
    t.snap = QColor(0xD08AD6);
    t.good = QColor(0x4CC79B);
    t.caution = QColor(0xE6B450);
    t.fault = QColor(0xFF8A80);
    return t;
}

// Relative luminance of an sRGB colour, as WCAG 2.1 defines it.
double luminance(const QColor& colour)
{
    const auto linear = [](double c) { return c <= 0.03928 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4); };
    const QColor rgb = colour.toRgb();
    return 0.2126 * linear(rgb.redF()) + 0.7152 * linear(rgb.greenF()) + 0.0722 * linear(rgb.blueF());
}

} // namespace

const Theme& theme(Scheme scheme)
{
    static const Theme light = lightTheme();
    static const Theme dark = darkTheme();
    return scheme == Scheme::dark ? dark : light;
}

const Theme& themeOf(const QPalette& palette)
{
    return theme(palette.color(QPalette::Window).lightness() < 128 ? Scheme::dark : Scheme::light);
}

const Theme& themeOf(const QWidget& widget) { return themeOf(widget.palette()); }

QPalette paletteOf(const Theme& t)
{
    QPalette p;
    p.setColor(QPalette::Window, t.panel);
    p.setColor(QPalette::WindowText, t.ink);
    p.setColor(QPalette::Base, t.field);
    p.setColor(QPalette::AlternateBase, t.panel);
    p.setColor(QPalette::Text, t.ink);
    p.setColor(QPalette::Button, t.panel);
    p.setColor(QPalette::ButtonText, t.ink);
    p.setColor(QPalette::BrightText, t.fault);
    p.setColor(QPalette::PlaceholderText, t.quiet);
    p.setColor(QPalette::Highlight, t.accent);
    p.setColor(QPalette::HighlightedText, t.onAccent);
    p.setColor(QPalette::Link, t.accent);
    p.setColor(QPalette::LinkVisited, t.accent);
    p.setColor(QPalette::ToolTipBase, t.paper);
    p.setColor(QPalette::ToolTipText, t.ink);
    p.setColor(QPalette::Light, t.field);
    p.setColor(QPalette::Midlight, t.gridFine);
    p.setColor(QPalette::Mid, t.gridHeavy);
    p.setColor(QPalette::Dark, t.faint);
    p.setColor(QPalette::Shadow, t.quiet);
    for (const QPalette::ColorRole role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
        p.setColor(QPalette::Disabled, role, t.faint);
    p.setColor(QPalette::Disabled, QPalette::Highlight, t.gridHeavy);
    p.setColor(QPalette::Disabled, QPalette::HighlightedText, t.quiet);
    return p;
}

double contrast(const QColor& a, const QColor& b)
{
    const double la = luminance(a);
    const double lb = luminance(b);
    return (std::max(la, lb) + 0.05) / (std::min(la, lb) + 0.05);
}

QColor inkOn(const Theme& t, const QColor& ground)
{
    const QColor better = contrast(t.ink, ground) >= contrast(t.paper, ground) ? t.ink : t.paper;
    if (contrast(better, ground) >= 4.5)
        return better;
    // Middle grounds: one of black and white always reaches 4.58:1, the root of 21.
    return contrast(Qt::black, ground) >= contrast(Qt::white, ground) ? Qt::black : Qt::white;
}

} // namespace sumpwright::ui::style
