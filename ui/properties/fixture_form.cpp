#include "ui/properties/fixture_form.hpp"

#include <algorithm>

#include "core/plan/edits/fixture.hpp"
#include "ui/properties/enum_choice.hpp"
#include "ui/properties/name_section.hpp"
#include "ui/properties/position_section.hpp"
#include "ui/text/cautions.hpp"

namespace sumpwright::ui::properties
{

namespace
{
using Kind = plan::FixtureKind;

bool hasTwoEnds(Kind kind) { return kind == Kind::wall || kind == Kind::door; }

class FixtureSection : public Section
{
public:
    explicit FixtureSection(Chosen fixtures) : Section(std::move(fixtures), {})
    {
        addKindRow();
        addSizeRow(FixtureForm::tr("Thickness or side"), &plan::Fixture::size, &plan::setFixtureSize,
                   text::inSmallSizes);
        addSizeRow(FixtureForm::tr("Height"), &plan::Fixture::height, &plan::setFixtureHeight, {"m", "ft"});
        const QString level = FixtureForm::tr("Level");
        addRow(level,
               quantityField<units::Elevation>(
                   level, shared<units::Elevation>([](const auto& fixture) { return fixture.level; }),
                   [this](const units::Elevation& value) { return plan::setFixtureLevel(chosen().ids, value); }));
        addFact(FixtureForm::tr("Length"), [this](const plan::Plan& plan) {
            const auto* fixture = plan.fixtures.find(chosen().first());
            return fixture && chosen().one() && hasTwoEnds(fixture->kind)
                       ? chosen().display().quantityText(plan::distanceBetween(fixture->from, fixture->to))
                       : QString();
        });
        const auto& table = chosen().plan().fixtures;
        if (std::any_of(chosen().ids.begin(), chosen().ids.end(), [&](base::Id id) {
                const auto* fixture = table.find(id);
                return fixture && fixture->kind == Kind::powerPoint;
            }))
            addCaution(text::electricalCaution());
    }

private:
    template <class T, class Of> Read<T> shared(Of of) const
    {
        return [this, of](const plan::Plan& plan) { return sharedOver<T>(plan.fixtures, chosen().ids, of); };
    }
    void addKindRow()
    {
        const QString label = FixtureForm::tr("Kind");
        addRow(label, choiceField(label, choicesOf({Kind::wall, Kind::door, Kind::post, Kind::powerPoint}),
                                  shared<std::string>([](const auto& fixture) { return keyOf(fixture.kind); }),
                                  [this](const std::string& key) {
                                      return plan::setFixtureKind(chosen().ids, enumOf<Kind>(key));
                                  }));
    }
    void addSizeRow(const QString& label, units::Length plan::Fixture::*which,
                    plan::Edit (*edit)(std::vector<base::Id>, units::Length), text::EntryUnit unit)
    {
        addRow(label, quantityField<units::Length>(
                          label, shared<units::Length>([which](const auto& fixture) { return fixture.*which; }),
                          [this, edit](const units::Length& value) { return edit(chosen().ids, value); }, unit));
    }
};

// Both ends of one wall or door.
class EndsSection : public Section
{
public:
    explicit EndsSection(Chosen fixture) : Section(std::move(fixture), FixtureForm::tr("Ends"))
    {
        addEndRow(FixtureForm::tr("Start, x"), &plan::Fixture::from, &plan::Point::x);
        addEndRow(FixtureForm::tr("Start, y"), &plan::Fixture::from, &plan::Point::y);
        addEndRow(FixtureForm::tr("End, x"), &plan::Fixture::to, &plan::Point::x);
        addEndRow(FixtureForm::tr("End, y"), &plan::Fixture::to, &plan::Point::y);
    }

private:
    void addEndRow(const QString& label, plan::Point plan::Fixture::*end, units::Length plan::Point::*along)
    {
        const auto read = [this, end, along](const plan::Plan& plan) {
            return sharedOver<units::Length>(plan.fixtures, chosen().ids,
                                             [end, along](const auto& fixture) { return (fixture.*end).*along; });
        };
        const auto make = [this, end, along](const units::Length& value) {
            plan::Fixture changed = *chosen().plan().fixtures.find(chosen().first());
            (changed.*end).*along = value;
            return plan::setFixtureEnds(changed.id, changed.from, changed.to);
        };
        addRow(label, quantityField<units::Length>(label, read, make, {"m", "ft"}));
    }
};
} // namespace

FixtureForm::FixtureForm(document::Document& document, std::vector<base::Id> fixtures, QWidget* parent)
    : Form({document, std::move(fixtures)}, parent)
{
    add(new NameSection(chosen()));
    add(new FixtureSection(chosen()));
    const auto* first = chosen().plan().fixtures.find(chosen().first());
    if (chosen().one() && first && hasTwoEnds(first->kind))
        add(new EndsSection(chosen()));
    else
        add(new PositionSection(chosen()));
}

} // namespace sumpwright::ui::properties
