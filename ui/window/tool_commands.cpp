#include "ui/window/tool_commands.hpp"
#include "ui/style/file_box.hpp"

#include <QActionGroup>
#include <QDir>
#include <QFile>
#include <QFileInfo>

#include "core/plan/edits/underlay.hpp"
#include "ui/canvas/plan_view.hpp"
#include "ui/canvas/scene_point.hpp"
#include "ui/document/document.hpp"
#include "ui/document/session.hpp"
#include "ui/window/commands.hpp"
#include "ui/window/status_line.hpp"

namespace sumpwright::ui::window
{

ToolCommands::ToolCommands(canvas::PlanView& view, document::Document& document, document::Session& session,
                           StatusLine& status)
    : QObject(&view), m_view(view), m_document(document), m_session(session), m_box(view)
{
    connect(&m_box, &tools::Toolbox::activated, this, &ToolCommands::toolChanged);
    connect(&m_box, &tools::Toolbox::hintChanged, &status, &StatusLine::showHint);
    status.showHint(m_box.hint());
}

void ToolCommands::addTo(Commands& commands)
{
    auto* group = new QActionGroup(this);
    for (const tools::ToolSpec& tool : m_box.specs()) {
        QAction* action = commands.addCheckable(
            {tool.id, Menu::place, tool.text, tool.tip, tool.key, tool.barText, Scope::planView, true, tool.newGroup},
            [this, id = tool.id](bool) {
                m_box.activate(id);
                m_view.setFocus(Qt::OtherFocusReason);
            });
        group->addAction(action);
        action->setChecked(tool.id == m_box.active());
        if (tool.changesPlan)
            commands.markChanging(tool.id);
    }
    connect(&m_box, &tools::Toolbox::activated, this,
            [&commands](const QString& id) { commands.find(id.toStdString())->setChecked(true); });
    commands.add({"place.connect",
                  Menu::place,
                  tr("C&onnect the two selected"),
                  tr("Draws a pipe run between the two things selected."),
                  "Ctrl+K",
                  {},
                  Scope::window,
                  false,
                  true},
                 [this] { m_box.connectSelected(); });
    commands.markChanging("place.connect");
    addSketchCommands(commands);
    addWalkCommands(commands);
}

// The keyboard's way to pick what is drawn without leaving the plan.
void ToolCommands::addWalkCommands(Commands& commands)
{
    const auto walk = [&](const char* id, const QString& text, const QString& tip, const char* key, int step) {
        commands.add({id, Menu::edit, text, tip, key, {}, Scope::planView}, [this, step] { m_view.selectNext(step); });
    };
    walk("select.next", tr("Select ne&xt"), tr("Selects the next thing drawn and shows it."), "N", 1);
    commands.add({"select.next-too", Menu::edit, tr("Select the next as &well"),
                  tr("Adds the next thing drawn to what is selected and shows it."), "Alt+N"},
                 [this] { m_view.selectNext(1, true); });
    commands.add({"edit.levels",
                  Menu::edit,
                  tr("Le&vels on the plan"),
                  tr("Types the levels of the selected pipe run where they stand on the plan."),
                  "L",
                  {},
                  Scope::planView},
                 [this] { m_box.typeLevels(); });
    commands.markChanging("edit.levels");
    walk("select.before", tr("Select one &before"), tr("Selects the thing drawn before and shows it."), "Shift+N", -1);
}

void ToolCommands::addSketchCommands(Commands& commands)
{
    commands.add({"place.sketch",
                  Menu::place,
                  tr("Site s&ketch under the plan…"),
                  tr("Lays a drawing or photograph of the site under the plan, to be scaled by two points."),
                  "Ctrl+Shift+K",
                  {},
                  Scope::window,
                  false,
                  true},
                 [this] { laySketch(); });
    commands.add({"place.sketch-away", Menu::place, tr("Take the sketch a&way"),
                  tr("Removes the site sketch from the plan; its file stays."), "Ctrl+Alt+Shift+K"},
                 [this] {
                     if (m_document.committed().underlay)
                         m_document.commit(plan::removeUnderlay());
                     else
                         m_document.say(tr("There is no site sketch under this plan."));
                 });
    commands.markChanging("place.sketch");
    commands.markChanging("place.sketch-away");
}

// The sketch is kept beside the plan's file, so that both can be handed on together.
void ToolCommands::laySketch()
{
    if (m_session.path().isEmpty())
        return m_document.say(tr("Save the plan first: the sketch is kept beside its file."));
    const QDir folder = QFileInfo(m_session.path()).absoluteDir();
    const QString chosen = style::askForFile(m_view.window(), tr("Site sketch"), folder.absolutePath(),
                                             tr("Pictures (*.png *.jpg *.jpeg *.bmp *.svg)"));
    if (chosen.isEmpty())
        return;
    const QString name = QFileInfo(chosen).fileName();
    const QString beside = folder.filePath(name);
    if (QFileInfo(chosen).canonicalFilePath() != QFileInfo(beside).canonicalFilePath()) {
        if (QFileInfo::exists(beside))
            return m_document.say(tr("A file named “%1” lies beside the plan already; rename one of them.").arg(name));
        if (!QFile::copy(chosen, beside))
            return m_document.say(tr("The sketch could not be copied beside the plan."));
    }
    plan::Underlay sketch;
    sketch.fileName = name.toStdString();
    if (m_document.commit(plan::setUnderlay(sketch)))
        m_document.say(tr("Now scale it: Place, Scale the site sketch."));
}

} // namespace sumpwright::ui::window
