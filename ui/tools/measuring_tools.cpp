#include "ui/tools/measuring_tools.hpp"

#include <QLineEdit>

#include <cmath>

#include "core/plan/edits/place.hpp"
#include "core/plan/edits/underlay.hpp"
#include "core/units/parse.hpp"
#include "ui/canvas/plan_view.hpp"
#include "ui/canvas/scene_point.hpp"
#include "ui/text/refusals.hpp"
#include "ui/tools/tool_strip.hpp"

namespace sumpwright::ui::tools
{

QString MeasureTool::hint() const
{
    return busy() ? tr("Click where to measure to.") : tr("Click where to measure from. Ctrl suspends snapping.");
}

QString MeasureTool::told(plan::Point from, plan::Point to) const
{
    const auto figures = view().figures();
    const auto magnitude = [](units::Length v) { return v < units::metres(0.0) ? -v : v; };
    return tr("%1 (across %2, up %3)")
        .arg(figures.text(plan::distanceBetween(from, to)), figures.text(magnitude(to.x - from.x)),
             figures.text(magnitude(to.y - from.y)));
}

void MeasureTool::showLine(plan::Point from, plan::Point to, canvas::Overlay& overlay)
{
    overlay.sketch = {canvas::toScene(from), canvas::toScene(to)};
    overlay.readOut = told(from, to);
    overlay.readOutAt = canvas::toScene(to);
}

void MeasureTool::lineDrawn(plan::Point from, plan::Point to, const canvas::CanvasPointer&)
{
    m_result = told(from, to);
    document().say(tr("Measured: %1").arg(m_result));
    canvas::Overlay overlay;
    overlay.figures.push_back(
        {canvas::toScene(from), canvas::toScene(to), 0.0, view().figures().text(plan::distanceBetween(from, to))});
    show(std::move(overlay));
}

QString DimensionTool::hint() const
{
    if (m_measured)
        return tr("Click how far off the dimension line stands.");
    return LinePointsTool::busy() ? tr("Click the second point.") : tr("Click the first point of the dimension line.");
}

units::Length DimensionTool::offsetTo(plan::Point place, const SnapRules& rules) const
{
    const auto along = m_measured->to - m_measured->from;
    const auto off = place - m_measured->from;
    const double length = units::inMetres(plan::distanceBetween(m_measured->from, m_measured->to));
    if (length < 1e-9)
        return units::metres(0.0);
    const double area =
        units::inMetres(along.x) * units::inMetres(off.y) - units::inMetres(along.y) * units::inMetres(off.x);
    const auto offset = units::metres(area / length);
    return rules.on && rules.toGrid ? toStep(offset, units::millimetres(50.0)) : offset;
}

void DimensionTool::lineDrawn(plan::Point from, plan::Point to, const canvas::CanvasPointer&)
{
    if (plan::distanceBetween(from, to) < units::millimetres(1.0))
        return;
    m_measured = Measured{from, to};
    Q_EMIT hintChanged();
}

void DimensionTool::pressed(const canvas::CanvasPointer& pointer)
{
    if (!m_measured) {
        LinePointsTool::pressed(pointer);
        return;
    }
    const auto measured = *m_measured;
    const auto offset = offsetTo(canvas::toPlan(pointer.scene), rulesFor(pointer));
    const base::Id placed{plan().nextId};
    giveBack();
    if (!document().commit(plan::placeDimension(measured.from, measured.to, offset)))
        return;
    document().select({placed});
    if (!(pointer.modifiers & Qt::ShiftModifier))
        Q_EMIT finished();
}

void DimensionTool::moved(const canvas::CanvasPointer& pointer)
{
    if (!m_measured) {
        LinePointsTool::moved(pointer);
        return;
    }
    canvas::Overlay overlay;
    const auto offset = offsetTo(canvas::toPlan(pointer.scene), rulesFor(pointer));
    overlay.figures.push_back({canvas::toScene(m_measured->from), canvas::toScene(m_measured->to),
                               canvas::toScene(offset),
                               view().figures().size(plan::distanceBetween(m_measured->from, m_measured->to))});
    show(std::move(overlay));
}

void DimensionTool::showLine(plan::Point from, plan::Point to, canvas::Overlay& overlay)
{
    overlay.figures.push_back(
        {canvas::toScene(from), canvas::toScene(to), 0.0, view().figures().size(plan::distanceBetween(from, to))});
}

void DimensionTool::giveBack()
{
    m_measured.reset();
    LinePointsTool::giveBack();
}

UnderlayScaleTool::UnderlayScaleTool(canvas::PlanView& view) : LinePointsTool(view), m_strip(new ToolStrip(view))
{
    m_field = m_strip->addField(tr("True &distance"), [this](const QString& text) { return entered(text); });
}

void UnderlayScaleTool::end()
{
    m_strip->hide();
    m_points.reset();
    LinePointsTool::end();
}

QString UnderlayScaleTool::hint() const
{
    if (!plan().underlay)
        return tr("There is no site sketch under the plan yet: add one first.");
    if (m_points)
        return tr("Type the true distance between the two points and press Enter.");
    return busy() ? tr("Click the second point of the sketch.")
                  : tr("Click a point of the sketch; the distance to a second one sets the scale.");
}

// Points of a picture lie anywhere: nothing is snapped to.
Snapped UnderlayScaleTool::meant(const canvas::CanvasPointer& pointer) const
{
    return {canvas::toPlan(pointer.scene), std::nullopt};
}

void UnderlayScaleTool::showLine(plan::Point from, plan::Point to, canvas::Overlay& overlay)
{
    overlay.figures.push_back(
        {canvas::toScene(from), canvas::toScene(to), 0.0, view().figures().text(plan::distanceBetween(from, to))});
}

void UnderlayScaleTool::lineDrawn(plan::Point from, plan::Point to, const canvas::CanvasPointer&)
{
    if (!plan().underlay) {
        document().say(hint());
        return;
    }
    m_points = {from, to};
    canvas::Overlay overlay;
    showLine(from, to, overlay);
    show(std::move(overlay));
    m_field->setText(view().figures().text(plan::distanceBetween(from, to)));
    m_strip->placeAndShow();
    m_field->setFocus();
    m_field->selectAll();
    Q_EMIT hintChanged();
}

QString UnderlayScaleTool::entered(const QString& text)
{
    const auto figures = view().figures();
    units::Reading reading;
    reading.bareUnit = figures.system == units::UnitSystem::us ? "ft" : "m";
    reading.typed = figures.system;
    const auto distance = units::parse<units::Length>(text.toStdString(), figures.numbers, reading);
    if (!distance)
        return text::sentenceOf(distance.refusal(), tr("True distance"));
    if (!m_points || !document().commit(plan::scaleUnderlay(m_points->first, m_points->second, *distance)))
        return tr("The sketch was not scaled.");
    m_strip->hide();
    Q_EMIT finished();
    return {};
}

} // namespace sumpwright::ui::tools
