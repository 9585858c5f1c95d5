// TeeItem: the joint where runs meet.
#pragma once

#include <memory>

#include "ui/canvas/element_item.hpp"

namespace sumpwright::ui::canvas
{

class TeeItem final : public ElementItem
{
public:
    using Pointer = std::shared_ptr<const plan::Tee>;
    TeeItem(const Pointer& tee, const Drawing& drawing);
    void show(Pointer tee, double pipeWidth); // scene millimetres, of the widest run that meets it

protected:
    QPainterPath outline() const override;
    void draw(QPainter& painter, const Ink& ink) const override;

private:
    double diameter() const;

    Pointer m_tee;
    double m_pipeWidth = 0.0;
};

} // namespace sumpwright::ui::canvas
