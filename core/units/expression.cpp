#include "core/units/expression.hpp"

#include <cmath>
#include <string>

#include "core/units/measures.hpp"
#include "core/units/number_reading.hpp"
#include "core/units/refused.hpp"

namespace sumpwright::units::detail
{

namespace
{

constexpr int deepest = 32;

class Expression
{
public:
    Expression(std::string_view text, const NumberStyle& style, KindId wanted)
        : m_text(text), m_style(style), m_wanted(wanted)
    {
    }

    Value whole()
    {
        const Value value = sum(0);
        skip();
        if (m_at < m_text.size())
            unexpected();
        return value;
    }

private:
    void skip() { m_at = skipSpaces(m_text, m_at); }
    bool take(std::string_view sign)
    {
        skip();
        if (!startsAt(m_text, m_at, sign))
            return false;
        m_at += sign.size();
        return true;
    }
    bool takeMinus() { return take("-") || take("\u2212"); }
    bool takeTimes() { return take("*") || take("\u00d7") || take("\u00b7") || take("\u22c5"); }
    bool takeOver() { return take("/") || take("\u00f7"); }

    Value sum(int depth)
    {
        Value total = product(depth);
        for (;;) {
            skip();
            const std::size_t sign = m_at;
            const bool plus = take("+");
            if (!plus && !takeMinus())
                return total;
            total = added(total, product(depth), plus ? 1.0 : -1.0, sign);
        }
    }

    Value added(const Value& a, const Value& b, double sign, std::size_t signAt) const
    {
        if (a.hasUnit != b.hasUnit)
            refuse("units.missing-unit", m_text, a.hasUnit ? b.at : a.at, "one part of the sum has no unit",
                   "a unit with every part, as in 1.2 m + 30 cm");
        if (a.dimension != b.dimension)
            refuse("units.wrong-kind", m_text, b.at,
                   std::string(dimensionName(b.dimension)) + " cannot be added to " +
                       std::string(dimensionName(a.dimension)),
                   "parts of one kind: " + std::string(acceptedUnits(m_wanted)));
        if (b.onScale && (sign > 0 || !a.onScale))
            refuse("units.wrong-kind", m_text, signAt, "two temperatures do not add up",
                   "a temperature and a difference in K, as in 20 degC + 5 K");
        Value result = a;
        result.onScale = a.onScale && !b.onScale;
        result.says = a.says == Says::nothing ? b.says : a.says;
        result.simple = false;
        result.si = finite(a.si + sign * b.si, signAt);
        return result;
    }

    Value product(int depth)
    {
        Value result = signedValue(depth);
        for (;;) {
            skip();
            const std::size_t sign = m_at;
            if (takeTimes()) {
                result = multiplied(result, signedValue(depth), sign);
            } else if (takeOver()) {
                result = divided(result, signedValue(depth), sign);
            } else {
                return result;
            }
        }
    }

    Value multiplied(const Value& a, const Value& b, std::size_t signAt) const
    {
        refuseScale(a, b, signAt);
        const Value& quantity = a.hasUnit ? a : b;
        const Value& number = a.hasUnit ? b : a;
        if (quantity.simple && !number.hasUnit) {
            Value result = quantity;
            result.setNumber(finite(quantity.number * number.si, signAt));
            finite(result.si, signAt);
            return result;
        }
        return combined(a, b, 1, finite(a.si * b.si, signAt));
    }

    Value divided(const Value& a, const Value& b, std::size_t signAt) const
    {
        refuseScale(a, b, signAt);
        if (b.si == 0.0)
            refuse("units.divide-by-zero", m_text, signAt, "the amount is divided by zero",
                   "a divisor other than zero");
        if (!a.hasUnit && b.simple) { // "1 / 2 in" is half an inch
            Value result = b;
            result.setNumber(finite(a.si / b.number, signAt));
            finite(result.si, signAt);
            return result;
        }
        if (a.simple && !b.hasUnit) {
            Value result = a;
            result.setNumber(finite(a.number / b.si, signAt));
            finite(result.si, signAt);
            return result;
        }
        return combined(a, b, -1, finite(a.si / b.si, signAt));
    }

    static Value combined(const Value& a, const Value& b, int power, double si)
    {
        Value result = a.hasUnit ? a : b;
        result.dimension = a.dimension.times(b.dimension, power);
        result.hasUnit = a.hasUnit || b.hasUnit;
        result.simple = false;
        result.si = si;
        return result;
    }

    void refuseScale(const Value& a, const Value& b, std::size_t signAt) const
    {
        if (a.onScale || b.onScale)
            refuse("units.wrong-kind", m_text, signAt, "a temperature in degrees cannot be multiplied or divided",
                   "one temperature, as in 20 degC");
    }

    double finite(double value, std::size_t at) const
    {
        if (!std::isfinite(value))
            refuse("units.not-finite", m_text, at, "the result is too large to compute with",
                   "numbers of a size that occurs in a building");
        return value;
    }

    Value signedValue(int depth)
    {
        if (depth > deepest)
            refuse("units.too-deep", m_text, m_at, "too many parentheses or signs inside each other",
                   "at most " + std::to_string(deepest));
        skip();
        const std::size_t at = m_at;
        if (take("\u00b1")) {
            const Value value = primary(depth);
            if (value.si != 0.0)
                refuse("units.syntax", m_text, at, "\u201c\u00b1\u201d stands before an amount that is not zero",
                       "+ or - before the amount");
            return value;
        }
        if (takeMinus()) {
            Value value = signedValue(depth + 1);
            if (value.onScale && !value.simple)
                refuse("units.wrong-kind", m_text, at, "a temperature in degrees cannot be negated",
                       "one temperature, as in -5 degC");
            if (value.simple)
                value.setNumber(-value.number);
            else
                value.si = -value.si;
            return value;
        }
        if (take("+"))
            return signedValue(depth + 1);
        return primary(depth);
    }

    Value primary(int depth)
    {
        skip();
        if (take("(")) {
            Value value = sum(depth + 1);
            if (!take(")"))
                refuse("units.syntax", m_text, m_at, "a closing parenthesis is missing", "\u201c)\u201d");
            value.simple = false;
            return unitBehindParenthesis(value);
        }
        if (!numberBeginsAt(m_text, m_at, m_style))
            unexpected();
        return sideBySide(numberWithUnit());
    }

    // "(1 + 2) m": a unit behind a parenthesis that has none.
    Value unitBehindParenthesis(Value value)
    {
        if (value.hasUnit)
            return value;
        const auto unit = readUnit(m_text, m_at, m_wanted);
        if (!unit)
            return value;
        Value result = withUnit(value.si, *unit);
        result.simple = false;
        return result;
    }

    Value numberWithUnit()
    {
        const std::size_t at = m_at;
        const NumberRead number = readNumber(m_text, m_at, m_style);
        m_at = number.end;
        const auto unit = readUnit(m_text, m_at, m_wanted);
        if (unit)
            return withUnit(number.value, *unit);
        Value value;
        value.si = value.number = number.value;
        value.at = at;
        return value;
    }

    Value withUnit(double number, const UnitRead& unit)
    {
        Value value;
        value.hasUnit = true;
        value.dimension = unit.dimension;
        value.says = unit.says == Says::energy || unit.says == Says::force ? unit.says : Says::nothing;
        value.onScale = unit.says == Says::celsius || unit.says == Says::fahrenheit;
        value.at = unit.begin;
        value.simple = true;
        value.unit = unit;
        value.setNumber(number);
        m_at = unit.end;
        finite(value.si, unit.begin);
        return value;
    }

    // A foot is whole inches but not whole millimetres: "1'500 mm" is no length.
    static bool wholeTimes(double larger, double smaller)
    {
        const double ratio = larger / smaller;
        return ratio > 1.5 && std::abs(ratio - std::round(ratio)) < 1e-9 * ratio;
    }

    // "4 ft 2 in", "2 h 30 min": each following part in a smaller unit of the same kind.
    Value sideBySide(Value total)
    {
        double size = total.unit.factor.size();
        for (;;) {
            const std::size_t next = skipSpaces(m_text, m_at);
            if (!numberBeginsAt(m_text, next, m_style))
                return total;
            m_at = next;
            const Value part = numberWithUnit();
            const bool fits = part.hasUnit && wholeTimes(size, part.unit.factor.size());
            if (!total.hasUnit || total.onScale || !fits || part.dimension != total.dimension)
                refuse(
                    "units.syntax", m_text, next, "two amounts stand side by side without a sign between them",
                    "+ between them, or a smaller unit behind a larger one as in 4 ft 2 in; no space inside a number");
            size = part.unit.factor.size();
            total.si = finite(total.si + part.si, next);
            total.simple = false;
        }
    }

    [[noreturn]] void unexpected() const
    {
        if (m_at >= m_text.size())
            refuse("units.syntax", m_text, m_at, "the amount ends too early", "a number with a unit");
        if (m_text[m_at] == ',')
            refuse("units.comma", m_text, m_at, "a comma stands where none can be", "one amount, without a comma");
        if (isAsciiLetter(m_text[m_at]))
            readUnit(m_text, m_at, m_wanted); // refuses gallons, "inf" and unknown words in its own words
        refuse("units.syntax", m_text, m_at, quoted(characterAt(m_text, m_at)) + " is not expected here",
               "numbers with units, + - * / and parentheses");
    }

    std::string_view m_text;
    const NumberStyle& m_style;
    KindId m_wanted;
    std::size_t m_at = 0;
};

} // namespace

void Value::setNumber(double n)
{
    number = n;
    if (unit.says == Says::celsius)
        si = n + celsiusZero;
    else if (unit.says == Says::fahrenheit)
        si = unit.factor.toSi(n - 32.0) + celsiusZero;
    else
        si = unit.factor.toSi(n);
}

Value readExpression(std::string_view text, const NumberStyle& style, KindId wanted)
{
    return Expression(text, style, wanted).whole();
}

} // namespace sumpwright::units::detail
