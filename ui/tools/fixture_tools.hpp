// WallTool and DoorTool take two ends, SpotTool places a post or a power point by one click.
#pragma once

#include "ui/tools/click_tool.hpp"
#include "ui/tools/line_points.hpp"

namespace sumpwright::ui::tools
{

// Walls go on from the last end until Esc; a door lies in the wall it is drawn on.
class WallTool final : public LinePointsTool
{
    Q_OBJECT

public:
    WallTool(canvas::PlanView& view, plan::FixtureKind kind) : LinePointsTool(view), m_kind(kind) {}
    QString hint() const override;

protected:
    void lineDrawn(plan::Point from, plan::Point to, const canvas::CanvasPointer& pointer) override;
    void showLine(plan::Point from, plan::Point to, canvas::Overlay& overlay) override;

private:
    plan::FixtureKind m_kind; // wall or door
};

class SpotTool final : public ClickTool
{
    Q_OBJECT

public:
    SpotTool(canvas::PlanView& view, plan::FixtureKind kind) : ClickTool(view), m_kind(kind) {}
    QString hint() const override;

protected:
    void clicked(const canvas::CanvasPointer& pointer) override;
    void pointed(const canvas::CanvasPointer& pointer) override;

private:
    plan::FixtureKind m_kind; // post or power point
};

} // namespace sumpwright::ui::tools
