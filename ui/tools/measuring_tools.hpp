// MeasureTool tells a distance and leaves nothing; DimensionTool leaves a dimension line, its third click puts it off
// the measured points; UnderlayScaleTool scales the site sketch by two points and a typed distance.
#pragma once

#include "ui/tools/line_points.hpp"

QT_BEGIN_NAMESPACE
class QLineEdit;
QT_END_NAMESPACE

namespace sumpwright::ui::tools
{

class ToolStrip;

class MeasureTool final : public LinePointsTool
{
    Q_OBJECT

public:
    using LinePointsTool::LinePointsTool;
    QString hint() const override;
    const QString& result() const { return m_result; } // of the last measurement

protected:
    bool changesPlan() const override { return false; }
    void lineDrawn(plan::Point from, plan::Point to, const canvas::CanvasPointer& pointer) override;
    void showLine(plan::Point from, plan::Point to, canvas::Overlay& overlay) override;

private:
    QString told(plan::Point from, plan::Point to) const;
    QString m_result;
};

class DimensionTool final : public LinePointsTool
{
    Q_OBJECT

public:
    using LinePointsTool::LinePointsTool;
    QString hint() const override;
    bool busy() const override { return m_measured || LinePointsTool::busy(); }
    void giveBack() override;

protected:
    void pressed(const canvas::CanvasPointer& pointer) override;
    void moved(const canvas::CanvasPointer& pointer) override;
    void lineDrawn(plan::Point from, plan::Point to, const canvas::CanvasPointer& pointer) override;
    void showLine(plan::Point from, plan::Point to, canvas::Overlay& overlay) override;

private:
    struct Measured {
        plan::Point from;
        plan::Point to;
    };
    units::Length offsetTo(plan::Point place, const SnapRules& rules) const;

    std::optional<Measured> m_measured;
};

class UnderlayScaleTool final : public LinePointsTool
{
    Q_OBJECT

public:
    explicit UnderlayScaleTool(canvas::PlanView& view);
    void end() override;
    QString hint() const override;
    QLineEdit* distanceField() const { return m_field; }

protected:
    Snapped meant(const canvas::CanvasPointer& pointer) const override;
    void lineDrawn(plan::Point from, plan::Point to, const canvas::CanvasPointer& pointer) override;
    void showLine(plan::Point from, plan::Point to, canvas::Overlay& overlay) override;

private:
    QString entered(const QString& text);

    std::optional<std::pair<plan::Point, plan::Point>> m_points;
    ToolStrip* m_strip = nullptr;
    QLineEdit* m_field = nullptr;
};

} // namespace sumpwright::ui::tools
