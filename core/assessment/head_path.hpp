// Where the head of a pump goes along its worst path, least-flow state. The worst path ends at the outlet that has
// the least head to spare: the grade at the last tee before it, minus the level its water has to reach (with one
// outlet: that one). Steps run from pump to outlet and sum to the pump head.
#pragma once

#include <string>
#include <vector>

#include "core/assessment/run_result.hpp"
#include "core/assessment/stage.hpp"
#include "core/units/measures.hpp"

namespace sumpwright::assessment
{

enum class HeadStepKind {
    lift, // from the sump's level to the mouth, or to the water over a submerged mouth
    friction,
    fitting, // any fitting but the exit
    exit,    // the velocity head lost where the water leaves the pipe
};

struct HeadStep {
    HeadStepKind kind = HeadStepKind::friction;
    base::Id element;        // lift: the vessel reached; otherwise the run
    std::size_t fitting = 0; // fitting and exit: index into the run's list of fittings
    units::Head head;

    friend bool operator==(const HeadStep&, const HeadStep&) = default;
};

struct HeadPath {
    base::Id vessel; // where the path ends
    base::Id port;
    std::vector<base::Id> runs; // from pump to outlet
    std::vector<HeadStep> steps;
    units::Head pumpHead;
    units::Head toSpare; // as defined above

    friend bool operator==(const HeadPath&, const HeadPath&) = default;
};

struct PumpHeadPath {
    base::Id id; // pump
    Stage<HeadPath> path;
    friend bool operator==(const PumpHeadPath&, const PumpHeadPath&) = default;
};

struct HeadPaths {
    std::vector<PumpHeadPath> pumps; // by id
    friend bool operator==(const HeadPaths&, const HeadPaths&) = default;
};

} // namespace sumpwright::assessment
