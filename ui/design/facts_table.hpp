// FactsTable: a small table of words to be read and stepped through by keys, as high as its rows. A row may stand for
// elements of the plan: they light up while it is current; Enter or a double click goes to them.
#pragma once

#include <vector>

#include <QTableWidget>

#include "ui/document/document.hpp"

namespace sumpwright::ui::design
{

struct FactsRow {
    QStringList cells;
    std::vector<base::Id> elements = {};
    bool strong = false; // the one proposed
};

class FactsTable : public QTableWidget
{
    Q_OBJECT

public:
    FactsTable(document::Document& document, const QString& name, const QStringList& heads, QWidget* parent = nullptr);

    void setRows(std::vector<FactsRow> rows, int current = 0);
    int mostRows = 8; // on view at once; further ones scroll

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

protected:
    void focusOutEvent(QFocusEvent* event) override;
    bool event(QEvent* event) override;

private:
    void fitColumns();

    document::Document& m_document;
    std::vector<FactsRow> m_rows;
};

} // namespace sumpwright::ui::design
