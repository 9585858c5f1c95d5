#include "ui/findings/findings_model.hpp"

#include "ui/text/findings.hpp"
#include "ui/text/names.hpp"
#include "ui/text/result_names.hpp"

namespace sumpwright::ui::findings
{

void FindingsModel::show(const assessment::Assessment& results, const text::DisplaySettings& display)
{
    std::vector<Row> rows;
    for (const auto& finding : results.findings->list) {
        const auto words = text::findingWords(finding, results, display);
        rows.push_back(
            {finding, text::heading(text::nameOf(finding.severity)), words.message, words.advice, words.source});
    }
    if (rows.size() != m_rows.size()) {
        beginResetModel();
        m_rows = std::move(rows);
        endResetModel();
        return;
    }
    m_rows.swap(rows);
    for (std::size_t i = 0; i < m_rows.size(); ++i)
        if (!sameWords(m_rows[i], rows[i]))
            Q_EMIT dataChanged(index(static_cast<int>(i)), index(static_cast<int>(i)));
}

bool FindingsModel::sameWords(const Row& a, const Row& b)
{
    return a.severity == b.severity && a.message == b.message && a.advice == b.advice && a.source == b.source;
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
