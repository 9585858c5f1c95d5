#include "ui/properties/floor_form.hpp"

#include "ui/properties/floor_sections.hpp"

namespace sumpwright::ui::properties
{

FloorForm::FloorForm(document::Document& document, QWidget* parent) : Form({document, {}}, parent)
{
    add(new FloorSizeSection(chosen()));
    add(new FloorLevelsSection(chosen()));
    add(new FloorLoadSection(chosen()));
    add(new FloorCornersSection(chosen()));
}

QString FloorForm::headingText() const { return tr("Floor"); }

} // namespace sumpwright::ui::properties
