#include "ui/properties/position_section.hpp"

#include <algorithm>

#include "core/plan/edits/move.hpp"
#include "ui/properties/each.hpp"

namespace sumpwright::ui::properties
{

PositionSection::PositionSection(Chosen about, QWidget* parent) : Section(std::move(about), tr("Position"), parent)
{
    addPlaceRow(tr("x, to the right"), &plan::Point::x);
    addPlaceRow(tr("y, up the sheet"), &plan::Point::y);
    const auto& vessels = chosen().plan().vessels;
    if (std::all_of(chosen().ids.begin(), chosen().ids.end(), [&](base::Id id) { return vessels.find(id); }))
        addTurnRow();
}

void PositionSection::addPlaceRow(const QString& label, units::Length plan::Point::*along)
{
    const auto read = [this, along](const plan::Plan& plan) {
        Shared<units::Length> shared;
        for (const auto id : chosen().ids) {
            const plan::Point place = plan::anchorOf(plan, id);
            shared.add(place.*along);
        }
        return shared;
    };
    const auto make = [this, along](const units::Length& value) {
        return eachOf(chosen().ids, [&](base::Id id) {
            plan::Point place = plan::anchorOf(chosen().plan(), id);
            place.*along = value;
            return plan::moveElementTo(id, place);
        });
    };
    addRow(label, quantityField<units::Length>(label, read, make, {"m", "ft"}));
}

void PositionSection::addTurnRow()
{
    const auto read = [this](const plan::Plan& plan) {
        return sharedOver<units::Angle>(plan.vessels, chosen().ids,
                                        [](const plan::Vessel& vessel) { return vessel.turn; });
    };
    const auto make = [this](const units::Angle& turn) { return plan::setTurn(chosen().ids, turn); };
    addRow(tr("Turn, counter-clockwise"), quantityField<units::Angle>(tr("Turn"), read, make));
}

} // namespace sumpwright::ui::properties
