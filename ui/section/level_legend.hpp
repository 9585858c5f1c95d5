// LevelLegend: what the dashes of the water lines and of the grade mean; as many as there is room for, all in its tip.
#pragma once

#include <QWidget>

#include "ui/section/paint_profile.hpp"

namespace sumpwright::ui::section
{

class LevelLegend final : public QWidget
{
    Q_OBJECT

public:
    explicit LevelLegend(QWidget* parent = nullptr);
    void setGrade(bool shown); // the hydraulic grade is drawn, too

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override { return {0, 16}; }

protected:
    void paintEvent(QPaintEvent*) override;

private:
    struct Row {
        LineKind kind;
        QString words;
    };
    std::vector<Row> rows() const;

    bool m_grade = false;
};

} // namespace sumpwright::ui::section
