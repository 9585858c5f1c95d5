// rowOf: the catalogue row of an id, or null. For loops over a whole plan: no refusal is put together.
#pragma once

#include <algorithm>
#include <string_view>
#include <vector>

namespace sumpwright::assessment
{

template <class Row> const Row* rowOf(const std::vector<Row>& rows, std::string_view id)
{
    const auto at = std::find_if(rows.begin(), rows.end(), [id](const Row& row) { return row.id == id; });
    return at == rows.end() ? nullptr : &*at;
}

} // namespace sumpwright::assessment
