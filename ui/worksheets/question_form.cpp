#include "ui/worksheets/question_form.hpp"

#include <QComboBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>

#include "ui/style/palette.hpp"
#include "ui/style/type.hpp"

namespace sumpwright::ui::worksheets
{

namespace
{

using sumpwright::worksheets::InputSort;
using sumpwright::worksheets::InputSpec;

// Two fixed lines do not fit a name of any length: the label wraps.
QString labelOf(const InputSpec& input)
{
    QString words = QString::fromStdString(input.name);
    return words.replace(u'_', u' ');
}

QStringList idsOf(const InputSpec& input, const catalogue::Catalogue& tables)
{
    QStringList ids;
    if (input.sort == InputSort::Choice) {
        for (const auto& choice : input.choices)
            ids << QString::fromStdString(choice);
        return ids;
    }
    const std::string table = input.choices.empty() ? std::string() : input.choices.front();
    if (table == "pumps")
        for (const auto& row : tables.pumps())
            ids << QString::fromStdString(row.id);
    if (table == "fittings")
        for (const auto& row : tables.fittings())
            ids << QString::fromStdString(row.id);
    if (table == "media")
        for (const auto& row : tables.media())
            ids << QString::fromStdString(row.id);
    return ids;
}

} // namespace

QuestionForm::QuestionForm(const sumpwright::worksheets::Worksheet& worksheet, const catalogue::Catalogue& tables,
                           QWidget* parent)
    : QWidget(parent)
{
    auto* rows = new QFormLayout(this);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(style::halfStep);
    for (const InputSpec& input : worksheet.inputs) {
        if (input.sort == InputSort::Choice || input.sort == InputSort::CatalogueId)
            addChoice(input, tables);
        else
            addLine(input);
    }
}

void QuestionForm::addField(const InputSpec& input, QWidget* field)
{
    auto* label = new QLabel(labelOf(input), this);
    label->setBuddy(field);
    field->setAccessibleName(labelOf(input));
    field->setToolTip(QString::fromStdString(input.meaning));
    static_cast<QFormLayout*>(layout())->addRow(label, field);
}

void QuestionForm::addLine(const InputSpec& input)
{
    auto* line = new QLineEdit(this);
    if (!input.ifAbsent.empty())
        line->setPlaceholderText(QString::fromStdString(input.ifAbsent));
    else if (!input.required)
        line->setPlaceholderText(tr("may stay empty"));
    connect(line, &QLineEdit::textChanged, this, &QuestionForm::edited);
    addField(input, line);
    m_fields.push_back({QString::fromStdString(input.name), line, nullptr});
}

void QuestionForm::addChoice(const InputSpec& input, const catalogue::Catalogue& tables)
{
    auto* choice = new QComboBox(this);
    if (!input.required)
        choice->addItem(tr("none"), QString());
    for (const QString& id : idsOf(input, tables))
        choice->addItem(id, id);
    if (const int at = choice->findData(QString::fromStdString(input.ifAbsent)); at >= 0)
        choice->setCurrentIndex(at);
    connect(choice, &QComboBox::currentIndexChanged, this, &QuestionForm::edited);
    addField(input, choice);
    m_fields.push_back({QString::fromStdString(input.name), nullptr, choice});
}

std::vector<sumpwright::worksheets::InputText> QuestionForm::texts() const
{
    std::vector<sumpwright::worksheets::InputText> texts;
    for (const Field& field : m_fields) {
        const QString text = field.line ? field.line->text().trimmed() : field.choice->currentData().toString();
        if (!text.isEmpty())
            texts.push_back({field.name.toStdString(), text.toStdString()});
    }
    return texts;
}

void QuestionForm::set(const QString& name, const QString& text)
{
    for (const Field& field : m_fields) {
        if (field.name != name)
            continue;
        if (field.line)
            field.line->setText(text);
        else if (const int at = field.choice->findData(text); at >= 0)
            field.choice->setCurrentIndex(at);
    }
}

void QuestionForm::markRefused(const QString& name)
{
    const QColor fault = style::themeOf(*this).fault;
    for (const Field& field : m_fields) {
        if (!field.line)
            continue;
        QPalette colours = palette();
        if (field.name == name)
            colours.setColor(QPalette::Text, fault);
        field.line->setPalette(colours);
    }
}

} // namespace sumpwright::ui::worksheets
