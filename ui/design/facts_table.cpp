#include "ui/design/facts_table.hpp"

#include <algorithm>

#include <QEvent>
#include <QHeaderView>

#include "ui/style/type.hpp"
#include "ui/text/display.hpp"

namespace sumpwright::ui::design
{

FactsTable::FactsTable(document::Document& document, const QString& name, const QStringList& heads, QWidget* parent)
    : QTableWidget(0, static_cast<int>(heads.size()), parent), m_document(document)
{
    setAccessibleName(name);
    setHorizontalHeaderLabels(heads);
    setEditTriggers(NoEditTriggers);
    setSelectionBehavior(SelectRows);
    setSelectionMode(SingleSelection);
    setTabKeyNavigation(false);
    setShowGrid(false);
    setWordWrap(true);
    setFrameShape(QFrame::NoFrame);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setVerticalScrollMode(ScrollPerPixel);
    verticalHeader()->hide();
    verticalHeader()->setMinimumSectionSize(style::leastTarget);
    horizontalHeader()->setHighlightSections(false);
    horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    horizontalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    horizontalHeader()->setMinimumSectionSize(style::step);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    connect(this, &QTableWidget::currentCellChanged, this, [this](int row) {
        const bool any = row >= 0 && row < static_cast<int>(m_rows.size()) && hasFocus() &&
                         !m_rows[static_cast<std::size_t>(row)].elements.empty();
        m_document.highlight(any ? m_rows[static_cast<std::size_t>(row)].elements.front() : base::Id{});
    });
    connect(this, &QTableWidget::cellActivated, this, [this](int row) {
        if (row >= 0 && row < static_cast<int>(m_rows.size()) &&
            !m_rows[static_cast<std::size_t>(row)].elements.empty())
            m_document.goTo(m_rows[static_cast<std::size_t>(row)].elements);
    });
}

void FactsTable::setRows(std::vector<FactsRow> rows, int current)
{
    m_rows = std::move(rows);
    setRowCount(static_cast<int>(m_rows.size()));
    for (int row = 0; row < rowCount(); ++row) {
        const FactsRow& facts = m_rows[static_cast<std::size_t>(row)];
        for (int column = 0; column < columnCount(); ++column) {
            auto* cell = new QTableWidgetItem(text::unbroken(facts.cells.value(column)));
            cell->setFlags(Qt::ItemIsSelectable | Qt::ItemIsEnabled);
            if (facts.strong)
                cell->setFont(style::strongFont());
            setItem(row, column, cell);
        }
    }
    if (current >= 0 && current < rowCount())
        setCurrentCell(current, 0);
    else
        setCurrentCell(-1, -1);
    setVisible(rowCount() > 0);
    fitColumns();
}

// Each column as wide as its words where there is room; else the widest give way first and their words wrap.
void FactsTable::fitColumns()
{
    std::vector<int> wanted;
    int all = 0;
    for (int column = 0; column < columnCount(); ++column) {
        wanted.push_back(std::max(sizeHintForColumn(column), horizontalHeader()->sectionSizeHint(column)));
        all += wanted.back();
    }
    const int room = viewport()->width();
    int most = room;
    for (int total = all; total > room && most > style::step;) {
        --most;
        total = 0;
        for (const int width : wanted)
            total += std::min(width, most);
    }
    int left = room;
    for (int column = 0; column < columnCount(); ++column) {
        const bool last = column + 1 == columnCount();
        const int width = last ? std::max(left, style::step) : std::min(wanted[static_cast<std::size_t>(column)], most);
        setColumnWidth(column, width);
        left -= width;
    }
    resizeRowsToContents();
    updateGeometry();
}

QSize FactsTable::sizeHint() const
{
    int height = horizontalHeader()->sizeHint().height() + 2 * frameWidth() + style::halfStep;
    for (int row = 0; row < std::min(rowCount(), mostRows); ++row)
        height += rowHeight(row);
    return {32 * style::step, height};
}

QSize FactsTable::minimumSizeHint() const { return {20 * style::step, sizeHint().height()}; }

void FactsTable::focusOutEvent(QFocusEvent* event)
{
    m_document.highlight({});
    QTableWidget::focusOutEvent(event);
}

// Rows grow when words wrap: the table follows its width.
bool FactsTable::event(QEvent* event)
{
    const bool done = QTableWidget::event(event);
    if (event->type() == QEvent::Resize || event->type() == QEvent::FontChange)
        fitColumns();
    return done;
}

} // namespace sumpwright::ui::design
