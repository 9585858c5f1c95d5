// What kind of vessel it is. A change keeps sizes and ports; the panel then shows the form of the new kind.
#pragma once

#include "ui/properties/section.hpp"

namespace sumpwright::ui::properties
{

class VesselKindSection : public Section
{
    Q_OBJECT

public:
    explicit VesselKindSection(Chosen chosen, QWidget* parent = nullptr);
};

} // namespace sumpwright::ui::properties
