#include "ui/tools/place_pump_tool.hpp"

#include <QComboBox>
#include <QPainterPath>

#include "core/plan/edits/place.hpp"
#include "ui/canvas/plan_view.hpp"
#include "ui/canvas/scene_point.hpp"
#include "ui/text/names.hpp"
#include "ui/text/subject.hpp"
#include "ui/tools/tool_strip.hpp"

namespace sumpwright::ui::tools
{

namespace
{
constexpr double bodyRadius = 80.0; // scene millimetres of the ghost

QPolygonF ghostAt(QPointF centre)
{
    QPainterPath circle;
    circle.addEllipse(centre, bodyRadius, bodyRadius);
    return circle.toFillPolygon();
}
} // namespace

PlacePumpTool::PlacePumpTool(canvas::PlanView& view) : ClickTool(view)
{
    const auto& pumps = document().catalogue()->pumps();
    if (pumps.empty())
        return;
    m_model = pumps.front().id;
    m_strip = new ToolStrip(view);
    m_pumps = m_strip->addChoice(
        tr("Pump"), {}, [this](int index) { m_model = m_tables->pumps()[static_cast<std::size_t>(index)].id; });
    offerPumps();
}

// The catalogue with the own parts of the plan; a pump that is gone gives way to the first.
void PlacePumpTool::offerPumps()
{
    if (!m_pumps || m_tables == document().catalogue())
        return;
    m_tables = document().catalogue();
    m_pumps->clear();
    int chosen = 0;
    for (const auto& pump : m_tables->pumps()) {
        if (pump.id == m_model)
            chosen = m_pumps->count();
        m_pumps->addItem(text::partName(pump.name, pump.provenance.basis));
    }
    m_pumps->setCurrentIndex(chosen);
    m_model = m_tables->pumps()[static_cast<std::size_t>(chosen)].id;
}

void PlacePumpTool::begin()
{
    offerPumps();
    if (m_strip)
        m_strip->placeAndShow();
}

void PlacePumpTool::end()
{
    if (m_strip)
        m_strip->hide();
    ClickTool::end();
}

QString PlacePumpTool::hint() const { return tr("Click inside a sump to stand a pump there."); }

void PlacePumpTool::pointed(const canvas::CanvasPointer& pointer)
{
    const auto found = snapped(pointer);
    const auto* vessel = vesselAt(plan(), found.at);
    canvas::Overlay overlay;
    overlay.cue = found.cue;
    if (vessel) {
        overlay.sketch = ghostAt(canvas::toScene(found.at));
        overlay.sketchClosed = true;
        overlay.readOut = tr("in %1").arg(text::subject(plan(), vessel->id));
        overlay.readOutAt = canvas::toScene(found.at);
    }
    announce(found.cue);
    show(std::move(overlay));
}

void PlacePumpTool::clicked(const canvas::CanvasPointer& pointer)
{
    const auto at = snapped(pointer).at;
    const auto* vessel = vesselAt(plan(), at);
    if (!vessel) {
        document().say(tr("A pump stands in a vessel: click inside a sump."));
        return;
    }
    const base::Id placed{plan().nextId};
    if (!document().commit(plan::placePump(vessel->id, at, m_model)))
        return;
    document().select({placed});
    show({});
    if (!(pointer.modifiers & Qt::ShiftModifier))
        Q_EMIT finished();
}

} // namespace sumpwright::ui::tools
