// DrawOff: what heads a circuit's network has to spare when its outlets draw given flows.
//
// The levels of the water are given; outlets without a flow of their own take what comes. Spare head: the grade at
// the mouth over the level the water has to reach there; a valve may burn as much. Below 0: so much is missing.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "core/assessment/network_of.hpp"
#include "core/design/bench.hpp"
#include "core/design/throttles.hpp"

namespace sumpwright::design
{

using Draws = std::vector<std::optional<units::Flow>>; // by outlet

struct DrawnOff {
    bool solved = false;
    std::vector<std::optional<units::Head>> spare; // by outlet; those that draw a given flow
    std::vector<units::Flow> outlets;              // what each brings, drawn or not
    std::vector<units::Flow> runs;                 // along each run of the circuit
};

class DrawOff
{
public:
    // All outlive this object; levels are those of the circuit's basins.
    DrawOff(const Bench& bench, const assessment::Circuit& circuit, const std::vector<CircuitOutlet>& outlets,
            std::vector<units::Elevation> levels);

    void setSpeed(double speed); // of every pump that runs
    DrawnOff draw(const Draws& draws);

private:
    const Bench& m_bench;
    const assessment::Circuit& m_circuit;
    const std::vector<CircuitOutlet>& m_outlets;
    std::vector<units::Elevation> m_levels;
    assessment::CircuitNetwork m_network;
};

} // namespace sumpwright::design
