#include "ui/properties/floor_sections.hpp"

#include <algorithm>

#include <QPushButton>

#include "core/plan/edits/floor.hpp"
#include "ui/properties/field_row.hpp"

namespace sumpwright::ui::properties
{

namespace
{
template <class T, class Of> Read<T> ofFloor(Of of)
{
    return [of](const plan::Plan& plan) { return sharedOne<T>(of(*plan.floor)); };
}

struct Extent {
    units::Length low;
    units::Length high;
};

Extent extentOf(const std::vector<plan::Point>& corners, units::Length plan::Point::*along)
{
    const auto [low, high] = std::minmax_element(corners.begin(), corners.end(),
                                                 [along](const auto& a, const auto& b) { return a.*along < b.*along; });
    return {(*low).*along, (*high).*along};
}

// The outline stretched in one direction from its low side; an empty one becomes a square.
std::vector<plan::Point> stretched(std::vector<plan::Point> corners, units::Length plan::Point::*along,
                                   units::Length size)
{
    const units::Length zero = units::metres(0.0);
    if (corners.empty())
        return {{zero, zero}, {size, zero}, {size, size}, {zero, size}};
    const Extent extent = extentOf(corners, along);
    const double ratio = (size / (extent.high - extent.low)).value();
    for (auto& corner : corners)
        corner.*along = extent.low + (corner.*along - extent.low) * ratio;
    return corners;
}

class CornerRow : public FieldRow
{
public:
    CornerRow(Chosen about, std::size_t index) : FieldRow(std::move(about), {}), m_index(index)
    {
        const auto number = static_cast<int>(index) + 1;
        setAccessibleName(FloorCornersSection::tr("Corner %1").arg(number));
        addLabel(QString::number(number));
        addField(coordinate(FloorCornersSection::tr("Corner %1, x").arg(number), &plan::Point::x));
        addField(coordinate(FloorCornersSection::tr("Corner %1, y").arg(number), &plan::Point::y));
        addEnd(
            button(FloorCornersSection::tr("Remove"), FloorCornersSection::tr("Remove corner %1").arg(number), [this] {
                auto corners = chosen().plan().floor->outline;
                corners.erase(corners.begin() + static_cast<std::ptrdiff_t>(m_index));
                return plan::setOutline(std::move(corners));
            }));
    }

private:
    EntryField* coordinate(const QString& name, units::Length plan::Point::*which)
    {
        const auto read = [this, which](const plan::Plan& plan) {
            Shared<units::Length> shared;
            if (m_index < plan.floor->outline.size())
                shared.add(plan.floor->outline[m_index].*which);
            return shared;
        };
        return quantityField<units::Length>(name, read,
                                            [this, which](const units::Length& value) {
                                                auto corners = chosen().plan().floor->outline;
                                                corners.at(m_index).*which = value;
                                                return plan::setOutline(std::move(corners));
                                            },
                                            {"m", "ft"});
    }

    std::size_t m_index;
};
} // namespace

FloorSizeSection::FloorSizeSection(Chosen about, QWidget* parent) : Section(std::move(about), tr("Size"), parent)
{
    addSizeRow(tr("Length, along x"), &plan::Point::x);
    addSizeRow(tr("Width, along y"), &plan::Point::y);
    addFact(tr("Area"), [this](const plan::Plan& plan) {
        return plan.floor->outline.empty() ? tr("no floor drawn yet: a length draws a square one")
                                           : chosen().display().quantityText(plan::areaOf(*plan.floor));
    });
}

void FloorSizeSection::addSizeRow(const QString& label, units::Length plan::Point::*along)
{
    const auto read = [along](const plan::Plan& plan) {
        std::optional<units::Length> size;
        if (!plan.floor->outline.empty()) {
            const Extent extent = extentOf(plan.floor->outline, along);
            size = extent.high - extent.low;
        }
        return sharedOne(size);
    };
    const auto make = [this, along](const std::optional<units::Length>& size) {
        auto corners = chosen().plan().floor->outline;
        return plan::setOutline(size ? stretched(std::move(corners), along, *size) : std::vector<plan::Point>{});
    };
    addRow(label, optionalField<units::Length>(label, read, make, tr("not drawn"), {"m", "ft"}));
}

FloorCornersSection::FloorCornersSection(Chosen about, QWidget* parent)
    : RowList(std::move(about), tr("Corners"), parent)
{
    addWide(fieldHeads({tr("x"), tr("y")}, true, this));
    addBelow(button(tr("Add corner"), tr("Add a corner"), [this] {
        auto corners = chosen().plan().floor->outline;
        if (corners.size() >= 2) // in the middle of the closing side
            corners.push_back(
                {(corners.back().x + corners.front().x) / 2.0, (corners.back().y + corners.front().y) / 2.0});
        return plan::setOutline(std::move(corners));
    }));
}

RowList::Keys FloorCornersSection::keysNow() const
{
    Keys keys;
    for (std::size_t index = 0; index < chosen().plan().floor->outline.size(); ++index)
        keys.push_back(std::to_string(index));
    return keys;
}

Section* FloorCornersSection::makeRow(const std::string&, std::size_t index) { return new CornerRow(chosen(), index); }

FloorLevelsSection::FloorLevelsSection(Chosen about, QWidget* parent) : Section(std::move(about), tr("Levels"), parent)
{
    const QString level = tr("Level at the origin");
    addRow(level,
           quantityField<units::Elevation>(
               level, ofFloor<units::Elevation>([](const auto& floor) { return floor.level; }), &plan::setFloorLevel));
    addFallRows();
    addDrainRow(tr("Drain point, x"), &plan::Point::x);
    addDrainRow(tr("Drain point, y"), &plan::Point::y);
    const QString height = tr("Floor to ceiling");
    addRow(height, optionalField<units::Length>(height, ofFloor<std::optional<units::Length>>([](const auto& floor) {
                                                    return floor.clearHeight;
                                                }),
                                                &plan::setClearHeight, tr("not given"), {"m", "ft"}));
    const QString slab = tr("Slab thickness");
    addRow(slab, optionalField<units::Length>(
                     slab, ofFloor<std::optional<units::Length>>([](const auto& floor) { return floor.thickness; }),
                     &plan::setFloorThickness, tr("not given"), text::inSmallSizes));
}

void FloorLevelsSection::addFallRows()
{
    const QString fall = tr("Fall");
    addRow(fall, quantityField<units::Slope>(fall, ofFloor<units::Slope>([](const auto& floor) { return floor.fall; }),
                                             [this](const units::Slope& value) {
                                                 return plan::setFloorFall(value, chosen().plan().floor->fallDirection);
                                             }));
    const QString direction = tr("Direction it falls to");
    addRow(direction,
           quantityField<units::Angle>(
               direction, ofFloor<units::Angle>([](const auto& floor) { return floor.fallDirection; }),
               [this](const units::Angle& value) { return plan::setFloorFall(chosen().plan().floor->fall, value); }));
}

// Either coordinate makes the drain point, the other then starts at the origin; emptying either removes it.
void FloorLevelsSection::addDrainRow(const QString& label, units::Length plan::Point::*which)
{
    const auto read = [which](const plan::Plan& plan) {
        std::optional<units::Length> value;
        if (plan.floor->drainPoint)
            value = (*plan.floor->drainPoint).*which;
        return sharedOne(value);
    };
    const auto make = [this, which](const std::optional<units::Length>& value) {
        if (!value)
            return plan::setDrainPoint(std::nullopt);
        plan::Point place = chosen().plan().floor->drainPoint.value_or(plan::Point{});
        place.*which = *value;
        return plan::setDrainPoint(place);
    };
    addRow(label, optionalField<units::Length>(label, read, make, tr("none"), {"m", "ft"}));
}

} // namespace sumpwright::ui::properties
