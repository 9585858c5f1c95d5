#include "core/worksheets/worksheet.hpp"

#include <algorithm>
#include <cmath>

#include "core/base/ensure.hpp"
#include "core/catalogue/nearest.hpp"
#include "core/worksheets/each.hpp"
#include "core/worksheets/inputs.hpp"

namespace sumpwright::worksheets
{
namespace
{

template <class Item> const Item* byName(const std::vector<Item>& items, std::string_view name)
{
    for (const Item& item : items)
        if (item.name == name)
            return &item;
    return nullptr;
}

// What the worksheet promised in its list: outputs in order, in their unit, notes it has announced.
void ensureAsListed(const Worksheet& worksheet, const Answer& answer)
{
    const OutputSpec* last = nullptr;
    for (const NamedValue& output : answer.outputs) {
        const OutputSpec* spec = worksheet.output(output.name);
        base::ensure(spec && (!last || last < spec), "outputs as listed, in order");
        base::ensure(spec->unit == output.unit || spec->unit == "currency", "an output in its listed unit");
        last = spec;
    }
    for (const std::string& note : answer.notes)
        base::ensure(std::any_of(worksheet.notes.begin(), worksheet.notes.end(),
                                 [&note](const Note& known) { return known.id == note; }),
                     "a note as listed");
}

// The first output that is no number; null when all are.
const NamedValue* notFinite(const Answer& answer)
{
    const auto found = std::find_if(answer.outputs.begin(), answer.outputs.end(), [](const NamedValue& output) {
        return !isWord(output.value) && !std::isfinite(numberOf(output.value));
    });
    return found == answer.outputs.end() ? nullptr : &*found;
}

void addOnce(std::vector<std::string>& keys, const std::string& key)
{
    if (std::find(keys.begin(), keys.end(), key) == keys.end())
        keys.push_back(key);
}

} // namespace

const NamedValue* Answer::output(std::string_view name) const { return byName(outputs, name); }

const InputSpec* Worksheet::input(std::string_view name) const { return byName(inputs, name); }

const OutputSpec* Worksheet::output(std::string_view name) const { return byName(outputs, name); }

const std::vector<Worksheet>& allWorksheets()
{
    static const std::vector<Worksheet> all = {
        waterProperties(), airPressure(), frictionFactor(), pipeFriction(),     pipeFlow(),    fittingLoss(),
        flowFactor(),      boreChange(),  sumK(),           pipeContent(),      staticLift(),  pumpHead(),
        pumpDuty(),        pumpEnergy(),  gradeLine(),      flowBalance(),      vesselWater(), sumpLevel(),
        pumpStop(),        waterTotal(),  overflowLevel(),  overflowCapacity(), sideOutlet(),  slopingDrain(),
        tankEmptying(),    vesselMass(),  loadTotal(),      liveLoad()};
    return all;
}

base::Outcome<const Worksheet*> findWorksheet(std::string_view id)
{
    std::vector<std::string> ids;
    for (const Worksheet& worksheet : allWorksheets()) {
        if (worksheet.id == id)
            return &worksheet;
        ids.push_back(worksheet.id);
    }
    const std::string asked(id.substr(0, 40));
    return base::Refusal{"worksheets.unknown", "", "there is no worksheet \"" + asked + "\"",
                         "nearest: " + catalogue::commaList(catalogue::nearestNames(id, ids))};
}

base::Outcome<Answer> answer(const Worksheet& worksheet, const std::vector<InputText>& texts,
                             const catalogue::Catalogue& tables, const units::NumberStyle& style)
{
    const auto inputs = Inputs::read(worksheet, texts, tables, style);
    if (!inputs)
        return inputs.refusal();
    base::Outcome<Answer> computed = worksheet.compute(*inputs);
    if (!computed)
        return computed;
    Answer answer = *computed;
    ensureAsListed(worksheet, answer);
    if (const NamedValue* bad = notFinite(answer))
        return base::Refusal{"worksheets.not-finite", bad->name, "with these inputs the numbers grow out of bounds",
                             "values nearer to those of a real system"};
    for (NamedValue& output : answer.outputs)
        output.estimate = output.estimate || worksheet.output(output.name)->estimate;
    answer.worksheet = worksheet.id;
    answer.inputs = inputs->values();
    std::vector<std::string> sources = worksheet.sources;
    for (const std::string& key : answer.sources)
        addOnce(sources, key);
    answer.sources = std::move(sources);
    return answer;
}

} // namespace sumpwright::worksheets
