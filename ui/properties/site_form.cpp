#include "ui/properties/site_form.hpp"

#include "ui/properties/site_sections.hpp"

namespace sumpwright::ui::properties
{

SiteForm::SiteForm(document::Document& document, QWidget* parent) : Form({document, {}}, parent)
{
    add(new SiteNamesSection(chosen()));
    add(new SiteConditionsSection(chosen()));
    add(new SiteSketchSection(chosen()));
    add(new TotalsSection(chosen()));
    add(new SitePricesSection(chosen()));
    add(new ClearancesSection(chosen()));
}

QString SiteForm::headingText() const { return tr("Site"); }

} // namespace sumpwright::ui::properties
