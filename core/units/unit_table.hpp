// Units by their written symbols: the exact factor to SI and the dimension of each. Internal to core/units.
// A factor is kept as two whole numbers (times, then over), so that "1.5 mm" gives the double nearest to 0.0015.
#pragma once

#include <cstddef>
#include <optional>
#include <string_view>

#include "core/units/kind_id.hpp"

namespace sumpwright::units::detail
{

struct Dimension {
    int length = 0, mass = 0, time = 0, temperature = 0, angle = 0, money = 0;

    friend bool operator==(const Dimension&, const Dimension&) = default;
    bool none() const { return *this == Dimension{}; }
    Dimension times(const Dimension& other, int power = 1) const;
};

struct Factor {
    double times = 1.0;
    double over = 1.0;

    double toSi(double number) const { return number * times / over; }
    double size() const { return times / over; }
    Factor with(const Factor& other, int power = 1) const; // reduced by the common divisor
};

// What a symbol says beyond its dimension: a joule is no newton metre, a degree Celsius starts elsewhere.
enum class Says { nothing, energy, force, celsius, fahrenheit };

struct Symbol {
    std::string_view text; // a space in it stands for one or more spaces
    Factor factor;
    Dimension dimension;
    Says says = Says::nothing;
};

struct Found {
    const Symbol* symbol;
    std::size_t end; // byte after the symbol
};

// The longest symbol that starts at byte `from` and does not end inside a word.
std::optional<Found> symbolAt(std::string_view text, std::size_t from);
// A symbol that differs from the word by capitals only: "KG" finds "kg". Empty when there is none.
std::string_view symbolSpelledLike(std::string_view word);

Dimension dimensionOf(KindId kind);
// "a length", "a volume in time", ...: the plain name of a dimension.
std::string_view dimensionName(const Dimension& dimension);

} // namespace sumpwright::units::detail
