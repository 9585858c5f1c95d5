#include "ui/properties/form.hpp"

#include <QLabel>
#include <QShowEvent>
#include <QVBoxLayout>

#include "ui/properties/tab_order.hpp"
#include "ui/style/type.hpp"
#include "ui/text/names.hpp"
#include "ui/text/subject.hpp"

namespace sumpwright::ui::properties
{

Form::Form(Chosen chosen, QWidget* parent)
    : QWidget(parent), m_chosen(std::move(chosen)), m_heading(new QLabel(this)), m_column(new QVBoxLayout(this))
{
    m_column->setContentsMargins(style::step, style::step, style::step, style::step);
    m_column->setSpacing(2 * style::step);
    m_heading->setFont(style::titleFont());
    m_heading->setWordWrap(true);
    m_column->addWidget(m_heading);
    m_column->addStretch(1);
}

void Form::take(Section* section)
{
    section->setParent(this);
    m_column->insertWidget(m_column->count() - 1, section);
    m_sections.push_back(section);
    connect(section, &Section::workingWanted, this, &Form::workingWanted);
    connect(section, &Section::rowsChanged, this, [this] { orderTabs(*this); });
}

QString Form::headingText() const { return text::heading(text::subjects(m_chosen.plan(), m_chosen.ids)); }

void Form::refresh()
{
    m_behind = !isVisible();
    if (!m_behind)
        refreshAll();
}

void Form::refreshAll()
{
    m_heading->setText(headingText());
    for (auto* section : m_sections)
        section->refresh();
    for (auto* section : m_sections)
        section->refreshResults();
}

void Form::refreshResults()
{
    if (!isVisible()) {
        m_behind = true;
        return;
    }
    for (auto* section : m_sections)
        section->refreshResults();
}

void Form::showEvent(QShowEvent* event)
{
    if (m_behind)
        refreshAll();
    m_behind = false;
    QWidget::showEvent(event);
}

} // namespace sumpwright::ui::properties
