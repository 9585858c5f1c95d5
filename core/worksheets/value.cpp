#include "core/worksheets/value.hpp"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <utility>

#include "core/base/ensure.hpp"
#include "core/units/format.hpp"
#include "core/units/measures.hpp"
#include "core/units/parse.hpp"

namespace sumpwright::worksheets
{
namespace
{

using units::KindId;

struct NumberReader {
    double operator()(double ratio) const { return ratio; }
    double operator()(const std::string&) const
    {
        base::ensure(false, "a word is not asked for its number");
        return 0.0;
    }
    // 293.15 K is 20 degC, not 19.99999999999994: a thousand-millionth of a degree is kept.
    double operator()(units::Temperature t) const { return std::round(units::inCelsius(t) * 1e9) / 1e9; }
    double operator()(units::Energy energy) const { return units::inKilowattHours(energy); }
    double operator()(units::EnergyPrice price) const { return units::inCurrencyPerKilowattHour(price); }
    template <class Kind> double operator()(const Kind& quantity) const { return units::inSi(quantity); }
};

template <class Kind> base::Outcome<Value> asValue(base::Outcome<Kind> read)
{
    if (!read)
        return read.refusal();
    return Value(*read);
}

// The unit of each kind that worksheets use.
constexpr std::pair<KindId, std::string_view> siUnits[] = {
    {KindId::length, "m"},
    {KindId::elevation, "m"},
    {KindId::area, "m2"},
    {KindId::volume, "m3"},
    {KindId::angle, "rad"},
    {KindId::head, "m"},
    {KindId::temperature, "degC"},
    {KindId::density, "kg/m3"},
    {KindId::dynamicViscosity, "Pa s"},
    {KindId::kinematicViscosity, "m2/s"},
    {KindId::pressure, "Pa"},
    {KindId::groundPressure, "Pa"},
    {KindId::flow, "m3/s"},
    {KindId::velocity, "m/s"},
    {KindId::power, "W"},
    {KindId::energy, "kWh"},
    {KindId::energyPrice, "currency/kWh"},
    {KindId::money, "currency"},
    {KindId::mass, "kg"},
    {KindId::force, "N"},
    {KindId::slope, "1"},
    {KindId::time, "s"},
    {KindId::ratio, "1"},
};

template <class Kind> base::Outcome<Value> readAs(std::string_view text, const units::NumberStyle& style)
{
    return asValue(units::parse<Kind>(text, style));
}

base::Outcome<Value> readRatio(std::string_view text, const units::NumberStyle& style)
{
    return asValue(units::parseRatio(text, style));
}

// How each kind that worksheets take in is read.
using Reader = base::Outcome<Value> (*)(std::string_view, const units::NumberStyle&);
constexpr std::pair<KindId, Reader> readers[] = {
    {KindId::length, readAs<units::Length>},
    {KindId::elevation, readAs<units::Elevation>},
    {KindId::area, readAs<units::Area>},
    {KindId::volume, readAs<units::Volume>},
    {KindId::angle, readAs<units::Angle>},
    {KindId::groundPressure, readAs<units::GroundPressure>},
    {KindId::temperature, readAs<units::Temperature>},
    {KindId::flow, readAs<units::Flow>},
    {KindId::head, readAs<units::Head>},
    {KindId::mass, readAs<units::Mass>},
    {KindId::energyPrice, readAs<units::EnergyPrice>},
    {KindId::slope, readAs<units::Slope>},
    {KindId::ratio, readRatio},
};

template <class Table> auto rowOf(const Table& table, KindId kind)
{
    const auto row =
        std::find_if(std::begin(table), std::end(table), [kind](const auto& r) { return r.first == kind; });
    base::ensure(row != std::end(table), "a kind that worksheets know");
    return row->second;
}

struct UnitReader {
    std::string_view currency;

    std::string operator()(double) const { return "1"; }
    std::string operator()(const std::string&) const { return "1"; }
    template <class Kind> std::string operator()(const Kind&) const
    {
        std::string unit = unitOfKind(units::kindId<Kind>);
        if (unit.rfind("currency", 0) == 0 && !currency.empty())
            unit.replace(0, 8, currency);
        return unit;
    }
};

// "4.500" is shown as "4.5".
std::string withoutTrailingZeros(std::string text, const std::string& decimalMark)
{
    if (text.find(decimalMark) == std::string::npos || text.find('e') != std::string::npos)
        return text;
    text.erase(text.find_last_not_of('0') + 1);
    if (text.ends_with(decimalMark))
        text.erase(text.size() - decimalMark.size());
    return text;
}

struct Shower {
    const units::NumberStyle& style;
    std::string_view currency;

    std::string operator()(double ratio) const
    {
        return withoutTrailingZeros(units::formatRatio(ratio, style, 4), style.decimalMark);
    }
    std::string operator()(const std::string& word) const { return word; }
    std::string operator()(units::Money money) const
    {
        return units::format(money, units::UnitSystem::metric, style, {.currency = currency});
    }
    std::string operator()(units::EnergyPrice price) const
    {
        return units::format(price, units::UnitSystem::metric, style, {.currency = currency});
    }
    template <class Kind> std::string operator()(const Kind& quantity) const
    {
        return units::format(quantity, units::UnitSystem::metric, style);
    }
};

} // namespace

bool isWord(const Value& value) { return std::holds_alternative<std::string>(value); }

double numberOf(const Value& value)
{
    const double number = std::visit(NumberReader{}, value);
    return number == 0.0 ? 0.0 : number;
}

std::string unitOf(const Value& value, std::string_view currency) { return std::visit(UnitReader{currency}, value); }

std::string unitOfKind(KindId kind) { return std::string(rowOf(siUnits, kind)); }

std::string shown(const Value& value, const units::NumberStyle& style, std::string_view currency)
{
    return std::visit(Shower{style, currency}, value);
}

base::Outcome<Value> readValue(std::string_view text, KindId kind, const units::NumberStyle& style)
{
    return rowOf(readers, kind)(text, style);
}

} // namespace sumpwright::worksheets
