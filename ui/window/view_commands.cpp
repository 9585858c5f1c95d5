#include "ui/window/view_commands.hpp"

#include <QActionGroup>

#include "ui/canvas/canvas_settings.hpp"
#include "ui/canvas/plan_view.hpp"
#include "ui/document/document.hpp"
#include "ui/document/view_settings.hpp"
#include "ui/style/plain_style.hpp"
#include "ui/window/commands.hpp"
#include "ui/window/window_state.hpp"

namespace sumpwright::ui::window
{

namespace
{

using document::SchemeChoice;
using units::UnitSystem;

style::Scheme schemeOf(SchemeChoice choice)
{
    switch (choice) {
    case SchemeChoice::light:
        return style::Scheme::light;
    case SchemeChoice::dark:
        return style::Scheme::dark;
    case SchemeChoice::asDesktop:
        return style::desktopScheme();
    }
    return style::Scheme::light;
}

void group(Commands& commands, std::initializer_list<const char*> ids)
{
    auto* actions = new QActionGroup(&commands);
    for (const char* id : ids)
        actions->addAction(commands.find(id));
}

} // namespace

void addZoomCommands(Commands& commands, canvas::PlanView& view)
{
    commands.add({"view.fit", Menu::view, Commands::tr("Whole &plan"), Commands::tr("Shows everything drawn."),
                  "Ctrl+0", Commands::tr("Whole plan")},
                 [&view] { view.zoomToFit(); });
    commands.add({"view.fit-selection", Menu::view, Commands::tr("What is &selected"),
                  Commands::tr("Shows what is selected as large as it fits."), "Ctrl+2"},
                 [&view] { view.zoomToSelection(); });
    commands.add({"view.scale", Menu::view, Commands::tr("Scale 1:5&0"),
                  Commands::tr("Shows the plan at 1:50, taken at 96 pixels an inch."), "Ctrl+1"},
                 [&view] { view.zoomToScale(); });
    commands.add({"view.in", Menu::view, Commands::tr("&Nearer"), Commands::tr("Enlarges the drawing."), "Ctrl++"},
                 [&view] { view.zoomIn(); });
    commands.add({"view.out", Menu::view, Commands::tr("&Farther"), Commands::tr("Shrinks the drawing."), "Ctrl+-"},
                 [&view] { view.zoomOut(); });
    commands.find("view.in")->setShortcuts(
        {QKeySequence(QStringLiteral("Ctrl++")), QKeySequence(QStringLiteral("Ctrl+="))});
}

void addDrawingCommands(Commands& commands, canvas::PlanView& view)
{
    canvas::CanvasSettings& settings = view.settings();
    const auto toggle = [&](const CommandSpec& spec, bool on, std::function<void(bool)> run) {
        commands.addCheckable(spec, std::move(run))->setChecked(on);
    };
    toggle({"view.grid",
            Menu::view,
            Commands::tr("&Grid"),
            Commands::tr("Shows the grid on the drawing."),
            "Ctrl+G",
            {},
            Scope::window,
            true,
            true},
           settings.gridShown(), [&settings](bool on) { settings.setGridShown(on); });
    toggle({"view.snap", Menu::view, Commands::tr("S&nap"),
            Commands::tr("Places keep to the grid, to edges and to connection points."), "Ctrl+Shift+G",
            Commands::tr("Snap")},
           settings.snapping(), [&settings](bool on) { settings.setSnapping(on); });
    toggle({"view.rulers", Menu::view, Commands::tr("&Rulers"), Commands::tr("Shows rulers beside the drawing."),
            "Ctrl+U"},
           settings.rulersShown(), [&settings](bool on) { settings.setRulersShown(on); });
    toggle({"view.labels", Menu::view, Commands::tr("&Labels"),
            Commands::tr("Shows tags, flows and levels on the drawing."), "Ctrl+L"},
           settings.labelsShown(), [&settings](bool on) { settings.setLabelsShown(on); });
    toggle({"view.legend", Menu::view, Commands::tr("Le&gend of symbols"),
            Commands::tr("Shows what each symbol on the drawing means."), "Ctrl+Shift+L"},
           settings.legendShown(), [&settings](bool on) { settings.setLegendShown(on); });
    const auto colour = [&](const char* id, const QString& text, const QString& tip, const char* key,
                            canvas::RunMeasure measure, bool first) {
        commands
            .addCheckable({id, Menu::view, text, tip, key, {}, Scope::window, true, first},
                          [&settings, measure](bool) { settings.setRunMeasure(measure); })
            ->setChecked(settings.runMeasure() == measure);
    };
    colour("view.runs-plain", Commands::tr("Runs in &one colour"), Commands::tr("Draws all pipe runs alike."),
           "Ctrl+Alt+6", canvas::RunMeasure::nothing, true);
    colour("view.runs-velocity", Commands::tr("Runs by &velocity"),
           Commands::tr("Colours the pipe runs by how fast their water runs, with its scale."), "Ctrl+Alt+7",
           canvas::RunMeasure::velocity, false);
    colour("view.runs-head", Commands::tr("Runs by &head"),
           Commands::tr("Colours the pipe runs by the level of the hydraulic grade, with its scale."), "Ctrl+Alt+8",
           canvas::RunMeasure::head, false);
    group(commands, {"view.runs-plain", "view.runs-velocity", "view.runs-head"});
    toggle({"view.touching", Menu::view, Commands::tr("Frame selects what it &touches"),
            Commands::tr("Drawing a frame selects what it touches, not only what lies inside."), "Ctrl+Shift+T"},
           settings.marqueeTouching(), [&settings](bool on) { settings.setMarqueeTouching(on); });
}

void addPreferenceCommands(Commands& commands, document::Document& document, WindowState& state)
{
    document::ViewSettings& view = document.view();
    const auto choose = [&](const char* id, const QString& text, const QString& tip, const char* key,
                            SchemeChoice choice, bool newGroup) {
        commands.addCheckable({id, Menu::view, text, tip, key, {}, Scope::window, true, newGroup}, [&, choice](bool) {
            view.setSchemeChoice(choice);
            state.setSchemeChoice(choice);
            style::dress(schemeOf(choice));
        });
    };
    choose("view.light", Commands::tr("L&ight colours"), Commands::tr("Dark ink on light paper."), "Ctrl+Alt+1",
           SchemeChoice::light, true);
    choose("view.dark", Commands::tr("&Dark colours"), Commands::tr("Light ink on dark paper."), "Ctrl+Alt+2",
           SchemeChoice::dark, false);
    choose("view.desktop", Commands::tr("Colours as the des&ktop"), Commands::tr("Light or dark as the desktop is."),
           "Ctrl+Alt+3", SchemeChoice::asDesktop, false);
    group(commands, {"view.light", "view.dark", "view.desktop"});
    const auto measure = [&](const char* id, const QString& text, const QString& tip, const char* key,
                             UnitSystem system, bool newGroup) {
        commands.addCheckable({id, Menu::view, text, tip, key, {}, Scope::window, true, newGroup}, [&, system](bool) {
            view.setUnitSystem(system);
            state.setUnitSystem(system);
        });
    };
    measure("view.metric", Commands::tr("&Metric units"), Commands::tr("Metres, litres, kilograms."), "Ctrl+Alt+4",
            UnitSystem::metric, true);
    measure("view.us", Commands::tr("&US units"), Commands::tr("Feet, US gallons, pounds; the file stays metric."),
            "Ctrl+Alt+5", UnitSystem::us, false);
    group(commands, {"view.metric", "view.us"});
    commands.addCheckable({"view.letters",
                           Menu::view,
                           Commands::tr("Letter &keys in the plan"),
                           Commands::tr("Single letters choose a tool while the plan has the keyboard."),
                           "Ctrl+Alt+K",
                           {},
                           Scope::window,
                           true,
                           true},
                          [&](bool on) {
                              view.setLetterKeys(on);
                              state.setLetterKeys(on);
                              commands.setLetterKeys(on);
                          });

    view.setSchemeChoice(state.schemeChoice());
    view.setUnitSystem(state.unitSystem(view.unitSystem()));
    view.setLetterKeys(state.letterKeys());
    style::dress(schemeOf(view.schemeChoice()));
    commands
        .find(view.schemeChoice() == SchemeChoice::light  ? "view.light"
              : view.schemeChoice() == SchemeChoice::dark ? "view.dark"
                                                          : "view.desktop")
        ->setChecked(true);
    commands.find(view.unitSystem() == UnitSystem::us ? "view.us" : "view.metric")->setChecked(true);
    commands.find("view.letters")->setChecked(view.letterKeys());
}

} // namespace sumpwright::ui::window
