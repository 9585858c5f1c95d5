// Grade line: the hydraulic grade along a section path - the level water would stand at in an open pipe there. In the
// state of least flow, the one the drawing shows. Places along the path and levels as in section_path.hpp, downstream.
//
// Pressure runs: from the sump's water up by the head of the pump, down by friction along the true length and by each
// fitting where it sits; at tees the network's own grade. The velocity head is not subtracted: it is lost at the exit.
// Gravity runs: the water found in them, part full or full (open_flow.hpp); an estimate.
#pragma once

#include <optional>
#include <vector>

#include "core/report/section_path.hpp"

namespace sumpwright::report
{

struct GradeStretch {
    bool pressure = true;
    // Gravity: drawn straight from the water it leaves to the mouth or the water it enters, where none is computed.
    bool plain = false;
    std::vector<ProfilePoint> points;

    friend bool operator==(const GradeStretch&, const GradeStretch&) = default;
};
// Empty where the flow is not solved. One stretch of pressure, then one for each pair of vessels joined by gravity.
std::vector<GradeStretch> gradeLineOf(const SectionPath& path, const assessment::Assessment& results);

} // namespace sumpwright::report
