// RunForm: one pipe run or several: pipe, service, ends, levels, fall, every fitting with its K, valves, what it
// carries.
#pragma once

#include "ui/properties/form.hpp"

namespace sumpwright::ui::properties
{

class RunForm : public Form
{
    Q_OBJECT

public:
    RunForm(document::Document& document, std::vector<base::Id> runs, QWidget* parent = nullptr);
};

} // namespace sumpwright::ui::properties
