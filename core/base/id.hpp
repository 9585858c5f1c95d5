// Id: names an element of a plan for its whole life. Zero is "none". Never reused inside a plan.
#pragma once

#include <cstdint>
#include <functional>

namespace sumpwright::base {

struct Id {
    std::uint64_t number = 0;

    bool valid() const { return number != 0; }
    friend auto operator<=>(const Id&, const Id&) = default;
};

} // namespace sumpwright::base

template <> struct std::hash<sumpwright::base::Id> {
    std::size_t operator()(const sumpwright::base::Id& id) const noexcept { return std::hash<std::uint64_t>()(id.number); }
};
