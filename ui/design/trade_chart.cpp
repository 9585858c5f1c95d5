#include "ui/design/trade_chart.hpp"

#include <algorithm>

#include <QChart>
#include <QEvent>
#include <QLabel>
#include <QLegend>
#include <QLineSeries>
#include <QScatterSeries>
#include <QVBoxLayout>

#include "ui/charts/chart_panel.hpp"
#include "ui/charts/readable_view.hpp"
#include "ui/charts/value_axis.hpp"
#include "ui/style/palette.hpp"
#include "ui/style/series.hpp"
#include "ui/style/type.hpp"
#include "ui/text/design_words.hpp"

namespace sumpwright::ui::design
{

TradeChart::TradeChart(QWidget* parent)
    : QWidget(parent), m_chart(new QChart), m_view(new charts::ReadableView(m_chart, this)),
      m_readOut(new QLabel(this)), m_pipe(new QLineSeries), m_energy(new QLineSeries), m_total(new QLineSeries),
      m_chosen(new QScatterSeries), m_x(new QValueAxis), m_y(new QValueAxis)
{
    m_view->setAccessibleName(tr("Pipe against energy"));
    m_pipe->setName(tr("Pipe"));
    m_energy->setName(tr("Energy"));
    m_total->setName(tr("Both"));
    m_chosen->setName(tr("Chosen"));
    m_chart->addAxis(m_x, Qt::AlignBottom);
    m_chart->addAxis(m_y, Qt::AlignLeft);
    for (QXYSeries* series : std::initializer_list<QXYSeries*>{m_pipe, m_energy, m_total, m_chosen}) {
        m_chart->addSeries(series);
        series->attachAxis(m_x);
        series->attachAxis(m_y);
    }
    for (QValueAxis* axis : {m_x, m_y})
        axis->setTickType(QValueAxis::TicksDynamic);
    m_chart->legend()->setMarkerShape(QLegend::MarkerShapeFromSeries);
    m_readOut->setWordWrap(true);
    m_readOut->setMinimumHeight(2 * m_readOut->fontMetrics().lineSpacing());
    m_readOut->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    auto* rows = new QVBoxLayout(this);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(style::halfStep);
    rows->addWidget(m_view, 1);
    rows->addWidget(m_readOut);
    setFocusProxy(m_view);
    connect(m_view, &charts::ReadableView::pointed, this,
            [this](const QPoint& at) { read(m_view->nearest(m_readings, at)); });
    connect(m_view, &charts::ReadableView::left, this, [this] {
        if (!m_view->hasFocus())
            read(-1);
    });
    connect(m_view, &charts::ReadableView::keyPressed, this, &TradeChart::keyRead);
    dressUp();
}

QString TradeChart::readOut() const { return text::breakable(m_readOut->text()); }

void TradeChart::show(const std::vector<sumpwright::design::PipeChoice>& tradeOff, const std::string& currency,
                      const text::DisplaySettings& display)
{
    QList<QPointF> pipe, energy, total;
    m_readings.clear();
    double most = 0.0;
    for (const auto& choice : tradeOff) {
        const double x = units::inCurrency(choice.pipeCost), e = units::inCurrency(choice.energyCost);
        pipe << QPointF(x, x);
        energy << QPointF(x, e);
        total << QPointF(x, x + e);
        most = std::max(most, x + e);
        m_readings.push_back({tr("Pipe %1, energy %2, both %3")
                                  .arg(text::sumText(choice.pipeCost, currency, display),
                                       text::sumText(choice.energyCost, currency, display),
                                       text::sumText(choice.total(), currency, display)),
                              {},
                              QRectF(x, x + e, 0.0, 0.0)});
    }
    m_pipe->replace(pipe);
    m_energy->replace(energy);
    m_total->replace(total);
    m_chosen->clear();
    charts::setTicks(*m_x, charts::ticksFor(0.0, pipe.isEmpty() ? 1.0 : pipe.back().x()));
    charts::setTicks(*m_y, charts::ticksFor(0.0, most));
    const QString money = QString::fromStdString(currency);
    m_x->setTitleText(tr("Cost of pipe (%1)").arg(money));
    m_y->setTitleText(tr("Cost (%1)").arg(money));
    read(-1);
}

void TradeChart::mark(const sumpwright::design::PipeChoice& choice)
{
    m_chosen->replace(QList<QPointF>{QPointF(units::inCurrency(choice.pipeCost), units::inCurrency(choice.total()))});
}

void TradeChart::dressUp()
{
    const style::Theme& theme = style::themeOf(*this);
    int index = 0;
    for (QLineSeries* series : {m_pipe, m_energy, m_total})
        series->setPen(style::seriesStyle(theme, index++).pen(1.75));
    m_chosen->setColor(theme.accent);
    m_chosen->setBorderColor(theme.ink);
    m_chosen->setMarkerSize(10.0);
    charts::dress(*m_chart, theme);
    m_view->setBackgroundBrush(theme.paper);
}

void TradeChart::read(int index)
{
    const bool good = index >= 0 && index < static_cast<int>(m_readings.size());
    m_read = good ? index : -1;
    const auto* reading = good ? &m_readings[static_cast<std::size_t>(index)] : nullptr;
    m_view->mark(reading ? reading->place : QRectF(), good);
    m_readOut->setText(text::unbroken(reading ? reading->text : QString()));
    m_view->setAccessibleDescription(reading ? reading->text : QString());
}

void TradeChart::keyRead(int key)
{
    const int count = static_cast<int>(m_readings.size());
    if (count == 0)
        return;
    if (key == Qt::Key_Right || key == Qt::Key_Down)
        read(std::min(m_read + 1, count - 1));
    else if (key == Qt::Key_Left || key == Qt::Key_Up)
        read(std::max(m_read - 1, 0));
    else if (key == Qt::Key_Home)
        read(0);
    else if (key == Qt::Key_End)
        read(count - 1);
    else if (key == Qt::Key_Escape)
        read(-1);
}

void TradeChart::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::PaletteChange)
        dressUp();
    QWidget::changeEvent(event);
}

} // namespace sumpwright::ui::design
