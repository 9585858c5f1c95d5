#include "ui/window/panels.hpp"

#include <algorithm>

#include <QApplication>
#include <QDir>
#include <QDockWidget>
#include <QMainWindow>
#include <QResizeEvent>
#include <QStandardPaths>

#include "core/assessment/assessment.hpp"
#include "ui/charts/side_charts.hpp"
#include "ui/charts/signs.hpp"
#include "ui/design/design_panel.hpp"
#include "ui/document/document.hpp"
#include "ui/document/view_settings.hpp"
#include "ui/findings/findings_list.hpp"
#include "ui/outline/outline_panel.hpp"
#include "ui/parts/parts_panel.hpp"
#include "ui/properties/properties_panel.hpp"
#include "ui/section/level_panel.hpp"
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
constexpr int levelsHeight = 36 * style::step;
constexpr int tight = 640;       // of the window: below that the plan needs what there is
constexpr int roomForBoth = 960; // of the window, for elevation and findings one above the other

// In the person's data folder, which is theirs across versions and machines.
QString keptPartsPath()
{
    const QString data = QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation);
    return QDir(data).filePath(QStringLiteral("sumpwright/parts.json"));
}

} // namespace

Panels::Panels(document::Document& document, canvas::PlanView& view, QMainWindow& window)
    : QObject(&window), m_document(document), m_window(window)
{
    const auto display = [&document] {
        return text::DisplaySettings{document.view().unitSystem(), document.view().numberStyle()};
    };
    m_outline = new outline::OutlinePanel(document);
    m_properties = new properties::PropertiesPanel(document);
    m_levels = new section::LevelPanel(document, view);
    m_charts = new FoldColumn;
    m_findings = new findings::FindingsList(document);
    m_worksheets = new worksheets::WorksheetPanel(document, display);
    m_parts = new parts::PartsPanel(document, display, keptPartsPath());
    m_design = new design::DesignPanel(document, display);
    for (const charts::SideChart& chart : charts::makeSideCharts(document, display, m_charts->widget())) {
        m_charts->add(chart.id, QStringLiteral("%1 — %2").arg(chart.name, chart.panel->question()), chart.panel);
        connect(&document.view(), &document::ViewSettings::changed, chart.panel, &charts::ChartPanel::refresh);
        connect(chart.panel, &charts::ChartPanel::workingWanted, this, &Panels::showWorking);
    }

    m_outlineDock = dock("dock.outline", tr("Outline"), m_outline, Qt::LeftDockWidgetArea);
    m_propertiesDock = dock("dock.properties", tr("Properties"), m_properties, Qt::LeftDockWidgetArea);
    m_levelsDock = dock("dock.levels", tr("Elevation"), m_levels, Qt::BottomDockWidgetArea);
    m_chartsDock = dock("dock.charts", tr("Charts"), m_charts, Qt::RightDockWidgetArea);
    m_worksheetsDock = dock("dock.worksheets", tr("Worksheets"), m_worksheets, Qt::RightDockWidgetArea);
    m_partsDock = dock("dock.parts", tr("Parts"), m_parts, Qt::RightDockWidgetArea);
    m_designDock = dock("dock.design", tr("Design help"), m_design, Qt::RightDockWidgetArea);
    m_findingsDock = dock("dock.findings", tr("Findings"), m_findings, Qt::BottomDockWidgetArea);
    window.setCorner(Qt::BottomLeftCorner, Qt::LeftDockWidgetArea);
    window.setCorner(Qt::BottomRightCorner, Qt::RightDockWidgetArea);
    connect(m_properties, &properties::PropertiesPanel::workingWanted, this, &Panels::showWorking);
    connect(m_design, &design::DesignPanel::workingWanted, this, &Panels::showWorking);
    connect(&m_levels->view(), &section::LevelView::menuRequested, this, &Panels::menuRequested);
    connect(m_outline, &outline::OutlinePanel::menuRequested, this, &Panels::menuRequested);
    connect(m_outline, &outline::OutlinePanel::deleteWanted, this, &Panels::deleteWanted);
    connect(m_outline, &outline::OutlinePanel::partWanted, this, [this](outline::TopPart part) {
        part == outline::TopPart::site ? m_properties->showSite() : m_properties->showFloor();
    });
    window.installEventFilter(this);
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
    for (QDockWidget* each : {m_levelsDock, m_outlineDock, m_propertiesDock, m_chartsDock, m_worksheetsDock,
                              m_partsDock, m_designDock, m_findingsDock})
        each->setFloating(false);
    m_window.addDockWidget(Qt::LeftDockWidgetArea, m_outlineDock);
    m_window.splitDockWidget(m_outlineDock, m_propertiesDock, Qt::Vertical);
    m_window.addDockWidget(Qt::RightDockWidgetArea, m_chartsDock);
    m_window.addDockWidget(Qt::RightDockWidgetArea, m_worksheetsDock);
    m_window.addDockWidget(Qt::RightDockWidgetArea, m_partsDock);
    m_window.addDockWidget(Qt::RightDockWidgetArea, m_designDock);
    m_window.tabifyDockWidget(m_chartsDock, m_worksheetsDock);
    m_window.tabifyDockWidget(m_worksheetsDock, m_partsDock);
    m_window.tabifyDockWidget(m_partsDock, m_designDock);
    placeLevels();
    for (QDockWidget* each : {m_outlineDock, m_propertiesDock, m_levelsDock, m_chartsDock, m_findingsDock})
        each->show();
    m_worksheetsDock->hide();
    m_partsDock->hide();
    m_designDock->hide();
    m_chartsDock->raise();
    m_findingsDock->raise();
    m_charts->setFoldedIds({});
    m_levels->setMode(section::Mode::elevation);
    m_levels->setHeights(1);
    share();
}

// Under the plan, over the findings; on a low window the two share one place.
void Panels::placeLevels()
{
    m_window.addDockWidget(Qt::BottomDockWidgetArea, m_levelsDock);
    m_window.addDockWidget(Qt::BottomDockWidgetArea, m_findingsDock);
    if (m_window.height() >= roomForBoth)
        m_window.splitDockWidget(m_levelsDock, m_findingsDock, Qt::Vertical);
    else
        m_window.tabifyDockWidget(m_levelsDock, m_findingsDock);
}

// On a small screen the panels give way to the drawing.
void Panels::share()
{
    const int width = m_window.width();
    m_window.resizeDocks({m_outlineDock, m_chartsDock},
                         {std::min(leftWidth, width * 23 / 100), std::min(rightWidth, width * 27 / 100)},
                         Qt::Horizontal);
    m_window.resizeDocks({m_outlineDock, m_propertiesDock}, {1, 2}, Qt::Vertical);
    shareHeight();
}

void Panels::shareHeight()
{
    const int height = m_window.height();
    if (m_window.tabifiedDockWidgets(m_findingsDock).contains(m_levelsDock))
        m_window.resizeDocks({m_findingsDock}, {height < tight ? height / 5 : std::min(levelsHeight, height * 3 / 10)},
                             Qt::Vertical);
    else
        m_window.resizeDocks({m_levelsDock, m_findingsDock},
                             {std::min(levelsHeight, height * 3 / 10), std::min(bottomHeight, height / 6)},
                             Qt::Vertical);
}

bool Panels::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == &m_window && event->type() == QEvent::Resize) {
        const auto* size = static_cast<QResizeEvent*>(event);
        if (size->size().height() < size->oldSize().height())
            QMetaObject::invokeMethod(this, &Panels::giveWay, Qt::QueuedConnection);
    }
    return QObject::eventFilter(watched, event);
}

// In a window that became lower the drawing keeps a third of it at least.
void Panels::giveWay()
{
    if (m_window.centralWidget()->height() * 3 < m_window.height())
        shareHeight();
}

void Panels::addToggle(Commands& commands, const char* id, const QString& text, const QString& tip, const char* key,
                       QDockWidget* dock, QWidget* focus, bool newGroup)
{
    QAction* action = commands.addCheckable({id, Menu::view, text, tip, key, {}, Scope::window, true, newGroup},
                                            [&commands, name = std::string(id), dock, focus](bool on) {
                                                // One that lies under another tab comes to the front.
                                                const bool covered =
                                                    !dock->isHidden() && dock->widget()->visibleRegion().isEmpty();
                                                commands.find(name)->setChecked(on || covered);
                                                dock->setVisible(on || covered);
                                                if (!on && !covered)
                                                    return;
                                                dock->raise();
                                                focus->setFocus(Qt::ShortcutFocusReason);
                                            });
    // Asked of the dock itself: one that lies under another tab is not hidden.
    connect(dock->toggleViewAction(), &QAction::toggled, action, &QAction::setChecked);
    m_toggles.emplace_back(action, dock);
    action->setChecked(!dock->isHidden());
}

void Panels::addLevelToggles(Commands& commands)
{
    using section::Mode;
    m_elevation =
        commands.addCheckable({"view.elevation",
                               Menu::view,
                               tr("Ele&vation under the plan"),
                               tr("Shows or hides what stands where at which level; levels are dragged there."),
                               "F12",
                               {},
                               Scope::window,
                               true},
                              [this](bool on) { showLevels(Mode::elevation, on); });
    m_section = commands.addCheckable({"view.section",
                                       Menu::view,
                                       tr("Section alon&g the water"),
                                       tr("Shows or hides the water's way unrolled, with falls and hydraulic grade."),
                                       "Shift+F12",
                                       {},
                                       Scope::window,
                                       true},
                                      [this](bool on) { showLevels(Mode::section, on); });
    const auto refresh = [this] {
        const bool shown = !m_levelsDock->isHidden();
        const bool section = m_levels->mode() == Mode::section;
        m_elevation->setChecked(shown && !section);
        m_section->setChecked(shown && section);
        m_levelsDock->setWindowTitle(section ? tr("Section") : tr("Elevation"));
    };
    connect(m_levelsDock->toggleViewAction(), &QAction::toggled, this, refresh);
    connect(m_levels, &section::LevelPanel::modeChanged, this, refresh);
    refresh();
}

// A pane that lies under another tab comes to the front rather than going.
void Panels::showLevels(section::Mode mode, bool on)
{
    const bool covered = !m_levelsDock->isHidden() && m_levels->visibleRegion().isEmpty();
    m_levels->setMode(mode);
    m_levelsDock->setVisible(on || covered);
    (mode == section::Mode::section ? m_section : m_elevation)->setChecked(on || covered);
    if (!on && !covered)
        return;
    m_levelsDock->raise();
    m_levels->takeFocus();
}

void Panels::layoutRestored()
{
    m_elevation->setChecked(!m_levelsDock->isHidden() && m_levels->mode() == section::Mode::elevation);
    m_section->setChecked(!m_levelsDock->isHidden() && m_levels->mode() == section::Mode::section);
    for (const auto& [action, dock] : m_toggles)
        action->setChecked(!dock->isHidden());
}

void Panels::addTo(Commands& commands)
{
    addToggle(commands, "view.outline", tr("&Outline"), tr("Shows or hides the list of everything drawn."), "F3",
              m_outlineDock, m_outline, true);
    addToggle(commands, "view.properties", tr("Prop&erties"), tr("Shows or hides the form of what is selected."), "F4",
              m_propertiesDock, m_properties, false);
    addLevelToggles(commands);
    addToggle(commands, "view.charts", tr("&Charts"), tr("Shows or hides the side charts."), "F5", m_chartsDock,
              m_charts, false);
    addToggle(commands, "view.findings", tr("&Findings"), tr("Shows or hides what should be known about the plan."),
              "F7", m_findingsDock, m_findings, false);
    addToggle(commands, "view.worksheets", tr("&Worksheets"), tr("Shows or hides the single questions of the trade."),
              "F9", m_worksheetsDock, m_worksheets, false);
    addToggle(commands, "view.parts", tr("P&arts"), tr("Shows or hides the catalogue and your own parts."), "Shift+F9",
              m_partsDock, m_parts, false);
    addToggle(commands, "view.design", tr("&Design help"), tr("Shows or hides the proposals that are computed."), "Ctrl+F9",
              m_designDock, m_design, false);
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
    for (QDockWidget* each : {m_levelsDock, m_outlineDock, m_propertiesDock, m_chartsDock, m_worksheetsDock,
                              m_partsDock, m_designDock, m_findingsDock})
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

void Panels::showDesign(design::Question question)
{
    m_designDock->show();
    m_designDock->raise();
    m_design->open(question);
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
