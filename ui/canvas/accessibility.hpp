// Lets a screen reader see the drawing: the plan view is a list, each element an item with name, place and state.
#pragma once

namespace sumpwright::ui::canvas
{

void installAccessibility(); // called by every plan view as it is made; calling it again does nothing

} // namespace sumpwright::ui::canvas
