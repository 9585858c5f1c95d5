#include "ui/canvas/note_item.hpp"

#include <QFontMetricsF>

#include "ui/canvas/scene_point.hpp"

namespace sumpwright::ui::canvas
{

namespace
{
constexpr double broadest = 260.0; // pixels
constexpr double indent = 8.0;
constexpr int lettering = Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap;
} // namespace

NoteItem::NoteItem(Pointer note, const Drawing& drawing) : ElementItem(note->id, drawing) { show(std::move(note)); }

void NoteItem::show(Pointer note)
{
    prepareGeometryChange();
    m_note = std::move(note);
    setPos(toScene(m_note->at));
    const QFontMetricsF metrics(letterFont());
    const QString words = QString::fromStdString(m_note->text);
    m_letters = metrics.boundingRect(QRectF(indent, 0.0, broadest, 4000.0), lettering, words);
    m_letters.setHeight(qMax(m_letters.height(), metrics.height()));
    m_letters.setWidth(qMax(m_letters.width(), 12.0));
    update();
}

QPainterPath NoteItem::outline() const
{
    const double pixel = drawing().ink().pixel;
    QPainterPath path;
    path.addRect(QRectF(0.0, 0.0, (m_letters.right() + 2.0) * pixel, m_letters.bottom() * pixel));
    return path;
}

void NoteItem::draw(QPainter& painter, const Ink& ink) const
{
    inPixels(painter, ink, {}, 0.0, [&] {
        painter.setPen(QPen(ink.theme->quiet, weight::medium));
        painter.drawLine(QPointF(1.0, 0.0), QPointF(1.0, m_letters.bottom()));
        painter.setPen(ink.theme->ink);
        painter.setFont(letterFont());
        painter.drawText(m_letters.adjusted(0.0, 0.0, 2.0, 2.0), lettering, QString::fromStdString(m_note->text));
    });
}

} // namespace sumpwright::ui::canvas
