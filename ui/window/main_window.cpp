#include "ui/window/main_window.hpp"

#include <QCloseEvent>
#include <QDragEnterEvent>
#include <QFileInfo>
#include <QMenu>
#include <QMimeData>
#include <QScreen>
#include <QUndoStack>
#include <QVBoxLayout>

#include "ui/canvas/plan_scene.hpp"
#include "ui/canvas/plan_view.hpp"
#include "ui/charts/vital_signs.hpp"
#include "ui/document/view_settings.hpp"
#include "ui/properties/properties_panel.hpp"
#include "ui/section/level_panel.hpp"
#include "ui/window/application.hpp"
#include "ui/window/arrange_commands.hpp"
#include "ui/window/commands.hpp"
#include "ui/window/empty_state.hpp"
#include "ui/window/file_commands.hpp"
#include "ui/window/log_file.hpp"
#include "ui/window/message_strip.hpp"
#include "ui/window/panels.hpp"
#include "ui/window/status_line.hpp"
#include "ui/window/tool_commands.hpp"
#include "ui/window/view_commands.hpp"
#include "ui/window/workplace.hpp"

namespace sumpwright::ui::window
{

namespace
{

constexpr QSize firstSize(1440, 900);
constexpr QSize frameRoom(16, 48); // for a frame around the window, which nobody knows before it stands
constexpr int layoutVersion = 3;   // of the saved panels: raise it when panels come or go

// The one plan file being dragged in; empty: something else.
QString planIn(const QMimeData& data)
{
    const QList<QUrl> urls = data.urls();
    return urls.size() == 1 && urls.constFirst().isLocalFile() ? urls.constFirst().toLocalFile() : QString();
}

} // namespace

MainWindow::MainWindow(Workplace& workplace) : m_workplace(workplace)
{
    build();
    addCommands();
    makeMenus();
    follow();
    restore();
    refreshTitle();
    refreshEmptyState();
    refreshEnabled();
    m_view->setFocus();
}

MainWindow::~MainWindow() = default;

void MainWindow::build()
{
    document::Document& document = m_workplace.document;
    setAcceptDrops(true);
    setAnimated(false);
    setDockNestingEnabled(true);

    auto* middle = new QWidget(this);
    auto* rows = new QVBoxLayout(middle);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(0);
    const auto display = [&document] {
        return text::DisplaySettings{document.view().unitSystem(), document.view().numberStyle()};
    };
    m_signs = new charts::VitalSigns(document, display, this);
    m_strips = new StripStack;
    m_view = new canvas::PlanView(document, m_workplace.canvas);
    m_view->setAcceptDrops(false); // plans are dropped on the window
    m_view->viewport()->setAcceptDrops(false);
    rows->addWidget(m_strips);
    rows->addWidget(m_view, 1);
    setCentralWidget(middle);

    m_panels = new Panels(document, *m_view, *this);
    m_status = new StatusLine(document, this);
    setStatusBar(m_status);
    m_commands = new Commands(this, m_view);
    m_files = new FileCommands({document, m_workplace.session, m_workplace.recent, m_workplace.state, *m_strips, *this,
                                [this] { m_panels->properties().finishEntry(); },
                                [this] {
                                    if (m_view->tool())
                                        m_view->tool()->conclude();
                                }});
    m_tools = new ToolCommands(*m_view, document, m_workplace.session, *m_status);
    m_examples = new QMenu(tr("Open an &example"), this);
    m_files->fillExampleMenu(*m_examples);
    m_empty = new EmptyState(m_examples, m_view);
    connect(m_empty, &EmptyState::drawFloorAsked, this, [this] { m_commands->find("place.floor")->trigger(); });
    connect(m_signs, &charts::VitalSigns::chartWanted, m_panels, &Panels::showChart);
    connect(m_signs, &charts::VitalSigns::findingsWanted, m_panels, &Panels::showFindings);
    connect(m_signs, &charts::VitalSigns::workingWanted, m_panels, &Panels::showSignWorking);
    connect(&document.view(), &document::ViewSettings::changed, m_signs, &charts::VitalSigns::refresh);
}

void MainWindow::addCommands()
{
    document::Document& document = m_workplace.document;
    m_files->addTo(*m_commands);
    m_commands->add({"file.picture",
                     Menu::file,
                     tr("Picture of the &plan…"),
                     tr("Writes the drawing as a PNG or SVG picture."),
                     "Ctrl+Shift+P",
                     {},
                     Scope::window,
                     false,
                     true},
                    [this] { savePicture(); });
    m_commands->add(
        {"file.close", Menu::file, tr("&Close"), tr("Closes this window."), "Ctrl+Q", {}, Scope::window, false, true},
        [this] { close(); });
    addUndoCommands();
    addEditCommands(*m_commands, document);
    addZoomCommands(*m_commands, *m_view);
    addDrawingCommands(*m_commands, *m_view);
    m_panels->addTo(*m_commands);
    m_commands->add({"view.reset", Menu::view, tr("Panels as on the first da&y"),
                     tr("Puts every panel back to its first place and size."), "Ctrl+Alt+0"},
                    [this] { m_panels->reset(); });
    m_commands->addCheckable(
        {"view.full", Menu::view, tr("F&ull screen"), tr("The window takes the whole screen."), "F11"},
        [this](bool on) { on ? showFullScreen() : showNormal(); });
    addPreferenceCommands(*m_commands, document, m_workplace.state);
    m_tools->addTo(*m_commands);
    addArrangeCommands(*m_commands, document);
    addCheckCommands();
    addHelpCommands();
    m_commands->setLetterKeys(document.view().letterKeys());
}

void MainWindow::addUndoCommands()
{
    QUndoStack& stack = m_workplace.document.undoStack();
    const auto add = [this](const char* id, const QString& word, const QString& tip, const char* key,
                            std::function<void()> run) {
        QAction* action = m_commands->add({id, Menu::edit, word, tip, key, word}, std::move(run));
        action->setEnabled(false);
        return action;
    };
    QAction* undo =
        add("edit.undo", tr("&Undo"), tr("Takes back the last step."), "Ctrl+Z", [&stack] { stack.undo(); });
    QAction* redo =
        add("edit.redo", tr("&Redo"), tr("Does the step again."), "Ctrl+Shift+Z", [&stack] { stack.redo(); });
    const auto reword = [](QAction* action, const QString& word, const QString& step) {
        action->setText(step.isEmpty() ? word : QStringLiteral("%1: %2").arg(word, step));
    };
    connect(&stack, &QUndoStack::undoTextChanged, undo, [=](const QString& step) { reword(undo, tr("&Undo"), step); });
    connect(&stack, &QUndoStack::redoTextChanged, redo, [=](const QString& step) { reword(redo, tr("&Redo"), step); });
    connect(&stack, &QUndoStack::canUndoChanged, undo, &QAction::setEnabled);
    connect(&stack, &QUndoStack::canRedoChanged, redo, &QAction::setEnabled);
}

void MainWindow::follow()
{
    document::Document& document = m_workplace.document;
    document::Session& session = m_workplace.session;
    connect(&session, &document::Session::nameChanged, this, &MainWindow::refreshTitle);
    connect(&session, &document::Session::modifiedChanged, this, &MainWindow::refreshTitle);
    connect(&document, &document::Document::planChanged, this, [this] {
        m_strips->drop(QStringLiteral("refused"));
        refreshEmptyState();
    });
    connect(m_tools, &ToolCommands::toolChanged, this, &MainWindow::refreshEmptyState);
    connect(&document, &document::Document::selectionChanged, this, &MainWindow::refreshEnabled);
    connect(&document, &document::Document::readOnlyChanged, this, &MainWindow::refreshEnabled);
    connect(&document, &document::Document::refused, this, &MainWindow::tellRefusal);
    connect(m_files, &FileCommands::opened, this, [this] {
        m_view->planScene().setPlanFolder(QFileInfo(m_workplace.session.path()).absolutePath());
        m_view->zoomToFit();
        m_view->setFocus();
    });
    connect(m_view, &canvas::PlanView::pointerMoved, m_status,
            [this](plan::Point place) { m_status->showPointer(place); });
    connect(m_view, &canvas::PlanView::pointerLeft, m_status, [this] { m_status->showPointer({}); });
    connect(m_view, &canvas::PlanView::zoomChanged, m_status,
            [this] { m_status->showScale(m_view->scaleDenominator()); });
    connect(m_view, &canvas::PlanView::elementActivated, m_panels, &Panels::showProperties);
    connect(m_panels, &Panels::menuRequested, this, &MainWindow::showContextMenu);
    connect(m_panels, &Panels::deleteWanted, this, [this] { m_commands->find("edit.delete")->trigger(); });
    connect(m_view, &canvas::PlanView::menuRequested, this, &MainWindow::showContextMenu);
    if (auto* application = qobject_cast<Application*>(qApp))
        connect(application, &Application::faultMet, this, [this](const QString& what) {
            m_strips->show(
                {QStringLiteral("fault"),
                 Weight::fault,
                 tr("A fault of the program: %1. Your work is autosaved; save it and start again.").arg(what),
                 {{tr("Copy details"), [this] { m_commands->find("help.details")->trigger(); }}}});
        });
}

void MainWindow::start(const QString& planPath)
{
    if (!planPath.isEmpty())
        m_files->openPath(planPath);
    m_files->offerRecovery();
}

void MainWindow::restore()
{
    const WindowState& state = m_workplace.state;
    if (!restoreGeometry(state.geometry()))
        resize(firstSize.boundedTo(screen()->availableSize() - frameRoom));
    if (!restoreState(state.layout(), layoutVersion))
        m_panels->reset();
    m_panels->levels().setMode(state.section() ? section::Mode::section : section::Mode::elevation);
    m_panels->levels().setHeights(state.heights());
    m_panels->layoutRestored();
    m_panels->setFoldedCharts(state.foldedCharts());
    m_commands->find("view.full")->setChecked(isFullScreen());
}

void MainWindow::closeEvent(QCloseEvent* event)
{
    if (!m_files->mayLeave())
        return event->ignore();
    WindowState& state = m_workplace.state;
    state.setGeometry(saveGeometry());
    state.setLayout(saveState(layoutVersion));
    state.setFoldedCharts(m_panels->foldedCharts());
    state.setSection(m_panels->levels().mode() == section::Mode::section);
    state.setHeights(m_panels->levels().heights());
    m_workplace.session.close();
    event->accept();
}

void MainWindow::dragEnterEvent(QDragEnterEvent* event)
{
    if (!planIn(*event->mimeData()).isEmpty())
        event->acceptProposedAction();
}

void MainWindow::dropEvent(QDropEvent* event)
{
    event->acceptProposedAction();
    m_files->openPath(planIn(*event->mimeData()));
}

void MainWindow::refreshTitle()
{
    QString name = m_workplace.session.displayName();
    name.replace(QStringLiteral("[*]"), QStringLiteral("[*][*]")); // Qt's own mark for "modified here"
    if (m_workplace.document.readOnly())
        name = tr("%1 (for reading only)").arg(name);
    setWindowTitle(QStringLiteral("%1[*]").arg(name));
    setWindowFilePath(m_workplace.session.path());
    setWindowModified(m_workplace.session.modified());
}

void MainWindow::refreshEmptyState()
{
    m_empty->setVisible(isBlank(m_workplace.document.shown()) && !m_workplace.document.readOnly() &&
                        m_tools->selecting());
}

void MainWindow::refreshEnabled()
{
    m_commands->setReadOnly(m_workplace.document.readOnly());
    followSelection(*m_commands, m_workplace.document);
    refreshTitle();
}

void MainWindow::tellRefusal(const QString& where, const QString& what, const QString& mend)
{
    QString message = where.isEmpty() ? what : QStringLiteral("%1: %2").arg(where, what);
    if (!message.isEmpty() && !message.endsWith(u'.'))
        message += u'.';
    if (!message.isEmpty())
        message.front() = message.front().toUpper();
    if (!mend.isEmpty()) {
        message += u' ' + mend.left(1).toUpper() + mend.mid(1);
        if (!message.endsWith(u'.'))
            message += u'.';
    }
    m_strips->show({QStringLiteral("refused"), Weight::caution, message, {}});
}

} // namespace sumpwright::ui::window
