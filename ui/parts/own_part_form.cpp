#include "ui/parts/own_part_form.hpp"

#include <QComboBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QTimer>

#include "ui/document/document.hpp"
#include "ui/parts/own_part_rows.hpp"
#include "ui/properties/commit.hpp"
#include "ui/properties/entry_field.hpp"
#include "ui/style/type.hpp"

namespace sumpwright::ui::parts
{

OwnPartForm::OwnPartForm(document::Document& document, Display display, QWidget* parent)
    : QWidget(parent), m_document(document), m_display(std::move(display)), m_rows(new QFormLayout(this))
{
    m_rows->setContentsMargins(0, 0, 0, 0);
    m_rows->setVerticalSpacing(style::halfStep);
    m_rows->setRowWrapPolicy(QFormLayout::WrapLongRows);
    m_rows->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    hide();
}

const plan::OwnParts& OwnPartForm::parts() const { return *m_document.shown().ownParts; }

std::optional<base::Refusal> OwnPartForm::commit(const plan::Edit& edit)
{
    return properties::commitOrRefuse(m_document, edit);
}

void OwnPartForm::showPart(const std::string& id)
{
    m_id = id;
    refresh();
}

void OwnPartForm::refresh()
{
    const std::string shape = shapeOf(parts(), m_id);
    if (shape.empty())
        return hide();
    const std::string key = m_id + "/" + shape;
    if (key != m_shape) {
        m_shape = key;
        rebuild();
    }
    show();
    for (const auto& each : m_refreshes)
        each();
    for (auto* field : findChildren<properties::EntryField*>())
        field->setReadOnly(m_document.readOnly());
    for (auto* field : findChildren<properties::ChoiceField*>())
        field->setReadOnly(m_document.readOnly());
}

void OwnPartForm::rebuild()
{
    m_refreshes.clear();
    while (m_rows->rowCount() > 0) {
        const QFormLayout::TakeRowResult row = m_rows->takeRow(0);
        for (QLayoutItem* item : {row.labelItem, row.fieldItem}) {
            if (item && item->widget()) {
                item->widget()->hide();
                item->widget()->setParent(nullptr); // a field may be the one that asked for other rows
                item->widget()->deleteLater();
            }
            delete item;
        }
    }
    const std::string shape = shapeOf(parts(), m_id);
    if (shape == "pipe")
        addPipeRows(*this);
    else if (shape.rfind("pump", 0) == 0)
        addPumpRows(*this);
    else
        addFittingRows(*this);
}

void OwnPartForm::addEntry(const QString& label, Accept accept, Shown shown, const QString& emptyWords)
{
    auto* field = new properties::EntryField(label, std::move(accept), this);
    if (!emptyWords.isEmpty())
        field->setEmptyText(emptyWords);
    addField(label, field);
    m_refreshes.push_back([field, shown] { field->setShown(shown()); });
}

// Shown at once: a field that appears with the next turn of events cannot be given the keyboard.
void OwnPartForm::addField(const QString& label, QWidget* field)
{
    m_rows->addRow(label, field);
    field->show();
}

void OwnPartForm::addChoice(const QString& label, std::vector<properties::Choice> choices,
                            std::function<std::optional<base::Refusal>(const std::string& key)> accept,
                            std::function<std::string()> shown)
{
    auto* field = new properties::ChoiceField(label, std::move(choices), std::move(accept), this);
    addField(label, field);
    m_refreshes.push_back([field, shown] { field->setShown(shown()); });
}

void OwnPartForm::focusName()
{
    if (auto* name = findChild<properties::EntryField*>())
        name->line().setFocus(Qt::OtherFocusReason);
}

} // namespace sumpwright::ui::parts
