// BarPanel: a chart panel that draws a BarModel. Segments are read row by row from the top, parts from the left.
#pragma once

#include "ui/charts/bar_model.hpp"
#include "ui/charts/chart_panel.hpp"

QT_BEGIN_NAMESPACE
class QAbstractBarSeries;
class QBarCategoryAxis;
class QBarSet;
class QLineSeries;
class QValueAxis;
QT_END_NAMESPACE

namespace sumpwright::ui::charts
{

using MakeBarModel = std::function<BarModel(const assessment::Assessment&, const text::DisplaySettings&)>;

class BarPanel : public ChartPanel
{
    Q_OBJECT

public:
    BarPanel(document::Document& document, DisplayNow display, const QString& question, MakeBarModel make,
             QWidget* parent = nullptr);

protected:
    void draw(const assessment::Assessment& results, const style::Theme& theme) override;

private:
    void rebuild(const BarModel& model); // rows or parts are others than before
    void fill(const BarModel& model, const style::Theme& theme);
    void drawLimit(const BarModel& model, const style::Theme& theme);
    std::vector<Reading> readingsOf(const BarModel& model) const;

    MakeBarModel m_make;
    QStringList m_rows;
    QStringList m_parts;
    bool m_sideBySide = false;
    QAbstractBarSeries* m_series = nullptr;
    QLineSeries* m_limit = nullptr;
    const style::Theme* m_inked = nullptr; // whose colours the bars have
    QBarCategoryAxis* m_rowAxis = nullptr;
    QValueAxis* m_valueAxis = nullptr;
};

} // namespace sumpwright::ui::charts
