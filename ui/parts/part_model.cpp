#include "ui/parts/part_model.hpp"

namespace sumpwright::ui::parts
{

void PartModel::setRows(std::vector<PartRow> rows)
{
    beginResetModel();
    m_rows = std::move(rows);
    sift();
    endResetModel();
}

void PartModel::search(PartFilter filter, const QString& words)
{
    beginResetModel();
    m_filter = filter;
    m_words = words;
    sift();
    endResetModel();
}

void PartModel::sift()
{
    m_shown.clear();
    for (std::size_t i = 0; i < m_rows.size(); ++i)
        if (found(m_rows[i], m_filter, m_words))
            m_shown.push_back(i);
}

const PartRow* PartModel::at(int row) const
{
    return row < 0 || row >= static_cast<int>(m_shown.size()) ? nullptr
                                                              : &m_rows[m_shown[static_cast<std::size_t>(row)]];
}

int PartModel::rowOf(const std::string& id) const
{
    for (std::size_t i = 0; i < m_shown.size(); ++i)
        if (m_rows[m_shown[i]].id == id)
            return static_cast<int>(i);
    return -1;
}

int PartModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_shown.size());
}

int PartModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : columns; }

QVariant PartModel::data(const QModelIndex& index, int role) const
{
    const PartRow* row = at(index.row());
    if (!row)
        return {};
    if (role == Qt::ToolTipRole)
        return row->name;
    if (role == Qt::AccessibleTextRole)
        return QStringLiteral("%1, %2, %3").arg(row->name, row->figure, row->basis);
    if (role != Qt::DisplayRole)
        return {};
    switch (static_cast<Column>(index.column())) {
    case name:
        return row->name;
    case figure:
        return row->figure;
    case basis:
        return row->basis;
    case columns:
        break;
    }
    return {};
}

QVariant PartModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return {};
    switch (static_cast<Column>(section)) {
    case name:
        return tr("Part");
    case figure:
        return tr("Figure");
    case basis:
        return tr("Basis");
    case columns:
        break;
    }
    return {};
}

} // namespace sumpwright::ui::parts
