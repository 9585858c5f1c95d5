#include "ui/design/price_table.hpp"

#include <algorithm>

#include <QHeaderView>

#include "ui/style/type.hpp"
#include "ui/text/design_words.hpp"
#include "ui/text/refusals.hpp"

namespace sumpwright::ui::design
{

PriceTable::PriceTable(QWidget* parent) : QTableWidget(0, 3, parent)
{
    setAccessibleName(tr("Prices a metre"));
    setHorizontalHeaderLabels({tr("Pipe"), tr("Price a metre"), QString()});
    setTabKeyNavigation(false);
    setShowGrid(false);
    setFrameShape(QFrame::NoFrame);
    setSelectionMode(SingleSelection);
    setEditTriggers(DoubleClicked | EditKeyPressed | AnyKeyPressed);
    setVerticalScrollMode(ScrollPerPixel);
    verticalHeader()->hide();
    verticalHeader()->setDefaultSectionSize(style::leastTarget);
    horizontalHeader()->setHighlightSections(false);
    horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    horizontalHeader()->setStretchLastSection(true);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    connect(this, &QTableWidget::itemChanged, this, &PriceTable::take);
}

void PriceTable::show(const std::vector<std::string>& pipes, const catalogue::Catalogue& catalogue,
                      const std::string& currency, const text::DisplaySettings& display)
{
    m_pipes = pipes;
    m_currency = currency;
    m_display = display;
    m_assumed.clear();
    m_filling = true;
    setRowCount(static_cast<int>(pipes.size()));
    for (int row = 0; row < rowCount(); ++row) {
        const auto pipe = catalogue.pipe(m_pipes[static_cast<std::size_t>(row)]);
        m_assumed.push_back(pipe ? sumpwright::design::assumedPrice((*pipe)->outsideDiameter) : units::Money());
        auto* name = new QTableWidgetItem(text::pipeName(catalogue, m_pipes[static_cast<std::size_t>(row)]));
        name->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable);
        auto* trust = new QTableWidgetItem;
        trust->setFlags(Qt::ItemIsEnabled);
        setItem(row, 0, name);
        setItem(row, 1, new QTableWidgetItem);
        setItem(row, 2, trust);
        fill(row);
    }
    m_filling = false;
    setVisible(rowCount() > 0);
    updateGeometry();
}

void PriceTable::fill(int row)
{
    const auto at = static_cast<std::size_t>(row);
    const auto typed = m_typed.find(m_pipes[at]);
    const bool known = typed != m_typed.end();
    item(row, 1)->setText(text::moneyText(known ? typed->second : m_assumed[at], m_currency, m_display));
    item(row, 2)->setText(known ? tr("typed") : tr("assumed"));
}

void PriceTable::take(QTableWidgetItem* item)
{
    if (m_filling || item->column() != 1)
        return;
    m_filling = true;
    const std::string& pipe = m_pipes[static_cast<std::size_t>(item->row())];
    const QString words = item->text().trimmed();
    const auto price = m_display.read<units::Money>(words, {}, m_currency);
    QString refusal;
    if (words.isEmpty())
        m_typed.erase(pipe);
    else if (!price)
        refusal = text::sentenceOf(price.refusal(), tr("Price a metre"));
    else if (*price < units::Money())
        refusal = tr("Price a metre: a price below 0. Accepted: 0 or more.");
    else
        m_typed[pipe] = *price;
    fill(item->row());
    m_filling = false;
    if (refusal.isEmpty())
        Q_EMIT changed();
    else
        Q_EMIT refused(refusal);
}

std::vector<sumpwright::design::PipePrice> PriceTable::typed() const
{
    std::vector<sumpwright::design::PipePrice> prices;
    for (const auto& [pipe, price] : m_typed)
        prices.push_back({pipe, price});
    return prices;
}

QSize PriceTable::sizeHint() const
{
    constexpr int most = 8;
    return {32 * style::step, horizontalHeader()->sizeHint().height() +
                                  std::min(rowCount(), most) * style::leastTarget + style::halfStep};
}

} // namespace sumpwright::ui::design
