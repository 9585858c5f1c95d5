#include "ui/properties/chosen.hpp"

#include "ui/document/view_settings.hpp"

namespace sumpwright::ui::properties
{

text::DisplaySettings Chosen::display() const { return {document.view().unitSystem(), document.view().numberStyle()}; }

} // namespace sumpwright::ui::properties
