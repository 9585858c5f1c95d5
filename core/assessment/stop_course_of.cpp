#include "core/assessment/stop_course_of.hpp"

#include <algorithm>
#include <cmath>
#include <optional>

#include <boost/numeric/odeint.hpp>

#include "core/assessment/place_in.hpp"
#include "core/hydraulics/fittings.hpp"
#include "core/hydraulics/friction.hpp"
#include "core/hydraulics/overflow.hpp"
#include "core/hydraulics/side_outlet.hpp"

namespace sumpwright::assessment
{
namespace
{

namespace odeint = boost::numeric::odeint;

using State = std::vector<double>; // m3 that each draining vessel still has to give

constexpr double longest = 86400.0; // s
constexpr double followed = 0.99;   // of what comes down
constexpr double nearly = 0.95;
constexpr int points = 48;
constexpr double softly = 1e-3; // m over which a siphon lets go

struct Way {                 // back through a submerged inlet
    units::Elevation to;     // mouth or vent
    double resistance = 0.0; // m per (m3/s)^2
};

struct Drain {
    std::size_t place = 0; // in the circuit's basins
    std::size_t into = 0;  // index of the drain it runs into; the count of drains: the sump
    double holds = 0.0;    // m3 it keeps at the end
    double gives = 0.0;    // m3 at the beginning
    std::optional<Way> siphon;
};

class Course
{
public:
    Course(const Pipework& pipework, const std::vector<Basin>& basins, const SolvedCircuit& solved,
           const PumpStop& stop)
        : m_pipework(pipework), m_basins(basins), m_circuit(solved.circuit), m_state(*solved.state[RunningState::most]),
          m_stop(stop)
    {
        for (std::size_t place = 0; place < m_circuit.basins.size(); ++place)
            addDrain(place);
        for (Drain& drain : m_drains)
            drain.into = nextAfter(drain.place, 0);
        m_atOnce = units::inCubicMetres(stop.startVolume);
        for (const Contribution& part : stop.contributions)
            if (part.kind == ComesDown::pipe || part.kind == ComesDown::gravityRun)
                m_atOnce += units::inCubicMetres(part.volume);
    }

    StopCourse run() const
    {
        State left;
        double all = 0.0;
        for (const Drain& drain : m_drains) {
            left.push_back(drain.gives);
            all += drain.gives;
        }
        StopCourse course;
        course.sump.push_back({units::seconds(0.0), m_stop.startLevel});
        record(course, 0.0, left);
        auto stepper = odeint::make_controlled(1e-9, 1e-6, odeint::runge_kutta_dopri5<State>());
        double time = 0.0, step = 0.1, told = all;
        const auto rates = [this](const State& now, State& rate, double) { ratesOf(now, rate); };
        for (int tries = 0; tries < 20000 && time < longest; ++tries) {
            if (stepper.try_step(rates, left, time, step) == odeint::fail)
                continue;
            double rest = 0.0;
            for (double& volume : left) {
                volume = std::max(volume, 0.0);
                rest += volume;
            }
            if (told - rest >= all / points || rest <= (1.0 - followed) * all) {
                record(course, time, left);
                told = rest;
            }
            if (rest <= (1.0 - followed) * all)
                break;
        }
        finish(course);
        return course;
    }

private:
    const Basin& basinAt(std::size_t place) const { return m_basins[m_circuit.basins[place]]; }

    void addDrain(std::size_t place)
    {
        const Basin& basin = basinAt(place);
        const Stage<Standing>& standing = m_state.standing[place];
        if (basin.isSump() || !standing)
            return;
        Drain drain;
        drain.place = place;
        for (const Contribution& part : m_stop.contributions) {
            if (part.element != basin.id || part.kind == ComesDown::pipe || part.kind == ComesDown::gravityRun)
                continue;
            drain.gives += units::inCubicMetres(part.volume);
            if (part.kind == ComesDown::siphonBack)
                drain.siphon = wayBack(place, part.port);
        }
        drain.holds = units::inCubicMetres(volumeAt(basin, standing->level)) - drain.gives;
        if (drain.gives > 0.0)
            m_drains.push_back(drain);
    }

    // The drain that water over this vessel's lowest outlet reaches next; the count of drains: the sump.
    std::size_t nextAfter(std::size_t place, int depth) const
    {
        const std::vector<BasinOutlet>& outlets = basinAt(place).outlets;
        if (outlets.empty() || !outlets.front().run || depth > 50)
            return m_drains.size();
        const DrawnRun* run = &m_pipework.runs[*outlets.front().run];
        const DrawnEnd* end = outlets.front().runsForward ? &run->to : &run->from;
        for (int tees = 0; end->kind == EndKind::tee && tees < 50; ++tees) {
            const DrawnRun* next = nullptr;
            for (const std::size_t index : m_circuit.runs)
                if (const DrawnRun& other = m_pipework.runs[index];
                    other.from.kind == EndKind::tee && other.from.element == end->element)
                    next = &other;
            if (!next)
                return m_drains.size();
            end = &next->to;
        }
        if (end->kind != EndKind::vessel)
            return m_drains.size();
        const std::size_t target = placeIn(m_circuit.basins, m_basins, end->element);
        if (target >= m_circuit.basins.size() || basinAt(target).isSump())
            return m_drains.size();
        const auto found = std::find_if(m_drains.begin(), m_drains.end(),
                                        [target](const Drain& drain) { return drain.place == target; });
        return found != m_drains.end() ? static_cast<std::size_t>(found - m_drains.begin())
                                       : nextAfter(target, depth + 1);
    }

    // m per (m3/s)^2 at 1 m/s.
    double resistanceOf(const DrawnRun& run) const
    {
        const units::Velocity one = units::metresPerSecond(1.0);
        const double flow = units::inSquareMetres(hydraulics::boreArea(run.bore));
        const units::Head head =
            hydraulics::frictionLoss({run.bore, run.length, run.roughness}, units::cubicMetresPerSecond(flow),
                                     m_state.network.viscosity()) +
            hydraulics::fittingLoss(run.sumK, one);
        return units::inMetresHead(head) / (flow * flow);
    }

    // The way from a mouth through pressure runs and tees to a pump, the shortest by number of runs.
    Way wayBack(std::size_t place, base::Id port) const
    {
        Way way{breakLevel(place, port), 0.0};
        std::vector<std::size_t> from(m_circuit.runs.size(), m_circuit.runs.size()), queue;
        std::vector<bool> seen(m_circuit.runs.size(), false);
        const auto meets = [](const DrawnEnd& end, const DrawnEnd& other) {
            return end.kind == EndKind::tee && other.kind == EndKind::tee && end.element == other.element;
        };
        const auto runAt = [this](std::size_t i) -> const DrawnRun& { return m_pipework.runs[m_circuit.runs[i]]; };
        const auto usable = [&](std::size_t i) {
            return runAt(i).service == plan::Service::pressure && !runAt(i).shut && !runAt(i).fault;
        };
        for (std::size_t i = 0; i < m_circuit.runs.size(); ++i)
            if (usable(i) && (runAt(i).from.port == port || runAt(i).to.port == port)) {
                queue.push_back(i);
                seen[i] = true;
            }
        for (std::size_t done = 0; done < queue.size(); ++done) {
            const DrawnRun& run = runAt(queue[done]);
            if (run.from.kind == EndKind::pump || run.to.kind == EndKind::pump) {
                for (std::size_t i = queue[done]; i < from.size(); i = from[i])
                    way.resistance += resistanceOf(runAt(i));
                return way;
            }
            for (std::size_t i = 0; i < m_circuit.runs.size(); ++i)
                if (!seen[i] && usable(i))
                    for (const DrawnEnd* a : {&run.from, &run.to})
                        for (const DrawnEnd* b : {&runAt(i).from, &runAt(i).to})
                            if (!seen[i] && meets(*a, *b)) {
                                seen[i] = true;
                                from[i] = queue[done];
                                queue.push_back(i);
                            }
        }
        return way;
    }

    units::Elevation breakLevel(std::size_t place, base::Id port) const
    {
        const Basin& basin = basinAt(place);
        for (const BasinInlet& inlet : basin.inlets)
            if (inlet.port == port)
                return std::max(inlet.mouth, inlet.ventLevel.value_or(inlet.mouth));
        return basin.bottom;
    }

    double sumpVolume(const State& left) const
    {
        double volume = m_atOnce;
        for (std::size_t i = 0; i < m_drains.size(); ++i)
            volume += m_drains[i].gives - left[i];
        return volume;
    }

    // Full, it stands at its spill level.
    units::Elevation sumpLevel(double volume) const
    {
        const auto at = std::lower_bound(m_circuit.basins.begin(), m_circuit.basins.end(), m_circuit.sumps.front());
        const Basin& sump = m_basins[*at];
        return std::min(levelOf(sump, units::cubicMetres(volume)), m_stop.spillLevel);
    }

    static double overOutlets(const Basin& basin, units::Elevation level)
    {
        double sum = 0.0;
        for (const BasinOutlet& outlet : basin.outlets) {
            const units::Length over = level - std::max(outlet.lip, outlet.side ? outlet.holds : outlet.lip);
            if (over <= units::Length() || outlet.bore <= units::Length())
                continue;
            sum += units::inCubicMetresPerSecond(
                outlet.side ? outlet.openFraction * hydraulics::sideOutletCapacity(outlet.bore, over)
                            : hydraulics::overflowFlow({outlet.bore, outlet.openFraction}, over));
        }
        return sum;
    }

    void ratesOf(const State& left, State& rate) const
    {
        rate.assign(m_drains.size(), 0.0);
        const double sump = units::inMetres(sumpLevel(sumpVolume(left)));
        for (std::size_t i = 0; i < m_drains.size(); ++i) {
            const Drain& drain = m_drains[i];
            if (left[i] <= 0.0)
                continue;
            const Basin& basin = basinAt(drain.place);
            const units::Elevation level = levelOf(basin, units::cubicMetres(drain.holds + left[i]));
            const double over = overOutlets(basin, level);
            rate[i] -= over;
            if (drain.into < m_drains.size())
                rate[drain.into] += over;
            if (!drain.siphon || drain.siphon->resistance <= 0.0)
                continue;
            const double above = units::inMetres(level) - units::inMetres(drain.siphon->to);
            const double head = units::inMetres(level) - sump;
            if (above > 0.0 && head > 0.0)
                rate[i] -= std::sqrt(head / drain.siphon->resistance) * std::min(1.0, above / softly);
        }
    }

    void record(StopCourse& course, double time, const State& left) const
    {
        course.sump.push_back({units::seconds(time), sumpLevel(sumpVolume(left))});
    }

    // Times at which the level passes those of 95 % and of the first spill.
    void finish(StopCourse& course) const
    {
        const double start = units::inMetres(course.sump.front().level), end = units::inMetres(m_stop.level);
        course.nearlyAll = passes(course, start + nearly * (end - start)).value_or(course.sump.back().time);
        if (m_stop.spilled > units::Volume())
            course.spillsAfter = passes(course, units::inMetres(m_stop.spillLevel));
    }

    static std::optional<units::Time> passes(const StopCourse& course, double level)
    {
        for (std::size_t i = 0; i < course.sump.size(); ++i) {
            const double here = units::inMetres(course.sump[i].level);
            if (here < level - 1e-12)
                continue;
            if (i == 0)
                return course.sump[0].time;
            const double before = units::inMetres(course.sump[i - 1].level);
            const double part = here > before ? (level - before) / (here - before) : 1.0;
            return course.sump[i - 1].time +
                   std::clamp(part, 0.0, 1.0) * (course.sump[i].time - course.sump[i - 1].time);
        }
        return std::nullopt;
    }

    const Pipework& m_pipework;
    const std::vector<Basin>& m_basins;
    const Circuit& m_circuit;
    const CircuitState& m_state;
    const PumpStop& m_stop;
    double m_atOnce = 0.0; // m3 in the sump as soon as the pipes are empty
    std::vector<Drain> m_drains;
};

} // namespace

StopCourse stopCourseOf(const Pipework& pipework, const std::vector<Basin>& basins, const SolvedCircuit& solved,
                        const PumpStop& stop)
{
    return Course(pipework, basins, solved, stop).run();
}

} // namespace sumpwright::assessment
