// NoteItem: a note on the drawing; its letters keep their size on the sheet, shrink on small drawings, and give way to
// a small sign where they could not be read.
#pragma once

#include <memory>

#include "ui/canvas/element_item.hpp"

namespace sumpwright::ui::canvas
{

class NoteItem final : public ElementItem
{
public:
    using Pointer = std::shared_ptr<const plan::Note>;
    NoteItem(Pointer note, const Drawing& drawing);
    void show(Pointer note);
    QString description() const override; // its words, too: they may be too small to be drawn
    bool worded() const;                  // the words are drawn, not only the sign

protected:
    QPainterPath outline() const override;
    void draw(QPainter& painter, const Ink& ink) const override;

private:
    void drawWords(QPainter& painter, const Ink& ink) const;
    void drawSheet(QPainter& painter, const Ink& ink) const;

    Pointer m_note;
    QRectF m_letters; // pixels
};

} // namespace sumpwright::ui::canvas
