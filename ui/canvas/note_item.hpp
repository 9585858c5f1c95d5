// NoteItem: a note on the drawing; its letters keep their size on the sheet.
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

protected:
    QPainterPath outline() const override;
    void draw(QPainter& painter, const Ink& ink) const override;

private:
    Pointer m_note;
    QRectF m_letters; // pixels
};

} // namespace sumpwright::ui::canvas
