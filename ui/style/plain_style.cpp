#include "ui/style/plain_style.hpp"

#include <QApplication>
#include <QPainter>
#include <QStyleOption>

#include "ui/style/plain_paint.hpp"
#include "ui/style/type.hpp"

namespace sumpwright::ui::style
{

PlainStyle::PlainStyle() : QProxyStyle(QStringLiteral("Fusion")) { setObjectName(QStringLiteral("plain")); }

int PlainStyle::pixelMetric(PixelMetric metric, const QStyleOption* option, const QWidget* widget) const
{
    switch (metric) {
    case PM_ToolBarItemSpacing:
        return halfStep / 2;
    case PM_ToolBarItemMargin:
        return halfStep;
    case PM_ToolBarFrameWidth:
        return 0;
    case PM_DockWidgetSeparatorExtent:
    case PM_SplitterWidth:
        return halfStep + 1;
    case PM_DockWidgetTitleMargin:
        return halfStep;
    case PM_DockWidgetTitleBarButtonMargin:
        return halfStep;
    case PM_ScrollBarExtent:
        return step + halfStep;
    case PM_ScrollBarSliderMin:
    case PM_ToolBarExtensionExtent:
        return leastTarget;
    case PM_LayoutLeftMargin:
    case PM_LayoutRightMargin:
    case PM_LayoutTopMargin:
    case PM_LayoutBottomMargin:
    case PM_LayoutHorizontalSpacing:
    case PM_LayoutVerticalSpacing:
        return step;
    default:
        return QProxyStyle::pixelMetric(metric, option, widget);
    }
}

QSize PlainStyle::sizeFromContents(ContentsType type, const QStyleOption* option, const QSize& contents,
                                   const QWidget* widget) const
{
    const QSize size = QProxyStyle::sizeFromContents(type, option, contents, widget);
    return type == CT_ToolButton ? size.expandedTo({leastTarget, leastTarget}) : size;
}

int PlainStyle::styleHint(StyleHint hint, const QStyleOption* option, const QWidget* widget,
                          QStyleHintReturn* answer) const
{
    switch (hint) {
    case SH_EtchDisabledText:
    case SH_DitherDisabledText:
        return 0;
    case SH_ToolButtonStyle:
        return Qt::ToolButtonTextOnly;
    default:
        return QProxyStyle::styleHint(hint, option, widget, answer);
    }
}

void PlainStyle::drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                               const QWidget* widget) const
{
    const Theme& t = themeOf(option->palette);
    switch (element) {
    case PE_PanelButtonCommand: {
        const auto* button = qstyleoption_cast<const QStyleOptionButton*>(option);
        const bool flat = button && (button->features & QStyleOptionButton::Flat);
        if (flat && !(option->state & (State_HasFocus | State_MouseOver | State_Sunken)))
            return;
        return paintGround(*painter, option->rect, t, option->state, true);
    }
    case PE_PanelButtonTool:
        if (option->state & (State_On | State_Sunken))
            paintBox(*painter, option->rect, t.selectionWash, t.accent);
        else if ((option->state & State_MouseOver) && (option->state & State_Enabled))
            paintBox(*painter, option->rect, t.gridHeavy, t.gridHeavy);
        return;
    case PE_PanelLineEdit: {
        const auto* frame = qstyleoption_cast<const QStyleOptionFrame*>(option);
        if (frame && frame->lineWidth > 0)
            paintGround(*painter, option->rect, t, option->state, false);
        else
            painter->fillRect(option->rect, option->palette.base());
        return;
    }
    case PE_FrameLineEdit:
        return; // drawn with the panel
    case PE_FrameFocusRect:
        painter->save();
        painter->setPen(QPen(t.accent, 1.5));
        painter->setBrush(Qt::NoBrush);
        painter->drawRect(QRectF(option->rect).adjusted(1, 1, -1, -1));
        painter->restore();
        return;
    case PE_Frame:
    case PE_FrameGroupBox:
    case PE_FrameTabWidget:
        painter->setPen(t.gridHeavy);
        painter->setBrush(Qt::NoBrush);
        painter->drawRect(option->rect.adjusted(0, 0, -1, -1));
        return;
    case PE_FrameStatusBarItem:
    case PE_PanelStatusBar:
    case PE_IndicatorToolBarHandle:
    case PE_IndicatorDockWidgetResizeHandle:
        return;
    case PE_IndicatorToolBarSeparator:
        painter->fillRect(
            QRect(option->rect.center().x(), option->rect.top() + step, 1, option->rect.height() - 2 * step),
            t.gridHeavy);
        return;
    default:
        QProxyStyle::drawPrimitive(element, option, painter, widget);
    }
}

QIcon PlainStyle::standardIcon(StandardPixmap icon, const QStyleOption* option, const QWidget* widget) const
{
    const QPalette palette = widget ? widget->palette() : QApplication::palette();
    const QColor line = themeOf(palette).quiet;
    switch (icon) {
    case SP_TitleBarCloseButton:
    case SP_DockWidgetCloseButton:
    case SP_LineEditClearButton:
        return crossIcon(line);
    case SP_TitleBarNormalButton:
        return windowIcon(line);
    case SP_ToolBarHorizontalExtensionButton:
        return extensionIcon(line);
    default:
        return QProxyStyle::standardIcon(icon, option, widget);
    }
}

QPalette PlainStyle::standardPalette() const { return QApplication::palette(); }

namespace
{

Scheme schemeAtStart()
{
    return QApplication::palette().color(QPalette::Window).lightness() < 128 ? Scheme::dark : Scheme::light;
}

} // namespace

Scheme desktopScheme()
{
    static const Scheme atStart = schemeAtStart(); // later the palette is our own
    return atStart;
}

void dress(Scheme scheme)
{
    desktopScheme();
    if (QApplication::style()->objectName() != QStringLiteral("plain"))
        QApplication::setStyle(new PlainStyle);
    QApplication::setFont(bodyFont());
    QApplication::setPalette(paletteOf(theme(scheme)));
}

} // namespace sumpwright::ui::style
