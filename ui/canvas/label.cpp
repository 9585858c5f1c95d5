#include "ui/canvas/label.hpp"

#include <QFontMetricsF>
#include <QHash>

#include <algorithm>

#include "ui/canvas/symbols.hpp"

namespace sumpwright::ui::canvas
{

namespace
{
constexpr double lineHeight = 15.0;
constexpr double markWidth = 13.0;

const QFont& fontOf(SpanKind kind)
{
    static const QFont strong = strongLetterFont();
    static const QFont plain = letterFont();
    return kind == SpanKind::tag ? strong : plain;
}

// Shaping letters costs far more than looking them up, and most texts stay from one frame to the next.
double lettersWidth(const LabelSpan& span)
{
    constexpr qsizetype plenty = 20'000;
    static QHash<QString, double> strong, plain;
    auto& known = span.kind == SpanKind::tag ? strong : plain;
    if (const auto found = known.constFind(span.text); found != known.constEnd())
        return *found;
    if (known.size() > plenty)
        known.clear();
    return *known.insert(span.text, QFontMetricsF(fontOf(span.kind)).horizontalAdvance(span.text));
}

double widthOf(const LabelSpan& span) { return lettersWidth(span) + (span.levelMark ? markWidth : 0.0); }

double widthOf(const LabelLine& line)
{
    double width = 0.0;
    for (const auto& span : line)
        width += widthOf(span);
    return width;
}

QColor colourOf(const style::Theme& theme, SpanKind kind)
{
    switch (kind) {
    case SpanKind::tag:
    case SpanKind::words:
    case SpanKind::result:
        return theme.ink;
    case SpanKind::staleResult:
        return theme.stale;
    }
    return theme.ink;
}
} // namespace

LabelText layOut(std::vector<LabelLine> lines)
{
    LabelText label;
    double width = 0.0;
    for (const auto& line : lines)
        width = std::max(width, widthOf(line));
    label.size = QSizeF(width, lineHeight * static_cast<double>(lines.size()));
    label.lines = std::move(lines);
    return label;
}

void paintLabel(QPainter& painter, const Ink& ink, const LabelText& label)
{
    Ink flat = ink;
    flat.pixel = 1.0;
    double baseline = -label.size.height() / 2.0 + 11.5;
    for (const auto& line : label.lines) {
        double x = -widthOf(line) / 2.0;
        for (const auto& span : line) {
            const QColor colour = colourOf(*ink.theme, span.kind);
            double at = x;
            if (span.levelMark) {
                paintLevelMark(painter, flat, QPointF(at + 5.0, baseline), 8.0, colour);
                at += markWidth;
            }
            painter.setPen(colour);
            painter.setFont(fontOf(span.kind));
            painter.drawText(QPointF(at, baseline), span.text);
            x += widthOf(span);
        }
        baseline += lineHeight;
    }
}

} // namespace sumpwright::ui::canvas
