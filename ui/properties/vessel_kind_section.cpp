#include "ui/properties/vessel_kind_section.hpp"

#include "core/plan/edits/vessel.hpp"
#include "ui/properties/enum_choice.hpp"

namespace sumpwright::ui::properties
{

VesselKindSection::VesselKindSection(Chosen about, QWidget* parent) : Section(std::move(about), {}, parent)
{
    using Kind = plan::VesselKind;
    const auto read = [this](const plan::Plan& plan) {
        return sharedOver<std::string>(plan.vessels, chosen().ids,
                                       [](const plan::Vessel& vessel) { return keyOf(vessel.kind); });
    };
    const auto make = [this](const std::string& key) { return plan::setVesselKind(chosen().ids, enumOf<Kind>(key)); };
    addRow(tr("Kind"),
           choiceField(tr("Kind"),
                       choicesOf({Kind::fishTank, Kind::sump, Kind::mediaBed, Kind::raftBed, Kind::settler}), read,
                       make));
}

} // namespace sumpwright::ui::properties
