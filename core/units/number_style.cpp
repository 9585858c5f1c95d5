#include "core/units/number_style.hpp"

#include "core/units/text_scan.hpp"

namespace sumpwright::units
{

NumberStyle NumberStyle::ofDesktop(std::string_view decimalMark, std::string_view groupMark)
{
    return ofDesktop(decimalMark, std::vector<std::string>{std::string(groupMark)});
}

NumberStyle NumberStyle::ofDesktop(std::string_view decimalMark, const std::vector<std::string>& groupMarks)
{
    NumberStyle style;
    style.decimalMark = decimalMark == "," ? "," : ".";
    for (const std::string& mark : groupMarks) {
        if (mark.empty() || mark == style.decimalMark)
            continue;
        style.groupMarks.push_back(mark);
        if (mark == "\u2019") // typed as the plain apostrophe of the keyboard
            style.groupMarks.emplace_back("'");
    }
    return style;
}

} // namespace sumpwright::units
