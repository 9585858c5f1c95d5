// FindingsModel: the findings of the newest results as rows of words.
#pragma once

#include <memory>
#include <vector>

#include <QAbstractListModel>

#include "core/assessment/assessment.hpp"
#include "ui/text/display.hpp"

namespace sumpwright::ui::findings
{

class FindingsModel : public QAbstractListModel
{
    Q_OBJECT

public:
    enum Role { severity = Qt::UserRole, message, advice, source };

    using QAbstractListModel::QAbstractListModel;

    void show(const assessment::Assessment& results, const text::DisplaySettings& display);
    const assessment::Finding* at(int row) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;

private:
    struct Row {
        assessment::Finding finding;
        QString severity;
        QString message;
        QString advice;
        QString source;
    };
    static bool sameWords(const Row& a, const Row& b);

    std::vector<Row> m_rows;
};

} // namespace sumpwright::ui::findings
