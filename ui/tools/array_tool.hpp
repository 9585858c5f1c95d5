// ArrayTool: copies of what is selected in rows and columns. How many and how far apart is typed into fields, shown at
// once, and taken by Enter in the plan or a click.
#pragma once

#include "core/plan/edits/edit.hpp"
#include "ui/tools/tool.hpp"

QT_BEGIN_NAMESPACE
class QLineEdit;
QT_END_NAMESPACE

namespace sumpwright::ui::tools
{

class ToolStrip;

class ArrayTool final : public Tool
{
    Q_OBJECT

public:
    explicit ArrayTool(canvas::PlanView& view);
    void begin() override;
    void end() override;
    QString hint() const override;
    Qt::CursorShape cursor() const override { return Qt::ArrowCursor; }
    bool key(QKeyEvent& event) override;
    void press(const canvas::CanvasPointer& pointer) override;
    void giveBack() override;

    QLineEdit* columnsField() const { return m_columns; }
    QLineEdit* rowsField() const { return m_rows; }
    QLineEdit* acrossField() const { return m_across; } // step from column to column
    QLineEdit* upField() const { return m_up; }         // step from row to row

private:
    struct Wish {
        int columns = 2;
        int rows = 1;
        units::Length across;
        units::Length up;
    };
    QString countEntered(const QString& text, int& count);
    QString stepEntered(const QString& text, units::Length& step, const QString& name);
    QString show(const Wish& former); // refused: what is wrong, and the former wish is kept
    plan::Edit edit() const;
    void take();
    void writeFields();

    ToolStrip* m_strip;
    QLineEdit* m_columns;
    QLineEdit* m_rows;
    QLineEdit* m_across;
    QLineEdit* m_up;
    std::vector<base::Id> m_elements;
    Wish m_wish;
};

} // namespace sumpwright::ui::tools
