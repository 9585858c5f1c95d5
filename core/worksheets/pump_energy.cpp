#include "core/hydraulics/energy.hpp"

#include "core/nature/water.hpp"
#include "core/units/measures.hpp"
#include "core/worksheets/answer_draft.hpp"
#include "core/worksheets/common_inputs.hpp"
#include "core/worksheets/each.hpp"

namespace sumpwright::worksheets
{
namespace
{

const Note noPrice{"price-absent", "Without a price there is no cost."};

base::Outcome<Answer> compute(const Inputs& inputs)
{
    const auto water = nature::waterAt(inputs.get<units::Temperature>("temperature"));
    if (!water)
        return water.refusal();
    const auto flow = inputs.get<units::Flow>("flow");
    const auto head = inputs.get<units::Head>("head");
    const double efficiency = inputs.ratio("wire_to_water");
    const units::Power hydraulic = hydraulics::hydraulicPower(flow, head, water->density);
    const units::Power electrical = hydraulics::electricalPower(hydraulic, efficiency);
    const units::Energy energy = hydraulics::energyPerYear(electrical);

    AnswerDraft draft(inputs);
    draft.put("hydraulic_power", hydraulic);
    draft.put("electrical_power", electrical);
    draft.put("energy_per_year", energy);
    draft.work("P = ρ g Q H = ", water->density, " × 9.80665 m/s² × ", flow, " × ", head, " = ", hydraulic);
    draft.work("P_el = P / η = ", hydraulic, " / ", efficiency, " = ", electrical);
    draft.work("E = P_el × 8760 h = ", energy);
    if (inputs.has("price")) {
        const auto price = inputs.get<units::EnergyPrice>("price");
        const units::Money cost = hydraulics::costPerYear(energy, price);
        draft.put("cost_per_year", cost);
        draft.work("cost = E × price = ", energy, " × ", price, " = ", cost);
    } else {
        draft.note(noPrice.id);
    }
    return draft.take();
}

std::vector<InputSpec> inputsOfPumpEnergy()
{
    InputSpec head;
    head.name = "head";
    head.meaning = "head of the pump";
    head.kind = units::KindId::head;
    head.least = "0 m";
    head.most = "1000 m";
    InputSpec efficiency;
    efficiency.name = "wire_to_water";
    efficiency.meaning = "hydraulic power / electrical power";
    efficiency.sort = InputSort::Ratio;
    efficiency.least = "0.001";
    efficiency.most = "1";
    InputSpec price;
    price.name = "price";
    price.meaning = "price of electricity with its currency, as 0.31 EUR/kWh; without it no cost";
    price.kind = units::KindId::energyPrice;
    price.required = false;
    return {flowInput(), head, efficiency, price, waterTemperatureInput()};
}

} // namespace

Worksheet pumpEnergy()
{
    Worksheet sheet;
    sheet.id = "pump-energy";
    sheet.question = "What does the pump cost in a year?";
    sheet.formula = "P = ρ g Q H; P_el = P/η; E = P_el × 8760 h; cost = E × price";
    sheet.inputs = inputsOfPumpEnergy();
    sheet.outputs = {{"hydraulic_power", "power in the water", "W"},
                     {"electrical_power", "power drawn", "W"},
                     {"energy_per_year", "electrical energy in 8760 hours", "kWh"},
                     {"cost_per_year", "money for that energy, in the currency of the price", "currency"}};
    sheet.sources = {"pump-energy", "cgpm-1901", "tanaka-2001"};
    sheet.notes = {noPrice};
    sheet.compute = compute;
    return sheet;
}

} // namespace sumpwright::worksheets
