// Finding: something a practitioner should know about the plan: what, where, by how much, who says so, what mends it.
// The core gives ids and quantities; core/report/words.hpp makes plain English of them.
#pragma once

#include <cstddef>
#include <string>
#include <variant>
#include <vector>

#include "core/base/id.hpp"
#include "core/units/measures.hpp"

namespace sumpwright::assessment
{

enum class Severity { error, warning, note };

// Any quantity a finding may speak of; monostate: none; double: a ratio.
using Amount = std::variant<std::monostate, double, units::Length, units::Elevation, units::Area, units::Volume,
                            units::Flow, units::Velocity, units::Head, units::Pressure, units::GroundPressure,
                            units::Mass, units::Force, units::Power, units::Slope, units::Angle, units::Temperature>;

struct Finding {
    std::string id; // "hydraulics.velocity-high"
    Severity severity = Severity::note;
    std::vector<base::Id> elements; // the first is the one to go to; others that matter, ports and valves may follow
    std::size_t alike = 1;          // so many of the first elements it holds for, each by itself
    Amount value;
    Amount limit;
    Amount beside;       // a further amount its sentence tells
    std::string subject; // what the value belongs to where the elements do not say it: a catalogue id, a count
    std::string source;  // key in the table of sources; "common-practice": no source
    std::string mend;    // id of the advice

    friend bool operator==(const Finding&, const Finding&) = default;
};

struct Findings {
    std::vector<Finding> list; // errors first, then warnings, then notes; in each by rule and element
    friend bool operator==(const Findings&, const Findings&) = default;
};

} // namespace sumpwright::assessment
