#include "ui/properties/vessel_form.hpp"

#include <algorithm>

#include "ui/properties/medium_section.hpp"
#include "ui/properties/name_section.hpp"
#include "ui/properties/port_list.hpp"
#include "ui/properties/position_section.hpp"
#include "ui/properties/service_section.hpp"
#include "ui/properties/stand_section.hpp"
#include "ui/properties/vessel_kind_section.hpp"
#include "ui/properties/vessel_levels_section.hpp"
#include "ui/properties/vessel_size_section.hpp"

namespace sumpwright::ui::properties
{

VesselForm::VesselForm(document::Document& document, std::vector<base::Id> vessels, QWidget* parent)
    : Form({document, std::move(vessels)}, parent)
{
    const auto& ids = chosen().ids;
    const auto all = [&](plan::VesselKind kind) {
        return std::all_of(ids.begin(), ids.end(), [&](base::Id id) {
            const auto* vessel = chosen().plan().vessels.find(id);
            return vessel && vessel->kind == kind;
        });
    };
    add(new NameSection(chosen()));
    add(new VesselKindSection(chosen()));
    add(new VesselLevelsSection(chosen(), all(plan::VesselKind::sump)));
    add(new VesselSizeSection(chosen()));
    if (all(plan::VesselKind::mediaBed))
        add(new MediumSection(chosen()));
    add(new PositionSection(chosen()));
    if (chosen().one())
        add(new PortList(chosen()));
    add(new StandSection(chosen()));
    if (chosen().one() && (all(plan::VesselKind::mediaBed) || all(plan::VesselKind::raftBed)))
        add(new ServiceSection(chosen()));
}

} // namespace sumpwright::ui::properties
