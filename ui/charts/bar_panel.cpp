#include "ui/charts/bar_panel.hpp"

#include <algorithm>

#include <QBarCategoryAxis>
#include <QBarSet>
#include <QChart>
#include <QHorizontalBarSeries>
#include <QHorizontalStackedBarSeries>
#include <QLegend>
#include <QLineSeries>
#include <QValueAxis>

#include "ui/charts/value_axis.hpp"
#include "ui/style/palette.hpp"
#include "ui/style/series.hpp"

namespace sumpwright::ui::charts
{

namespace
{

constexpr double barWidth = 0.62; // share of a row

double rowTotal(const BarModel& model, int row)
{
    double total = 0.0;
    for (const BarSegment& segment : model.segments)
        if (segment.row == row)
            total = model.sideBySide ? std::max(total, segment.value) : total + segment.value;
    return total;
}

} // namespace

BarPanel::BarPanel(document::Document& document, DisplayNow display, const QString& question, MakeBarModel make,
                   QWidget* parent)
    : ChartPanel(document, std::move(display), question, parent), m_make(std::move(make)),
      m_rowAxis(new QBarCategoryAxis), m_valueAxis(new QValueAxis)
{
    chart().addAxis(m_rowAxis, Qt::AlignLeft);
    chart().addAxis(m_valueAxis, Qt::AlignBottom);
    m_rowAxis->setGridLineVisible(false);
    m_valueAxis->setTickType(QValueAxis::TicksDynamic);
    chart().legend()->setMarkerShape(QLegend::MarkerShapeRectangle);
}

void BarPanel::rebuild(const BarModel& model)
{
    m_rows = model.rows;
    m_parts = model.parts;
    m_sideBySide = model.sideBySide;
    chart().removeAllSeries(); // deletes them
    m_inked = nullptr;
    m_limit = nullptr;
    m_series = m_sideBySide ? static_cast<QAbstractBarSeries*>(new QHorizontalBarSeries)
                            : static_cast<QAbstractBarSeries*>(new QHorizontalStackedBarSeries);
    m_series->setBarWidth(barWidth);
    QStringList parts = m_parts;
    if (m_sideBySide) // drawn upwards, so that the first stands on top, as in the legend
        std::reverse(parts.begin(), parts.end());
    chart().legend()->setReverseMarkers(m_sideBySide);
    for (const QString& part : parts) {
        auto* set = new QBarSet(part);
        set->append(QList<qreal>(m_rows.size(), 0.0));
        m_series->append(set);
    }
    QStringList upwards = m_rows;
    std::reverse(upwards.begin(), upwards.end());
    m_rowAxis->clear();
    m_rowAxis->append(upwards);
    chart().addSeries(m_series);
    m_series->attachAxis(m_rowAxis);
    m_series->attachAxis(m_valueAxis);
}

void BarPanel::fill(const BarModel& model, const style::Theme& theme)
{
    const auto sets = m_series->barSets();
    const int rows = static_cast<int>(m_rows.size());
    for (int part = 0; part < sets.size(); ++part) {
        QBarSet& set = *sets[m_sideBySide ? sets.size() - 1 - part : part];
        if (m_inked != &theme) { // a brush set again lays the legend out anew
            const style::FillStyle look = style::fillStyle(theme, part);
            set.setBrush(style::brushOf(look));
            set.setPen(QPen(look.outline, 1.0));
        }
        QList<qreal> values(rows, 0.0);
        for (const BarSegment& segment : model.segments)
            if (segment.part == part)
                values[rows - 1 - segment.row] = segment.value;
        for (int i = 0; i < rows; ++i)
            if (set.at(i) != values[i])
                set.replace(i, values[i]);
    }
    m_inked = &theme;
    double most = model.limit ? model.limit->value : 0.0;
    for (int row = 0; row < rows; ++row)
        most = std::max(most, rowTotal(model, row));
    setTicks(*m_valueAxis, ticksFor(0.0, most));
    m_valueAxis->setTitleText(model.axisTitle);
}

void BarPanel::drawLimit(const BarModel& model, const style::Theme& theme)
{
    if (!model.limit) {
        if (m_limit) {
            chart().removeSeries(m_limit);
            delete m_limit;
            m_limit = nullptr;
        }
        return;
    }
    if (!m_limit) {
        m_limit = new QLineSeries;
        chart().addSeries(m_limit);
        m_limit->attachAxis(m_rowAxis);
        m_limit->attachAxis(m_valueAxis);
    }
    QPen pen(theme.ink, 1.5, Qt::DashLine);
    pen.setCosmetic(true);
    m_limit->setPen(pen);
    m_limit->setName(model.limit->label);
    m_limit->replace(QList<QPointF>{{model.limit->value, -0.5}, {model.limit->value, double(m_rows.size()) - 0.5}});
}

std::vector<Reading> BarPanel::readingsOf(const BarModel& model) const
{
    std::vector<BarSegment> ordered = model.segments;
    std::stable_sort(ordered.begin(), ordered.end(), [](const BarSegment& a, const BarSegment& b) {
        return a.row != b.row ? a.row < b.row : a.part < b.part;
    });
    const int rows = static_cast<int>(model.rows.size());
    const int parts = std::max(1, static_cast<int>(model.parts.size()));
    std::vector<Reading> readings;
    double start = 0.0;
    int row = -1;
    for (const BarSegment& segment : ordered) {
        if (segment.row != row) {
            row = segment.row;
            start = 0.0;
        }
        const double height = model.sideBySide ? barWidth / parts : barWidth;
        const double low =
            double(rows - 1 - row) - barWidth / 2.0 + (model.sideBySide ? (parts - 1 - segment.part) * height : 0.0);
        const double left = model.sideBySide ? 0.0 : start;
        readings.push_back(
            {segment.reading, segment.element, QRectF(left, low, segment.value, height), segment.working});
        start += segment.value;
    }
    if (model.limit)
        readings.push_back(
            {model.limit->label, {}, QRectF(model.limit->value, -0.5, 0.0, double(rows)), model.limit->working});
    return readings;
}

void BarPanel::draw(const assessment::Assessment& results, const style::Theme& theme)
{
    BarModel model = m_make(results, display());
    chart().setVisible(!model.rows.isEmpty()); // first: what changes on a hidden chart is never laid out
    if (!m_series || model.rows != m_rows || model.parts != m_parts || model.sideBySide != m_sideBySide)
        rebuild(model);
    fill(model, theme);
    drawLimit(model, theme);
    setSentence(model.sentence);
    setReadings(readingsOf(model));
    setWorking(model.working);
    setTable(std::move(model.table));
}

} // namespace sumpwright::ui::charts
