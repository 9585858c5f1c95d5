#include "ui/findings/finding_delegate.hpp"

#include <QAbstractItemView>
#include <QPainter>

#include "core/assessment/finding.hpp"
#include "ui/findings/findings_model.hpp"
#include "ui/style/palette.hpp"
#include "ui/style/type.hpp"
#include "ui/text/display.hpp"
#include "ui/text/names.hpp"
#include "ui/text/result_names.hpp"

namespace sumpwright::ui::findings
{

namespace
{

using assessment::Severity;

constexpr int markWidth = 22;
constexpr int wrap = Qt::TextWordWrap | Qt::AlignLeft | Qt::AlignTop;

int textWidth(const QStyleOptionViewItem& option)
{
    const auto* view = qobject_cast<const QAbstractItemView*>(option.widget);
    const int wide = view ? view->viewport()->width() : option.rect.width();
    return std::max(120, wide - markWidth - 2 * style::step);
}

QString headOf(const QModelIndex& index)
{
    const auto severity = static_cast<Severity>(index.data(FindingsModel::severity).toInt());
    return text::unbroken(text::heading(text::nameOf(severity)) + QStringLiteral(" – ") +
                          index.data(FindingsModel::message).toString());
}

QString tailOf(const QModelIndex& index)
{
    QStringList parts;
    const QString advice = index.data(FindingsModel::advice).toString();
    const QString source = index.data(FindingsModel::source).toString();
    if (!advice.isEmpty())
        parts << advice;
    if (!source.isEmpty())
        parts << QStringLiteral("[") + source + QStringLiteral("]");
    return text::unbroken(parts.join(u' '));
}

// A shape for each severity: octagon, triangle, ring; so that colour is not the only sign.
void paintMark(QPainter& painter, const QPointF& centre, Severity severity, const style::Theme& theme)
{
    painter.setPen(Qt::NoPen);
    switch (severity) {
    case Severity::error:
        painter.setBrush(theme.fault);
        painter.drawPolygon(QPolygonF({centre + QPointF(-3, -7), centre + QPointF(3, -7), centre + QPointF(7, -3),
                                       centre + QPointF(7, 3), centre + QPointF(3, 7), centre + QPointF(-3, 7),
                                       centre + QPointF(-7, 3), centre + QPointF(-7, -3)}));
        break;
    case Severity::warning:
        painter.setBrush(theme.caution);
        painter.drawPolygon(QPolygonF({centre + QPointF(0, -7), centre + QPointF(8, 7), centre + QPointF(-8, 7)}));
        break;
    case Severity::note:
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(theme.quiet, 2.0));
        painter.drawEllipse(centre, 6.0, 6.0);
        break;
    }
}

} // namespace

void FindingDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const
{
    const style::Theme& theme = style::themeOf(option.palette);
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    if (option.state & QStyle::State_Selected)
        painter->fillRect(option.rect, theme.selectionWash);
    const int wide = textWidth(option);
    const QRect body = option.rect.adjusted(markWidth + style::step, style::halfStep, 0, 0);
    const auto severity = static_cast<Severity>(index.data(FindingsModel::severity).toInt());
    const QFontMetrics metrics(style::bodyFont());
    paintMark(*painter,
              QPointF(option.rect.left() + style::step + markWidth / 2 - 2, body.top() + metrics.height() / 2.0),
              severity, theme);
    painter->setFont(style::bodyFont());
    painter->setPen(theme.ink);
    QRect used;
    painter->drawText(QRect(body.left(), body.top(), wide, 10000), wrap, headOf(index), &used);
    const QString tail = tailOf(index);
    if (!tail.isEmpty()) {
        painter->setPen(theme.quiet);
        painter->drawText(QRect(body.left(), used.bottom() + 1, wide, 10000), wrap, tail);
    }
    if ((option.state & QStyle::State_HasFocus) != 0) {
        painter->setPen(QPen(theme.accent, 1.0));
        painter->setBrush(Qt::NoBrush);
        painter->drawRect(QRectF(option.rect).adjusted(0.5, 0.5, -0.5, -0.5));
    }
    painter->restore();
}

// Breaking lines costs far more than looking the height up, and most findings stay from one result to the next.
QSize FindingDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const
{
    constexpr qsizetype plenty = 5'000;
    const int wide = textWidth(option);
    if (wide != m_heightsWidth || style::bodyFont() != m_heightsFont || m_heights.size() > plenty) {
        m_heights.clear();
        m_heightsWidth = wide;
        m_heightsFont = style::bodyFont();
    }
    const std::pair words(headOf(index), tailOf(index));
    if (const auto found = m_heights.constFind(words); found != m_heights.constEnd())
        return {wide, *found};
    const QFontMetrics metrics(m_heightsFont);
    const QRect room(0, 0, wide, 10000);
    int tall = metrics.boundingRect(room, wrap, words.first).height();
    if (!words.second.isEmpty())
        tall += metrics.boundingRect(room, wrap, words.second).height() + 1;
    return {wide, *m_heights.insert(words, std::max(tall, metrics.height()) + style::step)};
}

} // namespace sumpwright::ui::findings
