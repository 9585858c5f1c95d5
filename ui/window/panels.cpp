#include "ui/window/panels.hpp"

#include <algorithm>

#include <QApplication>
#include <QDockWidget>
#include <QMainWindow>

#include "core/assessment/assessment.hpp"
#include "ui/charts/side_charts.hpp"
#include "ui/charts/signs.hpp"
#include "ui/document/document.hpp"
#include "ui/document/view_settings.hpp"
#include "ui/findings/findings_list.hpp"
#include "ui/outline/outline_panel.hpp"
#include "ui/properties/properties_panel.hpp"
#include "ui/style/type.hpp"
#include "ui/window/commands.hpp"
#include "ui/window/fold_column.hpp"
#include "ui/worksheets/worksheet_panel.hpp"

namespace sumpwright::ui::window
{

namespace
{

constexpr int leftWidth = 42 * style::step;
constexpr int rightWidth = 52 * style::step;
constexpr int bottomHeight = 19 * style::step;

} // namespace

Panels::Panels(document::Document& document, QMainWindow& window)
    : QObject(&window), m_document(document), m_window(window)
{
    const auto display = [&document] {
        return text::DisplaySettings{document.view().unitSystem(), document.view().numberStyle()};
    };
    m_outline = new outline::OutlinePanel(document);
    m_properties = new properties::PropertiesPanel(document);
    m_charts = new FoldColumn;
    m_findings = new findings::FindingsList(document);
    m_worksheets = new worksheets::WorksheetPanel(document, display);
    for (const charts::SideChart& chart : charts::makeSideCharts(document, display, m_charts->widget())) {
        m_charts->add(chart.id, QStringLiteral("%1 — %2").arg(chart.name, chart.panel->question()), chart.panel);
        connect(&document.view(), &document::ViewSettings::changed, chart.panel, &charts::ChartPanel::refresh);
        connect(chart.panel, &charts::ChartPanel::workingWanted, this, &Panels::showWorking);
    }

    m_outlineDock = dock("dock.outline", tr("Outline"), m_outline, Qt::LeftDockWidgetArea);
    m_propertiesDock = dock("dock.properties", tr("Properties"), m_properties, Qt::LeftDockWidgetArea);
    m_chartsDock = dock("dock.charts", tr("Charts"), m_charts, Qt::RightDockWidgetArea);
    m_worksheetsDock = dock("dock.worksheets", tr("Worksheets"), m_worksheets, Qt::RightDockWidgetArea);
    m_findingsDock = dock("dock.findings", tr("Findings"), m_findings, Qt::BottomDockWidgetArea);
    window.setCorner(Qt::BottomLeftCorner, Qt::LeftDockWidgetArea);
    window.setCorner(Qt::BottomRightCorner, Qt::RightDockWidgetArea);
    connect(m_properties, &properties::PropertiesPanel::workingWanted, this, &Panels::showWorking);
    connect(m_outline, &outline::OutlinePanel::menuRequested, this, &Panels::menuRequested);
    connect(m_outline, &outline::OutlinePanel::deleteWanted, this, &Panels::deleteWanted);
    connect(m_outline, &outline::OutlinePanel::partWanted, this, [this](outline::TopPart part) {
        part == outline::TopPart::site ? m_properties->showSite() : m_properties->showFloor();
    });
    reset();
}

QDockWidget* Panels::dock(const char* id, const QString& title, QWidget* content, Qt::DockWidgetArea area)
{
    auto* dock = new QDockWidget(title, &m_window);
    dock->setObjectName(QString::fromLatin1(id));
    dock->setWidget(content);
    content->setAccessibleName(title);
    m_window.addDockWidget(area, dock);
    return dock;
}

void Panels::reset()
{
    for (QDockWidget* each : {m_outlineDock, m_propertiesDock, m_chartsDock, m_worksheetsDock, m_findingsDock})
        each->setFloating(false);
    m_window.addDockWidget(Qt::LeftDockWidgetArea, m_outlineDock);
    m_window.splitDockWidget(m_outlineDock, m_propertiesDock, Qt::Vertical);
    m_window.addDockWidget(Qt::RightDockWidgetArea, m_chartsDock);
    m_window.addDockWidget(Qt::RightDockWidgetArea, m_worksheetsDock);
    m_window.tabifyDockWidget(m_chartsDock, m_worksheetsDock);
    m_window.addDockWidget(Qt::BottomDockWidgetArea, m_findingsDock);
    for (QDockWidget* each : {m_outlineDock, m_propertiesDock, m_chartsDock, m_findingsDock})
        each->show();
    m_worksheetsDock->hide();
    m_chartsDock->raise();
    m_charts->setFoldedIds({});
    share();
}

// On a small screen the panels give way to the drawing.
void Panels::share()
{
    const int width = m_window.width();
    const int height = m_window.height();
    m_window.resizeDocks({m_outlineDock, m_chartsDock},
                         {std::min(leftWidth, width * 23 / 100), std::min(rightWidth, width * 27 / 100)},
                         Qt::Horizontal);
    m_window.resizeDocks({m_outlineDock, m_propertiesDock}, {1, 2}, Qt::Vertical);
    m_window.resizeDocks({m_findingsDock}, {std::min(bottomHeight, height / 5)}, Qt::Vertical);
}

void Panels::addToggle(Commands& commands, const char* id, const QString& text, const QString& tip, const char* key,
                       QDockWidget* dock, QWidget* focus, bool newGroup)
{
    QAction* action = commands.addCheckable({id, Menu::view, text, tip, key, {}, Scope::window, true, newGroup},
                                            [dock, focus](bool on) {
                                                dock->setVisible(on);
                                                if (!on)
                                                    return;
                                                dock->raise();
                                                focus->setFocus(Qt::ShortcutFocusReason);
                                            });
    // Asked of the dock itself: one that lies under another tab is not hidden.
    connect(dock->toggleViewAction(), &QAction::toggled, action, &QAction::setChecked);
    m_toggles.emplace_back(action, dock);
    action->setChecked(!dock->isHidden());
}

void Panels::layoutRestored()
{
    for (const auto& [action, dock] : m_toggles)
        action->setChecked(!dock->isHidden());
}

void Panels::addTo(Commands& commands)
{
    addToggle(commands, "view.outline", tr("&Outline"), tr("Shows or hides the list of everything drawn."), "F3",
              m_outlineDock, m_outline, true);
    addToggle(commands, "view.properties", tr("Prop&erties"), tr("Shows or hides the form of what is selected."), "F4",
              m_propertiesDock, m_properties, false);
    addToggle(commands, "view.charts", tr("&Charts"), tr("Shows or hides the side charts."), "F5", m_chartsDock,
              m_charts, false);
    addToggle(commands, "view.findings", tr("&Findings"), tr("Shows or hides what should be known about the plan."),
              "F7", m_findingsDock, m_findings, false);
    addToggle(commands, "view.worksheets", tr("&Worksheets"), tr("Shows or hides the single questions of the trade."),
              "F9", m_worksheetsDock, m_worksheets, false);
    commands.add({"view.next-part", Menu::view, tr("To the ne&xt part of the window"),
                  tr("Gives the keyboard to the plan, then to each panel in turn."), "F6"},
                 [this] { step(1); });
    commands.add({"view.previous-part", Menu::view, tr("To the part &before"),
                  tr("Gives the keyboard to the part before."), "Shift+F6"},
                 [this] { step(-1); });
}

void Panels::step(int by)
{
    QList<QWidget*> parts{m_window.centralWidget()};
    for (QDockWidget* each : {m_outlineDock, m_propertiesDock, m_chartsDock, m_worksheetsDock, m_findingsDock})
        if (each->isVisible() && !each->visibleRegion().isEmpty())
            parts << each->widget();
    int at = -1;
    for (int i = 0; i < parts.size(); ++i)
        if (QWidget* focus = QApplication::focusWidget(); focus && parts[i]->isAncestorOf(focus))
            at = i;
    QWidget* next = parts[at < 0 ? 0 : (at + by + parts.size()) % parts.size()];
    if (next == m_properties)
        return m_properties->takeFocus();
    for (QWidget* child = next->nextInFocusChain(); child != next; child = child->nextInFocusChain())
        if (next->isAncestorOf(child) && child->isVisible() && child->isEnabled() &&
            (child->focusPolicy() & Qt::TabFocus))
            return child->setFocus(Qt::TabFocusReason);
    next->setFocus(Qt::TabFocusReason);
}

QStringList Panels::foldedCharts() const { return m_charts->foldedIds(); }
void Panels::setFoldedCharts(const QStringList& ids) { m_charts->setFoldedIds(ids); }

void Panels::showChart(const QString& id)
{
    m_chartsDock->show();
    m_chartsDock->raise();
    m_charts->reveal(id);
}

// The one that has the keyboard, else the first in sight, else the first.
charts::ChartPanel& Panels::chartAtHand() const
{
    const auto panels = m_charts->findChildren<charts::ChartPanel*>();
    const auto* focus = m_window.focusWidget(); // remembered while a menu or a dialog has the keyboard
    for (auto* panel : panels)
        if (focus && (panel == focus || panel->isAncestorOf(focus)))
            return *panel;
    for (auto* panel : panels)
        if (!panel->visibleRegion().isEmpty())
            return *panel;
    return *panels.front();
}

void Panels::showFindings()
{
    m_findingsDock->show();
    m_findingsDock->raise();
    m_findings->setFocus(Qt::OtherFocusReason);
}

void Panels::showProperties()
{
    m_propertiesDock->show();
    m_propertiesDock->raise();
    m_properties->takeFocus();
}

void Panels::showWorking(const assessment::Working& working)
{
    m_worksheetsDock->show();
    m_worksheetsDock->raise();
    m_worksheets->open(working);
    m_worksheets->setFocus(Qt::OtherFocusReason);
}

void Panels::showSignWorking(const QString& id)
{
    const auto results = m_document.assessment();
    const auto working = results ? charts::workingOfSign(*results, id) : std::nullopt;
    if (working)
        showWorking(*working);
    else
        m_document.say(tr("There is no working of this figure yet."));
}

void Panels::stepFinding(int by)
{
    const int count = m_findings->count();
    if (count == 0)
        return m_document.say(tr("No findings."));
    m_finding = m_finding < 0 ? (by > 0 ? 0 : count - 1) : ((m_finding + by) % count + count) % count;
    m_findingsDock->show();
    m_findings->goTo(m_finding);
    m_document.say(tr("Finding %1 of %2").arg(m_finding + 1).arg(count));
}

} // namespace sumpwright::ui::window
