// Section path: the water's way unrolled - what an upright cut along it shows. The horizontal is the way's length in
// plan, metres from the pump; vertical legs take none. Levels are metres above datum. True to size: where the way turns
// in plan the sheet is unfolded, and each vessel is cut along the pipes that come in and lead on.
#pragma once

#include <optional>
#include <vector>

#include "core/report/profile.hpp"
#include "core/report/water_way.hpp"

namespace sumpwright::report
{

enum class FallVerdict {
    falls,
    little, // less than the least fall that keeps a run clean
    rises,  // the water would have to climb
};

// A leg of a gravity run that is not vertical, downstream. Inverts are of the bore's lowest line.
struct Fall {
    std::size_t leg = 0; // from point `leg` of the run to the next
    units::Length length;
    units::Length drop; // below 0: rises
    units::Elevation invertStart;
    units::Elevation invertEnd;
    FallVerdict verdict = FallVerdict::falls;
    units::Length missing{}; // what the leg's end has to be lowered by for the least fall; 0 where it falls

    friend bool operator==(const Fall&, const Fall&) = default;
};

struct SectionRun {
    base::Id id;
    std::string tag;
    plan::Service service = plan::Service::pressure;
    bool forward = true; // the water runs as drawn
    PipeSize pipe;
    std::vector<ProfilePoint> centre;  // downstream
    std::vector<std::size_t> vertices; // of the run in plan, for each point
    std::vector<Fall> falls;           // gravity runs

    friend bool operator==(const SectionRun&, const SectionRun&) = default;
};

struct SectionVessel {
    VesselProfile profile; // with the ports on the way only
    base::Id enteredBy;    // port; invalid: the vessel of the pump
    base::Id leftBy;       // port; invalid: the pump, or the last
    bool again = false;    // drawn before: the way comes back to it
    // The water here stands so much above the outlet it should come from, upstream: it cannot run in. The largest of
    // both running states.
    std::optional<units::Length> drowns;

    friend bool operator==(const SectionVessel&, const SectionVessel&) = default;
};

struct SectionPath {
    WaterWay way;
    PumpProfile pump;
    std::vector<SectionVessel> vessels; // in order of the water; the pump's first
    std::vector<SectionRun> runs;
    std::vector<ProfilePoint> floor;     // its level under the way
    std::optional<ProfilePoint> highest; // of the pipes' centre lines
    ProfilePoint low{};                  // of everything drawn
    ProfilePoint high{};
};
std::optional<SectionPath> sectionOf(const plan::Plan& plan, const assessment::Assessment* results,
                                     const catalogue::Catalogue* catalogue, const WayChoice& choice);

} // namespace sumpwright::report
