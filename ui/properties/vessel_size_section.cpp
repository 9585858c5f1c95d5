#include "ui/properties/vessel_size_section.hpp"

#include <algorithm>

#include "core/plan/edits/vessel.hpp"
#include "ui/properties/each.hpp"

namespace sumpwright::ui::properties
{

namespace
{
constexpr const char* round = "round";
constexpr const char* rectangle = "rectangle";
constexpr const char* caged = "caged";

std::string shapeKey(const plan::Shape& shape)
{
    if (std::holds_alternative<plan::RoundShape>(shape))
        return round;
    return std::holds_alternative<plan::RectangleShape>(shape) ? rectangle : caged;
}

// Another shape of about the same size.
plan::Shape reshaped(const plan::Shape& shape, const std::string& key)
{
    const plan::RectangleShape frame = plan::frameOf(shape);
    if (key == round)
        return plan::RoundShape{std::max(frame.length, frame.width)};
    if (key == rectangle)
        return frame;
    return plan::CagedShape{};
}

template <class Wanted> bool allAre(const plan::Plan& plan, const std::vector<base::Id>& ids)
{
    return std::all_of(ids.begin(), ids.end(), [&](base::Id id) {
        const auto* vessel = plan.vessels.find(id);
        return vessel && std::holds_alternative<Wanted>(vessel->shape);
    });
}
} // namespace

VesselSizeSection::VesselSizeSection(Chosen about, QWidget* parent) : Section(std::move(about), tr("Size"), parent)
{
    addShapeRow();
    auto* diameter = addDiameterRow();
    auto* length = addSideRow(tr("Length, outside"), &plan::RectangleShape::length);
    auto* width = addSideRow(tr("Width, outside"), &plan::RectangleShape::width);
    onRefresh([=, this](const plan::Plan& plan) {
        setRowVisible(diameter, allAre<plan::RoundShape>(plan, chosen().ids));
        const bool sides = allAre<plan::RectangleShape>(plan, chosen().ids);
        setRowVisible(length, sides);
        setRowVisible(width, sides);
    });
    addWallRows();
}

void VesselSizeSection::addShapeRow()
{
    const QString label = tr("Shape");
    std::vector<Choice> shapes{{round, tr("Round"), {}},
                               {rectangle, tr("Rectangle"), {}},
                               {caged, tr("Caged, 1 000 L"), tr("1.2 m by 1.0 m outside, on its own pallet")}};
    addRow(label, choiceField(
                      label, std::move(shapes),
                      [this](const plan::Plan& plan) {
                          return sharedOver<std::string>(plan.vessels, chosen().ids,
                                                         [](const auto& vessel) { return shapeKey(vessel.shape); });
                      },
                      [this](const std::string& key) {
                          return eachOf(chosen().ids, [&](base::Id id) {
                              const auto* vessel = chosen().plan().vessels.find(id);
                              return plan::setShape({id}, reshaped(vessel->shape, key));
                          });
                      }));
}

EntryField* VesselSizeSection::addDiameterRow()
{
    const QString label = tr("Diameter, outside");
    auto* field = quantityField<units::Length>(
        label,
        [this](const plan::Plan& plan) {
            return sharedOver<units::Length>(plan.vessels, chosen().ids,
                                             [](const auto& vessel) { return plan::frameOf(vessel.shape).length; });
        },
        [this](const units::Length& diameter) { return plan::setShape(chosen().ids, plan::RoundShape{diameter}); });
    addRow(label, field);
    return field;
}

EntryField* VesselSizeSection::addSideRow(const QString& label, units::Length plan::RectangleShape::*side)
{
    auto* field = quantityField<units::Length>(
        label,
        [this, side](const plan::Plan& plan) {
            return sharedOver<units::Length>(plan.vessels, chosen().ids,
                                             [side](const auto& vessel) { return plan::frameOf(vessel.shape).*side; });
        },
        [this, side](const units::Length& value) {
            return eachOf(chosen().ids, [&](base::Id id) {
                plan::RectangleShape shape = plan::frameOf(chosen().plan().vessels.find(id)->shape);
                shape.*side = value;
                return plan::setShape({id}, shape);
            });
        });
    addRow(label, field);
    return field;
}

void VesselSizeSection::addWallRows()
{
    const auto row = [this](const QString& label, units::Length plan::Vessel::*which,
                            plan::Edit (*edit)(std::vector<base::Id>, units::Length), text::EntryUnit unit) {
        addRow(label, quantityField<units::Length>(
                          label,
                          [this, which](const plan::Plan& plan) {
                              return sharedOver<units::Length>(plan.vessels, chosen().ids,
                                                               [which](const auto& vessel) { return vessel.*which; });
                          },
                          [this, edit](const units::Length& value) { return edit(chosen().ids, value); }, unit));
    };
    row(tr("Wall height, base to rim"), &plan::Vessel::wallHeight, &plan::setWallHeight, {});
    row(tr("Wall thickness"), &plan::Vessel::wallThickness, &plan::setWallThickness, text::inSmallSizes);
}

} // namespace sumpwright::ui::properties
