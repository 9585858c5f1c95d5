#include "ui/canvas/canvas_settings.hpp"

namespace sumpwright::ui::canvas
{

void CanvasSettings::setGridStep(units::Length step)
{
    const bool usable = step >= units::millimetres(1.0) && step <= units::metres(10.0);
    if (!usable || step == m_gridStep)
        return;
    m_gridStep = step;
    Q_EMIT changed();
}

void CanvasSettings::setRunMeasure(RunMeasure measure)
{
    if (measure == m_runMeasure)
        return;
    m_runMeasure = measure;
    Q_EMIT changed();
}

void CanvasSettings::set(bool& member, bool value)
{
    if (member == value)
        return;
    member = value;
    Q_EMIT changed();
}

} // namespace sumpwright::ui::canvas
