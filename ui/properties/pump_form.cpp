#include "ui/properties/pump_form.hpp"

#include "ui/properties/name_section.hpp"
#include "ui/properties/position_section.hpp"
#include "ui/properties/pump_curve_list.hpp"
#include "ui/properties/pump_duty_section.hpp"
#include "ui/properties/pump_section.hpp"
#include "ui/properties/service_section.hpp"

namespace sumpwright::ui::properties
{

PumpForm::PumpForm(document::Document& document, std::vector<base::Id> pumps, QWidget* parent)
    : Form({document, std::move(pumps)}, parent)
{
    add(new NameSection(chosen()));
    add(new PumpSection(chosen()));
    if (chosen().one()) {
        add(new PumpDutySection(chosen()));
        add(new PumpCurveList(chosen()));
        add(new ServiceSection(chosen()));
    }
    add(new PositionSection(chosen()));
}

} // namespace sumpwright::ui::properties
