// Notes, dimension lines and the site sketch that lies under the plan.
#pragma once

#include <optional>
#include <string>

#include "core/base/id.hpp"
#include "core/plan/point.hpp"

namespace sumpwright::plan
{

struct Note {
    base::Id id;
    Point at;
    std::string text;
    std::string extra;
    friend bool operator==(const Note&, const Note&) = default;
};

struct DimensionLine {
    base::Id id;
    Point from;
    Point to;
    units::Length offset = units::metres(0.3); // of the line from the measured points, left of from-to positive
    std::string extra;
    friend bool operator==(const DimensionLine&, const DimensionLine&) = default;
};

// A sketch or photograph under the plan, kept beside the plan's file.
struct Underlay {
    std::string fileName;                              // relative to the plan's folder
    Point corner;                                      // lower left
    units::Length pixelSize = units::millimetres(5.0); // one picture pixel on the floor
    units::Angle turn = units::radians(0.0);
    double opacity = 0.5; // (0, 1]
    std::string extra;
    friend bool operator==(const Underlay&, const Underlay&) = default;
};

} // namespace sumpwright::plan
