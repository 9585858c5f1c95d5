// How fast the water comes down when the pump stops: the sump's level over time.
//
// Pipe content is down at once. Vessels run out over their lips and outlets by the outlets' own laws (the runs behind
// them do not hold the water back here), and what leaves a vessel passes the next one on its way; a submerged inlet
// draws its vessel down with the friction and fittings of the way back to the pump, the pump itself taking nothing.
// Beds are drained before, as everywhere in this state. Time from the stop, in s from 0 up. An estimate.
// Keys: overflow-blend, open-channel, colebrook-1939.
#pragma once

#include <optional>
#include <vector>

#include "core/units/measures.hpp"

namespace sumpwright::assessment
{

struct CoursePoint {
    units::Time time;
    units::Elevation level;
    friend bool operator==(const CoursePoint&, const CoursePoint&) = default;
};

struct StopCourse {
    std::vector<CoursePoint> sump; // times never falling, the first two at 0: before and after the pipes; the last
                                   // holds at least 99 % of what comes down
    units::Time nearlyAll;         // when 95 % of what comes down is down
    std::optional<units::Time> spillsAfter; // absent: it does not spill, or not within a day
    friend bool operator==(const StopCourse&, const StopCourse&) = default;
};

} // namespace sumpwright::assessment
