#include "ui/tools/fixture_tools.hpp"

#include "core/plan/edits/place.hpp"
#include "ui/canvas/fixture_item.hpp"
#include "ui/canvas/plan_view.hpp"
#include "ui/canvas/scene_point.hpp"
#include "ui/text/names.hpp"

namespace sumpwright::ui::tools
{

QString WallTool::hint() const
{
    const QString name = text::nameOf(m_kind);
    return busy() ? tr("Click the other end of the %1, or type its length.").arg(name)
                  : tr("Click one end of the %1. Ctrl suspends snapping.").arg(name);
}

void WallTool::showLine(plan::Point from, plan::Point to, canvas::Overlay& overlay)
{
    const double thickness = canvas::toScene(plan::Fixture().size);
    overlay.sketch = canvas::bandOf(canvas::toScene(from), canvas::toScene(to), thickness);
    overlay.sketchClosed = true;
    const auto figures = view().figures();
    overlay.figures.push_back({canvas::toScene(from), canvas::toScene(to), 20.0 * view().pixel(),
                               figures.size(plan::distanceBetween(from, to))});
}

void WallTool::lineDrawn(plan::Point from, plan::Point to, const canvas::CanvasPointer& pointer)
{
    const base::Id placed{plan().nextId};
    if (!document().commit(plan::placeFixture(m_kind, from, to)))
        return;
    document().select({placed});
    if (m_kind == plan::FixtureKind::wall) {
        startAgainFrom(to);
        refresh();
    } else if (!(pointer.modifiers & Qt::ShiftModifier)) {
        Q_EMIT finished();
    }
}

QString SpotTool::hint() const { return tr("Click where the %1 is.").arg(text::nameOf(m_kind)); }

void SpotTool::pointed(const canvas::CanvasPointer& pointer)
{
    const auto found = snapped(pointer);
    announce(found.cue);
    canvas::Overlay overlay;
    overlay.cue = found.cue;
    show(std::move(overlay));
}

void SpotTool::clicked(const canvas::CanvasPointer& pointer)
{
    const auto at = snapped(pointer).at;
    const base::Id placed{plan().nextId};
    if (!document().commit(plan::placeFixture(m_kind, at, at)))
        return;
    document().select({placed});
    if (!(pointer.modifiers & Qt::ShiftModifier))
        Q_EMIT finished();
}

} // namespace sumpwright::ui::tools
