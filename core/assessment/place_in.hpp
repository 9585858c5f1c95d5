// placeIn: where an element stands among the indices of a circuit, which ascend with the ids; their count if absent.
#pragma once

#include <algorithm>
#include <cstddef>
#include <vector>

#include "core/base/id.hpp"

namespace sumpwright::assessment
{

template <class Element>
std::size_t placeIn(const std::vector<std::size_t>& indices, const std::vector<Element>& all, base::Id id)
{
    const auto at = std::lower_bound(indices.begin(), indices.end(), id,
                                     [&all](std::size_t index, base::Id key) { return all[index].id < key; });
    return at != indices.end() && all[*at].id == id ? static_cast<std::size_t>(at - indices.begin()) : indices.size();
}

} // namespace sumpwright::assessment
