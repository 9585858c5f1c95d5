// VesselItem: a vessel from above - true outline with its wall, water or medium inside, legs below as hidden lines,
// standpipe, bell and ports.
#pragma once

#include <memory>

#include "ui/canvas/element_item.hpp"

namespace sumpwright::ui::canvas
{

class VesselItem final : public ElementItem
{
public:
    using Pointer = std::shared_ptr<const plan::Vessel>;
    VesselItem(Pointer vessel, const Drawing& drawing);
    void show(Pointer vessel);
    const Pointer& vessel() const { return m_vessel; }
    const QPainterPath& outsideOutline() const { return m_outside; } // own coordinates

protected:
    QPainterPath outline() const override { return m_outside; }
    double margin() const override;
    void draw(QPainter& painter, const Ink& ink) const override;

private:
    bool wet() const;
    void drawLegs(QPainter& painter, const Ink& ink) const;
    void drawInside(QPainter& painter, const Ink& ink) const;
    void drawMedium(QPainter& painter, const Ink& ink) const;
    void drawRafts(QPainter& painter, const Ink& ink) const;
    void drawBaffle(QPainter& painter, const Ink& ink) const;
    void drawCage(QPainter& painter, const Ink& ink) const;
    void drawPorts(QPainter& painter, const Ink& ink) const;

    Pointer m_vessel;
    QPainterPath m_outside;
    QPainterPath m_inside;
};

} // namespace sumpwright::ui::canvas
