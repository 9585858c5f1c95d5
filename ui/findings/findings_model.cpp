#include "ui/findings/findings_model.hpp"

#include "core/report/words.hpp"
#include "ui/text/names.hpp"
#include "ui/text/result_names.hpp"

namespace sumpwright::ui::findings
{

void FindingsModel::show(const assessment::Assessment& results)
{
    beginResetModel();
    m_rows.clear();
    for (const auto& finding : results.findings->list) {
        const auto words = report::wordsOf(finding, results);
        m_rows.push_back({finding, text::heading(text::nameOf(finding.severity)), QString::fromStdString(words.message),
                          QString::fromStdString(words.advice), QString::fromStdString(words.source)});
    }
    endResetModel();
}

const assessment::Finding* FindingsModel::at(int row) const
{
    return row >= 0 && row < rowCount() ? &m_rows[static_cast<std::size_t>(row)].finding : nullptr;
}

int FindingsModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

QVariant FindingsModel::data(const QModelIndex& index, int role) const
{
    if (!index.isValid() || index.row() >= rowCount())
        return {};
    const Row& row = m_rows[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Qt::DisplayRole:
    case Qt::AccessibleTextRole:
        return QStringLiteral("%1: %2 %3").arg(row.severity, row.message, row.advice).trimmed();
    case Qt::ToolTipRole:
        return row.source.isEmpty() ? QVariant() : QVariant(tr("Source: %1").arg(row.source));
    case severity:
        return static_cast<int>(row.finding.severity);
    case message:
        return row.message;
    case advice:
        return row.advice;
    case source:
        return row.source;
    default:
        return {};
    }
}

} // namespace sumpwright::ui::findings
