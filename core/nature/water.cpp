#include "core/nature/water.hpp"

#include <cmath>

namespace sumpwright::nature
{
namespace
{

double densityKgM3(double celsius)
{
    const double offset = celsius - 3.983035;
    return 999.97495 * (1.0 - offset * offset * (celsius + 301.797) / (522528.9 * (celsius + 69.34881)));
}

double dynamicViscosityPaS(double kelvin)
{
    const double t = kelvin / 300.0;
    return 1e-6 * (280.68 * std::pow(t, -1.9) + 511.45 * std::pow(t, -7.7) + 61.131 * std::pow(t, -19.6) +
                   0.45903 * std::pow(t, -40.0));
}

// IF97 region 4, the saturation pressure equation, with the release's own names n1 to n10.
double vapourPressurePa(double kelvin)
{
    constexpr double n1 = 0.11670521452767e4, n2 = -0.72421316703206e6, n3 = -0.17073846940092e2,
                     n4 = 0.12020824702470e5, n5 = -0.32325550322333e7, n6 = 0.14915108613530e2,
                     n7 = -0.48232657361591e4, n8 = 0.40511340542057e6, n9 = -0.23855557567849,
                     n10 = 0.65017534844798e3;
    const double theta = kelvin + n9 / (kelvin - n10);
    const double a = theta * theta + n1 * theta + n2;
    const double b = n3 * theta * theta + n4 * theta + n5;
    const double c = n6 * theta * theta + n7 * theta + n8;
    const double root = 2.0 * c / (-b + std::sqrt(b * b - 4.0 * a * c));
    return 1e6 * root * root * root * root;
}

} // namespace

base::Outcome<WaterProperties> waterAt(units::Temperature temperature)
{
    const double kelvin = units::inKelvin(temperature);
    // A parsed "40 degC" may land one rounding beyond the end of the range.
    constexpr double rounding = 1e-9;
    if (!(kelvin >= units::inKelvin(coldestWater) - rounding && kelvin <= units::inKelvin(warmestWater) + rounding))
        return base::Refusal{"nature.water-temperature-out-of-range", "temperature",
                             "water properties are not known at this temperature", "0 to 40 degC"};
    const double density = densityKgM3(units::inCelsius(temperature));
    const double viscosity = dynamicViscosityPaS(kelvin);
    return WaterProperties{units::kilogramsPerCubicMetre(density), units::pascalSeconds(viscosity),
                           units::squareMetresPerSecond(viscosity / density), units::pascals(vapourPressurePa(kelvin))};
}

} // namespace sumpwright::nature
