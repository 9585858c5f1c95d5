// Refused: carries a refusal out of the nested reading functions to the door that turns it into an Outcome.
// Internal to core/units; never leaves parse().
#pragma once

#include <string>
#include <string_view>
#include <utility>

#include "core/base/outcome.hpp"
#include "core/units/text_scan.hpp"

namespace sumpwright::units::detail
{

struct Refused {
    base::Refusal refusal;
};

[[noreturn]] inline void refuse(std::string id, std::string_view text, std::size_t at, std::string what,
                                std::string accepts)
{
    throw Refused{{std::move(id), characterPlace(text, at), std::move(what), std::move(accepts)}};
}

} // namespace sumpwright::units::detail
