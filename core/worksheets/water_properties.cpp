#include "core/nature/water.hpp"
#include "core/worksheets/answer_draft.hpp"
#include "core/worksheets/common_inputs.hpp"
#include "core/worksheets/each.hpp"

namespace sumpwright::worksheets
{
namespace
{

base::Outcome<Answer> compute(const Inputs& inputs)
{
    const auto temperature = inputs.get<units::Temperature>("temperature");
    const auto water = nature::waterAt(temperature);
    if (!water)
        return water.refusal();
    AnswerDraft draft(inputs);
    draft.put("density", water->density);
    draft.put("dynamic_viscosity", water->dynamicViscosity);
    draft.put("kinematic_viscosity", water->kinematicViscosity);
    draft.put("vapour_pressure", water->vapourPressure);
    draft.work("ρ(", temperature, ") = ", water->density);
    draft.work("μ(", temperature, ") = ", water->dynamicViscosity);
    draft.work("ν = μ / ρ = ", water->dynamicViscosity, " / ", water->density, " = ", water->kinematicViscosity);
    draft.work("p_v(", temperature, ") = ", water->vapourPressure);
    return draft.take();
}

} // namespace

Worksheet waterProperties()
{
    Worksheet sheet;
    sheet.id = "water-properties";
    sheet.question = "How dense and how viscous is the water?";
    sheet.formula = "ρ by Tanaka et al. (t in degC); μ by IAPWS SR6-08; ν = μ / ρ; vapour pressure by IAPWS IF97";
    sheet.inputs = {waterTemperatureInput()};
    sheet.inputs.front().ifAbsent.clear();
    sheet.outputs = {{"density", "density of fresh water at 1 atm", "kg/m3"},
                     {"dynamic_viscosity", "dynamic viscosity", "Pa s"},
                     {"kinematic_viscosity", "kinematic viscosity", "m2/s"},
                     {"vapour_pressure", "saturation pressure over a flat surface, absolute", "Pa"}};
    sheet.sources = {"tanaka-2001", "iapws-sr6-08", "iapws-if97"};
    sheet.compute = compute;
    return sheet;
}

} // namespace sumpwright::worksheets
