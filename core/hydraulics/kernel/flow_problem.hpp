// A network in plain SI numbers, as the solvers see it: grades m, flows m3/s; junctions are nodes without a held grade.
#pragma once

#include <cstdint>
#include <vector>

#include "core/hydraulics/kernel/link_law.hpp"

namespace sumpwright::hydraulics::kernel
{

using Index = std::int32_t;

struct ProblemLink {
    Index from;
    Index to;
    LinkLaw law;
};

struct FlowProblem {
    std::vector<bool> held;     // by node: its grade is given
    std::vector<double> supply; // by node, m3/s put in
    std::vector<ProblemLink> links;

    Index nodes() const { return static_cast<Index>(held.size()); }
};

// What is being solved for. Grades of held nodes stay.
struct FlowState {
    std::vector<double> grade;
    std::vector<double> flow;
};

} // namespace sumpwright::hydraulics::kernel
