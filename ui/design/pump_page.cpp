#include "ui/design/pump_page.hpp"

#include <QComboBox>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include "core/design/proposal_working.hpp"
#include "ui/design/facts_table.hpp"
#include "ui/text/design_words.hpp"

namespace sumpwright::ui::design
{

PumpPage::PumpPage(document::Document& document, DisplayNow display, QWidget* parent)
    : DesignPage(document, std::move(display), tr("&Put this pump in"), parent),
      m_pump(addChoice(tr("In the place of"), {tr("the pump that runs")})),
      m_speed(addChoice(tr("Speed"), {tr("as the curve holds for"), tr("turned down to what is wanted")})),
      m_table(new FactsTable(document, tr("Pumps"),
                             {tr("Pump"), tr("Duty point"), tr("Power"), tr("A year"), QString()}, this))
{
    addQuantity<units::Flow>(tr("Wanted flow"), tr("the targets, or what flows now"), m_wanted);
    m_table->mostRows = 12;
    answer().addWidget(m_table);
    connect(m_table, &QTableWidget::currentCellChanged, this, &PumpPage::tellRow);
    clearAnswer();
}

Asker::Job PumpPage::job()
{
    const plan::Plan plan = document().committed();
    const base::Id chosen{m_pump->currentData().toULongLong()};
    const QSignalBlocker quiet(m_pump);
    m_pump->clear();
    m_pump->addItem(tr("the pump that runs"), QVariant::fromValue<qulonglong>(0));
    for (const auto& pump : plan.pumps)
        m_pump->addItem(QString::fromStdString(pump->tag), QVariant::fromValue<qulonglong>(pump->id.number));
    m_pump->setCurrentIndex(std::max(0, m_pump->findData(QVariant::fromValue<qulonglong>(chosen.number))));
    const sumpwright::design::PumpQuestion question{base::Id{m_pump->currentData().toULongLong()}, m_wanted,
                                                    m_speed->currentIndex() == 1};
    return [this, plan, catalogue = document().catalogue(), question](const base::StopToken& stop) -> Asker::Deliver {
        auto outcome = sumpwright::design::choosePump(plan, catalogue, question, stop);
        return [this, outcome] {
            if (!outcome)
                return refuse(outcome.refusal());
            m_ranking = *outcome;
            showAnswer();
        };
    };
}

void PumpPage::clearAnswer()
{
    m_ranking.reset();
    m_table->setRows({});
}

void PumpPage::redisplay()
{
    if (m_ranking)
        showAnswer();
}

void PumpPage::showAnswer()
{
    const plan::Plan& plan = document().committed();
    std::vector<FactsRow> rows;
    for (const auto& choice : m_ranking->choices) {
        const QString duty =
            choice.flow > units::Flow()
                ? tr("%1 at %2").arg(display().quantityText(choice.flow), display().quantityText(choice.head))
                : text::absentText();
        QString year = display().quantityText(choice.energyPerYear);
        if (choice.costPerYear)
            year += QStringLiteral(", ") + text::sumText(*choice.costPerYear, plan.site->currency, display());
        QString name = text::pumpName(choice, plan);
        if (choice.speed != 1.0)
            name += tr(" at %1").arg(display().percentText(choice.speed));
        rows.push_back({{name, duty, display().quantityText(choice.power), year, text::verdictOn(choice, display())}});
    }
    m_table->setRows(std::move(rows));
    tellRow();
}

const sumpwright::design::PumpChoice* PumpPage::atHand() const
{
    const int row = m_table->currentRow();
    if (!m_ranking || row < 0 || row >= static_cast<int>(m_ranking->choices.size()))
        return nullptr;
    return &m_ranking->choices[static_cast<std::size_t>(row)];
}

void PumpPage::tellRow()
{
    const auto* choice = atHand();
    if (!choice)
        return;
    QStringList remarks;
    if (m_ranking->byTargets)
        remarks << tr("Each pump is judged with the valves set for the targets; putting it in sets them too.");
    remarks << tr("Curves of invented pumps show a typical shape: before buying, put in the maker's own points.");
    tell(text::reasonOf(*m_ranking, *choice, document().committed(), display()), remarks);
}

std::optional<plan::Edit> PumpPage::proposal() const
{
    const auto* choice = atHand();
    return choice ? choice->edit : std::nullopt;
}

std::optional<assessment::Working> PumpPage::shownWorking() const
{
    const auto* choice = atHand();
    return choice ? sumpwright::design::workingOf(*choice, *document().committed().site) : std::nullopt;
}

} // namespace sumpwright::ui::design
