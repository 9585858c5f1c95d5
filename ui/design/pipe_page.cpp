#include "ui/design/pipe_page.hpp"

#include <algorithm>

#include <QComboBox>
#include <QVBoxLayout>

#include "core/design/proposal_working.hpp"
#include "ui/design/facts_table.hpp"
#include "ui/design/price_table.hpp"
#include "ui/design/trade_chart.hpp"
#include "ui/text/design_words.hpp"
#include "ui/text/names.hpp"

namespace sumpwright::ui::design
{

namespace
{

using sumpwright::design::Kept;
using sumpwright::design::PipeChoice;

constexpr double usualYears = 10.0;

} // namespace

PipePage::PipePage(document::Document& document, DisplayNow display, QWidget* parent)
    : DesignPage(document, std::move(display), tr("&Use these pipes"), parent),
      m_kept(addChoice(tr("Keep"), {tr("the flow: save power"), tr("the pump: gain flow")})),
      m_grouping(addChoice(tr("Sizes"), {tr("by riser, header and branches"), tr("one for all")})),
      m_choices(new FactsTable(document, tr("Choices"),
                               {tr("Choice"), tr("Pipe"), tr("Energy"), tr("Both"), tr("Fastest")}, this)),
      m_groups(new FactsTable(document, tr("Pipe runs"), {tr("Runs"), tr("Length"), tr("Now"), tr("Then")}, this)),
      m_chart(new TradeChart(this)), m_prices(new PriceTable(this))
{
    addRatio(tr("Years"), tr("10"), m_years);
    addQuantity<units::EnergyPrice>(tr("Price of power"), tr("of the site data"), m_price);
    addRatio(tr("Wire-to-water"), tr("the pump's own"), m_efficiency);
    addQuantity<units::Velocity>(tr("Highest velocity"), tr("1.5 m/s, at most 2"), m_fastest);
    addQuantity<units::Velocity>(tr("Least velocity"), tr("0.6 m/s"), m_slowest);
    answer().addWidget(m_groups);
    answer().addWidget(m_choices);
    answer().addWidget(m_chart);
    answer().addWidget(m_prices);
    connect(m_choices, &QTableWidget::currentCellChanged, this, &PipePage::tellRow);
    connect(m_prices, &PriceTable::changed, this, &DesignPage::ask);
    connect(m_prices, &PriceTable::refused, this, [this](const QString& sentence) { tellFault(sentence); });
    clearAnswer();
}

sumpwright::design::PipeQuestion PipePage::question() const
{
    sumpwright::design::PipeQuestion question;
    question.kept = m_kept->currentIndex() == 0 ? Kept::flow : Kept::pump;
    question.byPart = m_grouping->currentIndex() == 0;
    question.period = units::hours(8760.0 * m_years.value_or(usualYears));
    question.powerPrice = m_price;
    question.wireToWater = m_efficiency;
    question.fastest = m_fastest.value_or(question.fastest);
    question.slowest = m_slowest.value_or(question.slowest);
    question.prices = m_prices->typed();
    return question;
}

Asker::Job PipePage::job()
{
    return [this, plan = document().committed(), catalogue = document().catalogue(),
            asked = question()](const base::StopToken& stop) -> Asker::Deliver {
        auto outcome = sumpwright::design::choosePipes(plan, catalogue, asked, stop);
        return [this, outcome, kept = asked.kept] {
            if (!outcome)
                return refuse(outcome.refusal());
            m_sizing = *outcome;
            m_askedKept = kept;
            showAnswer();
        };
    };
}

void PipePage::clearAnswer()
{
    m_sizing.reset();
    m_rows.clear();
    m_choices->setRows({});
    m_groups->setRows({});
    m_chart->hide();
    m_prices->hide();
}

void PipePage::redisplay()
{
    if (m_sizing)
        showAnswer();
}

void PipePage::showAnswer()
{
    const std::string& currency = document().committed().site->currency;
    m_rows = {m_sizing->best};
    if (m_sizing->now.pipes != m_sizing->best.pipes)
        m_rows.push_back(m_sizing->now);
    for (const PipeChoice& neighbour : m_sizing->neighbours)
        if (neighbour.allowed && neighbour.pipes != m_sizing->now.pipes)
            m_rows.push_back(neighbour);
    const QString money = QString::fromStdString(currency);
    m_choices->setHorizontalHeaderLabels(
        {tr("Choice"), tr("Pipe (%1)").arg(money), tr("Energy"), tr("Both"), tr("Fastest")});
    const auto number = [this](units::Money amount) { return display().ratioText(units::inCurrency(amount), 4); };
    std::vector<FactsRow> rows;
    for (const PipeChoice& choice : m_rows) {
        QString name;
        if (choice.pipes == m_sizing->best.pipes)
            name = tr("Best");
        else if (choice.pipes == m_sizing->now.pipes)
            name = tr("Now");
        for (std::size_t i = 0; name.isEmpty() && i < choice.pipes.size(); ++i)
            if (choice.pipes[i] != m_sizing->best.pipes[i])
                name = text::heading(tr("%1 in %2", "part, pipe")
                                         .arg(text::nameOf(m_sizing->groups[i].part),
                                              text::pipeName(*document().catalogue(), choice.pipes[i])));
        rows.push_back({{name, number(choice.pipeCost), number(choice.energyCost), number(choice.total()),
                         display().quantityText(choice.fastest)},
                        {},
                        choice.pipes == m_sizing->best.pipes});
    }
    m_choices->setRows(std::move(rows));
    m_chart->show(m_sizing->tradeOff, currency, display());
    m_chart->setVisible(true);
    showPrices();
    tellRow();
}

void PipePage::showPrices()
{
    std::vector<std::string> pipes;
    for (const auto& group : m_sizing->groups)
        for (const std::string& pipe : group.offered)
            if (std::find(pipes.begin(), pipes.end(), pipe) == pipes.end())
                pipes.push_back(pipe);
    m_prices->show(pipes, *document().catalogue(), document().committed().site->currency, display());
}

const PipeChoice* PipePage::atHand() const
{
    const int row = m_choices->currentRow();
    return row >= 0 && row < static_cast<int>(m_rows.size()) ? &m_rows[static_cast<std::size_t>(row)] : nullptr;
}

void PipePage::showGroups()
{
    const PipeChoice* choice = atHand();
    std::vector<FactsRow> rows;
    for (std::size_t i = 0; i < m_sizing->groups.size(); ++i) {
        const auto& group = m_sizing->groups[i];
        rows.push_back({{text::heading(text::nameOf(group.part)), display().quantityText(group.length),
                         text::pipeName(*document().catalogue(), group.now),
                         text::pipeName(*document().catalogue(), choice->pipes[i])},
                        group.runs,
                        group.now != choice->pipes[i]});
    }
    m_groups->setRows(std::move(rows), -1);
}

void PipePage::tellRow()
{
    const PipeChoice* choice = atHand();
    if (!choice || !m_sizing)
        return;
    showGroups();
    m_chart->mark(*choice);
    tell(text::reasonOf(*m_sizing, *choice, m_askedKept, document().committed().site->currency, display()),
         text::remarksOn(*m_sizing, m_askedKept, display()));
}

std::optional<plan::Edit> PipePage::proposal() const
{
    const PipeChoice* choice = m_sizing ? atHand() : nullptr;
    return choice ? sumpwright::design::editFor(document().committed(), m_sizing->groups, *choice) : std::nullopt;
}

std::optional<assessment::Working> PipePage::shownWorking() const
{
    const PipeChoice* choice = m_sizing ? atHand() : nullptr;
    const auto results = document().assessment();
    if (!choice || !results || !results->site->density)
        return std::nullopt;
    return sumpwright::design::workingOf(*choice, m_price, *document().committed().site, *results->site->density);
}

} // namespace sumpwright::ui::design
