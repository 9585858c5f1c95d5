// PartModel: the rows that the search leaves, as the list shows them: name, figure, basis.
#pragma once

#include <vector>

#include <QAbstractTableModel>

#include "ui/parts/part_list.hpp"

namespace sumpwright::ui::parts
{

class PartModel : public QAbstractTableModel
{
    Q_OBJECT

public:
    enum Column { name, figure, basis, columns };

    using QAbstractTableModel::QAbstractTableModel;

    void setRows(std::vector<PartRow> rows);
    void search(PartFilter filter, const QString& words);
    const PartRow* at(int row) const;       // null: none
    int rowOf(const std::string& id) const; // -1: not in the list
    int total() const { return static_cast<int>(m_rows.size()); }

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    void sift();

    std::vector<PartRow> m_rows;
    std::vector<std::size_t> m_shown;
    PartFilter m_filter = PartFilter::all;
    QString m_words;
};

} // namespace sumpwright::ui::parts
