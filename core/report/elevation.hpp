// Front elevation: everything of the plan projected on an upright sheet along the plan's x, seen from the foot of the
// plan (towards +y). Places along x are those of the plan, metres; levels metres above datum. True to size.
#pragma once

#include <optional>
#include <vector>

#include "core/report/profile.hpp"

namespace sumpwright::report
{

struct RunProfile {
    base::Id id;
    std::string tag;
    plan::Service service = plan::Service::pressure;
    PipeSize pipe;
    std::vector<ProfilePoint> centre; // one a vertex

    friend bool operator==(const RunProfile&, const RunProfile&) = default;
};

struct FixtureProfile {
    base::Id id;
    plan::FixtureKind kind = plan::FixtureKind::wall;
    units::Length left;
    units::Length right;
    units::Elevation bottom;
    units::Elevation top; // of a power point: its centre, as the bottom

    friend bool operator==(const FixtureProfile&, const FixtureProfile&) = default;
};

struct TeeProfile {
    base::Id id;
    ProfilePoint at;
    friend bool operator==(const TeeProfile&, const TeeProfile&) = default;
};

struct FrontElevation {
    std::vector<VesselProfile> vessels; // the farthest first
    std::vector<PumpProfile> pumps;
    std::vector<RunProfile> runs;
    std::vector<TeeProfile> tees;
    std::vector<FixtureProfile> fixtures;
    std::vector<base::Id> order; // vessels and runs, the farthest first: what is drawn later stands before it
    std::optional<std::pair<ProfilePoint, ProfilePoint>> floor; // its near edge; none until it is drawn
    ProfilePoint low{};                                         // of everything; both zero in an empty plan
    ProfilePoint high{};
};
// Results may be of an older plan, or null; then water levels are absent.
FrontElevation elevationOf(const plan::Plan& plan, const assessment::Assessment* results,
                           const catalogue::Catalogue* catalogue);

} // namespace sumpwright::report
