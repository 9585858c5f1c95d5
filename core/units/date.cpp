#include <cstdio>

#include "core/units/parse.hpp"
#include "core/units/text_scan.hpp"

namespace sumpwright::units
{

base::Outcome<std::chrono::year_month_day> parseDate(std::string_view text)
{
    constexpr std::string_view shape = "0000-00-00";
    const std::string_view plain = detail::trimmed(text);
    const base::Refusal refusal{"units.bad-date", "character 1", detail::quoted(plain) + " is not a calendar day",
                                "a day as in 2026-04-30"};
    if (plain.size() != shape.size() || !detail::isValidUtf8(plain))
        return refusal;
    for (std::size_t i = 0; i < shape.size(); ++i)
        if (shape[i] == '-' ? plain[i] != '-' : !detail::isDigit(plain[i]))
            return refusal;
    const auto number = [&](std::size_t from, std::size_t digits) {
        int value = 0;
        for (std::size_t i = from; i < from + digits; ++i)
            value = 10 * value + (plain[i] - '0');
        return value;
    };
    const std::chrono::year_month_day date{std::chrono::year(number(0, 4)),
                                           std::chrono::month(static_cast<unsigned>(number(5, 2))),
                                           std::chrono::day(static_cast<unsigned>(number(8, 2)))};
    if (!date.ok())
        return refusal;
    return date;
}

std::string dateText(std::chrono::year_month_day date)
{
    base::ensure(date.ok() && date.year() >= std::chrono::year(0) && date.year() <= std::chrono::year(9999),
                 "a date to be written exists");
    char text[16];
    std::snprintf(text, sizeof text, "%04d-%02u-%02u", static_cast<int>(date.year()),
                  static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()));
    return text;
}

} // namespace sumpwright::units
