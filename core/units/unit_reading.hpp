// Reading a unit as written after a number: "mm", "L/h", "kN m", "g/(m2 d)", "US gal/min", "mg/L as N".
// Internal to core/units.
#pragma once

#include <cstddef>
#include <optional>
#include <string_view>

#include "core/units/unit_table.hpp"

namespace sumpwright::units::detail
{

struct UnitRead {
    Factor factor;
    Dimension dimension;
    Says says = Says::nothing; // celsius and fahrenheit only when the unit is that symbol alone
    std::size_t begin = 0, end = 0;
};

// The unit at byte `at` (spaces before it are skipped), or nothing when no unit begins there. A unit may begin
// with a slash: "/kWh". For a concentration the basis ("N", "as CaCO3") belongs to the unit and must fit the kind.
// For a temperature difference degrees are steps of the scale. Throws Refused.
std::optional<UnitRead> readUnit(std::string_view text, std::size_t at, KindId wanted);

bool isConcentration(KindId kind);

// A unit that is the whole text, for the program's own tables; a broken promise when it is none of that kind.
UnitRead unitNamed(std::string_view text, KindId kind);

} // namespace sumpwright::units::detail
