#include "core/hydraulics/duty_point.hpp"

#include <cmath>

#include "core/hydraulics/energy.hpp"
#include "core/hydraulics/kernel/pipe_law.hpp"

namespace sumpwright::hydraulics
{
namespace
{

kernel::PipeLaw lawOf(const PipeSystem& system, units::KinematicViscosity viscosity)
{
    return kernel::PipeLaw({units::inMetres(system.pipe.bore), units::inMetres(system.pipe.length),
                            units::inMetres(system.pipe.roughness), system.sumK, system.pipe.corrugatedFactor},
                           units::inSquareMetresPerSecond(viscosity));
}

std::optional<base::Refusal> faultOf(double speed, const PipeSystem& system)
{
    const double bore = units::inMetres(system.pipe.bore);
    if (!(bore > 0.0 && std::isfinite(bore)))
        return base::Refusal{"hydraulics.not-positive", "bore", "the bore is not above zero", "a bore above 0"};
    if (!(speed > 0.0 && std::isfinite(speed)))
        return base::Refusal{"hydraulics.not-positive", "speed", "the speed is not above zero", "a speed above 0"};
    const auto negative = [](double v) { return !(v >= 0.0 && std::isfinite(v)); };
    const auto refuse = [](const char* place) {
        return base::Refusal{"hydraulics.negative", place, "the value is below zero", "a value from 0 up"};
    };
    if (negative(units::inMetres(system.pipe.length)))
        return refuse("length");
    if (negative(units::inMetres(system.pipe.roughness)))
        return refuse("roughness");
    if (negative(system.sumK))
        return refuse("sum_k");
    if (negative(system.pipe.corrugatedFactor))
        return refuse("corrugated_factor");
    if (units::inMetres(system.pipe.roughness) > roughestComputed * bore)
        return base::Refusal{"hydraulics.too-rough", "roughness", "the roughness fills the bore",
                             "at most half the bore"};
    if (!std::isfinite(units::inMetresHead(system.staticHead)))
        return base::Refusal{"hydraulics.not-a-number", "static_head", "the lift is no number", "a number"};
    return std::nullopt;
}

// What the pump has left over at a flow: falls strictly from above zero. Newton inside a bracket that only shrinks.
class Surplus
{
public:
    Surplus(const PumpCurve& pump, double speed, double lift, const kernel::PipeLaw& law)
        : m_pump(pump), m_speed(speed), m_lift(lift), m_law(law)
    {
    }

    double rootFrom(double low, double high)
    {
        double q = 0.5 * (low + high);
        for (int step = 0; step < 200 && high - low > 4e-16 * high; ++step) {
            const HeadWithSlope head = m_pump.headWithSlopeAt(units::cubicMetresPerSecond(q), m_speed);
            const kernel::PipeLaw::Value loss = m_law.at(q, m_root);
            const double left = units::inMetresHead(head.head) - m_lift - loss.friction - loss.fittings;
            const double slope = head.slope.value() - loss.slope;
            (left > 0.0 ? low : high) = q;
            double next = slope < 0.0 ? q - left / slope : high;
            if (!(next > low && next < high))
                next = 0.5 * (low + high);
            if (std::fabs(next - q) <= 1e-15 * q)
                return next;
            q = next;
        }
        return q;
    }

    double at(double q)
    {
        const kernel::PipeLaw::Value loss = m_law.at(q, m_root);
        return units::inMetresHead(m_pump.headAt(units::cubicMetresPerSecond(q), m_speed)) - m_lift - loss.friction -
               loss.fittings;
    }

private:
    const PumpCurve& m_pump;
    double m_speed;
    double m_lift;
    const kernel::PipeLaw& m_law;
    kernel::LastRoot m_root;
};

DutyPoint pointAt(units::Flow flow, const PumpCurve& pump, double speed, const PipeSystem& system,
                  const nature::WaterProperties& water)
{
    kernel::LastRoot root;
    const kernel::PipeLaw::Value loss =
        lawOf(system, water.kinematicViscosity).at(units::inCubicMetresPerSecond(flow), root);
    DutyPoint point;
    point.flow = flow;
    point.head = pump.headAt(flow, speed);
    point.frictionLoss = units::metresHead(loss.friction);
    point.fittingLoss = units::metresHead(loss.fittings);
    point.velocity = meanVelocity(flow, system.pipe.bore);
    point.reynolds = reynoldsNumber(flow, system.pipe.bore, water.kinematicViscosity);
    point.regime = regimeOf(point.reynolds);
    point.hydraulicPower = hydraulicPower(flow, point.head, water.density);
    point.electricalPower = pump.powerAt(flow, speed);
    if (point.electricalPower) {
        point.wireToWater = wireToWater(point.hydraulicPower, *point.electricalPower);
        point.energyPerYear = energyPerYear(*point.electricalPower);
    }
    point.runOut = pump.runsOut(flow, speed);
    return point;
}

} // namespace

units::Head systemHead(const PipeSystem& system, units::Flow flow, units::KinematicViscosity viscosity)
{
    kernel::LastRoot root;
    const kernel::PipeLaw::Value loss = lawOf(system, viscosity).at(units::inCubicMetresPerSecond(flow), root);
    return system.staticHead + units::metresHead(loss.friction + loss.fittings);
}

base::Outcome<DutyPoint> dutyPoint(const PumpCurve& pump, double speed, const PipeSystem& system,
                                   const nature::WaterProperties& water)
{
    if (const auto fault = faultOf(speed, system))
        return *fault;
    if (!(system.staticHead < pump.shutOffHead(speed)))
        return base::Refusal{"hydraulics.pump-cannot-lift", "static_head",
                             "the lift is not below the pump's head at no flow",
                             "a lower outlet, a higher suction level or a stronger pump"};
    const kernel::PipeLaw law = lawOf(system, water.kinematicViscosity);
    Surplus surplus(pump, speed, units::inMetresHead(system.staticHead), law);
    double high = units::inCubicMetresPerSecond(pump.greatestFlow(speed));
    for (int doubling = 0; doubling < 60 && surplus.at(high) > 0.0; ++doubling)
        high *= 2.0;
    return pointAt(units::cubicMetresPerSecond(surplus.rootFrom(0.0, high)), pump, speed, system, water);
}

} // namespace sumpwright::hydraulics
