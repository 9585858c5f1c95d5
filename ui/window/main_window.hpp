// MainWindow: puts plan view, panels, bars and messages together and hands commands to them. Holds no truth.
#pragma once

#include <QMainWindow>

QT_BEGIN_NAMESPACE
class QMenu;
QT_END_NAMESPACE

namespace sumpwright::ui::charts
{
class VitalSigns;
}

namespace sumpwright::ui::canvas
{
class PlanView;
}

namespace sumpwright::ui::window
{

class Commands;
class EmptyState;
class FileCommands;
class Panels;
class StatusLine;
class StripStack;
class ToolCommands;
struct Workplace;

class MainWindow : public QMainWindow
{
    Q_OBJECT

public:
    explicit MainWindow(Workplace& workplace);
    ~MainWindow() override;

    // Opens the plan, or stays empty, and offers what an earlier run could not save. A bad plan is told in a strip.
    void start(const QString& planPath);

    Commands& commands() const { return *m_commands; }
    StripStack& strips() const { return *m_strips; }
    FileCommands& files() const { return *m_files; }
    Panels& panels() const { return *m_panels; }
    canvas::PlanView& planView() const { return *m_view; }

protected:
    void closeEvent(QCloseEvent* event) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;

private:
    void build();
    void addCommands();
    void addUndoCommands();
    void addCheckCommands();
    void addChartCommands();
    void addWorkingCommands();
    void addDesignCommands();
    void addHelpCommands();
    void makeMenus();
    void addSignBar();
    void follow();
    void restore();
    void refreshTitle();
    void refreshEmptyState();
    void refreshEnabled();
    void tellRefusal(const QString& where, const QString& what, const QString& mend);
    void savePicture();
    void showContextMenu(QPoint global);

    Workplace& m_workplace;
    Panels* m_panels = nullptr;
    StripStack* m_strips = nullptr;
    canvas::PlanView* m_view = nullptr;
    charts::VitalSigns* m_signs = nullptr;
    StatusLine* m_status = nullptr;
    Commands* m_commands = nullptr;
    FileCommands* m_files = nullptr;
    ToolCommands* m_tools = nullptr;
    EmptyState* m_empty = nullptr;
    QMenu* m_examples = nullptr;
};

} // namespace sumpwright::ui::window
