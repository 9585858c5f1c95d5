// nearestNames(): the few known names most like a mistyped one, for refusals. Distance is the count of single letters
// to change, add, drop or swap; upper and lower case count as equal.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace sumpwright::catalogue
{

// At most `most` names, nearest first, equal distances in the order given.
std::vector<std::string> nearestNames(std::string_view asked, const std::vector<std::string>& known,
                                      std::size_t most = 3);

// "a, b, c"
std::string commaList(const std::vector<std::string>& names);

} // namespace sumpwright::catalogue
