#include "core/units/unit_reading.hpp"

#include <array>
#include <string>

#include "core/units/refused.hpp"

namespace sumpwright::units::detail
{

namespace
{

struct Basis {
    std::string_view text;
    KindId kind;
};

// What a concentration is counted as. "N" serves all four kinds of nitrogen; longer words stand before shorter ones.
constexpr std::array bases{
    Basis{"NH3-N", KindId::ammoniaNitrogen},
    Basis{"NH\u2083-N", KindId::ammoniaNitrogen},
    Basis{"NO2-N", KindId::nitriteNitrogen},
    Basis{"NO\u2082-N", KindId::nitriteNitrogen},
    Basis{"NO3-N", KindId::nitrateNitrogen},
    Basis{"NO\u2083-N", KindId::nitrateNitrogen},
    Basis{"TAN", KindId::tan},
    Basis{"NH3", KindId::ammonia},
    Basis{"NH\u2083", KindId::ammonia},
    Basis{"O2", KindId::oxygen},
    Basis{"O\u2082", KindId::oxygen},
    Basis{"CaCO3", KindId::alkalinity},
    Basis{"CaCO\u2083", KindId::alkalinity},
    Basis{"NO2", KindId::ratio}, // nitrite and nitrate as ions: no kind here
    Basis{"NO\u2082", KindId::ratio},
    Basis{"NO3", KindId::ratio},
    Basis{"NO\u2083", KindId::ratio},
    Basis{"NH4", KindId::ratio},
    Basis{"N", KindId::tan},
};

bool countsNitrogen(KindId kind)
{
    return kind == KindId::tan || kind == KindId::ammoniaNitrogen || kind == KindId::nitriteNitrogen ||
           kind == KindId::nitrateNitrogen;
}

struct BasisRead {
    Basis basis;
    std::size_t begin, end;
};

std::optional<BasisRead> basisAt(std::string_view text, std::size_t at)
{
    at = skipSpaces(text, at);
    if (startsAt(text, at, "as "))
        at = skipSpaces(text, at + 2);
    for (const Basis& basis : bases) {
        const std::size_t end = at + basis.text.size();
        const bool goesOn = end < text.size() && (isAsciiLetter(text[end]) || isDigit(text[end]));
        if (startsAt(text, at, basis.text) && !goesOn)
            return BasisRead{basis, at, end};
    }
    return std::nullopt;
}

bool beginsUnit(std::string_view text, std::size_t at)
{
    const std::string_view c = characterAt(text, at);
    return !c.empty() &&
           (isAsciiLetter(c.front()) || static_cast<unsigned char>(c.front()) >= 0x80 || c == "%" || c == "'" ||
            c == "\"") &&
           (isAsciiLetter(c.front()) || symbolAt(text, at));
}

class UnitReader
{
public:
    UnitReader(std::string_view text, KindId wanted) : m_text(text), m_wanted(wanted) {}

    UnitRead product(std::size_t at, int depth)
    {
        UnitRead unit = startsAt(m_text, at, "/") ? UnitRead{{}, {}, Says::nothing, at, at} : factor(at, depth);
        for (;;) {
            const std::size_t next = skipSpaces(m_text, unit.end);
            if (isConcentration(m_wanted) && basisAt(m_text, unit.end))
                return unit;
            if (startsAt(m_text, next, "/") && unitFollows(next + 1)) {
                join(unit, factor(skipSpaces(m_text, next + 1), depth), -1);
            } else if (const std::size_t sign = productSign(next); sign && unitFollows(next + sign)) {
                join(unit, factor(skipSpaces(m_text, next + sign), depth), 1);
            } else if (next > unit.end && beginsUnit(m_text, next)) {
                join(unit, factor(next, depth), 1);
            } else {
                return unit;
            }
        }
    }

    bool unitFollows(std::size_t at) const
    {
        at = skipSpaces(m_text, at);
        while (startsAt(m_text, at, "("))
            at = skipSpaces(m_text, at + 1);
        return beginsUnit(m_text, at);
    }

private:
    std::size_t productSign(std::size_t at) const
    {
        for (std::string_view sign : {std::string_view("*"), std::string_view("\u00b7"), std::string_view("\u22c5")})
            if (startsAt(m_text, at, sign))
                return sign.size();
        return 0;
    }

    static void join(UnitRead& unit, const UnitRead& other, int power)
    {
        unit.factor = unit.factor.with(other.factor, power);
        unit.dimension = unit.dimension.times(other.dimension, power);
        const bool scale = other.says == Says::celsius || other.says == Says::fahrenheit;
        if (unit.says == Says::celsius || unit.says == Says::fahrenheit || unit.says == Says::nothing)
            unit.says = scale ? Says::nothing : other.says;
        unit.end = other.end;
    }

    UnitRead factor(std::size_t at, int depth)
    {
        if (startsAt(m_text, at, "("))
            return inParentheses(at, depth);
        const auto found = symbolAt(m_text, at);
        if (!found)
            unknown(at);
        UnitRead unit{found->symbol->factor, found->symbol->dimension, found->symbol->says, at, found->end};
        if (isAsciiLetter(found->symbol->text.back()))
            applyPower(unit);
        return unit;
    }

    UnitRead inParentheses(std::size_t at, int depth)
    {
        if (depth > 8)
            refuse("units.too-deep", m_text, at, "the unit has too many parentheses", "at most 8 inside each other");
        UnitRead unit = product(skipSpaces(m_text, at + 1), depth + 1);
        const std::size_t close = skipSpaces(m_text, unit.end);
        if (!startsAt(m_text, close, ")"))
            refuse("units.syntax", m_text, close, "a closing parenthesis is missing in the unit", "\u201c)\u201d");
        unit.begin = at;
        unit.end = close + 1;
        return unit;
    }

    void applyPower(UnitRead& unit) const
    {
        std::size_t at = unit.end;
        int power = 1;
        if (startsAt(m_text, at, "^"))
            ++at;
        if (startsAt(m_text, at, "\u00b2") || startsAt(m_text, at, "\u00b3")) {
            power = startsAt(m_text, at, "\u00b2") ? 2 : 3;
            at += 2;
        } else if (digitAt(m_text, at) && !digitAt(m_text, at + 1) && m_text[at] != '0') {
            power = m_text[at] - '0';
            ++at;
        } else {
            return;
        }
        if (power > 1 && (unit.says == Says::celsius || unit.says == Says::fahrenheit))
            unit.says = Says::nothing;
        unit.factor = Factor{}.with(unit.factor, power);
        unit.dimension = Dimension{}.times(unit.dimension, power);
        unit.end = at;
    }

    [[noreturn]] void unknown(std::size_t at) const
    {
        std::size_t end = at;
        while (end < m_text.size() && (isAsciiLetter(m_text[end]) || (end > at && isDigit(m_text[end]))))
            ++end;
        std::string_view word = m_text.substr(at, end - at);
        if (word.empty())
            word = characterAt(m_text, at);
        for (std::string_view gallon : {"gal", "gals", "gallon", "gallons", "gpm", "gph"})
            if (word == gallon)
                refuse("units.which-gallon", m_text, at, quoted(word) + " does not say which gallon",
                       "US gal (3.785 L) or imp gal (4.546 L), as in 13 US gal/min");
        if (word == "inf" || word == "infinity" || word == "nan" || word == "NaN" || word == "INF" || word == "NAN")
            refuse("units.not-finite", m_text, at, quoted(word) + " is no number to compute with", "a number");
        std::string accepts = "accepted: " + std::string(acceptedUnits(m_wanted));
        if (const std::string_view near = symbolSpelledLike(word); !near.empty())
            accepts = std::string(near) + " (capitals matter); " + accepts;
        refuse("units.unknown-unit", m_text, at, quoted(word) + " is not a unit known here", accepts);
    }

    std::string_view m_text;
    KindId m_wanted;
};

void readBasis(std::string_view text, UnitRead& unit, KindId wanted)
{
    const auto read = basisAt(text, unit.end);
    if (!read)
        return;
    const bool fits = read->basis.kind == wanted || (read->basis.text == "N" && countsNitrogen(wanted));
    if (!fits)
        refuse("units.wrong-basis", text, read->begin,
               quoted(read->basis.text) + " is another basis, wanted: " + std::string(kindName(wanted)),
               "accepted: " + std::string(acceptedUnits(wanted)));
    unit.end = read->end;
}

} // namespace

bool isConcentration(KindId kind) { return kind >= KindId::tan && kind <= KindId::alkalinity; }

std::optional<UnitRead> readUnit(std::string_view text, std::size_t at, KindId wanted)
{
    at = skipSpaces(text, at);
    UnitReader reader(text, wanted);
    const bool slash = startsAt(text, at, "/") && reader.unitFollows(at + 1);
    if (!slash && !beginsUnit(text, at))
        return std::nullopt;
    UnitRead unit = reader.product(at, 0);
    if (isConcentration(wanted) && unit.dimension == dimensionOf(wanted))
        readBasis(text, unit, wanted);
    if (wanted == KindId::temperatureDifference && (unit.says == Says::celsius || unit.says == Says::fahrenheit))
        unit.says = Says::nothing;
    return unit;
}

UnitRead unitNamed(std::string_view text, KindId kind)
{
    if (text.empty())
        return {};
    try {
        const auto unit = readUnit(text, 0, kind);
        const Dimension wanted = dimensionOf(kind);
        const Dimension perEnergy = wanted.times(Dimension{.money = 1}, -1);
        base::ensure(unit && unit->end == text.size(), "a unit of the program is written right");
        base::ensure(unit->dimension == wanted || (kind == KindId::energyPrice && unit->dimension == perEnergy),
                     "a unit of the program belongs to its kind");
        return *unit;
    } catch (const Refused& refused) {
        throw base::BrokenPromise("unit of the program: " + base::oneLine(refused.refusal));
    }
}

} // namespace sumpwright::units::detail
