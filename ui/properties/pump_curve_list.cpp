#include "ui/properties/pump_curve_list.hpp"

#include <QPushButton>

#include "core/plan/edits/pump.hpp"
#include "ui/properties/field_row.hpp"

namespace sumpwright::ui::properties
{

namespace
{
class CurveRow : public FieldRow
{
public:
    CurveRow(Chosen pump, std::size_t index, QWidget* parent) : FieldRow(std::move(pump), {}, parent), m_index(index)
    {
        const auto number = static_cast<int>(index) + 1;
        setAccessibleName(PumpCurveList::tr("Point %1").arg(number));
        addLabel(QString::number(number));
        addField(coordinate<units::Flow>(PumpCurveList::tr("Point %1, flow").arg(number), &plan::CurvePoint::flow));
        addField(coordinate<units::Head>(PumpCurveList::tr("Point %1, head").arg(number), &plan::CurvePoint::head));
        addEnd(button(PumpCurveList::tr("Remove"), PumpCurveList::tr("Remove point %1").arg(number), [this] {
            auto curve = pumpNow().ownCurve;
            curve.erase(curve.begin() + static_cast<std::ptrdiff_t>(m_index));
            return plan::setPumpCurve(chosen().ids, std::move(curve), pumpNow().ownPower);
        }));
    }

private:
    const plan::Pump& pumpNow() const { return *chosen().plan().pumps.find(chosen().first()); }

    template <class Kind> EntryField* coordinate(const QString& name, Kind plan::CurvePoint::*which)
    {
        const auto read = [this, which](const plan::Plan& plan) {
            Shared<Kind> shared;
            const auto* pump = plan.pumps.find(chosen().first());
            if (pump && m_index < pump->ownCurve.size())
                shared.add(pump->ownCurve[m_index].*which);
            return shared;
        };
        return quantityField<Kind>(name, read, [this, which](const Kind& value) {
            auto curve = pumpNow().ownCurve;
            curve.at(m_index).*which = value;
            return plan::setPumpCurve(chosen().ids, std::move(curve), pumpNow().ownPower);
        });
    }

    std::size_t m_index;
};
} // namespace

PumpCurveList::PumpCurveList(Chosen about, QWidget* parent) : RowList(std::move(about), tr("Pump curve"), parent)
{
    addFact(tr("From the catalogue"), [this](const plan::Plan& plan) { return catalogueCurve(plan); });
    addRatings();
    const QString input = tr("Electrical input");
    auto* power = optionalField<units::Power>(
        input,
        [this](const plan::Plan& plan) {
            const auto* pump = plan.pumps.find(chosen().first());
            return sharedOne(pump ? pump->ownPower : std::optional<units::Power>());
        },
        [this](const std::optional<units::Power>& value) {
            const auto& pump = *chosen().plan().pumps.find(chosen().first());
            if (pump.twoNumbers && pump.ownCurve.size() == 2)
                return plan::setPumpRatings(chosen().ids, pump.ownCurve.front().head, pump.ownCurve.back().flow, value);
            return plan::setPumpCurve(chosen().ids, pump.ownCurve, value);
        },
        tr("not given"));
    auto* more = button(tr("Add point"), tr("Add a point to the curve"), [this] { return addPoint(); });
    addBelow(more);
    addRow(input, power);
    auto* heads = fieldHeads({tr("Flow"), tr("Head")}, true, this);
    addWide(heads);
    onRefresh([this, heads, more, power](const plan::Plan& plan) {
        const auto* pump = plan.pumps.find(chosen().first());
        const bool own = pump && pump->modelId.empty();
        const bool points = own && !pump->twoNumbers;
        setRowVisible(heads, points);
        more->setVisible(points);
        setRowVisible(power, own);
    });
}

RowList::Keys PumpCurveList::keysNow() const
{
    Keys keys;
    if (const auto* pump = chosen().plan().pumps.find(chosen().first());
        pump && pump->modelId.empty() && !pump->twoNumbers)
        for (std::size_t index = 0; index < pump->ownCurve.size(); ++index)
            keys.push_back(std::to_string(index));
    return keys;
}

Section* PumpCurveList::makeRow(const std::string&, std::size_t index) { return new CurveRow(chosen(), index, this); }

// The two numbers of the box, where the pump has no more.
void PumpCurveList::addRatings()
{
    const auto box = [this](const plan::Plan& plan) -> const plan::Pump* {
        const auto* pump = plan.pumps.find(chosen().first());
        return pump && pump->twoNumbers && pump->ownCurve.size() == 2 ? pump : nullptr;
    };
    const QString head = tr("Head at no flow"), flow = tr("Flow at no head");
    auto* headField = quantityField<units::Head>(
        head,
        [box](const plan::Plan& plan) {
            const auto* pump = box(plan);
            return pump ? sharedOne(pump->ownCurve.front().head) : Shared<units::Head>();
        },
        [this](const units::Head& value) {
            const auto& pump = *chosen().plan().pumps.find(chosen().first());
            return plan::setPumpRatings(chosen().ids, value, pump.ownCurve.back().flow, pump.ownPower);
        });
    auto* flowField = quantityField<units::Flow>(
        flow,
        [box](const plan::Plan& plan) {
            const auto* pump = box(plan);
            return pump ? sharedOne(pump->ownCurve.back().flow) : Shared<units::Flow>();
        },
        [this](const units::Flow& value) {
            const auto& pump = *chosen().plan().pumps.find(chosen().first());
            return plan::setPumpRatings(chosen().ids, pump.ownCurve.front().head, value, pump.ownPower);
        });
    addRow(head, headField);
    addRow(flow, flowField);
    addFact(tr("Curve"),
            [box](const plan::Plan& plan) { return box(plan) ? tr("estimate: H = H₀ (1 − (Q/Q₀)^1.7)") : QString(); });
    onRefresh([this, box, headField, flowField](const plan::Plan& plan) {
        setRowVisible(headField, box(plan) != nullptr);
        setRowVisible(flowField, box(plan) != nullptr);
    });
}

QString PumpCurveList::catalogueCurve(const plan::Plan& plan) const
{
    const auto* pump = plan.pumps.find(chosen().first());
    if (!pump || pump->modelId.empty())
        return {};
    const auto model = chosen().document.catalogue()->pump(pump->modelId);
    if (!model)
        return tr("%1 is not in the catalogue").arg(QString::fromStdString(pump->modelId));
    QStringList points;
    for (const auto& point : (*model)->points)
        points << tr("%1 at %2")
                      .arg(chosen().display().quantityText(point.flow), chosen().display().quantityText(point.head));
    return points.join(u'\n');
}

// Between the last two points, so that the curve keeps its shape.
plan::Edit PumpCurveList::addPoint() const
{
    const auto& pump = *chosen().plan().pumps.find(chosen().first());
    auto curve = pump.ownCurve;
    if (curve.size() >= 2) {
        const auto& last = curve[curve.size() - 1];
        const auto& before = curve[curve.size() - 2];
        const plan::CurvePoint middle{(before.flow + last.flow) / 2.0, (before.head + last.head) / 2.0};
        curve.insert(curve.end() - 1, middle);
    }
    return plan::setPumpCurve(chosen().ids, std::move(curve), pump.ownPower);
}

} // namespace sumpwright::ui::properties
