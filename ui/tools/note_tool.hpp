// NoteTool: a click opens a small field on the plan; Enter leaves the note there, Esc or an empty text does not. Words
// typed are kept when another tool is taken or the plan is clicked elsewhere.
#pragma once

#include "ui/tools/tool.hpp"

QT_BEGIN_NAMESPACE
class QLineEdit;
QT_END_NAMESPACE

namespace sumpwright::ui::tools
{

class NoteTool final : public PointingTool
{
    Q_OBJECT

public:
    explicit NoteTool(canvas::PlanView& view);
    QString hint() const override;
    bool busy() const override { return m_at.has_value(); }
    void giveBack() override;
    QLineEdit* field() const { return m_field; }

protected:
    void pressed(const canvas::CanvasPointer& pointer) override;
    void moved(const canvas::CanvasPointer& pointer) override;
    bool eventFilter(QObject* watched, QEvent* event) override;
    void keepFinished() override { leaveNote(); }

private:
    bool leaveNote(); // false: no words, or refused

    std::optional<plan::Point> m_at;
    QLineEdit* m_field;
};

} // namespace sumpwright::ui::tools
