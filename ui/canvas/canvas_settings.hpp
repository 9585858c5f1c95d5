// CanvasSettings: how the person works on the drawing - grid step, snapping, marquee, what is shown beside the plan.
// Session state: never undone, never part of the plan.
#pragma once

#include <QObject>

#include "core/units/measures.hpp"
#include "ui/canvas/run_colours.hpp"

namespace sumpwright::ui::canvas
{

class CanvasSettings : public QObject
{
    Q_OBJECT

public:
    using QObject::QObject;

    units::Length gridStep() const { return m_gridStep; }
    void setGridStep(units::Length step); // 1 mm ... 10 m, others are left out
    bool snapping() const { return m_snapping; }
    void setSnapping(bool on) { set(m_snapping, on); }
    bool marqueeTouching() const { return m_marqueeTouching; } // else fully enclosed
    void setMarqueeTouching(bool on) { set(m_marqueeTouching, on); }
    bool gridShown() const { return m_gridShown; }
    void setGridShown(bool on) { set(m_gridShown, on); }
    bool rulersShown() const { return m_rulersShown; }
    void setRulersShown(bool on) { set(m_rulersShown, on); }
    bool labelsShown() const { return m_labelsShown; }
    void setLabelsShown(bool on) { set(m_labelsShown, on); }
    bool legendShown() const { return m_legendShown; }
    void setLegendShown(bool on) { set(m_legendShown, on); }
    RunMeasure runMeasure() const { return m_runMeasure; } // what the runs are coloured by
    void setRunMeasure(RunMeasure measure);

Q_SIGNALS:
    void changed();

private:
    void set(bool& member, bool value);

    units::Length m_gridStep = units::millimetres(100.0);
    bool m_snapping = true;
    bool m_marqueeTouching = false;
    bool m_gridShown = true;
    bool m_rulersShown = true;
    bool m_labelsShown = true;
    bool m_legendShown = false;
    RunMeasure m_runMeasure = RunMeasure::nothing;
};

} // namespace sumpwright::ui::canvas
