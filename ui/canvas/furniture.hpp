// Furniture: what stands around the drawing on screen and does not move with it - rulers, scale bar, north arrow,
// legend. Children of the view, not of its viewport, so that scrolling leaves them in place.
#pragma once

#include <QObject>
#include <QPointF>

#include <functional>
#include <memory>
#include <optional>

#include "core/units/measures.hpp"

QT_BEGIN_NAMESPACE
class QWidget;
QT_END_NAMESPACE

namespace sumpwright::ui::canvas
{

class PlanView;
class Ruler;

class Furniture final : public QObject
{
    Q_OBJECT

public:
    explicit Furniture(PlanView& view);
    ~Furniture() override;

    void layOut();       // after a resize or a change of settings
    void refresh();      // after a change of zoom, place, theme or figures
    void waterChanged(); // the scale of the runs' colours follows
    void setPointer(std::optional<QPointF> scene);
    QSize margins() const; // left and upper margin the rulers need

private:
    PlanView& m_view;
    Ruler* m_along;
    Ruler* m_up;
    QWidget* m_corner;
    QWidget* m_scaleBar;
    QWidget* m_north;
    QWidget* m_legend;
    QWidget* m_runScale;
};

} // namespace sumpwright::ui::canvas
