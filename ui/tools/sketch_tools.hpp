// Tools that lay the site sketch where it belongs: UnderlayMoveTool by a point of it and the point of the plan it
// stands for, UnderlayTurnTool by an edge of it that runs straight across or up the sheet. Its scale is set by
// UnderlayScaleTool.
#pragma once

#include "ui/tools/line_points.hpp"

namespace sumpwright::ui::tools
{

class UnderlayMoveTool final : public LinePointsTool
{
    Q_OBJECT

public:
    using LinePointsTool::LinePointsTool;
    QString hint() const override;
    void giveBack() override;

protected:
    Snapped meant(const canvas::CanvasPointer& pointer) const override; // the second point snaps, the picture's not
    void lineDrawn(plan::Point from, plan::Point to, const canvas::CanvasPointer& pointer) override;
    void showLine(plan::Point from, plan::Point to, canvas::Overlay& overlay) override;
};

class UnderlayTurnTool final : public LinePointsTool
{
    Q_OBJECT

public:
    using LinePointsTool::LinePointsTool;
    QString hint() const override;

protected:
    Snapped meant(const canvas::CanvasPointer& pointer) const override;
    void lineDrawn(plan::Point from, plan::Point to, const canvas::CanvasPointer& pointer) override;
    void showLine(plan::Point from, plan::Point to, canvas::Overlay& overlay) override;
};

} // namespace sumpwright::ui::tools
