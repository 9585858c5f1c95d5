// PlaceVesselTool: a click places a vessel of usual size; press and drag sizes it (round ones from the centre). A
// number typed while dragging fixes a length.
#pragma once

#include "core/plan/edits/place.hpp"
#include "ui/tools/tool.hpp"
#include "ui/tools/typed_lengths.hpp"

namespace sumpwright::ui::tools
{

class PlaceVesselTool final : public PointingTool
{
    Q_OBJECT

public:
    // `shape` absent: usual for the kind.
    PlaceVesselTool(canvas::PlanView& view, plan::VesselKind kind, std::optional<plan::Shape> shape = {});
    QString hint() const override;
    bool busy() const override { return m_press.has_value(); }
    void giveBack() override;

protected:
    void pressed(const canvas::CanvasPointer& pointer) override;
    void moved(const canvas::CanvasPointer& pointer) override;
    void released(const canvas::CanvasPointer& pointer) override;
    bool otherKey(QKeyEvent& event) override;
    bool typing() const override { return !m_typed.empty(); }
    bool chain() const override { return false; }

private:
    struct Press {
        plan::Point at;
        QPoint view;
        bool dragged = false;
        std::optional<canvas::SnapCue> cue;
    };
    plan::VesselWish wishAt(plan::Point place) const;
    plan::VesselWish sized(plan::Point to, canvas::Overlay& overlay) const;
    void showSizing();
    void finish(const canvas::CanvasPointer& pointer);
    void place(const plan::VesselWish& wish, bool goOn);

    plan::VesselKind m_kind;
    std::optional<plan::Shape> m_shape;
    std::optional<Press> m_press;
    TypedLengths m_typed{2};
};

} // namespace sumpwright::ui::tools
