// PumpItem: a pump in its vessel, its triangle pointing where its run leaves.
#pragma once

#include <memory>

#include "ui/canvas/element_item.hpp"

namespace sumpwright::ui::canvas
{

class PumpItem final : public ElementItem
{
public:
    using Pointer = std::shared_ptr<const plan::Pump>;
    PumpItem(const Pointer& pump, const Drawing& drawing);
    // Place and direction come from the vessel and the run of the plan drawn.
    void show(Pointer pump, plan::Point place, double turn);

protected:
    QPainterPath outline() const override;
    void draw(QPainter& painter, const Ink& ink) const override;

private:
    double diameter() const;

    Pointer m_pump;
    double m_turn = 0.0;
};

} // namespace sumpwright::ui::canvas
