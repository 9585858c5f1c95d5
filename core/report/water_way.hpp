// Water way: the path of the water from a pump, run by run, to one outlet in a vessel, and on by gravity runs from
// vessel to vessel back to a sump. Found on the drawing alone; results only say which of two ways carries water.
// A way that is not drawn to its end stops at the last vessel it reaches.
#pragma once

#include <optional>
#include <vector>

#include "core/assessment/assessment.hpp"
#include "core/plan/plan.hpp"

namespace sumpwright::report
{

// Which way: by the pump and by the port where its pressure runs end.
struct WayChoice {
    base::Id pump;
    base::Id vessel{};
    base::Id port{};
    friend bool operator==(const WayChoice&, const WayChoice&) = default;
};

struct WayRun {
    base::Id run;
    bool forward = true; // the water runs as drawn
    friend bool operator==(const WayRun&, const WayRun&) = default;
};

// A vessel on the way, and the gravity runs that lead on from it; none at the last.
struct WayStop {
    base::Id vessel;
    base::Id enteredBy{}; // port
    base::Id leftBy{};    // port; invalid at the last
    std::vector<WayRun> onward{};
    friend bool operator==(const WayStop&, const WayStop&) = default;
};

struct WaterWay {
    WayChoice choice;
    base::Id source; // the vessel the pump stands in
    std::vector<WayRun> lift;
    std::vector<WayStop> stops; // the first is where the pressure runs end
    bool closed = false;        // the last stop is a sump
    friend bool operator==(const WaterWay&, const WaterWay&) = default;
};

// Every outlet each pump's pressure runs reach, pump by pump, the nearest along the pipes first.
std::vector<WayChoice> waysOf(const plan::Plan& plan, const assessment::Assessment* results);
// The pump's worst way, as the results have it; without results the first there is. `pump` invalid: the first pump
// that has one.
std::optional<WayChoice> usualWay(const plan::Plan& plan, const assessment::Assessment* results, base::Id pump = {});
// Nothing when no pressure run joins the two.
std::optional<WaterWay> wayOf(const plan::Plan& plan, const assessment::Assessment* results, const WayChoice& choice);

// Whether a gravity run is drawn against the water: water leaves vessels by lips and outlets and enters by inlets.
bool drawnAgainst(const plan::Plan& plan, const plan::Run& gravity);

} // namespace sumpwright::report
