// MultiForm: elements of several kinds: what was chosen, and where it stands; each entry is one step over all.
#pragma once

#include "ui/properties/form.hpp"

namespace sumpwright::ui::properties
{

class MultiForm : public Form
{
    Q_OBJECT

public:
    MultiForm(document::Document& document, std::vector<base::Id> elements, QWidget* parent = nullptr);
};

} // namespace sumpwright::ui::properties
