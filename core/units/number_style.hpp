// NumberStyle: how a person writes numbers, as a value: the decimal mark and the marks that group digits by three.
// Files and the command line always use point(); the window passes the desktop's marks. No locale is asked.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace sumpwright::units
{

struct NumberStyle {
    std::string decimalMark = ".";       // one UTF-8 character: "." or ","
    std::vector<std::string> groupMarks; // UTF-8 characters, e.g. "," or U+202F; empty: the style does not group

    // The style of files and the command line: a point, no groups, a comma is always refused.
    static NumberStyle point() { return {}; }
    // The desktop's style. A space of any kind as group mark stands for all spaces that people type there.
    // An unusable decimal mark (neither point nor comma) becomes the point.
    static NumberStyle ofDesktop(std::string_view decimalMark, std::string_view groupMark);
    static NumberStyle ofDesktop(std::string_view decimalMark, const std::vector<std::string>& groupMarks);

    bool isPlainPoint() const { return decimalMark == "." && groupMarks.empty(); }
    friend bool operator==(const NumberStyle&, const NumberStyle&) = default;
};

} // namespace sumpwright::units
