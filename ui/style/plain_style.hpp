// PlainStyle: the window's widget style - flat grounds, one thin line, no gradients, focus always in the accent.
#pragma once

#include <QProxyStyle>

#include "ui/style/palette.hpp"

namespace sumpwright::ui::style
{

class PlainStyle : public QProxyStyle
{
    Q_OBJECT

public:
    PlainStyle(); // over Qt's built-in Fusion, which is there on every desktop

    int pixelMetric(PixelMetric metric, const QStyleOption* option, const QWidget* widget) const override;
    int styleHint(StyleHint hint, const QStyleOption* option, const QWidget* widget,
                  QStyleHintReturn* answer) const override;
    QSize sizeFromContents(ContentsType type, const QStyleOption* option, const QSize& contents,
                           const QWidget* widget) const override;
    void drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                       const QWidget* widget) const override;
    void drawControl(ControlElement element, const QStyleOption* option, QPainter* painter,
                     const QWidget* widget) const override;
    void drawComplexControl(ComplexControl control, const QStyleOptionComplex* option, QPainter* painter,
                            const QWidget* widget) const override;
    QIcon standardIcon(StandardPixmap icon, const QStyleOption* option, const QWidget* widget) const override;
    QPalette standardPalette() const override;
};

// Light or dark for the whole program: style, palette and font. Safe to call again at run time.
void dress(Scheme scheme);
// What the desktop's own palette asks for; ask before the first dress().
Scheme desktopScheme();

} // namespace sumpwright::ui::style
