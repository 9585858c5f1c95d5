// LevelView: painting - the sheet, its letters, what can be taken hold of, the ruler and the legend.
#include <QPaintEvent>
#include <QPainter>

#include <algorithm>
#include <cmath>

#include "ui/canvas/plan_view.hpp"
#include "ui/canvas/ruler.hpp"
#include "ui/document/document.hpp"
#include "ui/section/level_ruler.hpp"
#include "ui/section/level_view.hpp"
#include "ui/section/paint_profile.hpp"

namespace sumpwright::ui::section
{

namespace
{
constexpr double handleSize = 7.0; // pixels, as drawn
constexpr double cell = 60.0;      // pixels, of the clutter's grid

QFont small()
{
    QFont font = canvas::letterFont();
    font.setPixelSize(11);
    return font;
}
} // namespace

void LevelView::paintEvent(QPaintEvent*)
{
    renew();
    layOut();
    const Pens how = pens();
    const auto& theme = *how.ink.theme;
    QPainter painter(viewport());
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF whole = viewport()->rect();
    painter.fillRect(whole, theme.paper);
    painter.save();
    painter.setClipRect(m_sheet.room);
    paintLevelLines(painter, m_sheet, how);
    const QString nothing = now().empty();
    if (nothing.isEmpty()) {
        paintDrawing(painter, how);
    } else {
        painter.setFont(canvas::letterFont());
        painter.setPen(theme.quiet);
        painter.drawText(m_sheet.room.adjusted(12.0, 0.0, -12.0, 0.0), Qt::AlignCenter | Qt::TextWordWrap, nothing);
    }
    painter.restore();
    paintLevelRuler(painter, m_sheet, how, {0.0, m_sheet.room.top(), rulerWidth, m_sheet.room.height()});
    if (m_mode == Mode::section)
        paintAlong(painter, how, {0.0, m_sheet.room.bottom(), whole.width(), whole.bottom() - m_sheet.room.bottom()});
    if (hasFocus()) {
        painter.setPen(QPen(theme.accent, 1.0));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(whole.adjusted(0.5, 0.5, -0.5, -0.5));
    }
}

void LevelView::paintDrawing(QPainter& painter, const Pens& how)
{
    now().paint(painter, m_sheet, how);
    paintLetters(painter, how);
    paintHeights(painter, how);
    paintHandles(painter, how);
    if (m_drag)
        paintDrag(painter, how);
}

void LevelView::paintLetters(QPainter& painter, const Pens& how)
{
    m_wishes.clear();
    canvas::Clutter clutter(cell);
    now().letter(m_sheet, how, clutter, m_wishes);
    if (m_heights > 1) // stays free for what is told there
        clutter.addLabel({m_sheet.room.right() - 100.0, m_sheet.room.top(), 100.0, 24.0});
    for (canvas::LabelWish& wish : m_wishes) // nothing is written half outside
        for (canvas::LabelSpot& spot : wish.spots)
            if (!m_sheet.room.contains(canvas::roomOf(wish.texts[spot.text], spot, 1.0)))
                spot.cost = 2 * canvas::cover::anything;
    m_placed = canvas::placeLabels(m_wishes, std::move(clutter), 1.0, m_former);
    m_former.clear();
    for (const canvas::PlacedLabel& placed : m_placed) {
        const canvas::LabelWish& wish = m_wishes[placed.wish];
        m_former.emplace(canvas::LabelKey{wish.element, wish.part}, placed.spot);
        const canvas::LabelSpot& spot = wish.spots[placed.spot];
        const auto& text = wish.texts[spot.text];
        QColor ground = how.ink.theme->paper;
        ground.setAlphaF(0.6F);
        painter.fillRect(placed.rect.adjusted(1.0, 1.0, -1.0, -1.0), ground);
        canvas::inPixels(painter, how.ink, spot.centre, spot.turn, [&] { canvas::paintLabel(painter, how.ink, text); });
    }
}

void LevelView::paintHandles(QPainter& painter, const Pens& how)
{
    const auto& theme = *how.ink.theme;
    for (const LevelHandle& handle : now().handles()) {
        const bool current = m_at == handle.level || (m_drag && m_drag->handle().level == handle.level);
        if (!how.chosen(handle.level.element) && m_hover != handle.level && !current)
            continue;
        const QPointF at = m_sheet.at(handle.along, handle.at);
        painter.setPen(QPen(theme.selection, 1.5));
        painter.setBrush(current ? theme.selection : theme.paper);
        constexpr double half = handleSize / 2.0;
        painter.drawRect(QRectF(at - QPointF(half, half), at + QPointF(half, half)));
        if (!current || !hasFocus())
            continue;
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(theme.accent, 1.5));
        painter.drawRect(QRectF(at - QPointF(half + 3.0, half + 3.0), at + QPointF(half + 3.0, half + 3.0)));
    }
}

void LevelView::paintDrag(QPainter& painter, const Pens& how)
{
    const auto& theme = *how.ink.theme;
    const units::Elevation level = m_drag->level(how.figures);
    const double y = m_sheet.y(level), x = m_sheet.x(m_drag->handle().along);
    painter.setPen(how.ink.dashed(how.ink.pen(theme.snap, canvas::weight::thin), {4.0, 3.0}));
    if (const auto& guide = m_drag->guide())
        painter.drawLine(QPointF(m_sheet.x(guide->along), y), QPointF(x, y));
    else
        painter.drawLine(QPointF(x - 30.0, y), QPointF(x + 30.0, y));
    const QStringList lines = m_readOut.split(u'\n');
    painter.setFont(canvas::letterFont());
    const QFontMetricsF metrics(canvas::letterFont());
    double width = 0.0;
    for (const QString& line : lines)
        width = std::max(width, metrics.horizontalAdvance(line));
    QRectF box(m_readOutAt + QPointF(16.0, -30.0 - 15.0 * static_cast<double>(lines.size() - 1)),
               QSizeF(width + 12.0, 15.0 * static_cast<double>(lines.size()) + 5.0));
    box.moveLeft(
        std::clamp(box.left(), m_sheet.room.left(), std::max(m_sheet.room.left(), m_sheet.room.right() - box.width())));
    box.moveTop(
        std::clamp(box.top(), m_sheet.room.top(), std::max(m_sheet.room.top(), m_sheet.room.bottom() - box.height())));
    painter.setPen(how.ink.pen(theme.faint, canvas::weight::thin));
    painter.setBrush(theme.notice);
    painter.drawRect(box);
    painter.setPen(theme.ink);
    for (qsizetype i = 0; i < lines.size(); ++i)
        painter.drawText(box.topLeft() + QPointF(6.0, 14.0 + 15.0 * static_cast<double>(i)), lines[i]);
}

// Heights that are not true to length are told on the drawing itself.
void LevelView::paintHeights(QPainter& painter, const Pens& how)
{
    if (m_heights == 1)
        return;
    const auto& theme = *how.ink.theme;
    const QString words = tr("heights ×%1").arg(m_heights);
    painter.setFont(canvas::strongLetterFont());
    const double width = QFontMetricsF(canvas::strongLetterFont()).horizontalAdvance(words);
    const QRectF box(m_sheet.room.right() - width - 20.0, m_sheet.room.top() + 4.0, width + 12.0, 18.0);
    painter.setPen(how.ink.pen(theme.quiet, canvas::weight::thin));
    painter.setBrush(theme.paper);
    painter.drawRect(box);
    painter.setPen(theme.ink);
    painter.drawText(box, Qt::AlignCenter, words);
}

// The length along the water's way.
void LevelView::paintAlong(QPainter& painter, const Pens& how, const QRectF& strip)
{
    const auto& theme = *how.ink.theme;
    painter.fillRect(strip, theme.panel);
    painter.setPen(how.ink.pen(theme.faint, canvas::weight::thin));
    painter.drawLine(strip.topLeft(), strip.topRight());
    painter.setFont(small());
    const double left = m_sheet.alongAt(m_sheet.room.left()) * 1000.0,
                 right = m_sheet.alongAt(m_sheet.room.right()) * 1000.0;
    for (const auto& tick : canvas::rulerTicks(left, right, 1000.0 / m_sheet.scale, false, how.figures)) {
        const double x = std::round(m_sheet.x(units::millimetres(tick.place))) + 0.5;
        painter.setPen(how.ink.pen(theme.quiet, canvas::weight::thin));
        painter.drawLine(QPointF(x, strip.top()), QPointF(x, strip.top() + (tick.main ? 6.0 : 3.0)));
        if (tick.text.isEmpty() || x + 30.0 > strip.right())
            continue;
        painter.setPen(theme.quiet);
        painter.drawText(QPointF(x + 3.0, strip.top() + 13.0), tick.text);
    }
    painter.setPen(theme.quiet);
    painter.drawText(QRectF(0.0, strip.top(), rulerWidth - 8.0, strip.height()), Qt::AlignRight | Qt::AlignVCenter,
                     how.figures.system == units::UnitSystem::us ? tr("way, ft") : tr("way, m"));
}

} // namespace sumpwright::ui::section
