// The tag of one element; over several there is nothing to name.
#pragma once

#include "ui/properties/section.hpp"

namespace sumpwright::ui::properties
{

class NameSection : public Section
{
    Q_OBJECT

public:
    explicit NameSection(Chosen chosen, QWidget* parent = nullptr);
};

} // namespace sumpwright::ui::properties
