// Pump: a submersible pump standing in a vessel, by catalogue id or by the person's own curve points.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/base/id.hpp"
#include "core/plan/point.hpp"

namespace sumpwright::plan
{

struct CurvePoint {
    units::Flow flow;
    units::Head head;
    friend bool operator==(const CurvePoint&, const CurvePoint&) = default;
};

// Identical units that stand together: side by side their flows add, in a row their heads. Two side by side have a
// non-return valve each.
enum class PumpArrangement { one, twoParallel, twoInSeries };

struct Pump {
    base::Id id;
    std::string tag;
    base::Id vessel;                      // where it stands
    Point offset;                         // from the vessel's centre, in the vessel's own frame
    std::string modelId;                  // catalogue; empty: own curve
    std::vector<CurvePoint> ownCurve;     // flow rising from 0, head falling
    bool twoNumbers = false;              // the own curve is the two numbers of the box: shut-off head, greatest flow
    std::optional<units::Power> ownPower; // electrical input of one unit with the own curve
    PumpArrangement arrangement = PumpArrangement::one;
    double speed = 1.0;                                         // ratio of the speed the curve holds for, (0, 1.5]
    units::Elevation outletLevel = units::elevationMetres(0.0); // centre line of its outlet
    std::optional<units::Length> leastDepth; // water above the vessel's inside bottom below which it must stop
    bool running = true;
    std::string extra;

    friend bool operator==(const Pump&, const Pump&) = default;
};

} // namespace sumpwright::plan
