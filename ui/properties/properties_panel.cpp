#include "ui/properties/properties_panel.hpp"

#include <algorithm>

#include <QApplication>
#include <QEvent>
#include <QScrollArea>
#include <QScrollBar>
#include <QTabBar>
#include <QVBoxLayout>

#include "ui/document/view_settings.hpp"
#include "ui/properties/dimension_form.hpp"
#include "ui/properties/fixture_form.hpp"
#include "ui/properties/floor_form.hpp"
#include "ui/properties/multi_form.hpp"
#include "ui/properties/note_form.hpp"
#include "ui/properties/pump_form.hpp"
#include "ui/properties/run_form.hpp"
#include "ui/properties/site_form.hpp"
#include "ui/properties/tab_order.hpp"
#include "ui/properties/tee_form.hpp"
#include "ui/properties/vessel_form.hpp"

namespace sumpwright::ui::properties
{

namespace
{
enum Tab { siteTab, floorTab };
} // namespace

PropertiesPanel::PropertiesPanel(document::Document& document, QWidget* parent)
    : QWidget(parent), m_document(document), m_tabs(new QTabBar(this)), m_scroll(new QScrollArea(this))
{
    setAccessibleName(tr("Properties"));
    m_tabs->addTab(tr("Site"));
    m_tabs->addTab(tr("Floor"));
    m_tabs->setAccessibleName(tr("Site or floor"));
    m_tabs->setDrawBase(false);
    m_scroll->setWidgetResizable(true);
    m_scroll->setFrameShape(QFrame::NoFrame);
    m_scroll->setFocusPolicy(Qt::NoFocus);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(m_tabs);
    column->addWidget(m_scroll, 1);
    connect(m_tabs, &QTabBar::currentChanged, this, &PropertiesPanel::settle);
    connect(&m_document, &document::Document::selectionChanged, this, &PropertiesPanel::settle);
    connect(&m_document, &document::Document::planChanged, this, [this] {
        settle();
        m_form->refresh();
        keepRoom();
    });
    connect(&m_document, &document::Document::readOnlyChanged, this, [this] { m_form->refresh(); });
    connect(&m_document.view(), &document::ViewSettings::changed, this, [this] { m_form->refresh(); });
    connect(&m_document, &document::Document::assessmentChanged, this, [this] {
        m_form->refreshResults();
        keepRoom();
    });
    settle();
}

void PropertiesPanel::showSite() { showPart(siteTab); }

void PropertiesPanel::showFloor() { showPart(floorTab); }

void PropertiesPanel::showPart(int tab)
{
    m_document.select({});
    m_tabs->setCurrentIndex(tab);
}

void PropertiesPanel::takeFocus()
{
    const auto parts = keyTakers(*m_form);
    const auto shown = std::find_if(parts.begin(), parts.end(),
                                    [](const auto* part) { return part->isVisible() && part->isEnabled(); });
    if (shown != parts.end())
        (*shown)->setFocus(Qt::OtherFocusReason);
}

// Elements that the plan no longer holds are about to leave the selection: until then they count as not chosen.
std::string PropertiesPanel::signature() const
{
    std::string made;
    const auto& plan = m_document.shown();
    for (const auto id : m_document.selection()) {
        const auto kind = plan::kindOf(plan, id);
        if (!kind)
            continue;
        made += std::to_string(id.number) + ":" + std::to_string(static_cast<int>(*kind));
        if (const auto* vessel = plan.vessels.find(id))
            made += "/" + std::to_string(static_cast<int>(vessel->kind));
        if (const auto* fixture = plan.fixtures.find(id))
            made += "/" + std::to_string(static_cast<int>(fixture->kind));
        made += " ";
    }
    return made.empty() ? "tab " + std::to_string(m_tabs->currentIndex()) : made;
}

void PropertiesPanel::settle()
{
    const std::string now = signature();
    if (m_form && now == m_signature)
        return;
    m_signature = now;
    const QString focused = focusedName();
    Form* old = m_form;
    m_form = makeForm();
    connect(m_form, &Form::workingWanted, this, &PropertiesPanel::workingWanted);
    if (old) {
        m_scroll->takeWidget();
        old->setParent(this); // a field of it may still be at work
        old->hide();
        old->deleteLater();
    }
    m_scroll->setWidget(m_form);
    m_form->refresh();
    m_form->show();
    keepRoom();
    m_tabs->setVisible(m_signature.rfind("tab", 0) == 0);
    orderTabs(*m_form);
    focusNamed(focused);
}

// Wide enough for the form, so that nothing has to be scrolled sideways; never narrower again for one kind of element
// than for another, so that the panel keeps still.
void PropertiesPanel::keepRoom()
{
    const int bar = m_scroll->verticalScrollBar()->sizeHint().width();
    m_scroll->setMinimumWidth(std::max(m_scroll->minimumWidth(), m_form->minimumSizeHint().width() + bar));
}

void PropertiesPanel::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::FontChange && m_form)
        m_scroll->setMinimumWidth(0);
    QWidget::changeEvent(event);
}

// Of the field at work, so that a form made anew by its own field keeps the person's place.
QString PropertiesPanel::focusedName() const
{
    const auto* focus = QApplication::focusWidget();
    return m_form && focus && m_form->isAncestorOf(focus) ? focus->accessibleName() : QString();
}

void PropertiesPanel::focusNamed(const QString& name)
{
    if (name.isEmpty())
        return;
    for (auto* widget : m_form->findChildren<QWidget*>())
        if (widget->accessibleName() == name && widget->focusPolicy() != Qt::NoFocus)
            widget->setFocus(Qt::OtherFocusReason);
}

void PropertiesPanel::finishEntry()
{
    for (auto* field : m_form->findChildren<EntryField*>())
        field->finish();
}

Form* PropertiesPanel::makeForm()
{
    std::vector<base::Id> ids = m_document.selection();
    const auto& plan = m_document.shown();
    std::erase_if(ids, [&](base::Id id) { return !plan::kindOf(plan, id); });
    if (ids.empty())
        return m_tabs->currentIndex() == floorTab ? static_cast<Form*>(new FloorForm(m_document))
                                                  : new SiteForm(m_document);
    const auto kind = plan::kindOf(plan, ids.front());
    if (std::any_of(ids.begin(), ids.end(), [&](base::Id id) { return plan::kindOf(plan, id) != kind; }))
        return new MultiForm(m_document, std::move(ids));
    switch (*kind) {
    case plan::ElementKind::fixture:
        return new FixtureForm(m_document, std::move(ids));
    case plan::ElementKind::vessel:
        return new VesselForm(m_document, std::move(ids));
    case plan::ElementKind::pump:
        return new PumpForm(m_document, std::move(ids));
    case plan::ElementKind::tee:
        return new TeeForm(m_document, std::move(ids));
    case plan::ElementKind::run:
        return new RunForm(m_document, std::move(ids));
    case plan::ElementKind::note:
        return new NoteForm(m_document, std::move(ids));
    case plan::ElementKind::dimension:
        return new DimensionForm(m_document, std::move(ids));
    }
    return new SiteForm(m_document);
}

} // namespace sumpwright::ui::properties
