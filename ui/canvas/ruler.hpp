// Ruler: the scale along the upper or the left edge of the plan view, in the reader's unit, with a mark at the pointer.
#pragma once

#include <QWidget>

#include <vector>

#include "ui/canvas/figures.hpp"

namespace sumpwright::ui::canvas
{

class PlanView;

struct RulerTick {
    double place = 0.0; // scene millimetres
    bool main = false;
    QString text; // of main ticks
};
// `pixel` in scene millimetres; y upward when `flipped`.
std::vector<RulerTick> rulerTicks(double from, double to, double pixel, bool flipped, const Figures& figures);

class Ruler final : public QWidget
{
    Q_OBJECT

public:
    static constexpr int thickness = 22;

    Ruler(Qt::Orientation orientation, PlanView& view);
    void setMark(double scene); // the pointer's place; not a number: none

protected:
    void paintEvent(QPaintEvent*) override;

private:
    PlanView& m_view;
    Qt::Orientation m_orientation;
    double m_mark;
};

} // namespace sumpwright::ui::canvas
