// DimensionForm: the ends of dimension lines, their distance, and how far off the line is drawn.
#pragma once

#include "ui/properties/form.hpp"

namespace sumpwright::ui::properties
{

class DimensionForm : public Form
{
    Q_OBJECT

public:
    DimensionForm(document::Document& document, std::vector<base::Id> dimensions, QWidget* parent = nullptr);
};

} // namespace sumpwright::ui::properties
