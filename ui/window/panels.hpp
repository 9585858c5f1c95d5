// Panels: the docks around the plan - outline, properties, elevation and section, charts, findings, worksheets, parts,
// design help - and what they say to each other.
#pragma once

#include <utility>
#include <vector>

#include <QObject>
#include <QPoint>
#include <QString>
#include <QStringList>

#include "core/assessment/working.hpp"

QT_BEGIN_NAMESPACE
class QAction;
class QDockWidget;
class QMainWindow;
class QWidget;
QT_END_NAMESPACE

namespace sumpwright::ui::canvas
{
class PlanView;
}
namespace sumpwright::ui::charts
{
class ChartPanel;
}
namespace sumpwright::ui::design
{
class DesignPanel;
enum class Question;
} // namespace sumpwright::ui::design
namespace sumpwright::ui::document
{
class Document;
}
namespace sumpwright::ui::findings
{
class FindingsList;
}
namespace sumpwright::ui::outline
{
class OutlinePanel;
}
namespace sumpwright::ui::parts
{
class PartsPanel;
}
namespace sumpwright::ui::properties
{
class PropertiesPanel;
}
namespace sumpwright::ui::section
{
class LevelPanel;
enum class Mode;
} // namespace sumpwright::ui::section
namespace sumpwright::ui::worksheets
{
class WorksheetPanel;
}

namespace sumpwright::ui::window
{

class Commands;
class FoldColumn;

class Panels : public QObject
{
    Q_OBJECT

public:
    Panels(document::Document& document, canvas::PlanView& view, QMainWindow& window);

    void addTo(Commands& commands); // a command to show or hide each, and one to step through them
    void reset();                   // places and sizes as on the first day
    void share();                   // the window's room among them, as on the first day

    properties::PropertiesPanel& properties() const { return *m_properties; }
    section::LevelPanel& levels() const { return *m_levels; }
    design::DesignPanel& design() const { return *m_design; }
    findings::FindingsList& findings() const { return *m_findings; }
    QStringList foldedCharts() const;
    void setFoldedCharts(const QStringList& ids);
    void layoutRestored(); // the docks may be hidden or shown otherwise than the commands say

    void showChart(const QString& id);
    charts::ChartPanel& chartAtHand() const;
    void showFindings();
    void showDesign(design::Question question);
    void showProperties(); // and gives the first field the keyboard
    void showWorking(const assessment::Working& working);
    void showSignWorking(const QString& id); // of a figure in the strip
    void stepFinding(int by);                // next or previous, going to its element

Q_SIGNALS:
    void menuRequested(QPoint global); // on the outline
    void deleteWanted();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override; // the window becomes lower

private:
    QDockWidget* dock(const char* id, const QString& title, QWidget* content, Qt::DockWidgetArea area);
    void addToggle(Commands& commands, const char* id, const QString& text, const QString& tip, const char* key,
                   QDockWidget* dock, QWidget* focus, bool newGroup);
    void addLevelToggles(Commands& commands);
    void showLevels(section::Mode mode, bool on);
    void placeLevels();
    void shareHeight();
    void giveWay();
    void step(int by);

    document::Document& m_document;
    QMainWindow& m_window;
    outline::OutlinePanel* m_outline;
    properties::PropertiesPanel* m_properties;
    section::LevelPanel* m_levels;
    FoldColumn* m_charts;
    findings::FindingsList* m_findings;
    worksheets::WorksheetPanel* m_worksheets;
    parts::PartsPanel* m_parts;
    design::DesignPanel* m_design;
    QDockWidget* m_outlineDock;
    QDockWidget* m_propertiesDock;
    QDockWidget* m_levelsDock;
    QDockWidget* m_chartsDock;
    QDockWidget* m_findingsDock;
    QDockWidget* m_worksheetsDock;
    QDockWidget* m_partsDock;
    QDockWidget* m_designDock;
    std::vector<std::pair<QAction*, QDockWidget*>> m_toggles;
    QAction* m_elevation = nullptr; // commands
    QAction* m_section = nullptr;
    int m_finding = -1;
};

} // namespace sumpwright::ui::window
