#include "core/floor/masses.hpp"

#include <cmath>

#include "core/units/measures.hpp"
#include "core/worksheets/answer_draft.hpp"
#include "core/worksheets/common_inputs.hpp"
#include "core/worksheets/each.hpp"

namespace sumpwright::worksheets
{
namespace
{

using base::Outcome;
using base::Refusal;

const Note waterForLoads{"water-1000", "Water counts as 1000 kg/m3, 0.2 % on the safe side."};
const Note heavyFilling{"medium-high", "The medium counts at its heaviest usual filling: weigh a bucket of yours."};
const Note noVerdict{"floor-not-judged",
                     "This is a weight, not a verdict on a floor: a licensed engineer and local codes decide."};

const Note unevenLegs{"legs-uneven", "Shared evenly over the legs; real legs carry unevenly, some far more."};

struct Body {
    units::Area footprint;
    std::string area; // how it is found, for the working
};

// A refusal when an input is missing where it is needed or given where it means nothing.
std::optional<Refusal> fault(const Inputs& inputs, const char* name, bool needed, const std::string& why)
{
    if (needed && !inputs.has(name))
        return Refusal{"worksheets.missing-input", name, why + " needs this input", "a length above 0"};
    if (!needed && inputs.has(name))
        return Refusal{"worksheets.one-of", name, why + " has no such input", "leave it out"};
    return std::nullopt;
}

Outcome<Body> bodyOf(const Inputs& inputs)
{
    const bool round = inputs.word("shape") == "round";
    const std::string why = round ? "a round vessel" : "a rectangular vessel";
    for (const auto& [name, needed] : {std::pair{"diameter", round}, {"length", !round}, {"width", !round}})
        if (const auto refusal = fault(inputs, name, needed, why))
            return *refusal;
    if (!round)
        return Body{inputs.get<units::Length>("length") * inputs.get<units::Length>("width"),
                    inputs.shown("length") + " × " + inputs.shown("width")};
    const auto diameter = inputs.get<units::Length>("diameter");
    return Body{units::pi / 4.0 * diameter * diameter, "π/4 × (" + inputs.shown("diameter") + ")²"};
}

struct Contents {
    units::Mass full;
    units::Mass drained;
};

Contents waterIn(const Inputs& inputs, const Body& body, AnswerDraft& draft)
{
    const auto depth = inputs.get<units::Length>("water_depth");
    const units::Mass water = floor::waterMass(body.footprint * depth);
    draft.work("m_water = A × depth × ρ = ", body.area, " × ", depth, " × ", floor::loadWaterDensity, " = ", water);
    return {water, units::kilograms(0.0)};
}

Contents mediumIn(const Inputs& inputs, const Body& body, AnswerDraft& draft)
{
    const auto medium = *inputs.tables().medium(inputs.word("medium"));
    const floor::MediumFilling filling{medium->dryDensity.high, medium->absorption.high, medium->porosity.high,
                                       medium->retained.high};
    const auto depth = inputs.get<units::Length>("medium_depth");
    const auto flood = inputs.get<units::Length>("flood_depth");
    const Contents contents{floor::bedMass(body.footprint, depth, flood, filling),
                            floor::bedMass(body.footprint, depth, units::metres(0.0), filling)};
    draft.work("ρ_flooded = ρ_dry (1 + a) + n ρ_w = ", filling.dry, " × (1 + ", filling.absorption, ") + ",
               filling.porosity, " × ", floor::loadWaterDensity, " = ", floor::floodedDensity(filling));
    draft.work("ρ_drained = ρ_dry (1 + a) + r ρ_w = ", filling.dry, " × (1 + ", filling.absorption, ") + ",
               filling.retained, " × ", floor::loadWaterDensity, " = ", floor::drainedDensity(filling));
    draft.work("flooded to ", flood, " of ", depth, " over A = ", body.area, ": ", contents.full,
               "; drained: ", contents.drained);
    draft.note(heavyFilling.id);
    draft.source(medium->provenance.source);
    draft.source("floor-mass-model");
    return contents;
}

std::optional<Refusal> contentsFault(const Inputs& inputs)
{
    const bool water = inputs.has("water_depth");
    const bool medium = inputs.has("medium");
    if (water == medium)
        return Refusal{water ? "worksheets.one-of" : "worksheets.needs-one", "water_depth",
                       water ? "both water_depth and medium are given" : "neither water_depth nor medium is given",
                       "one of them: water alone, or a medium with medium_depth and flood_depth"};
    const std::string why = medium ? "a medium" : "water alone";
    if (const auto refusal = fault(inputs, "medium_depth", medium, why))
        return refusal;
    return fault(inputs, "flood_depth", medium, why);
}

Outcome<Answer> compute(const Inputs& inputs)
{
    const Outcome<Body> body = bodyOf(inputs);
    if (!body)
        return body.refusal();
    if (inputs.has("legs") && inputs.ratio("legs") != std::floor(inputs.ratio("legs")))
        return Refusal{"worksheets.not-whole", "legs", "the number of legs is not whole", "a whole number, 1 to 1000"};
    if (const auto refusal = contentsFault(inputs))
        return *refusal;
    AnswerDraft draft(inputs);
    const bool medium = inputs.has("medium");
    const Contents contents = medium ? mediumIn(inputs, *body, draft) : waterIn(inputs, *body, draft);
    const auto tare = inputs.get<units::Mass>("tare");
    const units::Mass mass = contents.full + tare;
    const units::Force weight = units::weightOf(mass);
    const bool own = inputs.has("footprint");
    const units::Area footprint = own ? inputs.get<units::Area>("footprint") : body->footprint;
    const units::GroundPressure pressure = floor::pressureUnder(mass, footprint);
    draft.put("mass", mass, medium);
    draft.put("weight", weight, medium);
    draft.put("pressure", pressure, medium);
    draft.put("drained_mass", contents.drained + tare, medium);
    if (inputs.has("legs")) {
        draft.put("leg_weight", weight / inputs.ratio("legs"), true);
        draft.note(unevenLegs.id);
    }
    draft.work("m = ", contents.full, " + ", tare, " = ", mass);
    draft.work("W = m g = ", mass, " × 9.80665 m/s² = ", weight);
    draft.work("p = W / A = ", weight, " / (", own ? inputs.shown("footprint") : body->area, ") = ", pressure);
    if (inputs.has("legs"))
        draft.work("W_leg = W / n = ", weight, " / ", inputs.ratio("legs"), " = ", weight / inputs.ratio("legs"));
    draft.note(waterForLoads.id);
    draft.note(noVerdict.id);
    return draft.take();
}

InputSpec optionalLength(std::string name, std::string meaning, std::string most, bool mayBeZero = false)
{
    InputSpec spec;
    spec.name = std::move(name);
    spec.meaning = std::move(meaning);
    spec.kind = units::KindId::length;
    spec.required = false;
    spec.least = "0 m";
    spec.leastExcluded = !mayBeZero;
    spec.most = std::move(most);
    return spec;
}

std::vector<InputSpec> inputsOfVesselMass()
{
    InputSpec shape;
    shape.name = "shape";
    shape.meaning = "round (give diameter) or rectangle (give length and width)";
    shape.sort = InputSort::Choice;
    shape.choices = {"round", "rectangle"};
    InputSpec medium;
    medium.name = "medium";
    medium.meaning = "growing medium of the table, instead of water_depth";
    medium.sort = InputSort::CatalogueId;
    medium.required = false;
    medium.choices = {"media"};
    InputSpec flood = optionalLength("flood_depth", "water over the vessel's floor; the medium's depth where not given",
                                     "10 m", true);
    flood.ifAbsent = "=medium_depth";
    InputSpec tare;
    tare.name = "tare";
    tare.meaning = "mass of the empty vessel and its stand";
    tare.kind = units::KindId::mass;
    tare.ifAbsent = "0 kg";
    tare.least = "0 kg";
    tare.most = "1e6 kg";
    InputSpec legs =
        optionally(quantityInput("legs", "legs or piers that carry it", units::KindId::ratio, "1", "1000"));
    legs.sort = InputSort::Ratio;
    return {shape,
            optionalLength("diameter", "inside diameter of a round vessel", "100 m"),
            optionalLength("length", "inside length of a rectangular vessel", "100 m"),
            optionalLength("width", "inside width of a rectangular vessel", "100 m"),
            optionalLength("water_depth", "depth of water, instead of medium", "10 m", true),
            medium,
            optionalLength("medium_depth", "depth of the medium", "10 m"),
            flood,
            tare,
            optionally(areaInput("footprint", "area it presses on; the inside area where not given")),
            legs};
}

} // namespace

Worksheet vesselMass()
{
    Worksheet sheet;
    sheet.id = "vessel-mass";
    sheet.question = "What does a full vessel weigh, and how hard does it press on the floor?";
    sheet.formula =
        "m = A depth ρ + tare, or A (flooded depth (ρ_dry (1 + a) + n ρ_w) + drained depth (ρ_dry (1 + a) + r "
        "ρ_w)) + tare; W = m g; p = W/A";
    sheet.inputs = inputsOfVesselMass();
    sheet.outputs = {{"mass", "mass with its contents", "kg"},
                     {"weight", "weight on the floor", "N"},
                     {"pressure", "mean pressure under the footprint", "Pa"},
                     {"drained_mass", "mass after draining: vessel and moist medium", "kg"},
                     {"leg_weight", "weight on one leg, shared evenly, where legs are given", "N"}};
    sheet.sources = {"cgpm-1901"};
    sheet.notes = {waterForLoads, heavyFilling, unevenLegs, noVerdict};
    sheet.compute = compute;
    return sheet;
}

} // namespace sumpwright::worksheets
