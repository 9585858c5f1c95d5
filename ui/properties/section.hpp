// Section: a titled group of labelled rows of one form. Each row knows how to read itself from the plan and which edit
// its entry makes; a section is never rebuilt while its elements stay the same.
//
// Fields are made here and are refreshed with the section; rows put them beside a label, grids place them themselves.
#pragma once

#include <functional>
#include <vector>

#include <QWidget>

#include "core/plan/edits/edit.hpp"
#include "ui/properties/choice_field.hpp"
#include "ui/properties/chosen.hpp"
#include "ui/properties/commit.hpp"
#include "ui/properties/entry_field.hpp"
#include "ui/properties/result_field.hpp"
#include "ui/properties/shared.hpp"

QT_BEGIN_NAMESPACE
class QCheckBox;
class QPushButton;
class QVBoxLayout;
QT_END_NAMESPACE

namespace sumpwright::ui::properties
{

class RowLayout;

template <class T> using Make = std::function<plan::Edit(const T&)>;

class Section : public QWidget
{
    Q_OBJECT

public:
    explicit Section(Chosen chosen, const QString& title, QWidget* parent = nullptr);

    virtual void refresh();        // the plan, the units or the right to write changed
    virtual void refreshResults(); // results came, or grew stale
    const Chosen& chosen() const { return m_chosen; }

Q_SIGNALS:
    void workingWanted(const sumpwright::assessment::Working& working);
    void rowsChanged(); // some came or went

protected:
    template <class Kind>
    EntryField* quantityField(const QString& name, Read<Kind> read, Make<Kind> make, text::EntryUnit unit = {});
    // Empty means absent; `emptyWords` say what then holds.
    template <class Kind>
    EntryField* optionalField(const QString& name, Read<std::optional<Kind>> read, Make<std::optional<Kind>> make,
                              const QString& emptyWords, text::EntryUnit unit = {});
    EntryField* ratioField(const QString& name, Read<double> read, Make<double> make);
    EntryField* percentField(const QString& name, Read<double> read, Make<double> make); // a bare number is per cent
    EntryField* optionalRatioField(const QString& name, Read<std::optional<double>> read,
                                   Make<std::optional<double>> make, const QString& emptyWords);
    EntryField* textField(const QString& name, Read<std::string> read, Make<std::string> make);
    ChoiceField* choiceField(const QString& name, std::vector<Choice> choices, Read<std::string> read,
                             Make<std::string> make);
    QCheckBox* checkField(const QString& words, Read<bool> read, Make<bool> make);
    QPushButton* button(const QString& words, const QString& name, std::function<plan::Edit()> make);

    void addRow(const QString& label, QWidget* field); // the field's name is the label's when it has none
    void addWide(QWidget* widget);                     // over both columns
    // Read from the plan itself; an empty text hides the row.
    QWidget* addFact(const QString& label, std::function<QString(const plan::Plan&)> text);
    ResultField* addResult(const QString& label, ResultField::Text text, ResultField::Working working = {});
    void addHint(const QString& words);
    void addCaution(const QString& words);

    std::optional<base::Refusal> commit(const plan::Edit& edit) { return commitOrRefuse(m_chosen.document, edit); }
    // Runs with every refresh(); for what rows cannot tell.
    void onRefresh(std::function<void(const plan::Plan&)> action) { m_refreshes.push_back(std::move(action)); }
    void setRowVisible(QWidget* field, bool visible);

private:
    EntryField* entry(const QString& name, EntryField::Accept accept);
    QWidget* caption(const QString& words);
    void setReadOnly(bool readOnly);

    Chosen m_chosen;
    RowLayout* m_rows;
    std::vector<std::function<void(const plan::Plan&)>> m_refreshes;
    std::vector<ResultField*> m_results;
};

template <class Kind>
EntryField* Section::quantityField(const QString& name, Read<Kind> read, Make<Kind> make, text::EntryUnit unit)
{
    auto* field = entry(name, [this, read, make, unit](const QString& typed) -> std::optional<base::Refusal> {
        const auto now = read(m_chosen.plan()).value.value_or(Kind());
        const auto value = m_chosen.display().read<Kind>(typed, unit, m_chosen.plan().site->currency, now);
        return value ? commit(make(*value)) : value.refusal();
    });
    onRefresh([this, field, read, unit](const plan::Plan& plan) {
        const auto shared = read(plan);
        if (shared.mixed)
            field->setMixed();
        else
            field->setShown(shared.value ? m_chosen.display().entryText(*shared.value, unit) : QString());
    });
    return field;
}

template <class Kind>
EntryField* Section::optionalField(const QString& name, Read<std::optional<Kind>> read, Make<std::optional<Kind>> make,
                                   const QString& emptyWords, text::EntryUnit unit)
{
    auto* field = entry(name, [this, read, make, unit](const QString& typed) -> std::optional<base::Refusal> {
        if (typed.trimmed().isEmpty())
            return commit(make(std::nullopt));
        const auto now = read(m_chosen.plan()).value.value_or(std::nullopt).value_or(Kind());
        const auto value = m_chosen.display().read<Kind>(typed, unit, m_chosen.plan().site->currency, now);
        return value ? commit(make(*value)) : value.refusal();
    });
    field->setEmptyText(emptyWords);
    onRefresh([this, field, read, unit](const plan::Plan& plan) {
        const auto shared = read(plan);
        const auto value = shared.value ? *shared.value : std::nullopt;
        if (shared.mixed)
            field->setMixed();
        else
            field->setShown(value ? m_chosen.display().entryText(*value, unit) : QString());
    });
    return field;
}

} // namespace sumpwright::ui::properties
