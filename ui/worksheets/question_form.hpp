// QuestionForm: the inputs of one worksheet as labelled fields, prefilled with defaults or with a plan's own numbers.
#pragma once

#include <vector>

#include <QWidget>

#include "core/catalogue/catalogue.hpp"
#include "core/worksheets/worksheet.hpp"

QT_BEGIN_NAMESPACE
class QComboBox;
class QLineEdit;
QT_END_NAMESPACE

namespace sumpwright::ui::worksheets
{

class QuestionForm : public QWidget
{
    Q_OBJECT

public:
    QuestionForm(const sumpwright::worksheets::Worksheet& worksheet, const catalogue::Catalogue& tables,
                 QWidget* parent);

    // Texts as they stand in the fields; empty fields are left out, so that defaults hold.
    std::vector<sumpwright::worksheets::InputText> texts() const;
    void set(const QString& name, const QString& text);
    void markRefused(const QString& name); // the field of this input; empty: none

Q_SIGNALS:
    void edited();

private:
    struct Field {
        QString name;
        QLineEdit* line = nullptr; // one of the two
        QComboBox* choice = nullptr;
    };
    void addLine(const sumpwright::worksheets::InputSpec& input);
    void addChoice(const sumpwright::worksheets::InputSpec& input, const catalogue::Catalogue& tables);
    void addField(const sumpwright::worksheets::InputSpec& input, QWidget* field);

    std::vector<Field> m_fields;
};

} // namespace sumpwright::ui::worksheets
