// TeeForm: level and place of tees, and how high the water would stand there.
#pragma once

#include "ui/properties/form.hpp"

namespace sumpwright::ui::properties
{

class TeeForm : public Form
{
    Q_OBJECT

public:
    TeeForm(document::Document& document, std::vector<base::Id> tees, QWidget* parent = nullptr);
};

} // namespace sumpwright::ui::properties
