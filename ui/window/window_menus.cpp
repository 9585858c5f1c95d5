// MainWindow's menus, tool bar, and the commands of the menus Check and Help.
#include <algorithm>

#include <QApplication>
#include <QClipboard>
#include <QFileDialog>
#include <QFileInfo>
#include <QMenu>
#include <QMenuBar>
#include <QToolBar>
#include <QToolButton>

#include "ui/canvas/plan_view.hpp"
#include "ui/charts/chart_panel.hpp"
#include "ui/charts/vital_signs.hpp"
#include "ui/design/design_panel.hpp"
#include "ui/document/view_settings.hpp"
#include "ui/properties/properties_panel.hpp"
#include "ui/style/file_box.hpp"
#include "ui/window/about.hpp"
#include "ui/window/commands.hpp"
#include "ui/window/file_commands.hpp"
#include "ui/window/log_file.hpp"
#include "ui/window/main_window.hpp"
#include "ui/window/message_strip.hpp"
#include "ui/window/panels.hpp"
#include "ui/window/picture.hpp"
#include "ui/window/workplace.hpp"

namespace sumpwright::ui::window
{

namespace
{

QString titleOf(Menu menu)
{
    switch (menu) {
    case Menu::file:
        return MainWindow::tr("&File");
    case Menu::edit:
        return MainWindow::tr("&Edit");
    case Menu::view:
        return MainWindow::tr("&View");
    case Menu::place:
        return MainWindow::tr("&Place");
    case Menu::arrange:
        return MainWindow::tr("&Arrange");
    case Menu::check:
        return MainWindow::tr("&Check");
    case Menu::help:
        return MainWindow::tr("&Help");
    }
    return {};
}

// Alt and a letter leads to one entry of a menu only: where two would share a letter the later one takes another of
// its own, or none.
void tellLettersApart(const QList<QAction*>& actions)
{
    QString taken;
    for (QAction* action : actions) {
        QString text = action->text();
        const qsizetype mark = text.indexOf(u'&');
        if (mark < 0 || mark + 1 >= text.size())
            continue;
        if (taken.contains(text[mark + 1].toUpper())) {
            text.remove(mark, 1);
            const auto free = std::find_if(text.cbegin(), text.cend(),
                                           [&](QChar c) { return c.isLetter() && !taken.contains(c.toUpper()); });
            const bool none = free == text.cend();
            if (!none)
                text.insert(free - text.cbegin(), u'&');
            action->setText(text);
            if (none)
                continue;
        }
        taken += text[text.indexOf(u'&') + 1].toUpper();
    }
}

} // namespace

void MainWindow::addCheckCommands()
{
    const auto add = [this](const char* id, const QString& text, const QString& tip, const char* key, bool newGroup,
                            std::function<void()> run) {
        m_commands->add({id, Menu::check, text, tip, key, {}, Scope::window, false, newGroup}, std::move(run));
    };
    add("check.next", tr("&Next finding"), tr("Goes to the next thing to be known about the plan."), "F8", false,
        [this] { m_panels->stepFinding(1); });
    add("check.previous", tr("&Finding before"), tr("Goes back to the finding before."), "Shift+F8", false,
        [this] { m_panels->stepFinding(-1); });
    const auto chart = [&](const char* id, const QString& text, const QString& tip, const char* key, const char* name,
                           bool newGroup) {
        add(id, text, tip, key, newGroup, [this, name] { m_panels->showChart(QString::fromLatin1(name)); });
    };
    chart("check.water", tr("&Water"), tr("What is where, running and after the pump stops."), "Alt+1", "water", true);
    chart("check.head", tr("&Head"), tr("Where the head goes along the worst path."), "Alt+2", "head", false);
    chart("check.duty", tr("&Duty point"), tr("Where pump curve and system curve meet."), "Alt+3", "duty", false);
    chart("check.floor", tr("F&loor load"), tr("Pressure under each footprint, and the total."), "Alt+4", "floor",
          false);
    addChartCommands();
    addWorkingCommands();
    addDesignCommands();
    add("check.site", tr("&Site data…"), tr("Name, client, altitude, temperatures, price of power."), "Ctrl+I", true,
        [this] {
            m_panels->showProperties();
            m_panels->properties().showSite();
            m_panels->properties().takeFocus();
        });
    add("check.datum", tr("Floor and &datum…"), tr("The floor's level, fall, drain point and clear height."),
        "Ctrl+Shift+I", false, [this] {
            m_panels->showProperties();
            m_panels->properties().showFloor();
            m_panels->properties().takeFocus();
        });
}

// What the menu of a chart offers too.
void MainWindow::addChartCommands()
{
    using Chart = charts::ChartPanel;
    const auto add = [this](const char* id, const QString& text, const QString& tip, const char* key, bool newGroup,
                            void (Chart::*run)()) {
        m_commands->add({id, Menu::check, text, tip, key, {}, Scope::window, false, newGroup},
                        [this, run] { (m_panels->chartAtHand().*run)(); });
    };
    add("chart.picture", tr("&Picture of the chart…"), tr("Saves the chart at hand as a PNG or SVG picture."),
        "Ctrl+Alt+P", true, &Chart::askPicture);
    add("chart.numbers", tr("N&umbers of the chart…"), tr("Saves the numbers of the chart at hand as a CSV table."),
        "Ctrl+Alt+N", false, &Chart::askNumbers);
    add("chart.copy-numbers", tr("&Copy the chart's numbers"), tr("Copies the numbers of the chart at hand."),
        "Ctrl+Alt+C", false, &Chart::copyNumbers);
    add("chart.copy-sentence", tr("Copy the chart's s&entence"), tr("Copies what the chart at hand says in words."),
        "Ctrl+Alt+S", false, &Chart::copySentence);
    add("chart.working", tr("Show the chart's &working"),
        tr("Opens the worksheet behind the value read in the chart at hand, or behind its figure."), "Ctrl+Alt+W",
        false, &Chart::askWorking);
}

// What the menu of a figure in the strip offers too.
void MainWindow::addWorkingCommands()
{
    const auto add = [this](const char* id, const QString& text, const QString& tip, const char* key, const char* sign,
                            bool newGroup) {
        m_commands->add({id, Menu::check, text, tip, key, {}, Scope::window, false, newGroup},
                        [this, sign] { m_panels->showSignWorking(QString::fromLatin1(sign)); });
    };
    add("working.water", tr("Working: &all water"), tr("How the water in the system adds up."), "Ctrl+Alt+Shift+W",
        "water", true);
    add("working.duty", tr("Working: pu&mp duty"), tr("How the duty point comes about."), "Ctrl+Alt+Shift+D", "duty",
        false);
    add("working.sump", tr("Working: sump &room"), tr("What comes down when the pump stops, and the room for it."),
        "Ctrl+Alt+Shift+R", "sump", false);
    add("working.floor", tr("Working: floor &total"), tr("How the load on the floor adds up."), "Ctrl+Alt+Shift+F",
        "floor", false);
}

void MainWindow::addDesignCommands()
{
    const auto add = [this](const char* id, const QString& text, const QString& tip, const char* key, bool newGroup,
                            design::Question question) {
        m_commands->add({id, Menu::check, text, tip, key, {}, Scope::window, false, newGroup},
                        [this, question] { m_panels->showDesign(question); });
    };
    add("design.valves", tr("Set the &valves"), tr("Finds the openings that give each inlet its target flow."),
        "Ctrl+Alt+V", true, design::Question::valves);
    add("design.pump", tr("Choose a &pump"), tr("Ranks the pumps that could do what is wanted."), "Ctrl+Alt+U", false,
        design::Question::pump);
    add("design.pipes", tr("Choose pipe si&zes"), tr("Weighs the cost of pipe against that of pumping."), "Ctrl+Alt+I",
        false, design::Question::pipes);
}

void MainWindow::addHelpCommands()
{
    m_commands->add({"help.keys", Menu::help, tr("&Keys"), tr("Lists every command with its key."), "F1"},
                    [this] { showKeys(*m_commands, this); });
    m_commands->add({"help.details", Menu::help, tr("Copy &details"),
                     tr("Copies version, system and the last lines of the log, for asking someone for help."),
                     "Ctrl+Shift+D"},
                    [this] {
                        QApplication::clipboard()->setText(details());
                        m_workplace.document.say(tr("Details copied. The log is %1").arg(logPath()));
                    });
    m_commands->add({"help.about", Menu::help, tr("&About Sumpwright"),
                     tr("Version, licence, and where the numbers come from."), "Shift+F1"},
                    [this] { showAbout(*m_workplace.document.catalogue(), this); });
}

void MainWindow::makeMenus()
{
    QList<QMenu*> menus;
    for (int i = 0; i < menuCount; ++i) {
        menus << menuBar()->addMenu(titleOf(static_cast<Menu>(i)));
        menus.back()->setToolTipsVisible(true);
    }
    auto* bar = addToolBar(tr("Tools"));
    bar->setObjectName(QStringLiteral("bar.tools"));
    bar->setMovable(false);
    bar->setToolButtonStyle(Qt::ToolButtonTextOnly);
    bar->toggleViewAction()->setVisible(false);                                               // always there
    if (auto* more = bar->findChild<QToolButton*>(QStringLiteral("qt_toolbar_ext_button"))) { // drawn as two arrows
        more->setAccessibleName(tr("More tools"));
        more->setToolTip(tr("Shows the tools that have no room here"));
    }
    for (const std::string& id : m_commands->order()) {
        const CommandSpec& spec = m_commands->spec(id);
        QMenu* menu = menus[static_cast<int>(spec.menu)];
        if (spec.newGroup)
            menu->addSeparator();
        menu->addAction(m_commands->find(id));
        if (id == "file.open") {
            QMenu* recent = menu->addMenu(tr("&Recent plans"));
            m_files->fillRecentMenu(*recent);
            menu->addMenu(m_examples);
        }
    }
    for (const QMenu* menu : menus)
        tellLettersApart(menu->actions());
    for (const Menu group : {Menu::file, Menu::edit, Menu::place, Menu::view}) {
        if (!bar->actions().isEmpty())
            bar->addSeparator();
        for (const std::string& id : m_commands->order())
            if (const CommandSpec& spec = m_commands->spec(id); spec.menu == group && !spec.barText.isEmpty())
                bar->addAction(m_commands->find(id));
    }
    addSignBar();
}

// Over the whole width, where all signs have room, so that the plan beneath does not move when one comes or goes.
void MainWindow::addSignBar()
{
    addToolBarBreak();
    auto* bar = addToolBar(tr("Vital signs"));
    bar->setObjectName(QStringLiteral("bar.signs"));
    bar->setMovable(false);
    bar->toggleViewAction()->setVisible(false); // always there
    bar->addWidget(m_signs);
}

void MainWindow::showContextMenu(QPoint global)
{
    QMenu menu(this);
    for (const std::string& id : m_commands->order()) {
        const CommandSpec& spec = m_commands->spec(id);
        QAction* action = m_commands->find(id);
        if ((spec.menu == Menu::edit || spec.menu == Menu::arrange) && action->isEnabled()) {
            if (spec.newGroup)
                menu.addSeparator();
            menu.addAction(action);
        }
    }
    menu.exec(global);
}

void MainWindow::savePicture()
{
    const auto assessment = m_workplace.document.assessment();
    if (!assessment || m_workplace.document.stale())
        return m_workplace.document.say(tr("The numbers are still being computed; try again in a moment."));
    QFileDialog dialog(this, tr("Picture of the plan"), m_workplace.state.lastFolder(),
                       tr("PNG picture (*.png);;SVG drawing (*.svg)"));
    style::showKindsOnly(dialog);
    dialog.setAcceptMode(QFileDialog::AcceptSave);
    dialog.setDefaultSuffix(QStringLiteral("png"));
    connect(&dialog, &QFileDialog::filterSelected, &dialog, [&dialog](const QString& filter) {
        dialog.setDefaultSuffix(filter.contains(QStringLiteral("svg")) ? QStringLiteral("svg") : QStringLiteral("png"));
    });
    dialog.selectFile(m_workplace.session.displayName() + QStringLiteral(".png"));
    if (dialog.exec() != QDialog::Accepted || dialog.selectedFiles().isEmpty())
        return;
    PictureWish wish;
    wish.path = dialog.selectedFiles().constFirst();
    wish.planFolder = QFileInfo(m_workplace.session.path()).absolutePath();
    wish.width = 2400;
    wish.system = m_workplace.document.view().unitSystem();
    wish.numbers = m_workplace.document.view().numberStyle();
    wish.runMeasure = m_workplace.canvas.runMeasure();
    if (const auto refusal = writePicture(*assessment, wish))
        return tellRefusal(QString(), QString::fromStdString(refusal->what), QString::fromStdString(refusal->accepts));
    m_workplace.document.say(tr("Picture written to %1").arg(wish.path));
}

} // namespace sumpwright::ui::window
