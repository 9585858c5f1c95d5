#include "core/water/emptying.hpp"
#include "core/water/vessel_volume.hpp"

#include "core/worksheets/answer_draft.hpp"
#include "core/worksheets/common_inputs.hpp"
#include "core/worksheets/each.hpp"

namespace sumpwright::worksheets
{
namespace
{

using base::Outcome;
using base::Refusal;

const Note lowWater{"emptying-low", "The last water, less than a bore over the hole, runs slower: an estimate."};

Outcome<Answer> compute(const Inputs& inputs)
{
    const auto bore = inputs.get<units::Length>("hole");
    const auto from = inputs.get<units::Length>("level_from");
    const auto to = inputs.get<units::Length>("level_to");
    if (!(from > to))
        return Refusal{"worksheets.level-not-falling", "level_to",
                       "the water is to fall to a level no lower than it stands at",
                       "a level below " + inputs.shown("level_from")};
    const water::Emptying emptying{inputs.get<units::Area>("area"), water::roundArea(bore), inputs.ratio("coefficient"),
                                   inputs.get<units::Flow>("inflow")};
    const auto time = emptying.timeFor(from, to);
    if (!time)
        return Refusal{"worksheets.inflow-holds-level", "inflow",
                       "as much comes in as goes out before the water is down",
                       "a level above " + shown(Value(emptying.restingLevel()), inputs.style()) + ", or less inflow"};
    const bool low = to < bore;
    AnswerDraft draft(inputs);
    draft.put("time", *time, low);
    draft.put("first_flow", emptying.flowAt(from));
    draft.work("C = μ a √(2 g) with μ = ", emptying.coefficient, ", a = π/4 × (", bore,
               ")²; Q = C √h = ", emptying.flowAt(from), " at first");
    if (emptying.inflow > units::Flow())
        draft.work("t = 2 A / C² × {C (√h1 - √h2) + q ln[(C √h1 - q) / (C √h2 - q)]} = ", *time,
                   " with A = ", emptying.area, ", h1 = ", from, ", h2 = ", to, ", q = ", emptying.inflow);
    else
        draft.work("t = 2 A / C × (√h1 - √h2) = ", *time, " with A = ", emptying.area, ", h1 = ", from, ", h2 = ", to);
    if (low)
        draft.note(lowWater.id);
    return draft.take();
}

std::vector<InputSpec> inputsOfTankEmptying()
{
    InputSpec coefficient = quantityInput("coefficient", "discharge coefficient: 0.61 sharp hole, 1/√ΣK of a pipe",
                                          units::KindId::ratio, "0", "1");
    coefficient.sort = InputSort::Ratio;
    coefficient.ifAbsent = "0.61";
    InputSpec inflow = quantityInput("inflow", "flow that still comes in", units::KindId::flow, "0 L/h", "1 m3/s");
    inflow.ifAbsent = "0 L/h";
    return {areaInput("area", "free area of the water; of a medium its pores"),
            quantityInput("hole", "diameter of the hole", units::KindId::length, "1 mm", "1 m"),
            moreThan(coefficient),
            quantityInput("level_from", "water over the middle of the hole at first", units::KindId::length, "0 m",
                          "100 m"),
            quantityInput("level_to", "water over the middle of the hole at the end", units::KindId::length, "0 m",
                          "100 m"),
            inflow};
}

} // namespace

Worksheet tankEmptying()
{
    Worksheet sheet;
    sheet.id = "tank-emptying";
    sheet.question = "How long does a tank take to empty through a hole?";
    sheet.formula = "t = 2 A / C² × {C (√h1 - √h2) + q ln[(C √h1 - q) / (C √h2 - q)]}, C = μ a √(2 g)";
    sheet.inputs = inputsOfTankEmptying();
    sheet.outputs = {{"time", "time until the water is down", "s"},
                     {"first_flow", "flow through the hole at first", "m3/s"}};
    sheet.sources = {"torricelli", "plain-geometry"};
    sheet.notes = {lowWater};
    sheet.compute = compute;
    return sheet;
}

} // namespace sumpwright::worksheets
