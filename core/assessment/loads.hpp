// Loads on the floor of every vessel in LC2 and LC4, their total, and the comparison with a chosen live load.
// Media count with their heaviest filling of the catalogue, water with 1000 kg/m3; a tare or stand that nobody
// weighed is assumed and says so. See floor_result.hpp. Keys: floor-mass-model, en-1991-1-1.
#pragma once

#include <memory>
#include <string>

#include "core/assessment/floor_result.hpp"
#include "core/assessment/water_result.hpp"
#include "core/catalogue/catalogue.hpp"
#include "core/plan/plan.hpp"

namespace sumpwright::assessment
{

struct LoadInput {
    plan::Table<plan::Vessel> vessels;
    std::shared_ptr<const plan::Floor> floor;
    std::string floorUse; // id of a live load; empty: no comparison
    std::shared_ptr<const catalogue::Catalogue> catalogue;
    std::shared_ptr<const WaterResult> water;

    friend bool operator==(const LoadInput& a, const LoadInput& b);
};

FloorResult floorResultOf(const LoadInput& input);

} // namespace sumpwright::assessment
