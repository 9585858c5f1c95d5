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

// What a run or a vessel gives off.
struct ServicePart {
    base::Id element;
    units::Volume volume;
    friend bool operator==(const ServicePart&, const ServicePart&) = default;
};

struct Service {
    base::Id id;                    // bed, pump or run
    std::vector<base::Id> valves;   // that shut it off from the rest of the pressure side; by id
    bool shutOff = false;           // with all of these closed no pump and no other vessel's water reaches it
    bool comesApart = false;        // there is a union on its side of them
    units::Elevation openedAt;      // where the pipe is opened: at the lowest of the valves, else at its own connection
    units::Volume comesOut;         // estimate: out of the pipes and out of the vessels below
    std::vector<std::size_t> pipes; // indices into the result's pipe waters
    std::vector<ServicePart> vessels;

    friend bool operator==(const Service&, const Service&) = default;
};

struct ServiceResult {
    std::vector<Service> elements; // by id; those that meet a pressure run
    // What the runs of one zone give off above one level, each list once for all that share it.
    std::vector<std::vector<ServicePart>> pipeWaters;
    friend bool operator==(const ServiceResult&, const ServiceResult&) = default;
};

} // namespace sumpwright::assessment
