// Named makers and readers: the only places where a raw number becomes a quantity or leaves one.
// metres(1.2) makes a Length; inMetres(x) reads it. All are exact to rounding of one multiplication or division.
#pragma once

#include "core/units/kinds.hpp"

namespace sumpwright::units
{

template <class Kind> constexpr Kind fromSi(double value) { return Kind::from_value(value); }
template <class Kind> constexpr double inSi(const Kind& quantity) { return quantity.value(); }

constexpr double standardGravity = 9.80665; // m/s2, by definition (CGPM 1901)
constexpr double celsiusZero = 273.15;      // K

constexpr Length metres(double v) { return fromSi<Length>(v); }
constexpr Length millimetres(double v) { return fromSi<Length>(v / 1e3); }
constexpr double inMetres(Length v) { return v.value(); }
constexpr double inMillimetres(Length v) { return v.value() * 1e3; }

constexpr Elevation elevationAt(Length aboveDatum) { return fromSi<Elevation>(aboveDatum.value()); }
constexpr Elevation elevationMetres(double v) { return fromSi<Elevation>(v); }
constexpr double inMetres(Elevation v) { return v.value(); }
constexpr Length aboveDatum(Elevation v) { return fromSi<Length>(v.value()); }

constexpr Area squareMetres(double v) { return fromSi<Area>(v); }
constexpr double inSquareMetres(Area v) { return v.value(); }
constexpr Volume cubicMetres(double v) { return fromSi<Volume>(v); }
constexpr Volume litres(double v) { return fromSi<Volume>(v / 1e3); }
constexpr double inCubicMetres(Volume v) { return v.value(); }
constexpr double inLitres(Volume v) { return v.value() * 1e3; }

constexpr double pi = 3.14159265358979323846;
constexpr Angle radians(double v) { return fromSi<Angle>(v); }
constexpr Angle degrees(double v) { return fromSi<Angle>(v * pi / 180.0); }
constexpr double inRadians(Angle v) { return v.value(); }
constexpr double inDegrees(Angle v) { return v.value() * 180.0 / pi; }

constexpr Time seconds(double v) { return fromSi<Time>(v); }
constexpr double inSeconds(Time v) { return v.value(); }
constexpr Time hours(double v) { return fromSi<Time>(v * 3600.0); }
constexpr double inHours(Time v) { return v.value() / 3600.0; }

constexpr Velocity metresPerSecond(double v) { return fromSi<Velocity>(v); }
constexpr double inMetresPerSecond(Velocity v) { return v.value(); }

constexpr Head metresHead(double v) { return fromSi<Head>(v); }
constexpr double inMetresHead(Head v) { return v.value(); }
// The lift between two levels as a head: upward positive.
constexpr Head liftBetween(Elevation from, Elevation to) { return fromSi<Head>(to.value() - from.value()); }
// A level raised by a head: the hydraulic grade.
constexpr Elevation raisedBy(Elevation level, Head head) { return fromSi<Elevation>(level.value() + head.value()); }
constexpr Pressure pressureOf(Head head, Density density)
{
    return fromSi<Pressure>(head.value() * density.value() * standardGravity);
}
constexpr Head headOf(Pressure pressure, Density density)
{
    return fromSi<Head>(pressure.value() / (density.value() * standardGravity));
}

constexpr Pressure pascals(double v) { return fromSi<Pressure>(v); }
constexpr double inPascals(Pressure v) { return v.value(); }
constexpr GroundPressure groundPascals(double v) { return fromSi<GroundPressure>(v); }
constexpr GroundPressure groundKilopascals(double v) { return fromSi<GroundPressure>(v * 1e3); }
constexpr double inKilopascals(GroundPressure v) { return v.value() / 1e3; }
constexpr GroundPressure spreadOver(Force force, Area area)
{
    return fromSi<GroundPressure>(force.value() / area.value());
}

constexpr Flow cubicMetresPerSecond(double v) { return fromSi<Flow>(v); }
constexpr Flow litresPerHour(double v) { return fromSi<Flow>(v / 3.6e6); }
constexpr double inCubicMetresPerSecond(Flow v) { return v.value(); }
constexpr double inLitresPerHour(Flow v) { return v.value() * 3.6e6; }

constexpr Mass kilograms(double v) { return fromSi<Mass>(v); }
constexpr double inKilograms(Mass v) { return v.value(); }
constexpr Density kilogramsPerCubicMetre(double v) { return fromSi<Density>(v); }
constexpr double inKilogramsPerCubicMetre(Density v) { return v.value(); }
constexpr Force newtons(double v) { return fromSi<Force>(v); }
constexpr double inNewtons(Force v) { return v.value(); }
constexpr double inKilonewtons(Force v) { return v.value() / 1e3; }
constexpr Force weightOf(Mass mass) { return fromSi<Force>(mass.value() * standardGravity); }

constexpr Temperature celsius(double v) { return fromSi<Temperature>(v + celsiusZero); }
constexpr Temperature kelvin(double v) { return fromSi<Temperature>(v); }
constexpr double inCelsius(Temperature v) { return v.value() - celsiusZero; }
constexpr double inKelvin(Temperature v) { return v.value(); }
constexpr TemperatureDifference kelvinDifference(double v) { return fromSi<TemperatureDifference>(v); }

constexpr DynamicViscosity pascalSeconds(double v) { return fromSi<DynamicViscosity>(v); }
constexpr double inPascalSeconds(DynamicViscosity v) { return v.value(); }
constexpr KinematicViscosity squareMetresPerSecond(double v) { return fromSi<KinematicViscosity>(v); }
constexpr double inSquareMetresPerSecond(KinematicViscosity v) { return v.value(); }

constexpr Energy joules(double v) { return fromSi<Energy>(v); }
constexpr Energy kilowattHours(double v) { return fromSi<Energy>(v * 3.6e6); }
constexpr double inKilowattHours(Energy v) { return v.value() / 3.6e6; }
constexpr Power watts(double v) { return fromSi<Power>(v); }
constexpr double inWatts(Power v) { return v.value(); }
constexpr Money money(double v) { return fromSi<Money>(v); }
constexpr double inCurrency(Money v) { return v.value(); }
constexpr EnergyPrice perKilowattHour(double v) { return fromSi<EnergyPrice>(v / 3.6e6); }
constexpr double inCurrencyPerKilowattHour(EnergyPrice v) { return v.value() * 3.6e6; }

constexpr Slope slopeOf(Length fall, Length run) { return fromSi<Slope>(fall.value() / run.value()); }
constexpr Slope metresPerMetre(double v) { return fromSi<Slope>(v); }
constexpr double inMetresPerMetre(Slope v) { return v.value(); }

} // namespace sumpwright::units
