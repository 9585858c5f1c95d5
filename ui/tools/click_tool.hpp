// ClickTool: a tool that does one thing where it is pressed, at the release: leaving the plan, Esc or the right button
// takes the press back.
#pragma once

#include <optional>

#include "ui/tools/tool.hpp"

namespace sumpwright::ui::tools
{

class ClickTool : public PointingTool
{
    Q_OBJECT

public:
    using PointingTool::PointingTool;
    bool busy() const override { return m_pressed.has_value(); }
    void giveBack() override;

protected:
    virtual void clicked(const canvas::CanvasPointer& pressed) = 0;
    virtual void pointed(const canvas::CanvasPointer& pointer) = 0;
    void pressed(const canvas::CanvasPointer& pointer) final;
    void moved(const canvas::CanvasPointer& pointer) final;
    void released(const canvas::CanvasPointer& pointer) final;
    bool chain() const override { return false; }

private:
    std::optional<canvas::CanvasPointer> m_pressed;
};

} // namespace sumpwright::ui::tools
