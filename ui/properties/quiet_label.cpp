#include "ui/properties/quiet_label.hpp"

#include <algorithm>

#include <QEvent>

#include "ui/style/palette.hpp"

namespace sumpwright::ui::properties
{

namespace
{
QColor colourOf(QuietLabel::Tone tone, const style::Theme& theme)
{
    switch (tone) {
    case QuietLabel::Tone::plain:
        return theme.ink;
    case QuietLabel::Tone::quiet:
        return theme.quiet;
    case QuietLabel::Tone::fault:
        return theme.fault;
    case QuietLabel::Tone::caution:
        return theme.caution;
    case QuietLabel::Tone::stale:
        return theme.stale;
    }
    return theme.ink;
}
} // namespace

QuietLabel::QuietLabel(Tone tone, QWidget* parent) : QLabel(parent), m_tone(tone)
{
    setWordWrap(true);
    setTextFormat(Qt::PlainText);
    setFocusPolicy(Qt::NoFocus);
    recolour();
}

void QuietLabel::setTone(Tone tone)
{
    if (tone == m_tone)
        return;
    m_tone = tone;
    recolour();
}

// Text that can be selected costs a document of its own to lay out; only text that the pointer comes to needs that.
void QuietLabel::enterEvent(QEnterEvent* event)
{
    setTextInteractionFlags(Qt::TextSelectableByMouse);
    QLabel::enterEvent(event);
}

void QuietLabel::setRoomFor(const QString& longest)
{
    if (longest == m_longest)
        return;
    m_longest = longest;
    m_heightOf.clear();
    updateGeometry();
}

void QuietLabel::holdHeight(bool hold)
{
    if (hold == m_hold)
        return;
    m_hold = hold;
    m_heldAt = hold ? m_heightOf : QHash<int, int>();
    updateGeometry();
}

int QuietLabel::heightForWidth(int width) const
{
    const int height = measured(width);
    if (!m_hold)
        return height;
    int& held = m_heldAt[width];
    held = std::max(held, height);
    return held;
}

// Forms ask for heights on every frame of a drag; breaking lines is the dear part of the answer.
int QuietLabel::measured(int width) const
{
    if (m_measured != text()) {
        m_heightOf.clear();
        m_measured = text();
    }
    if (const auto known = m_heightOf.constFind(width); known != m_heightOf.constEnd())
        return *known;
    int height = QLabel::heightForWidth(width);
    if (!m_longest.isEmpty()) {
        const QMargins edges = contentsMargins();
        const QRect room(0, 0, width - edges.left() - edges.right(), 10'000);
        const int longest = fontMetrics().boundingRect(room, Qt::TextWordWrap, m_longest).height();
        height = std::max(height, longest + edges.top() + edges.bottom());
    }
    return *m_heightOf.insert(width, height);
}

void QuietLabel::changeEvent(QEvent* event)
{
    QLabel::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange)
        m_heightOf.clear();
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::ParentChange)
        recolour();
}

// The ground tells the theme; only the ink is this label's own, so a change of theme still reaches the ground.
void QuietLabel::recolour()
{
    const QColor colour = colourOf(m_tone, style::themeOf(*this));
    if (palette().color(QPalette::WindowText) == colour)
        return;
    QPalette own;
    own.setColor(QPalette::WindowText, colour);
    setPalette(own);
}

} // namespace sumpwright::ui::properties
