// DutyPanel: what does the pump do? Its curve, the curve of the pipework and the point where they meet; head against
// flow, state of least flow; a band shows what the year makes of it. With several pumps a choice above the chart, or
// the selected pump.
#pragma once

#include <optional>

#include "ui/charts/chart_panel.hpp"

QT_BEGIN_NAMESPACE
class QAreaSeries;
class QComboBox;
class QLineSeries;
class QScatterSeries;
class QValueAxis;
QT_END_NAMESPACE

namespace sumpwright::ui::charts
{

class DutyPanel : public ChartPanel
{
    Q_OBJECT

public:
    DutyPanel(document::Document& document, DisplayNow display, QWidget* parent = nullptr);

protected:
    void draw(const assessment::Assessment& results, const style::Theme& theme) override;

private:
    const assessment::PumpResult* choose(const assessment::Assessment& results);
    void clear();
    void drawCurves(const assessment::PumpResult& pump, const style::Theme& theme);
    void drawBand(std::optional<assessment::FlowSpan> span, const style::Theme& theme);
    void tell(const assessment::Assessment& results, const assessment::PumpResult& pump);

    QComboBox* m_choice;
    QLineSeries* m_bandTop;
    QLineSeries* m_bandFoot;
    QAreaSeries* m_band; // takes neither into the chart
    QLineSeries* m_pumpCurve;
    QLineSeries* m_systemCurve;
    QScatterSeries* m_point;
    QValueAxis* m_flowAxis;
    QValueAxis* m_headAxis;
};

} // namespace sumpwright::ui::charts
