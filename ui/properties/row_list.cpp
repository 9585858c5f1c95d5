#include "ui/properties/row_list.hpp"

#include <algorithm>

#include <QVBoxLayout>

#include "ui/style/type.hpp"

namespace sumpwright::ui::properties
{

RowList::RowList(Chosen about, const QString& title, QWidget* parent)
    : Section(std::move(about), title, parent), m_column(new QVBoxLayout)
{
    m_column->setContentsMargins(0, 0, 0, 0);
    m_column->setSpacing(style::halfStep);
    static_cast<QVBoxLayout*>(layout())->addLayout(m_column);
}

void RowList::refresh()
{
    settle();
    Section::refresh();
    for (auto* row : sections())
        row->refresh();
}

void RowList::refreshResults()
{
    settle();
    Section::refreshResults();
    for (auto* row : sections())
        row->refreshResults();
}

void RowList::addBelow(QWidget* widget) { layout()->addWidget(widget); }

std::vector<Section*> RowList::sections() const
{
    std::vector<Section*> rows;
    for (const auto& key : m_keys)
        rows.push_back(m_rowOf.at(key));
    return rows;
}

// Rows may be asked to go by their own button, so they are only taken out here and deleted later.
void RowList::settle()
{
    const Keys keys = keysNow();
    if (keys == m_keys)
        return;
    for (const auto& key : m_keys) {
        if (std::find(keys.begin(), keys.end(), key) != keys.end())
            continue;
        Section* gone = m_rowOf[key];
        m_rowOf.erase(key);
        m_column->removeWidget(gone);
        gone->hide();
        gone->deleteLater();
    }
    m_keys = keys;
    for (std::size_t index = 0; index < m_keys.size(); ++index) {
        Section*& row = m_rowOf[m_keys[index]];
        if (!row) {
            row = makeRow(m_keys[index], index);
            row->setParent(this);
            connect(row, &Section::workingWanted, this, &Section::workingWanted);
            connect(row, &Section::rowsChanged, this, &Section::rowsChanged);
            row->refresh();
            row->refreshResults();
        } else {
            m_column->removeWidget(row);
        }
        m_column->insertWidget(static_cast<int>(index), row);
        row->show();
    }
    Q_EMIT rowsChanged();
}

} // namespace sumpwright::ui::properties
