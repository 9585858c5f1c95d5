// ImportPreview: what a table of parts would bring in and what of it is refused, row by row, before anything changes.
#pragma once

#include <QWidget>

#include "core/storage/parts_table.hpp"

QT_BEGIN_NAMESPACE
class QLabel;
class QPlainTextEdit;
class QPushButton;
QT_END_NAMESPACE

namespace sumpwright::ui::parts
{

class ImportPreview : public QWidget
{
    Q_OBJECT

public:
    explicit ImportPreview(QWidget* parent = nullptr);

    void showPreview(const QString& file, storage::PartsPreview preview);
    void showRefusal(const QString& file, const base::Refusal& refusal); // of the whole file
    void clear();
    const storage::PartsPreview& preview() const { return m_preview; }
    QString summary() const; // the sentence over the list
    QString lines() const;   // the list: a refused row a line, then what comes in

Q_SIGNALS:
    void accepted();
    void left();

private:
    storage::PartsPreview m_preview;
    QLabel* m_summary;
    QPlainTextEdit* m_lines;
    QPushButton* m_take;
    QPushButton* m_leave;
};

} // namespace sumpwright::ui::parts
