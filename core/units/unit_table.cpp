// Factors: SI prefixes by definition; customary units after NIST Special Publication 811 (2008), appendix B.
#include "core/units/unit_table.hpp"

#include <array>
#include <cmath>

#include "core/units/text_scan.hpp"

namespace sumpwright::units::detail
{

namespace
{

constexpr Dimension one{};
constexpr Dimension lengthD{.length = 1};
constexpr Dimension areaD{.length = 2};
constexpr Dimension volumeD{.length = 3};
constexpr Dimension flowD{.length = 3, .time = -1};
constexpr Dimension massD{.mass = 1};
constexpr Dimension timeD{.time = 1};
constexpr Dimension angleD{.angle = 1};
constexpr Dimension temperatureD{.temperature = 1};
constexpr Dimension forceD{.length = 1, .mass = 1, .time = -2};
constexpr Dimension pressureD{.length = -1, .mass = 1, .time = -2};
constexpr Dimension energyD{.length = 2, .mass = 1, .time = -2};
constexpr Dimension powerD{.length = 2, .mass = 1, .time = -3};
constexpr Dimension densityD{.length = -3, .mass = 1};
constexpr Dimension lineLoadD{.mass = 1, .time = -2};
constexpr Dimension subgradeD{.length = -2, .mass = 1, .time = -2};

constexpr Factor unity{};
constexpr Factor milli{1, 1e3};
constexpr Factor kilo{1e3, 1};
constexpr Factor mega{1e6, 1};
constexpr Factor inch{254, 1e4};
constexpr Factor foot{3048, 1e4};
constexpr Factor pound{45359237, 1e8};
constexpr Factor gallon{3785411784, 1e12};          // US liquid gallon, 231 in3
constexpr Factor poundForce{44482216152605, 1e13};  // 1 lb times standard gravity
constexpr Factor psi{44482216152605, 6451600000};   // lbf/in2, 6894.757293168 Pa
constexpr Factor psf{44482216152605, 929030400000}; // lbf/ft2, 47.88025898 Pa

constexpr std::array symbols{
    // lengths
    Symbol{"m", unity, lengthD},
    Symbol{"mm", milli, lengthD},
    Symbol{"cm", {1, 100}, lengthD},
    Symbol{"dm", {1, 10}, lengthD},
    Symbol{"km", kilo, lengthD},
    Symbol{"\u00b5m", {1, 1e6}, lengthD},
    Symbol{"\u03bcm", {1, 1e6}, lengthD},
    Symbol{"um", {1, 1e6}, lengthD},
    Symbol{"metre", unity, lengthD},
    Symbol{"metres", unity, lengthD},
    Symbol{"meter", unity, lengthD},
    Symbol{"meters", unity, lengthD},
    Symbol{"in", inch, lengthD},
    Symbol{"inch", inch, lengthD},
    Symbol{"inches", inch, lengthD},
    Symbol{"\"", inch, lengthD},
    Symbol{"\u2033", inch, lengthD},
    Symbol{"\u201d", inch, lengthD},
    Symbol{"''", inch, lengthD},
    Symbol{"ft", foot, lengthD},
    Symbol{"foot", foot, lengthD},
    Symbol{"feet", foot, lengthD},
    Symbol{"'", foot, lengthD},
    Symbol{"\u2032", foot, lengthD},
    Symbol{"\u2019", foot, lengthD},
    Symbol{"yd", {9144, 1e4}, lengthD},
    // areas and volumes
    Symbol{"sq ft", {9290304, 1e8}, areaD},
    Symbol{"sq in", {64516, 1e8}, areaD},
    Symbol{"ha", {1e4, 1}, areaD},
    Symbol{"cu ft", {28316846592, 1e12}, volumeD},
    Symbol{"cu in", {16387064, 1e12}, volumeD},
    Symbol{"L", milli, volumeD},
    Symbol{"l", milli, volumeD},
    Symbol{"mL", {1, 1e6}, volumeD},
    Symbol{"ml", {1, 1e6}, volumeD},
    Symbol{"litre", milli, volumeD},
    Symbol{"litres", milli, volumeD},
    Symbol{"liter", milli, volumeD},
    Symbol{"liters", milli, volumeD},
    Symbol{"US gal", gallon, volumeD},
    Symbol{"US gallon", gallon, volumeD},
    Symbol{"US gallons", gallon, volumeD},
    Symbol{"US gpm", {3785411784, 60e12}, flowD},
    Symbol{"imp gal", {454609, 1e8}, volumeD},
    Symbol{"imp gallon", {454609, 1e8}, volumeD},
    Symbol{"imp gallons", {454609, 1e8}, volumeD},
    // angles and ratios
    Symbol{"rad", unity, angleD},
    Symbol{"deg", {3.14159265358979323846, 180}, angleD},
    Symbol{"\u00b0", {3.14159265358979323846, 180}, angleD},
    Symbol{"%", {1, 100}, one},
    Symbol{"\u2030", {1, 1000}, one},
    // times
    Symbol{"s", unity, timeD},
    Symbol{"ms", milli, timeD},
    Symbol{"sec", unity, timeD},
    Symbol{"second", unity, timeD},
    Symbol{"seconds", unity, timeD},
    Symbol{"min", {60, 1}, timeD},
    Symbol{"minute", {60, 1}, timeD},
    Symbol{"minutes", {60, 1}, timeD},
    Symbol{"h", {3600, 1}, timeD},
    Symbol{"hr", {3600, 1}, timeD},
    Symbol{"hour", {3600, 1}, timeD},
    Symbol{"hours", {3600, 1}, timeD},
    Symbol{"d", {86400, 1}, timeD},
    Symbol{"day", {86400, 1}, timeD},
    Symbol{"days", {86400, 1}, timeD},
    Symbol{"week", {604800, 1}, timeD},
    Symbol{"weeks", {604800, 1}, timeD},
    // masses
    Symbol{"kg", unity, massD},
    Symbol{"g", milli, massD},
    Symbol{"mg", {1, 1e6}, massD},
    Symbol{"\u00b5g", {1, 1e9}, massD},
    Symbol{"\u03bcg", {1, 1e9}, massD},
    Symbol{"ug", {1, 1e9}, massD},
    Symbol{"t", kilo, massD},
    Symbol{"lb", pound, massD},
    Symbol{"lbs", pound, massD},
    Symbol{"oz", {45359237, 16e8}, massD},
    // forces and what they spread over
    Symbol{"N", unity, forceD, Says::force},
    Symbol{"kN", kilo, forceD, Says::force},
    Symbol{"MN", mega, forceD, Says::force},
    Symbol{"lbf", poundForce, forceD, Says::force},
    Symbol{"kip", {44482216152605, 1e10}, forceD, Says::force},
    Symbol{"kgf", {980665, 1e5}, forceD, Says::force},
    Symbol{"Pa", unity, pressureD},
    Symbol{"hPa", {100, 1}, pressureD},
    Symbol{"kPa", kilo, pressureD},
    Symbol{"MPa", mega, pressureD},
    Symbol{"GPa", {1e9, 1}, pressureD},
    Symbol{"mPa", milli, pressureD},
    Symbol{"bar", {1e5, 1}, pressureD},
    Symbol{"mbar", {100, 1}, pressureD},
    Symbol{"atm", {101325, 1}, pressureD},
    Symbol{"psi", psi, pressureD},
    Symbol{"psf", psf, pressureD},
    Symbol{"ksf", {44482216152605, 929030400}, pressureD},
    Symbol{"plf", {44482216152605, 3048e9}, lineLoadD},
    Symbol{"pcf", {45359237e4, 28316846592}, densityD},
    Symbol{"pci", {44482216152605, 163870640}, subgradeD},
    // energies and powers
    Symbol{"J", unity, energyD, Says::energy},
    Symbol{"kJ", kilo, energyD, Says::energy},
    Symbol{"MJ", mega, energyD, Says::energy},
    Symbol{"Wh", {3600, 1}, energyD, Says::energy},
    Symbol{"kWh", {3.6e6, 1}, energyD, Says::energy},
    Symbol{"MWh", {3.6e9, 1}, energyD, Says::energy},
    Symbol{"W", unity, powerD, Says::energy},
    Symbol{"mW", milli, powerD, Says::energy},
    Symbol{"kW", kilo, powerD, Says::energy},
    Symbol{"MW", mega, powerD, Says::energy},
    Symbol{"hp", {745.69987158227022, 1}, powerD, Says::energy}, // 550 ft lbf/s
    // temperatures
    Symbol{"K", unity, temperatureD},
    Symbol{"degC", unity, temperatureD, Says::celsius},
    Symbol{"\u00b0C", unity, temperatureD, Says::celsius},
    Symbol{"\u00b0 C", unity, temperatureD, Says::celsius},
    Symbol{"degF", {5, 9}, temperatureD, Says::fahrenheit},
    Symbol{"\u00b0F", {5, 9}, temperatureD, Says::fahrenheit},
    Symbol{"\u00b0 F", {5, 9}, temperatureD, Says::fahrenheit},
};

bool wordEndsAt(std::string_view text, std::size_t at) { return at >= text.size() || !isAsciiLetter(text[at]); }

// The byte after `symbol` when it is written at `from`, a space in it standing for any number of spaces.
std::optional<std::size_t> matched(std::string_view text, std::size_t from, std::string_view symbol)
{
    std::size_t at = from;
    for (char c : symbol) {
        if (c == ' ') {
            const std::size_t after = skipSpaces(text, at);
            if (after == at)
                return std::nullopt;
            at = after;
        } else if (at < text.size() && text[at] == c) {
            ++at;
        } else {
            return std::nullopt;
        }
    }
    return at;
}

bool isWhole(double value) { return value >= 1.0 && value < 9007199254740992.0 && value == std::floor(value); }

double commonDivisor(double a, double b)
{
    while (b != 0.0) {
        const double rest = std::fmod(a, b);
        a = b;
        b = rest;
    }
    return a;
}

char lower(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c + ('a' - 'A')) : c; }

} // namespace

Dimension Dimension::times(const Dimension& other, int power) const
{
    return {length + power * other.length,           mass + power * other.mass,   time + power * other.time,
            temperature + power * other.temperature, angle + power * other.angle, money + power * other.money};
}

Factor Factor::with(const Factor& other, int power) const
{
    Factor result = *this;
    for (int i = 0; i < std::abs(power); ++i) {
        result.times *= power > 0 ? other.times : other.over;
        result.over *= power > 0 ? other.over : other.times;
    }
    if (isWhole(result.times) && isWhole(result.over)) {
        const double divisor = commonDivisor(result.times, result.over);
        result.times /= divisor;
        result.over /= divisor;
    }
    return result;
}

std::optional<Found> symbolAt(std::string_view text, std::size_t from)
{
    std::optional<Found> best;
    for (const Symbol& symbol : symbols) {
        const auto end = matched(text, from, symbol.text);
        if (!end || (best && *end <= best->end))
            continue;
        if (isAsciiLetter(symbol.text.back()) && !wordEndsAt(text, *end))
            continue;
        best = Found{&symbol, *end};
    }
    return best;
}

std::string_view symbolSpelledLike(std::string_view word)
{
    for (const Symbol& symbol : symbols) {
        bool same = symbol.text.size() == word.size();
        for (std::size_t i = 0; same && i < word.size(); ++i)
            same = lower(word[i]) == lower(symbol.text[i]);
        if (same)
            return symbol.text;
    }
    return {};
}

} // namespace sumpwright::units::detail
