#include "core/floor/load_total.hpp"

#include "core/floor/masses.hpp"
#include "core/worksheets/common_inputs.hpp"
#include "core/worksheets/each.hpp"
#include "core/worksheets/list_working.hpp"

namespace sumpwright::worksheets
{
namespace
{

const Note noVerdict{"floor-not-judged",
                     "This is a weight, not a verdict on a floor: a licensed engineer and local codes decide."};
const Note spreadEvenly{"spread-evenly",
                        "Each mass counts as spread evenly over its footprint; legs and pads press harder."};

std::string nameOf(const std::vector<ListEntry>& entries, std::size_t at)
{
    return entries[at].name.empty() ? "entry " + std::to_string(at + 1) : entries[at].name;
}

base::Outcome<Answer> compute(const Inputs& inputs)
{
    const auto entries = inputs.list("loads");
    std::vector<floor::StandingMass> masses;
    for (const ListEntry& entry : entries)
        masses.push_back({std::get<units::Mass>(entry.value), *entry.on});
    const bool known = inputs.has("floor_area");
    const auto total = floor::totalLoad(masses, known ? inputs.get<units::Area>("floor_area") : units::Area());
    AnswerDraft draft(inputs);
    draft.put("mass", total.mass);
    draft.put("weight", total.weight);
    draft.put("worst_pressure", total.worst);
    draft.put("worst", nameOf(entries, total.worstAt));
    if (total.meanOverFloor)
        draft.put("mean_pressure", *total.meanOverFloor);
    workSum(draft, "m", entries, total.mass);
    draft.work("W = m g = ", total.mass, " × 9.80665 m/s² = ", total.weight);
    draft.work("p_worst = m g / A of ", nameOf(entries, total.worstAt), " = ", masses[total.worstAt].mass,
               " × 9.80665 m/s² / ", masses[total.worstAt].footprint, " = ", total.worst);
    if (total.meanOverFloor)
        draft.work("p_mean = W / A_floor = ", total.weight, " / ", inputs.shown("floor_area"), " = ",
                   *total.meanOverFloor);
    draft.note(spreadEvenly.id);
    draft.note(noVerdict.id);
    return draft.take();
}

} // namespace

Worksheet loadTotal()
{
    InputSpec loads;
    loads.name = "loads";
    loads.meaning = "what stands on the floor: each mass with its contents on its footprint";
    loads.sort = InputSort::LoadList;
    loads.kind = units::KindId::mass;
    loads.least = "0 kg";
    loads.most = "1e9 kg";
    Worksheet sheet;
    sheet.id = "load-total";
    sheet.question = "What does everything together weigh on the floor?";
    sheet.formula = "W = g Σm; p = m g / A under each footprint, the worst named; mean = W / A_floor";
    sheet.inputs = {loads, optionally(areaInput("floor_area", "area of the floor, for the mean over it"))};
    sheet.outputs = {{"mass", "mass of all", "kg", true},
                     {"weight", "weight of all", "N", true},
                     {"worst_pressure", "highest mean pressure under a footprint", "Pa", true},
                     {"worst", "which one that is", "1"},
                     {"mean_pressure", "mean pressure over the floor, where its area is given", "Pa", true}};
    sheet.sources = {"cgpm-1901"};
    sheet.notes = {spreadEvenly, noVerdict};
    sheet.compute = compute;
    return sheet;
}

} // namespace sumpwright::worksheets
