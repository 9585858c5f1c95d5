#include "ui/properties/section.hpp"

#include <QCheckBox>
#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include "ui/properties/quiet_label.hpp"
#include "ui/properties/refusal_line.hpp"
#include "ui/properties/row_layout.hpp"
#include "ui/properties/tab_order.hpp"
#include "ui/style/type.hpp"

namespace sumpwright::ui::properties
{

Section::Section(Chosen chosen, const QString& title, QWidget* parent)
    : QWidget(parent), m_chosen(std::move(chosen)), m_rows(new RowLayout(style::step, style::halfStep))
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(style::halfStep);
    if (!title.isEmpty()) {
        auto* heading = new QLabel(title, this);
        heading->setFont(style::strongFont());
        column->addWidget(heading);
        setAccessibleName(title);
    }
    column->addLayout(m_rows);
}

void Section::refresh()
{
    const auto refreshes = m_refreshes; // one may add rows
    for (const auto& action : refreshes)
        action(m_chosen.plan());
    setReadOnly(m_chosen.document.readOnly());
}

void Section::refreshResults()
{
    const auto results = m_chosen.document.assessment();
    for (auto* field : m_results) {
        field->holdHeight(m_chosen.document.previewing());
        field->show(results.get(), m_chosen.document.stale());
    }
}

void Section::setReadOnly(bool readOnly)
{
    for (auto* field : findChildren<EntryField*>())
        field->setReadOnly(readOnly);
    for (auto* field : findChildren<ChoiceField*>())
        field->setReadOnly(readOnly);
    for (auto* box : findChildren<QCheckBox*>())
        box->setEnabled(!readOnly);
}

EntryField* Section::entry(const QString& name, EntryField::Accept accept)
{
    return new EntryField(name, std::move(accept), this);
}

EntryField* Section::ratioField(const QString& name, Read<double> read, Make<double> make)
{
    auto* field = entry(name, [this, make](const QString& typed) -> std::optional<base::Refusal> {
        const auto value = m_chosen.display().readRatio(typed);
        return value ? commit(make(*value)) : value.refusal();
    });
    onRefresh([this, field, read](const plan::Plan& plan) {
        const auto shared = read(plan);
        if (shared.mixed)
            field->setMixed();
        else
            field->setShown(shared.value ? m_chosen.display().ratioEntryText(*shared.value) : QString());
    });
    return field;
}

EntryField* Section::percentField(const QString& name, Read<double> read, Make<double> make)
{
    auto* field = entry(name, [this, make](const QString& typed) -> std::optional<base::Refusal> {
        const bool marked = typed.contains(u'%');
        const auto value = m_chosen.display().readRatio(typed);
        return value ? commit(make(marked ? *value : *value / 100.0)) : value.refusal();
    });
    onRefresh([this, field, read](const plan::Plan& plan) {
        const auto shared = read(plan);
        if (shared.mixed)
            field->setMixed();
        else
            field->setShown(shared.value ? m_chosen.display().percentEntryText(*shared.value) : QString());
    });
    return field;
}

EntryField* Section::optionalRatioField(const QString& name, Read<std::optional<double>> read,
                                        Make<std::optional<double>> make, const QString& emptyWords)
{
    auto* field = entry(name, [this, make](const QString& typed) -> std::optional<base::Refusal> {
        if (typed.trimmed().isEmpty())
            return commit(make(std::nullopt));
        const auto value = m_chosen.display().readRatio(typed);
        return value ? commit(make(*value)) : value.refusal();
    });
    field->setEmptyText(emptyWords);
    onRefresh([this, field, read](const plan::Plan& plan) {
        const auto shared = read(plan);
        const auto value = shared.value ? *shared.value : std::nullopt;
        if (shared.mixed)
            field->setMixed();
        else
            field->setShown(value ? m_chosen.display().ratioEntryText(*value) : QString());
    });
    return field;
}

EntryField* Section::textField(const QString& name, Read<std::string> read, Make<std::string> make)
{
    auto* field =
        entry(name, [this, make](const QString& typed) { return commit(make(typed.trimmed().toStdString())); });
    onRefresh([field, read](const plan::Plan& plan) {
        const auto shared = read(plan);
        if (shared.mixed)
            field->setMixed();
        else
            field->setShown(shared.value ? QString::fromStdString(*shared.value) : QString());
    });
    return field;
}

ChoiceField* Section::choiceField(const QString& name, std::vector<Choice> choices, Read<std::string> read,
                                  Make<std::string> make)
{
    auto* field = new ChoiceField(
        name, std::move(choices), [this, make](const std::string& key) { return commit(make(key)); }, this);
    onRefresh([field, read](const plan::Plan& plan) {
        const auto shared = read(plan);
        if (shared.mixed)
            field->setMixed();
        else
            field->setShown(shared.value.value_or(std::string()));
    });
    return field;
}

QCheckBox* Section::checkField(const QString& words, Read<bool> read, Make<bool> make)
{
    auto* box = new QCheckBox(words, this);
    box->setMinimumHeight(style::leastTarget);
    const auto show = [box, read](const plan::Plan& plan) {
        const auto shared = read(plan);
        const QSignalBlocker quiet(box);
        box->setTristate(shared.mixed);
        box->setCheckState(shared.mixed                   ? Qt::PartiallyChecked
                           : shared.value.value_or(false) ? Qt::Checked
                                                          : Qt::Unchecked);
    };
    onRefresh(show);
    connect(box, &QCheckBox::clicked, this, [this, box, make, show] {
        commit(make(box->checkState() != Qt::Unchecked));
        show(m_chosen.plan());
    });
    return box;
}

QPushButton* Section::button(const QString& words, const QString& name, std::function<plan::Edit()> make)
{
    auto* pressed = new QPushButton(words, this);
    pressed->setAccessibleName(name);
    pressed->setMinimumHeight(style::leastTarget);
    auto* line = new RefusalLine(this);
    connect(pressed, &QPushButton::clicked, this, [this, make, line, name] {
        line->clear();
        if (const auto refusal = commit(make()))
            line->show(*refusal, name, {});
    });
    onRefresh([this, pressed](const plan::Plan&) { pressed->setEnabled(!m_chosen.document.readOnly()); });
    return pressed;
}

void Section::addRow(const QString& label, QWidget* field)
{
    auto* words = new QLabel(label, this);
    const auto parts = keyTakers(*field);
    words->setBuddy(parts.empty() ? field : parts.front());
    m_rows->addRow(words, field);
}

void Section::addWide(QWidget* widget) { m_rows->addRow(widget); }

QWidget* Section::addFact(const QString& label, std::function<QString(const plan::Plan&)> text)
{
    auto* value = new QuietLabel(QuietLabel::Tone::plain, this);
    value->setAccessibleName(label);
    m_rows->addRow(caption(label), value);
    onRefresh([this, value, text](const plan::Plan& plan) {
        value->setText(text::unbroken(text(plan)));
        setRowVisible(value, !value->text().isEmpty());
    });
    return value;
}

QWidget* Section::caption(const QString& words)
{
    auto* label = new QuietLabel(QuietLabel::Tone::quiet, this);
    label->setText(words);
    label->setWordWrap(false);
    return label;
}

ResultField* Section::addResult(const QString& label, ResultField::Text text, ResultField::Working working)
{
    auto* field = new ResultField(label, std::move(text), std::move(working), this);
    connect(field, &ResultField::workingWanted, this, &Section::workingWanted);
    m_rows->addRow(caption(label), field);
    m_results.push_back(field);
    return field;
}

void Section::addHint(const QString& words)
{
    auto* label = new QuietLabel(QuietLabel::Tone::quiet, this);
    label->setText(words);
    addWide(label);
}

void Section::addCaution(const QString& words)
{
    auto* label = new QuietLabel(QuietLabel::Tone::caution, this);
    label->setText(words);
    addWide(label);
}

void Section::setRowVisible(QWidget* field, bool visible) { m_rows->setRowVisible(field, visible); }

} // namespace sumpwright::ui::properties
