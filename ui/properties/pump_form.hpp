// PumpForm: one pump or several: model or own curve, speed, where it stands, and what it does.
#pragma once

#include "ui/properties/form.hpp"

namespace sumpwright::ui::properties
{

class PumpForm : public Form
{
    Q_OBJECT

public:
    PumpForm(document::Document& document, std::vector<base::Id> pumps, QWidget* parent = nullptr);
};

} // namespace sumpwright::ui::properties
