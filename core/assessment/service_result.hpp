// What it takes to shut off and take out each bed, each pump and each long pressure run, and how much water comes out
// first. An estimate: pipes count as full, and all that stands above the place where the pipe is opened comes out, with
// what runs or siphons there out of vessels no valve stands before. Non-return valves hold nothing back.
#pragma once

#include <vector>

#include "core/assessment/stage.hpp"
#include "core/units/measures.hpp"

namespace sumpwright::assessment
{

inline constexpr units::Length longRun = units::metres(3.0); // common practice, no source

struct Service {
    base::Id id;                  // bed, pump or run
    std::vector<base::Id> valves; // that shut it off from the rest of the pressure side; by id
    bool shutOff = false;         // with all of these closed no pump and no other vessel's water reaches it
    bool comesApart = false;      // there is a union on its side of them
    units::Elevation openedAt;    // where the pipe is opened: at the lowest of the valves, else at its own connection
    units::Volume comesOut;       // estimate

    friend bool operator==(const Service&, const Service&) = default;
};

struct ServiceResult {
    std::vector<Service> elements; // by id; those that meet a pressure run
    friend bool operator==(const ServiceResult&, const ServiceResult&) = default;
};

} // namespace sumpwright::assessment
