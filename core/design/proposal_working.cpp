#include "core/design/proposal_working.hpp"

#include "core/assessment/working_parts.hpp"
#include "core/hydraulics/energy.hpp"

namespace sumpwright::design
{
namespace
{

using assessment::input;
using assessment::ratioInput;
using assessment::Working;

Working energyOf(units::Flow flow, units::Head head, double wireToWater, const plan::Site& site,
                 const std::optional<units::EnergyPrice>& price)
{
    Working working{"pump-energy",
                    "electrical_power",
                    {input("flow", flow), input("head", head), ratioInput("wire_to_water", wireToWater),
                     input("temperature", site.designWater)},
                    {}};
    if (price)
        working.inputs.push_back(
            {"price", units::exactRatioText(units::inCurrencyPerKilowattHour(*price)) + " " + site.currency + "/kWh"});
    return working;
}

} // namespace

std::optional<Working> workingOf(const ValveOpening& valve, const plan::Plan& plan,
                                 const catalogue::Catalogue& catalogue)
{
    const plan::Run* run = plan.runs.find(valve.valve.run);
    const auto pipe = catalogue.pipe(run ? run->pipeId : std::string());
    if (!pipe || valve.after <= 0.0 || valve.flow <= units::Flow())
        return std::nullopt;
    for (const plan::Valve& drawn : run->valves)
        if (drawn.id == valve.valve.valve)
            return Working{"fitting-loss",
                           "loss",
                           {{"fitting", drawn.fittingId},
                            input("bore", (*pipe)->bore),
                            input("flow", valve.flow),
                            ratioInput("opening", valve.after)},
                           {}};
    return std::nullopt;
}

std::optional<Working> workingOf(const PumpChoice& choice, const plan::Site& site)
{
    if (!choice.wireToWater || *choice.wireToWater <= 0.0)
        return std::nullopt;
    return energyOf(choice.flow, choice.head, *choice.wireToWater, site, site.powerPrice);
}

std::optional<Working> workingOf(const PipeChoice& choice, const std::optional<units::EnergyPrice>& price,
                                 const plan::Site& site, const std::optional<units::Density>& density)
{
    if (!density || choice.power <= units::Power() || choice.head <= units::Head())
        return std::nullopt;
    const double efficiency =
        hydraulics::wireToWater(hydraulics::hydraulicPower(choice.flow, choice.head, *density), choice.power);
    return energyOf(choice.flow, choice.head, efficiency, site, price ? price : site.powerPrice);
}

} // namespace sumpwright::design
