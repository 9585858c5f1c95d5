#include "ui/properties/run_form.hpp"

#include "ui/properties/extra_list.hpp"
#include "ui/properties/loss_list.hpp"
#include "ui/properties/name_section.hpp"
#include "ui/properties/run_ends_section.hpp"
#include "ui/properties/run_flow_section.hpp"
#include "ui/properties/run_section.hpp"
#include "ui/properties/service_section.hpp"
#include "ui/properties/valve_list.hpp"
#include "ui/properties/vertex_list.hpp"

namespace sumpwright::ui::properties
{

RunForm::RunForm(document::Document& document, std::vector<base::Id> runs, QWidget* parent)
    : Form({document, std::move(runs)}, parent)
{
    add(new NameSection(chosen()));
    add(new RunSection(chosen()));
    if (!chosen().one())
        return;
    add(new RunFlowSection(chosen()));
    add(new RunEndsSection(chosen()));
    add(new VertexList(chosen()));
    add(new LossList(chosen()));
    add(new ValveList(chosen()));
    add(new ExtraList(chosen()));
    add(new ServiceSection(chosen()));
}

} // namespace sumpwright::ui::properties
