// TradeChart: cost of pipe against cost of energy over the years: two lines and their total over the cost of pipe, the
// choice at hand marked. Left and Right read from choice to choice.
#pragma once

#include <string>
#include <vector>

#include <QWidget>

#include "core/design/pipe_sizes.hpp"
#include "ui/charts/reading.hpp"
#include "ui/text/display.hpp"

QT_BEGIN_NAMESPACE
class QChart;
class QLabel;
class QLineSeries;
class QScatterSeries;
class QValueAxis;
QT_END_NAMESPACE

namespace sumpwright::ui::charts
{
class ReadableView;
}

namespace sumpwright::ui::design
{

class TradeChart : public QWidget
{
    Q_OBJECT

public:
    explicit TradeChart(QWidget* parent = nullptr);

    void show(const std::vector<sumpwright::design::PipeChoice>& tradeOff, const std::string& currency,
              const text::DisplaySettings& display);
    void mark(const sumpwright::design::PipeChoice& choice);
    const std::vector<charts::Reading>& readings() const { return m_readings; }
    QString readOut() const;

    QSize sizeHint() const override { return {400, 260}; }
    QSize minimumSizeHint() const override { return {260, 240}; }

protected:
    void changeEvent(QEvent* event) override;

private:
    void dressUp();
    void read(int index);
    void keyRead(int key);

    QChart* m_chart;
    charts::ReadableView* m_view;
    QLabel* m_readOut;
    QLineSeries* m_pipe;
    QLineSeries* m_energy;
    QLineSeries* m_total;
    QScatterSeries* m_chosen;
    QValueAxis* m_x;
    QValueAxis* m_y;
    std::vector<charts::Reading> m_readings;
    int m_read = -1;
};

} // namespace sumpwright::ui::design
