#include "ui/design/design_panel.hpp"

#include <QScrollArea>
#include <QTabBar>
#include <QTabWidget>
#include <QVBoxLayout>

#include "ui/design/pipe_page.hpp"
#include "ui/design/pump_page.hpp"
#include "ui/design/valve_page.hpp"

namespace sumpwright::ui::design
{

DesignPanel::DesignPanel(document::Document& document, const DisplayNow& display, QWidget* parent)
    : QWidget(parent), m_tabs(new QTabWidget(this)), m_valves(new ValvePage(document, display)),
      m_pump(new PumpPage(document, display)), m_pipes(new PipePage(document, display))
{
    m_tabs->setDocumentMode(true);
    m_tabs->setAccessibleName(tr("Questions"));
    m_tabs->tabBar()->setAccessibleName(tr("Questions"));
    add(m_valves, tr("Set the valves"));
    add(m_pump, tr("Choose a pump"));
    add(m_pipes, tr("Choose pipe sizes"));
    auto* rows = new QVBoxLayout(this);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->addWidget(m_tabs);
    setFocusProxy(m_tabs);
}

void DesignPanel::add(DesignPage* page, const QString& title)
{
    auto* area = new QScrollArea;
    area->setWidgetResizable(true);
    area->setFrameShape(QFrame::NoFrame);
    area->setFocusPolicy(Qt::NoFocus);
    area->setAccessibleName(title);
    area->setWidget(page);
    page->setAccessibleName(title);
    m_tabs->addTab(area, title);
    connect(page, &DesignPage::workingWanted, this, &DesignPanel::workingWanted);
}

DesignPage& DesignPanel::page() const
{
    return *static_cast<DesignPage*>(static_cast<QScrollArea*>(m_tabs->currentWidget())->widget());
}

void DesignPanel::open(Question question)
{
    m_tabs->setCurrentIndex(static_cast<int>(question));
    if (!page().current() && !page().working())
        page().ask();
    m_tabs->setFocus(Qt::OtherFocusReason);
}

} // namespace sumpwright::ui::design
