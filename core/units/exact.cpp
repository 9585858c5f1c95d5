// exactText(): among the units a kind may be written in, the one whose number is shortest and gives the same bits back.
#include <cmath>
#include <optional>

#include "core/base/ensure.hpp"
#include "core/units/decimal_text.hpp"
#include "core/units/format.hpp"
#include "core/units/measures.hpp"
#include "core/units/written_units.hpp"

namespace sumpwright::units
{

namespace
{

constexpr int enoughDigits = 17; // give any double back

std::optional<detail::Decimal> fewestDigits(const detail::UnitRead& unit, double si)
{
    const double number = detail::numberIn(unit, si);
    if (!std::isfinite(number))
        return std::nullopt;
    for (int digits = 1; digits <= enoughDigits; ++digits) {
        detail::Decimal decimal = detail::rounded(number, digits);
        if (detail::siFrom(unit, detail::valueOf(decimal)) != si)
            continue;
        detail::dropTrailingZeros(decimal);
        return decimal;
    }
    return std::nullopt;
}

std::string behindNumber(std::string_view unit) { return unit.empty() ? std::string() : " " + std::string(unit); }

// "1:60" when the slope is one over a whole number that is short to write.
std::optional<std::string> oneInText(double slope)
{
    const double run = std::round(1.0 / std::abs(slope));
    if (!(run >= 2.0 && run <= 9999.0) || 1.0 / run != std::abs(slope))
        return std::nullopt;
    return (slope < 0.0 ? "-1:" : "1:") + std::to_string(static_cast<int>(run));
}

std::string exact(KindId kind, double si, UnitSystem system, const NumberStyle& style)
{
    base::ensure(std::isfinite(si), "what is written to a file is finite");
    if (si == 0.0)
        si = 0.0; // minus zero is written as zero
    std::string best;
    std::string unit;
    for (std::string_view name : detail::exactUnits(kind, system)) {
        const auto decimal = fewestDigits(detail::unitNamed(name, kind), si);
        if (!decimal)
            continue;
        std::string number = detail::fileText(*decimal, style.decimalMark);
        if (!best.empty() && number.size() >= best.size())
            continue;
        best = std::move(number);
        unit = name;
    }
    base::ensure(!best.empty(), "the coherent SI unit gives every number back");
    if (kind == KindId::slope && si != 0.0)
        if (auto text = oneInText(si); text && text->size() < best.size())
            return *text;
    return best + behindNumber(unit);
}

} // namespace

template <class Kind> std::string exactText(const Kind& quantity, UnitSystem system, const NumberStyle& style)
{
    return exact(kindId<Kind>, inSi(quantity), system, style);
}

#define SUMPWRIGHT_EXACT(Type, id) template std::string exactText<Type>(const Type&, UnitSystem, const NumberStyle&);
SUMPWRIGHT_KINDS(SUMPWRIGHT_EXACT)
#undef SUMPWRIGHT_EXACT

std::string exactRatioText(double ratio)
{
    return exact(KindId::ratio, ratio, UnitSystem::metric, NumberStyle::point());
}

} // namespace sumpwright::units
