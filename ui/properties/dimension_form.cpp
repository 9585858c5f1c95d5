#include "ui/properties/dimension_form.hpp"

#include "core/plan/edits/annotation.hpp"
#include "ui/properties/each.hpp"

namespace sumpwright::ui::properties
{

namespace
{
class DimensionSection : public Section
{
public:
    explicit DimensionSection(Chosen dimensions) : Section(std::move(dimensions), {})
    {
        addFact(DimensionForm::tr("Distance"), [this](const plan::Plan& plan) {
            const auto* line = plan.dimensions.find(chosen().first());
            return line && chosen().one() ? chosen().display().quantityText(plan::distanceBetween(line->from, line->to))
                                          : QString();
        });
        const QString offset = DimensionForm::tr("Drawn off by");
        addRow(offset, quantityField<units::Length>(
                           offset,
                           [this](const plan::Plan& plan) {
                               return sharedOver<units::Length>(plan.dimensions, chosen().ids,
                                                                [](const auto& line) { return line.offset; });
                           },
                           [this](const units::Length& value) { return plan::setDimensionOffset(chosen().ids, value); },
                           {"m", "ft"}));
        addEndRow(DimensionForm::tr("Start, x"), &plan::DimensionLine::from, &plan::Point::x);
        addEndRow(DimensionForm::tr("Start, y"), &plan::DimensionLine::from, &plan::Point::y);
        addEndRow(DimensionForm::tr("End, x"), &plan::DimensionLine::to, &plan::Point::x);
        addEndRow(DimensionForm::tr("End, y"), &plan::DimensionLine::to, &plan::Point::y);
    }

private:
    void addEndRow(const QString& label, plan::Point plan::DimensionLine::*end, units::Length plan::Point::*along)
    {
        const auto read = [this, end, along](const plan::Plan& plan) {
            return sharedOver<units::Length>(plan.dimensions, chosen().ids,
                                             [end, along](const auto& line) { return (line.*end).*along; });
        };
        const auto make = [this, end, along](const units::Length& value) {
            return eachOf(chosen().ids, [&](base::Id id) {
                plan::DimensionLine changed = *chosen().plan().dimensions.find(id);
                (changed.*end).*along = value;
                return plan::setDimensionEnds(id, changed.from, changed.to);
            });
        };
        addRow(label, quantityField<units::Length>(label, read, make, {"m", "ft"}));
    }
};
} // namespace

DimensionForm::DimensionForm(document::Document& document, std::vector<base::Id> dimensions, QWidget* parent)
    : Form({document, std::move(dimensions)}, parent)
{
    add(new DimensionSection(chosen()));
}

} // namespace sumpwright::ui::properties
