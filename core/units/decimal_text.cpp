#include "core/units/decimal_text.hpp"

#include <array>
#include <charconv>
#include <cmath>

#include "core/base/ensure.hpp"

namespace sumpwright::units::detail
{

Decimal rounded(double value, int significantDigits)
{
    std::array<char, 64> buffer;
    const auto end = std::to_chars(buffer.data(), buffer.data() + buffer.size(), value, std::chars_format::scientific,
                                   significantDigits - 1);
    base::ensure(end.ec == std::errc{}, "a number fits its buffer");
    std::string_view text(buffer.data(), static_cast<std::size_t>(end.ptr - buffer.data()));
    Decimal decimal;
    if (text.front() == '-') {
        decimal.negative = true;
        text.remove_prefix(1);
    }
    const std::size_t e = text.find('e');
    for (char c : text.substr(0, e))
        if (c != '.')
            decimal.digits += c;
    std::string_view exponent = text.substr(e + 1);
    if (exponent.front() == '+')
        exponent.remove_prefix(1);
    std::from_chars(exponent.data(), exponent.data() + exponent.size(), decimal.exponent);
    return decimal;
}

void dropTrailingZeros(Decimal& decimal)
{
    while (decimal.digits.size() > 1 && decimal.digits.back() == '0')
        decimal.digits.pop_back();
}

double valueOf(const Decimal& decimal)
{
    const std::string text = (decimal.negative ? "-" : "") + decimal.digits.substr(0, 1) + "." +
                             decimal.digits.substr(1) + "e" + std::to_string(decimal.exponent);
    double value = 0.0;
    std::from_chars(text.data(), text.data() + text.size(), value);
    return value;
}

std::string fileText(const Decimal& decimal, std::string_view decimalMark)
{
    const int exponent = decimal.exponent;
    const auto count = static_cast<int>(decimal.digits.size());
    std::string text = decimal.negative ? "-" : "";
    if (exponent < -5 || exponent > 15) {
        text += decimal.digits.substr(0, 1);
        if (count > 1)
            text += std::string(decimalMark) + decimal.digits.substr(1);
        return text + "e" + std::to_string(exponent);
    }
    if (exponent < 0)
        return text + "0" + std::string(decimalMark) + std::string(static_cast<std::size_t>(-exponent - 1), '0') +
               decimal.digits;
    if (count <= exponent + 1)
        return text + decimal.digits + std::string(static_cast<std::size_t>(exponent + 1 - count), '0');
    const auto whole = static_cast<std::size_t>(exponent) + 1;
    return text + decimal.digits.substr(0, whole) + std::string(decimalMark) + decimal.digits.substr(whole);
}

std::string screenText(double value, int decimals, std::string_view decimalMark)
{
    std::array<char, 512> buffer;
    const auto end = std::to_chars(buffer.data(), buffer.data() + buffer.size(), std::abs(value),
                                   std::chars_format::fixed, decimals);
    base::ensure(end.ec == std::errc{}, "a number fits its buffer");
    const std::string_view plain(buffer.data(), static_cast<std::size_t>(end.ptr - buffer.data()));
    const std::string_view whole = plain.substr(0, plain.find('.'));
    std::string text = value < 0.0 && plain.find_first_of("123456789") != std::string_view::npos ? "\u2212" : "";
    for (std::size_t i = 0; i < whole.size(); ++i) {
        if (i > 0 && (whole.size() - i) % 3 == 0)
            text += "\u202f";
        text += whole[i];
    }
    if (whole.size() < plain.size())
        text += std::string(decimalMark) + std::string(plain.substr(whole.size() + 1));
    return text;
}

} // namespace sumpwright::units::detail
