// Target: what the end of a run is led to - nothing, a port, a pump, a tee, a place along another run, or a port that
// is made in the same step.
#pragma once

#include <optional>
#include <variant>

#include "core/plan/plan.hpp"
#include "core/plan/run_ends.hpp"

namespace sumpwright::plan
{

struct Nowhere {
}; // the end stays open where it is drawn
struct AtPort {
    base::Id vessel;
    base::Id port;
};
struct AtPump {
    base::Id pump;
};
struct AtTee {
    base::Id tee;
};
// Splits that run: one tee, two runs; the longer keeps id and tag. Closer than 10 mm to an end that is a tee: that
// tee is taken; closer to any other end: refused.
struct OntoRun {
    base::Id run;
    double station = 0.5; // fraction of its true length, [0, 1]
};
struct NewPort {
    base::Id vessel;
    PortKind kind = PortKind::inlet;
    Point offset;           // from the vessel's centre, in its own frame
    units::Elevation level; // of mouth, lip or centre line
};
using Target = std::variant<Nowhere, AtPort, AtPump, AtTee, OntoRun, NewPort>;

// Place and level an end led there would get; nothing for Nowhere and for what the plan does not have.
std::optional<Vertex> placeOf(const Plan& plan, const Target& target);

} // namespace sumpwright::plan
