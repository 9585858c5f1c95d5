#include "core/design/circuit_setting.hpp"

#include <algorithm>
#include <cmath>

#include "core/hydraulics/fittings.hpp"
#include "core/hydraulics/opening_for.hpp"

namespace sumpwright::design
{
namespace
{

constexpr units::Head nothing = units::metresHead(2e-5);   // not worth moving a valve
constexpr double unmoved = 2e-4;                           // of an opening: finer than anybody can set
constexpr units::Head tolerable = units::metresHead(1e-4); // left to spare without a valve

double tidyOpening(double opening) { return std::round(opening * 1e6) / 1e6; }

class Setter
{
public:
    Setter(const CircuitTask& task, const Bench& bench, std::vector<units::Elevation> levels,
           const base::StopToken& stop)
        : m_task(task), m_bench(bench), m_circuit(bench.circuits.all[task.circuit].circuit), m_stop(stop),
          m_off(bench, m_circuit, task.outlets, std::move(levels)), m_parts(task.parts), m_noValve(task.noValve),
          m_spares(task.outlets.size())
    {
        for (const CircuitOutlet& at : task.outlets)
            m_targets.push_back(at.outlet.target.value_or(units::Flow()));
    }

    std::optional<CircuitSetting> set(const ValveQuestion& question)
    {
        if (!chooseSpeed(question))
            return std::nullopt;
        while (true) {
            m_shared = shareOut(m_off, m_parts, m_targets, m_stop);
            if (!m_shared)
                return std::nullopt;
            m_left = m_shared->drawn.spare;
            m_setting.valves.clear();
            for (const CommandingRun& command : m_task.commands)
                burn(command);
            if (!release())
                break;
        }
        fillOutlets();
        m_setting.share = m_shared->share;
        m_setting.restShare = m_shared->restShare;
        m_setting.missing = m_shared->missing;
        return std::move(m_setting);
    }

private:
    // False: no solution even with nothing drawn.
    bool chooseSpeed(const ValveQuestion& question)
    {
        if (!m_task.pump)
            return true;
        const auto shared = shareOut(m_off, m_parts, m_targets, m_stop);
        if (!shared)
            return false;
        const bool full = shared->share >= 1.0 && shared->restShare >= 1.0;
        const bool rest = std::any_of(m_task.outlets.begin(), m_task.outlets.end(),
                                      [](const CircuitOutlet& at) { return !at.outlet.target && !at.outlet.intoSump; });
        if (full && rest)
            return true;
        auto speed = lowestSpeed(m_off, shared->parts, m_targets, std::max(1.0, m_task.speed), m_stop);
        if (speed)
            speed = std::min(std::ceil(*speed * 1000.0) / 1000.0, std::max(1.0, m_task.speed));
        if (speed && std::fabs(*speed - m_task.speed) >= 0.002)
            m_setting.speed = SpeedChange{*m_task.pump, m_task.speed, *speed};
        m_off.setSpeed(m_setting.speed && question.mayChangeSpeed ? m_setting.speed->after : m_task.speed);
        return true;
    }

    bool isDrawn(std::size_t outlet) const
    {
        return m_shared->draws[outlet] && *m_shared->draws[outlet] > units::Flow();
    }

    // What may be burned for all outlets behind the run: nothing where one of them takes what comes.
    units::Head toBurn(const CommandingRun& command) const
    {
        std::optional<units::Head> least;
        for (const std::size_t i : command.outlets) {
            if (m_shared->parts[i] == OutletPart::shut || m_shared->parts[i] == OutletPart::unreachable)
                continue;
            if (!isDrawn(i) || !m_left[i])
                return {};
            least = least ? std::min(*least, *m_left[i]) : *m_left[i];
        }
        return std::max(least.value_or(units::Head()), units::Head());
    }

    bool isToShut(const CommandingRun& command) const
    {
        return std::all_of(command.outlets.begin(), command.outlets.end(),
                           [this](std::size_t i) { return m_shared->parts[i] == OutletPart::shut; });
    }

    void burn(const CommandingRun& command)
    {
        const units::Length bore = m_bench.pipework->runs[m_circuit.runs[command.run]].bore;
        const units::Flow flow = m_shared->drawn.runs[command.run];
        const units::Head perK = hydraulics::fittingLoss(1.0, hydraulics::meanVelocity(flow, bore));
        const units::Head wanted = toBurn(command);
        double left = wanted > nothing && perK > units::Head() ? static_cast<double>(wanted / perK) : 0.0;
        bool shut = isToShut(command);
        double done = 0.0;
        for (const Throttle& throttle : command.throttles) {
            ValveOpening valve;
            valve.valve = throttle.valve;
            valve.kind = throttle.kind;
            valve.before = throttle.opening;
            valve.flow = flow;
            if (shut)
                valve.after = 0.0;
            else if (left > 0.0)
                turnDown(valve, left);
            shut = false; // one shut valve is enough
            valve.burned = valve.added * perK;
            left -= std::min(left, valve.added);
            done += valve.added;
            if (valve.after >= 1.0 || valve.after <= 0.0)
                valve.leastAfter = valve.mostAfter = valve.after;
            m_setting.valves.push_back(valve);
        }
        for (const std::size_t i : command.outlets)
            if (m_left[i])
                *m_left[i] -= std::min(done * perK, wanted);
    }

    static void turnDown(ValveOpening& valve, double wanted)
    {
        using hydraulics::ballValveSpread;
        valve.after = tidyOpening(hydraulics::openingFor(valve.kind, wanted));
        if (std::fabs(valve.after - valve.before) < unmoved)
            valve.after = valve.before;
        valve.added = hydraulics::throttlingLoss(valve.kind, valve.after)->added;
        valve.leastAfter = valve.mostAfter = valve.after;
        if (valve.kind == hydraulics::ThrottleKind::Ball) {
            valve.leastAfter = hydraulics::openingFor(valve.kind, wanted / (1.0 - ballValveSpread));
            valve.mostAfter = hydraulics::openingFor(valve.kind, wanted / (1.0 + ballValveSpread));
        }
    }

    // Outlets left with head to spare that no valve can burn take what comes; true when there were more of them.
    bool release()
    {
        bool any = false;
        for (std::size_t i = 0; i < m_parts.size(); ++i) {
            if (!isDrawn(i) || !m_left[i] || *m_left[i] <= tolerable)
                continue;
            m_noValve[i] = m_parts[i] == OutletPart::target;
            m_spares[i] = *m_left[i];
            m_parts[i] = OutletPart::bystander;
            any = true;
        }
        return any;
    }

    Aim aimOf(std::size_t i) const
    {
        if (m_noValve[i])
            return Aim::noValve;
        switch (m_shared->parts[i]) {
        case OutletPart::target:
            return m_shared->share < 1.0 ? Aim::share : Aim::target;
        case OutletPart::rest:
            return Aim::rest;
        case OutletPart::shut:
            return Aim::shut;
        case OutletPart::bystander:
            return m_task.outlets[i].outlet.intoSump ? Aim::leftAlone : Aim::rest;
        case OutletPart::unreachable:
            return Aim::unreachable;
        }
        return Aim::rest;
    }

    void fillOutlets()
    {
        for (std::size_t i = 0; i < m_task.outlets.size(); ++i) {
            OutletSetting outlet;
            outlet.outlet = m_task.outlets[i].outlet;
            outlet.aim = aimOf(i);
            if (outlet.aim == Aim::target || outlet.aim == Aim::share)
                outlet.wanted = *m_shared->draws[i];
            outlet.spare = m_spares[i];
            outlet.wideOpen = isWideOpen(i);
            m_setting.any =
                m_setting.any || outlet.aim == Aim::target || outlet.aim == Aim::share || outlet.aim == Aim::shut;
            m_setting.outlets.push_back(outlet);
        }
    }

    bool isWideOpen(std::size_t outlet) const
    {
        std::size_t valve = 0;
        for (const CommandingRun& command : m_task.commands) {
            const bool onItsWay =
                std::find(command.outlets.begin(), command.outlets.end(), outlet) != command.outlets.end();
            for (std::size_t i = 0; i < command.throttles.size(); ++i, ++valve)
                if (onItsWay && m_setting.valves[valve].after < 1.0)
                    return false;
        }
        return true;
    }

    const CircuitTask& m_task;
    const Bench& m_bench;
    const assessment::Circuit& m_circuit;
    const base::StopToken& m_stop;
    DrawOff m_off;
    std::vector<OutletPart> m_parts;
    std::vector<bool> m_noValve;
    std::vector<units::Flow> m_targets;
    std::optional<SharedOut> m_shared;
    std::vector<std::optional<units::Head>> m_left; // by outlet: what is still to be burned
    std::vector<units::Head> m_spares;              // by outlet: what no valve could burn
    CircuitSetting m_setting;
};

} // namespace

std::optional<CircuitSetting> settingFor(const CircuitTask& task, const Bench& bench,
                                         std::vector<units::Elevation> levels, const ValveQuestion& question,
                                         const base::StopToken& stop)
{
    return Setter(task, bench, std::move(levels), stop).set(question);
}

} // namespace sumpwright::design
