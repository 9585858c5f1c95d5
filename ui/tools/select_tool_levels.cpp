// SelectTool: the levels of a chosen run, typed where they stand on the plan.
#include <cmath>

#include "ui/canvas/label_layer.hpp"
#include "ui/canvas/plan_scene.hpp"
#include "ui/canvas/plan_view.hpp"
#include "ui/canvas/run_item.hpp"
#include "ui/canvas/scene_point.hpp"
#include "ui/tools/level_editor.hpp"
#include "ui/tools/select_tool.hpp"

namespace sumpwright::ui::tools
{

namespace
{
// The vertex of a corner of the drawn line: the first there, or the last of a vertical leg.
std::optional<std::size_t> vertexAt(const plan::Run& run, QPointF corner, bool last)
{
    std::optional<std::size_t> found;
    for (std::size_t i = 0; i < run.vertices.size(); ++i) {
        const QPointF off = canvas::toScene(run.vertices[i].at) - corner;
        if (std::hypot(off.x(), off.y()) > 0.6) {
            if (found)
                return found;
            continue;
        }
        if (!found || last)
            found = i;
    }
    return found;
}
} // namespace

const plan::Run* SelectTool::chosenRun() const
{
    const auto& chosen = document().selection();
    return chosen.size() == 1 ? plan().runs.find(chosen.front()) : nullptr;
}

std::optional<std::size_t> SelectTool::levelLabelAt(QPointF scene) const
{
    const auto* run = chosenRun();
    const auto* item = run ? dynamic_cast<canvas::RunItem*>(view().planScene().item(run->id)) : nullptr;
    if (!item)
        return std::nullopt;
    const auto& corners = item->line().corners;
    for (const auto& label : view().planScene().labels().shown()) {
        const bool level =
            label.element == run->id && label.part >= 1 && static_cast<std::size_t>(label.part) <= corners.size();
        if (level && label.rect.contains(scene))
            return vertexAt(*run, corners[static_cast<std::size_t>(label.part) - 1].at,
                            scene.x() > label.rect.center().x()); // "from → to": the half that is pointed at
    }
    return std::nullopt;
}

// The level a double click asks for: of the corner under the pointer, or the one written there.
std::optional<std::size_t> SelectTool::levelAt(QPointF scene) const
{
    if (!chosenRun() || document().readOnly())
        return std::nullopt;
    if (const auto handle = handleAt(scene))
        return static_cast<std::size_t>(handle->index);
    return levelLabelAt(scene);
}

// The first click of a double click on a vertex may have picked what lies below the run.
void SelectTool::takeRunBack(QPointF scene)
{
    if (!plan().runs.find(m_former))
        return;
    for (const auto& handle : handlesOf(plan(), m_former, view().pixel()))
        if (canvas::targetOf(handle, view().pixel()).contains(scene))
            return document().select({m_former});
}

void SelectTool::typeLevels()
{
    const auto* run = chosenRun();
    if (!run)
        return document().say(tr("Select one pipe run first: the levels of its vertices are then typed on the plan."));
    if (mayEdit())
        m_levels->openFirst(run->id);
}

} // namespace sumpwright::ui::tools
