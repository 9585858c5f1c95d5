// QuestionForm: the inputs of one worksheet as labelled fields, prefilled with defaults or with a plan's own numbers.
// What is typed counts as soon as it can be read. What cannot is refused when it is handed over by Enter or by leaving
// the field: the value before stays, Esc gives its text back.
#pragma once

#include <functional>
#include <optional>
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
    // What is wrong with one input by itself.
    using FaultOf = std::function<std::optional<base::Refusal>(const sumpwright::worksheets::InputText&)>;

    QuestionForm(const sumpwright::worksheets::Worksheet& worksheet, const catalogue::Catalogue& tables,
                 FaultOf faultOf, QWidget* parent);

    // Values as they were taken; empty fields are left out, so that defaults hold.
    std::vector<sumpwright::worksheets::InputText> texts() const;
    // A number with very many digits counts as it is and is shown shorter, as long as nobody types in its field.
    void set(const QString& name, const QString& text);
    // Marks the field of this input as refused and tells assistive technology why; an empty name: none.
    void markRefused(const QString& name, const QString& why = {});

Q_SIGNALS:
    void edited(); // other texts may count
    void refused(const QString& name, const base::Refusal& refusal);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    struct Field {
        QString name;
        QLineEdit* line = nullptr; // one of the two
        QComboBox* choice = nullptr;
        QString counts;  // the text that counts: what is typed where it can be read, else `settled`
        QString settled; // what counted when the field was last handed over
        QString shown;   // how the line shows that
    };
    void addLine(const sumpwright::worksheets::InputSpec& input);
    void addChoice(const sumpwright::worksheets::InputSpec& input, const catalogue::Catalogue& tables);
    void addField(const sumpwright::worksheets::InputSpec& input, QWidget* field);
    Field* fieldOf(const QObject* line);
    std::optional<base::Refusal> faultIn(const Field& field) const; // in what its line holds
    static bool changed(const Field& field);                        // something else was typed since it was handed over
    void typed(const QObject* line);
    void handOver(const QObject* line);
    bool giveBack(const QObject* line); // false: there was nothing to give back

    FaultOf m_faultOf;
    std::vector<Field> m_fields;
};

} // namespace sumpwright::ui::worksheets
