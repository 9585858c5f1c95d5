#include "ui/charts/duty_panel.hpp"

#include <algorithm>

#include <QAreaSeries>
#include <QChart>
#include <QComboBox>
#include <QLegend>
#include <QLineSeries>
#include <QScatterSeries>
#include <QSignalBlocker>
#include <QValueAxis>

#include "ui/charts/value_axis.hpp"
#include "ui/style/palette.hpp"
#include "ui/style/series.hpp"
#include "ui/text/names.hpp"
#include "ui/text/result_names.hpp"
#include "ui/text/subject.hpp"

namespace sumpwright::ui::charts
{

namespace
{

constexpr double yearShade = 0.15; // of full water blue, behind the curves

using assessment::RunningState;
using assessment::YearEnd;

const char* flowUnit(const text::DisplaySettings& display)
{
    return display.system == units::UnitSystem::us ? "US gal/min" : "L/h";
}
const char* headUnit(const text::DisplaySettings& display)
{
    return display.system == units::UnitSystem::us ? "ft" : "m";
}

QPointF pointOf(units::Flow flow, units::Head head, const text::DisplaySettings& display)
{
    return {units::inUnit(flow, flowUnit(display)), units::inUnit(head, headUnit(display))};
}

QList<QPointF> pointsOf(const std::vector<assessment::CurveSample>& samples, const text::DisplaySettings& display)
{
    QList<QPointF> points;
    for (const auto& sample : samples)
        points << pointOf(sample.flow, sample.head, display);
    return points;
}

std::optional<assessment::FlowSpan> spanOf(const assessment::Assessment& results, base::Id pump)
{
    const auto* season = assessment::find(results.season->pumps, pump);
    if (!season || !season->duty[YearEnd::fouledCold] || !season->duty[YearEnd::newWarm])
        return std::nullopt;
    return assessment::spanOf(season->duty[YearEnd::fouledCold]->flow, season->duty[YearEnd::newWarm]->flow);
}

} // namespace

DutyPanel::DutyPanel(document::Document& document, DisplayNow display, QWidget* parent)
    : ChartPanel(document, std::move(display), tr("What does the pump do?"), parent), m_choice(new QComboBox(this)),
      m_bandTop(new QLineSeries(this)), m_bandFoot(new QLineSeries(this)),
      m_band(new QAreaSeries(m_bandTop, m_bandFoot)), m_pumpCurve(new QLineSeries), m_systemCurve(new QLineSeries),
      m_point(new QScatterSeries), m_flowAxis(new QValueAxis), m_headAxis(new QValueAxis)
{
    m_choice->setAccessibleName(tr("Pump shown"));
    m_choice->setVisible(false);
    addControl(m_choice);
    connect(m_choice, &QComboBox::activated, this, &ChartPanel::refresh);
    m_band->setName(tr("Through the year"));
    m_pumpCurve->setName(tr("Pump"));
    m_systemCurve->setName(tr("Pipework"));
    m_point->setName(tr("Duty point"));
    chart().addAxis(m_flowAxis, Qt::AlignBottom);
    chart().addAxis(m_headAxis, Qt::AlignLeft);
    for (QAbstractSeries* series :
         std::initializer_list<QAbstractSeries*>{m_band, m_pumpCurve, m_systemCurve, m_point}) {
        chart().addSeries(series);
        series->attachAxis(m_flowAxis);
        series->attachAxis(m_headAxis);
    }
    m_flowAxis->setTickType(QValueAxis::TicksDynamic);
    m_headAxis->setTickType(QValueAxis::TicksDynamic);
    chart().legend()->setMarkerShape(QLegend::MarkerShapeFromSeries);
}

const assessment::PumpResult* DutyPanel::choose(const assessment::Assessment& results)
{
    const auto& pumps = results.pumps->pumps;
    if (m_choice->count() != static_cast<int>(pumps.size())) {
        const QSignalBlocker quiet(m_choice);
        m_choice->clear();
        for (const auto& pump : pumps)
            m_choice->addItem(QString::fromStdString(plan::tagOf(results.plan, pump.id)),
                              QVariant::fromValue<qulonglong>(pump.id.number));
    }
    m_choice->setVisible(pumps.size() > 1);
    if (pumps.empty())
        return nullptr;
    const base::Id wanted{m_choice->currentData().toULongLong()};
    const auto* found = assessment::find(pumps, wanted);
    return found ? found : &pumps.front();
}

void DutyPanel::clear()
{
    drawBand(std::nullopt, style::themeOf(*this));
    m_pumpCurve->clear();
    m_systemCurve->clear();
    m_point->clear();
    setReadings({});
    setWorking({});
    setTable({});
}

void DutyPanel::drawCurves(const assessment::PumpResult& pump, const style::Theme& theme)
{
    const auto now = display();
    m_pumpCurve->setPen(style::seriesStyle(theme, 0).pen(1.75));
    m_systemCurve->setPen(style::seriesStyle(theme, 1).pen(1.75));
    m_point->setColor(theme.accent);
    m_point->setBorderColor(theme.ink);
    m_point->setMarkerSize(10.0);
    m_pumpCurve->replace(pointsOf(pump.pumpCurve, now));
    m_systemCurve->replace(pump.systemCurve.ok() ? pointsOf(*pump.systemCurve, now) : QList<QPointF>());
    const auto& duty = pump.duty[RunningState::least];
    m_point->replace(duty.ok() ? QList<QPointF>{pointOf(duty->flow, duty->head, now)} : QList<QPointF>());
    double flow = units::inUnit(pump.boxFigure, flowUnit(now));
    double head = units::inUnit(pump.shutOff, headUnit(now));
    for (const QPointF& point : m_point->points()) {
        flow = std::max(flow, point.x());
        head = std::max(head, point.y());
    }
    setTicks(*m_flowAxis, ticksFor(0.0, flow));
    setTicks(*m_headAxis, ticksFor(0.0, head));
    const QString flowTitle = QString::fromLatin1(flowUnit(now));
    m_flowAxis->setTitleText(tr("Flow Q (%1)").arg(flowTitle));
    m_headAxis->setTitleText(tr("Head H (%1)").arg(QString::fromLatin1(headUnit(now))));
}

// From fouled pipes and cold water to new pipes and warm water, over the whole height.
void DutyPanel::drawBand(std::optional<assessment::FlowSpan> span, const style::Theme& theme)
{
    QList<QPointF> top, foot;
    if (span)
        for (const units::Flow& flow : {span->least, span->most}) {
            top << QPointF(units::inUnit(flow, flowUnit(display())), m_headAxis->max());
            foot << QPointF(units::inUnit(flow, flowUnit(display())), 0.0);
        }
    m_bandTop->replace(top);
    m_bandFoot->replace(foot);
    m_band->setVisible(span.has_value());
    m_band->setBrush(style::loadShade(theme, yearShade));
    m_band->setPen(QPen(theme.faint, 1.0));
}

void DutyPanel::tell(const assessment::Assessment& results, const assessment::PumpResult& pump)
{
    const auto now = display();
    std::vector<Reading> readings;
    ChartTable table{{tr("Curve"), tr("Flow"), tr("Head")},
                     {QString(), QString::fromLatin1(flowUnit(now)), QString::fromLatin1(headUnit(now))},
                     {}};
    const base::Id id = pump.id;
    const auto add = [&](const QString& name, units::Flow flow, units::Head head, const WorkingOf& working) {
        const QPointF at = pointOf(flow, head, now);
        if (at.y() <= m_headAxis->max() + 1e-9)
            readings.push_back({tr("%1: %2 at %3").arg(name, now.quantityText(flow), now.quantityText(head)), pump.id,
                                QRectF(at, QSizeF(0.0, 0.0)), working});
        table.rows.push_back({name, ChartTable::number(at.x()), ChartTable::number(at.y())});
    };
    const auto& duty = pump.duty[RunningState::least];
    const QString name = text::heading(text::subject(results.plan, pump.id));
    const WorkingOf ofDuty = [id](const assessment::Assessment& current) {
        return assessment::workingOfDutyPoint(current, id, RunningState::least);
    };
    setWorking(ofDuty);
    if (duty.ok()) {
        add(tr("Duty point"), duty->flow, duty->head, ofDuty);
        QString sentence = tr("%1 moves %2 against %3, %4 of the flow on its box.")
                               .arg(name, now.quantityText(duty->flow), now.quantityText(duty->head),
                                    now.percentText(duty->shareOfBoxFigure, 2));
        if (duty->power.ok())
            sentence +=
                tr(" It takes %1; %2 of that reaches the water.")
                    .arg(now.quantityText(duty->power->electrical), now.percentText(duty->power->wireToWater, 2));
        if (duty->beyondCurve)
            sentence += tr(" That is beyond the end of its curve.");
        if (const auto span = spanOf(results, id))
            sentence += tr(" Through the year about %1 to %2, as pipes foul and the water cools.")
                            .arg(now.quantityText(span->least), now.quantityText(span->most));
        setSentence(sentence);
    } else {
        setSentence(tr("%1 – %2.", "pump and why there is no duty point").arg(name, text::whyMissing(duty)));
    }
    if (const auto* season = assessment::find(results.season->pumps, id))
        for (const YearEnd end : assessment::bothYearEnds)
            if (season->duty[end])
                add(text::heading(text::nameOf(end)), season->duty[end]->flow, season->duty[end]->head,
                    [id, end](const assessment::Assessment& current) {
                        return assessment::workingOfSeason(current, id, end);
                    });
    for (const auto& sample : pump.pumpCurve) {
        const units::Flow flow = sample.flow;
        add(tr("Pump"), flow, sample.head, [id, flow](const assessment::Assessment& current) {
            return assessment::workingOfPumpHead(current, id, flow);
        });
    }
    if (pump.systemCurve.ok())
        for (const auto& sample : *pump.systemCurve)
            add(tr("Pipework"), sample.flow, sample.head, {});
    setReadings(std::move(readings));
    setTable(std::move(table));
}

void DutyPanel::draw(const assessment::Assessment& results, const style::Theme& theme)
{
    const assessment::PumpResult* pump = choose(results);
    chart().setVisible(pump != nullptr);
    if (!pump) {
        clear();
        setSentence(tr("No pump yet: stand one in the sump and lead a run from it."));
        return;
    }
    drawCurves(*pump, theme);
    drawBand(spanOf(results, pump->id), theme);
    tell(results, *pump);
}

} // namespace sumpwright::ui::charts
