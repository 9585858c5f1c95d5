// LinePoints: the way two-point tools take their points - click and click, or press, drag and release - with the second
// put in line with the first, and a typed length between the two.
#pragma once

#include <optional>

#include "ui/tools/tool.hpp"
#include "ui/tools/typed_lengths.hpp"

namespace sumpwright::ui::tools
{

// A place put straight along x or y from another where it is within reach; on the free axis to the grid.
plan::Point straightFrom(plan::Point from, plan::Point raw, const SnapRules& rules);
// The place at a distance from `from` in the direction of `towards`.
plan::Point atDistance(plan::Point from, plan::Point towards, units::Length distance);

class LinePointsTool : public PointingTool
{
    Q_OBJECT

public:
    using PointingTool::PointingTool;
    bool busy() const override { return m_from.has_value(); }
    void giveBack() override;

protected:
    void pressed(const canvas::CanvasPointer& pointer) override;
    void moved(const canvas::CanvasPointer& pointer) override;
    void released(const canvas::CanvasPointer& pointer) override;
    bool otherKey(QKeyEvent& event) override;
    bool typing() const override { return !m_typed.empty(); }

    virtual bool changesPlan() const { return true; }
    virtual void lineDrawn(plan::Point from, plan::Point to, const canvas::CanvasPointer& pointer) = 0;
    virtual void showLine(plan::Point from, plan::Point to, canvas::Overlay& overlay) = 0;
    virtual Snapped meant(const canvas::CanvasPointer& pointer) const;

    const std::optional<plan::Point>& from() const { return m_from; }
    void startAgainFrom(plan::Point place) { m_from = place; }
    void refresh();

private:
    plan::Point second(const Snapped& found) const;
    bool onStart(const Snapped& found) const;

    std::optional<plan::Point> m_from;
    QPoint m_pressView;
    bool m_firstPress = false;
    TypedLengths m_typed;
};

} // namespace sumpwright::ui::tools
