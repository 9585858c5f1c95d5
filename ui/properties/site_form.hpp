// SiteForm: what holds for the whole plan; shown while nothing is chosen.
#pragma once

#include "ui/properties/form.hpp"

namespace sumpwright::ui::properties
{

class SiteForm : public Form
{
    Q_OBJECT

public:
    explicit SiteForm(document::Document& document, QWidget* parent = nullptr);

protected:
    QString headingText() const override;
};

} // namespace sumpwright::ui::properties
