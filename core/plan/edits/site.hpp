// The site: names, place, conditions, prices, clearances.
#pragma once

#include <optional>
#include <string>

#include "core/plan/edits/edit.hpp"

namespace sumpwright::plan
{

Edit setSiteName(std::string name);
Edit setClient(std::string client);
Edit setDesigner(std::string designer);
Edit setAltitude(std::optional<units::Length> altitude);
Edit setDesignWater(units::Temperature temperature);
Edit setColdestWater(std::optional<units::Temperature> temperature); // in the year
Edit setWarmestWater(std::optional<units::Temperature> temperature);
Edit setDesignAir(units::Temperature temperature);
Edit setCurrency(std::string currency); // three capital letters, ISO 4217
Edit setPowerPrice(std::optional<units::EnergyPrice> price);
Edit setPipeCondition(PipeCondition condition);
Edit setFloorUse(std::string liveLoadId); // empty: no comparison
Edit setNorth(units::Angle north);
Edit setClearances(Clearances clearances);

} // namespace sumpwright::plan
