#include "ui/canvas/note_item.hpp"

#include <QFontMetricsF>

#include "ui/canvas/scene_point.hpp"

namespace sumpwright::ui::canvas
{

namespace
{
constexpr double broadest = 260.0; // pixels, of letters in full size
constexpr double indent = 8.0;
constexpr double smallestShare = 0.66; // letters of 8 px; smaller ones are not read
constexpr double markSide = 9.0;       // pixels of the sign that stands for the words then
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

QString NoteItem::description() const
{
    return tr("“%1”, %2").arg(QString::fromStdString(m_note->text), ElementItem::description());
}

bool NoteItem::worded() const { return drawing().ink().signShare() >= smallestShare; }

QPainterPath NoteItem::outline() const
{
    const Ink ink = drawing().ink();
    QPainterPath path;
    if (worded())
        path.addRect(QRectF(0.0, 0.0, ink.signPx(m_letters.right() + 2.0), ink.signPx(m_letters.bottom())));
    else
        path.addRect(QRectF(0.0, 0.0, ink.signPx(markSide), ink.signPx(markSide)));
    return path;
}

void NoteItem::draw(QPainter& painter, const Ink& ink) const
{
    const Ink shrunk{ink.theme, ink.pixel * ink.signShare()};
    inPixels(painter, shrunk, {}, 0.0, [&] { worded() ? drawWords(painter, ink) : drawSheet(painter, ink); });
}

void NoteItem::drawWords(QPainter& painter, const Ink& ink) const
{
    painter.setPen(QPen(ink.theme->quiet, weight::medium));
    painter.drawLine(QPointF(1.0, 0.0), QPointF(1.0, m_letters.bottom()));
    painter.setPen(ink.theme->ink);
    painter.setFont(letterFont());
    painter.drawText(m_letters.adjusted(0.0, 0.0, 2.0, 2.0), lettering, QString::fromStdString(m_note->text));
}

// A sheet with a turned-down corner.
void NoteItem::drawSheet(QPainter& painter, const Ink& ink) const
{
    const double fold = markSide * 0.4;
    painter.setPen(QPen(ink.theme->quiet, weight::thin / ink.signShare()));
    painter.setBrush(ink.theme->paper);
    painter.drawPolygon(
        QPolygonF{{0.0, 0.0}, {markSide - fold, 0.0}, {markSide, fold}, {markSide, markSide}, {0.0, markSide}});
    painter.drawPolyline(QPolygonF{{markSide - fold, 0.0}, {markSide - fold, fold}, {markSide, fold}});
}

} // namespace sumpwright::ui::canvas
