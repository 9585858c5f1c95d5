// Tag spans: tags that follow each other, drawn together: B1, B2, B3, B5 read "B1 to B3" and "B5".
#pragma once

#include <string>
#include <vector>

namespace sumpwright::report
{

struct TagSpan {
    std::string first;
    std::string last; // the same as the first for one alone
    std::size_t count = 1;
};

// In natural order (B2 before B10). Two neighbours stay two; a tag that does not end in a number stands alone.
std::vector<TagSpan> spansOf(const std::vector<std::string>& tags);

} // namespace sumpwright::report
