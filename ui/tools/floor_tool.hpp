// FloorTool: the outline of the slab, corner by corner, or a rectangle by one drag. It replaces the outline there is.
#pragma once

#include <vector>

#include "ui/tools/tool.hpp"
#include "ui/tools/typed_lengths.hpp"

namespace sumpwright::ui::tools
{

class FloorTool final : public PointingTool
{
    Q_OBJECT

public:
    using PointingTool::PointingTool;
    QString hint() const override;
    bool busy() const override { return !m_corners.empty(); }
    void giveBack() override;
    void doubleClick(const canvas::CanvasPointer& pointer) override;

protected:
    void pressed(const canvas::CanvasPointer& pointer) override;
    void moved(const canvas::CanvasPointer& pointer) override;
    void released(const canvas::CanvasPointer& pointer) override;
    bool otherKey(QKeyEvent& event) override;
    bool typing() const override { return !m_typed.empty(); }
    void keepFinished() override; // from three corners on it is an outline

private:
    plan::Point meant(const canvas::CanvasPointer& pointer) const;
    std::vector<plan::Point> rectangleTo(plan::Point corner) const;
    bool dragging(const canvas::CanvasPointer& pointer) const;
    void close(std::vector<plan::Point> corners);
    void refresh();

    std::vector<plan::Point> m_corners;
    std::optional<QPoint> m_pressView;
    TypedLengths m_typed{2};
};

} // namespace sumpwright::ui::tools
