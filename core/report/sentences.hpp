// The sentences of findings and of the advice that goes with them, by id. In them {1} and {2} stand for the names of
// the first two elements, {all} for all of them, {value}, {limit}, {beside} and {subject} for those of the
// finding; {plain value}
// writes a ratio as a number, not in percent. Of a finding that holds for several elements alike {1} names them all,
// and {is|are} is read as its second half.
#pragma once

#include <span>
#include <string_view>

namespace sumpwright::report
{

struct Sentence {
    std::string_view id;
    std::string_view text;
    std::string_view withoutValue = {}; // said when the finding has no value; empty: `text`
};

std::span<const Sentence> findingSentences();
std::span<const Sentence> adviceSentences();

} // namespace sumpwright::report
