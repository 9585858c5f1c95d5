// FloorForm: outline by numbers, level, fall, drain point, height, slab, and the use it is compared with.
#pragma once

#include "ui/properties/form.hpp"

namespace sumpwright::ui::properties
{

class FloorForm : public Form
{
    Q_OBJECT

public:
    explicit FloorForm(document::Document& document, QWidget* parent = nullptr);

protected:
    QString headingText() const override;
};

} // namespace sumpwright::ui::properties
