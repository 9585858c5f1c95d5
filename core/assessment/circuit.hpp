// Circuit: the vessels, runs, tees and pumps that share one body of water, because runs join them.
#pragma once

#include <cstddef>
#include <vector>

#include "core/assessment/basin.hpp"
#include "core/assessment/pipework.hpp"

namespace sumpwright::assessment
{

// Indices into basins and pipework, ascending.
struct Circuit {
    std::vector<std::size_t> basins;
    std::vector<std::size_t> runs;
    std::vector<std::size_t> pumps;
    std::vector<std::size_t> tees;
    std::vector<std::size_t> sumps; // those of the basins

    friend bool operator==(const Circuit&, const Circuit&) = default;
};

// Of one basin: what pressure runs bring in, and what they and its pumps take out.
struct PumpedFlow {
    units::Flow in;
    units::Flow out;
    friend bool operator==(const PumpedFlow&, const PumpedFlow&) = default;
};

// In the order of their first vessel, run or pump.
std::vector<Circuit> circuitsOf(const Pipework& pipework, const std::vector<Basin>& basins);

} // namespace sumpwright::assessment
