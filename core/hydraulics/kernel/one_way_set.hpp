// Which one-way links of a network are shut, and the flows and grades that go with that: an active set around the
// gradient method. A shut link has flow exactly 0 and no more head across it than at rest; an open one runs forward.
// SI numbers. The answer is checked against both statements for every link before it is called settled.
#pragma once

#include <vector>

#include "core/hydraulics/kernel/gradient_method.hpp"

namespace sumpwright::hydraulics::kernel
{

constexpr double shutTolerance = 1e-6; // m a shut link may hold back beyond its head at rest
constexpr double stillFlow = 1e-18;    // m3/s: a drop in a thousand years
constexpr int roundLimit = 50;

enum class SettleFault { None, DemandUnfed, NotConverged, Unsettled };

struct Settled {
    SettleFault fault = SettleFault::None;
    Index where = -1;           // the node or link at fault
    std::vector<bool> open;     // by link
    std::vector<bool> standing; // by node: cut off behind shut links
    std::vector<bool> graded;   // by node: its grade follows from a held one
    FlowState state;
    int rounds = 0;
    NewtonReport newton; // steps of all rounds, residuals of the last
};

// `fed` by link: takes part at all; by convention both its nodes are reached by water. `open` by link: a first guess,
// of fed links only; the answer does not depend on it. `grades` gives the held grades (and a start for the others).
Settled settle(FlowProblem& problem, const std::vector<bool>& fed, const std::vector<bool>& open,
               const std::vector<double>& grades);

// Nodes water can get to: along links from held grades and from junctions with water put in, one-way links forward.
std::vector<bool> reachedNodes(const FlowProblem& problem, const std::vector<bool>& present);

// A label for each node, equal within parts joined by the links given.
std::vector<Index> partsOf(const FlowProblem& problem, const std::vector<bool>& joined);

} // namespace sumpwright::hydraulics::kernel
