// PlainStyle's bars, heads, tabs, combo boxes, spin boxes and scroll bars.
#include <QPainter>
#include <QStyleOption>

#include "ui/style/plain_paint.hpp"
#include "ui/style/plain_style.hpp"
#include "ui/style/type.hpp"

namespace sumpwright::ui::style
{

namespace
{

void underline(QPainter& painter, const QRect& rect, const QColor& colour)
{
    painter.fillRect(QRect(rect.left(), rect.bottom(), rect.width(), 1), colour);
}

void drawDockTitle(const QStyleOptionDockWidget& option, const QRect& textRect, QPainter& painter)
{
    const Theme& t = themeOf(option.palette);
    painter.save();
    painter.fillRect(option.rect, t.panel);
    underline(painter, option.rect, t.gridHeavy);
    painter.setFont(strongFont());
    painter.setPen(t.ink);
    const QRect room = textRect.adjusted(halfStep, 0, 0, 0);
    const QString text = QFontMetrics(strongFont()).elidedText(option.title, Qt::ElideRight, room.width());
    painter.drawText(room, Qt::AlignLeft | Qt::AlignVCenter, text);
    painter.restore();
}

void drawTab(const QStyleOptionTab& option, QPainter& painter)
{
    const Theme& t = themeOf(option.palette);
    const bool chosen = option.state & QStyle::State_Selected;
    painter.fillRect(option.rect, chosen ? t.field : t.panel);
    if (chosen)
        painter.fillRect(QRect(option.rect.left(), option.rect.bottom() - 1, option.rect.width(), 2), t.accent);
}

void drawCombo(const QStyleOptionComboBox& option, QPainter& painter)
{
    const Theme& t = themeOf(option.palette);
    paintGround(painter, option.rect, t, option.state, !option.editable);
    const int side = 2 * step;
    const QRect arrow(option.direction == Qt::RightToLeft ? option.rect.left() + halfStep
                                                          : option.rect.right() - side - halfStep + 1,
                      option.rect.top(), side, option.rect.height());
    paintArrow(painter, arrow, Qt::DownArrow, option.state & QStyle::State_Enabled ? t.ink : t.faint);
}

void drawScrollBar(const QStyleOptionSlider& option, const QRect& slider, QPainter& painter)
{
    const Theme& t = themeOf(option.palette);
    painter.fillRect(option.rect, t.panel);
    if (option.maximum <= option.minimum)
        return;
    const bool held = option.state & (QStyle::State_Sunken | QStyle::State_MouseOver);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(held ? t.quiet : t.faint);
    painter.drawRoundedRect(QRectF(slider).adjusted(3, 3, -3, -3), 3, 3);
    painter.restore();
}

} // namespace

void PlainStyle::drawControl(ControlElement element, const QStyleOption* option, QPainter* painter,
                             const QWidget* widget) const
{
    const Theme& t = themeOf(option->palette);
    switch (element) {
    case CE_ToolBar:
    case CE_MenuBarEmptyArea:
        painter->fillRect(option->rect, t.panel);
        underline(*painter, option->rect, t.gridHeavy);
        return;
    case CE_DockWidgetTitle:
        if (const auto* dock = qstyleoption_cast<const QStyleOptionDockWidget*>(option)) {
            drawDockTitle(*dock, subElementRect(SE_DockWidgetTitleBarText, option, widget), *painter);
            return;
        }
        break;
    case CE_HeaderSection:
        painter->fillRect(option->rect, t.panel);
        underline(*painter, option->rect, t.gridHeavy);
        return;
    case CE_HeaderEmptyArea:
        painter->fillRect(option->rect, t.panel);
        underline(*painter, option->rect, t.gridHeavy);
        return;
    case CE_TabBarTabShape:
        if (const auto* tab = qstyleoption_cast<const QStyleOptionTab*>(option)) {
            drawTab(*tab, *painter);
            return;
        }
        break;
    case CE_Splitter:
        painter->fillRect(option->rect, t.panel);
        return;
    case CE_ComboBoxLabel:
        if (const auto* combo = qstyleoption_cast<const QStyleOptionComboBox*>(option); combo && !combo->editable) {
            QStyleOptionComboBox fitting = *combo;
            const QRect room = subControlRect(CC_ComboBox, combo, SC_ComboBoxEditField, widget).adjusted(1, 0, -1, 0);
            fitting.currentText = combo->fontMetrics.elidedText(combo->currentText, Qt::ElideRight, room.width());
            QProxyStyle::drawControl(element, &fitting, painter, widget);
            return;
        }
        break;
    case CE_PushButtonLabel:
        if (const auto* button = qstyleoption_cast<const QStyleOptionButton*>(option);
            button && (button->features & QStyleOptionButton::Flat) && (option->state & State_Enabled)) {
            QStyleOptionButton link = *button; // a button without a box: its colour says that it can be pressed
            link.palette.setColor(QPalette::ButtonText, t.accent);
            QProxyStyle::drawControl(element, &link, painter, widget);
            return;
        }
        break;
    default:
        break;
    }
    QProxyStyle::drawControl(element, option, painter, widget);
}

void PlainStyle::drawComplexControl(ComplexControl control, const QStyleOptionComplex* option, QPainter* painter,
                                    const QWidget* widget) const
{
    switch (control) {
    case CC_ComboBox:
        if (const auto* combo = qstyleoption_cast<const QStyleOptionComboBox*>(option)) {
            drawCombo(*combo, *painter);
            return;
        }
        break;
    case CC_ScrollBar:
        if (const auto* slider = qstyleoption_cast<const QStyleOptionSlider*>(option)) {
            drawScrollBar(*slider, subControlRect(CC_ScrollBar, option, SC_ScrollBarSlider, widget), *painter);
            return;
        }
        break;
    case CC_SpinBox:
        if (const auto* spin = qstyleoption_cast<const QStyleOptionSpinBox*>(option)) {
            const Theme& t = themeOf(option->palette);
            paintGround(*painter, option->rect, t, option->state, false);
            const QColor line = option->state & State_Enabled ? t.ink : t.faint;
            paintArrow(*painter, subControlRect(CC_SpinBox, spin, SC_SpinBoxUp, widget), Qt::UpArrow, line);
            paintArrow(*painter, subControlRect(CC_SpinBox, spin, SC_SpinBoxDown, widget), Qt::DownArrow, line);
            return;
        }
        break;
    default:
        break;
    }
    QProxyStyle::drawComplexControl(control, option, painter, widget);
}

} // namespace sumpwright::ui::style
