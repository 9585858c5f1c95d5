#include "ui/design/valve_page.hpp"

#include <QCheckBox>
#include <QFormLayout>
#include <QVBoxLayout>

#include "core/design/proposal_working.hpp"
#include "ui/design/facts_table.hpp"
#include "ui/style/type.hpp"
#include "ui/text/design_words.hpp"
#include "ui/text/names.hpp"
#include "ui/text/subject.hpp"

namespace sumpwright::ui::design
{

namespace
{

constexpr double usualGateTurns = 5.0; // assumed: the person counts them

FactsRow outletRow(const sumpwright::design::OutletSetting& outlet, assessment::RunningState state,
                   const plan::Plan& plan, const text::DisplaySettings& display)
{
    FactsRow row;
    row.cells = {text::heading(text::subject(plan, outlet.outlet.port.vessel)),
                 display.quantityText(outlet.outlet.target), display.quantityText(outlet.before[state]),
                 display.quantityText(outlet.after[state]), text::aimName(outlet.aim)};
    row.elements = {outlet.outlet.run};
    return row;
}

} // namespace

ValvePage::ValvePage(document::Document& document, DisplayNow display, QWidget* parent)
    : DesignPage(document, std::move(display), tr("&Set these valves"), parent),
      m_speed(new QCheckBox(tr("The pump's speed may be changed"), this)),
      m_outlets(new FactsTable(document, tr("Outlets"), {tr("Outlet"), tr("Target"), tr("Now"), tr("Then"), QString()},
                               this)),
      m_valves(new FactsTable(document, tr("Valves"), {tr("Valve"), tr("Handle"), tr("±30 %"), tr("Burns")}, this))
{
    m_speed->setMinimumHeight(style::leastTarget);
    form().addRow(m_speed);
    addLine(tr("Turns of a gate valve"), tr("5, assumed: count yours"),
            [this](const QString& typed) { return takeTurns(typed); });
    answer().addWidget(m_outlets);
    answer().addWidget(m_valves);
    clearAnswer();
    connect(m_valves, &QTableWidget::currentCellChanged, this, [this] { rowChanged(); });
    connect(m_speed, &QCheckBox::clicked, this, &DesignPage::ask);
}

std::optional<base::Refusal> ValvePage::takeTurns(const QString& typed)
{
    constexpr double most = 100.0;
    if (typed.isEmpty()) {
        m_gateTurns.reset();
        return std::nullopt;
    }
    const auto read = display().readRatio(typed);
    if (!read)
        return read.refusal();
    if (*read <= 0.0 || *read > most)
        return base::Refusal{"design.turns-out-of-range", "", "no number of turns a valve has", "above 0, at most 100"};
    m_gateTurns = *read;
    return std::nullopt;
}

Asker::Job ValvePage::job()
{
    const bool speed = m_speed->isChecked();
    return [this, plan = document().committed(), catalogue = document().catalogue(),
            speed](const base::StopToken& stop) -> Asker::Deliver {
        auto outcome = sumpwright::design::setValves(plan, catalogue, {speed}, stop);
        return [this, outcome, speed] {
            if (!outcome)
                return refuse(outcome.refusal());
            m_setting = *outcome;
            m_speedTaken = speed;
            showAnswer();
        };
    };
}

void ValvePage::clearAnswer()
{
    m_setting.reset();
    m_outlets->setRows({});
    m_valves->setRows({});
}

void ValvePage::redisplay()
{
    if (m_setting)
        showAnswer();
}

void ValvePage::showAnswer()
{
    const plan::Plan& plan = document().committed();
    std::vector<FactsRow> outlets, valves;
    for (const auto& outlet : m_setting->outlets)
        outlets.push_back(outletRow(outlet, m_setting->state, plan, display()));
    for (const auto& valve : m_setting->valves)
        valves.push_back({{text::valveName(valve.valve, plan),
                           text::handleText(valve, m_gateTurns.value_or(usualGateTurns), display()),
                           text::handleBandText(valve, display()), display().quantityText(valve.burned)},
                          {valve.valve.run}});
    m_outlets->setRows(std::move(outlets), -1);
    m_valves->setRows(std::move(valves));
    QString sentence = text::reasonOf(*m_setting, m_speedTaken, display());
    if (!m_setting->edit)
        sentence = tr("The valves stand as they should: each outlet gets what it can.");
    tell(sentence, text::remarksOn(*m_setting, plan, m_speedTaken, display()));
}

std::optional<plan::Edit> ValvePage::proposal() const { return m_setting ? m_setting->edit : std::nullopt; }

std::optional<assessment::Working> ValvePage::shownWorking() const
{
    const int row = m_valves->currentRow();
    if (!m_setting || row < 0 || row >= static_cast<int>(m_setting->valves.size()))
        return std::nullopt;
    return sumpwright::design::workingOf(m_setting->valves[static_cast<std::size_t>(row)], document().committed(),
                                         *document().catalogue());
}

} // namespace sumpwright::ui::design
