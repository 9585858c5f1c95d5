// FixtureForm: walls, doors, posts and power points: kind, ends, size, height, level.
#pragma once

#include "ui/properties/form.hpp"

namespace sumpwright::ui::properties
{

class FixtureForm : public Form
{
    Q_OBJECT

public:
    FixtureForm(document::Document& document, std::vector<base::Id> fixtures, QWidget* parent = nullptr);
};

} // namespace sumpwright::ui::properties
