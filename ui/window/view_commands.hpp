// The commands of the View menu: zoom, what is shown on the drawing, light or dark, units.
#pragma once

namespace sumpwright::ui::document
{
class Document;
}
namespace sumpwright::ui::canvas
{
class PlanView;
}

namespace sumpwright::ui::window
{

class Commands;
class WindowState;

void addZoomCommands(Commands& commands, canvas::PlanView& view);
void addDrawingCommands(Commands& commands, canvas::PlanView& view); // grid, snapping, rulers, labels, marquee
// Light, dark or as the desktop; metric or US; letter keys. Kept in `state`.
void addPreferenceCommands(Commands& commands, document::Document& document, WindowState& state);

} // namespace sumpwright::ui::window
