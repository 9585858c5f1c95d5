// VesselForm: one vessel or several: kind, place, size, levels, medium, stand, ports. What only some kinds have is
// shown when all that are chosen have it.
#pragma once

#include "ui/properties/form.hpp"

namespace sumpwright::ui::properties
{

class VesselForm : public Form
{
    Q_OBJECT

public:
    VesselForm(document::Document& document, std::vector<base::Id> vessels, QWidget* parent = nullptr);
};

} // namespace sumpwright::ui::properties
