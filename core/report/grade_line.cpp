#include "core/report/grade_line.hpp"

#include <algorithm>
#include <cmath>

namespace sumpwright::report
{

namespace
{

using assessment::FittingLoss;
using assessment::FittingPlace;
using assessment::RunningState;

double m(units::Length length) { return units::inMetres(length); }

// A run's points by true length in space.
class Reach
{
public:
    explicit Reach(const std::vector<ProfilePoint>& points) : m_points(points)
    {
        m_reach.push_back(0.0);
        for (std::size_t i = 1; i < points.size(); ++i)
            m_reach.push_back(m_reach.back() + std::hypot(m(points[i].along - points[i - 1].along),
                                                          m(points[i].level - points[i - 1].level)));
    }
    double shareAt(std::size_t point) const { return m_reach.back() > 0.0 ? m_reach[point] / m_reach.back() : 0.0; }
    units::Length alongAt(double share) const
    {
        const double wanted = share * m_reach.back();
        std::size_t i = 1;
        while (i + 1 < m_reach.size() && m_reach[i] < wanted)
            ++i;
        const double leg = m_reach[i] - m_reach[i - 1];
        const double part = leg > 0.0 ? std::clamp((wanted - m_reach[i - 1]) / leg, 0.0, 1.0) : 0.0;
        return m_points[i - 1].along + part * (m_points[i].along - m_points[i - 1].along);
    }

private:
    const std::vector<ProfilePoint>& m_points;
    std::vector<double> m_reach;
};

struct Drop {
    double share = 0.0; // of the run's true length, downstream along the path
    units::Head head;
};

// Losses at their places, and those spread along the run.
struct Losses {
    std::vector<Drop> drops; // by share
    units::Head spread;
};

double shareOf(const FittingLoss& fitting, const SectionRun& drawn, const Reach& reach)
{
    const std::size_t last = drawn.centre.size() - 1;
    switch (fitting.place) {
    case FittingPlace::start:
        return drawn.forward ? 0.0 : 1.0;
    case FittingPlace::end:
        return drawn.forward ? 1.0 : 0.0;
    case FittingPlace::vertex:
        return reach.shareAt(std::min(last, drawn.forward ? fitting.vertex : last - std::min(last, fitting.vertex)));
    case FittingPlace::station:
    case FittingPlace::alongRun:
        break;
    }
    return drawn.forward ? fitting.station : 1.0 - fitting.station;
}

Losses lossesOf(const assessment::RunResult& run, const assessment::RunLosses& losses, const SectionRun& drawn,
                const Reach& reach)
{
    Losses told{{}, losses.friction};
    units::Head placed;
    for (const FittingLoss& fitting : run.fittings) {
        const units::Head head = fitting.k * fitting.count * losses.velocityHead;
        placed += head;
        if (fitting.place == FittingPlace::alongRun)
            told.spread += head;
        else
            told.drops.push_back({shareOf(fitting, drawn, reach), head});
    }
    told.spread += losses.fittings - placed; // what a non-return valve asks for to open
    std::stable_sort(told.drops.begin(), told.drops.end(),
                     [](const Drop& a, const Drop& b) { return a.share < b.share; });
    return told;
}

// The grade falls along the run where the water runs along the path, and rises where it runs against it.
bool addRun(std::vector<ProfilePoint>& line, const SectionRun& drawn, const assessment::Assessment& results)
{
    const auto* run = assessment::find(results.flow->runs, drawn.id);
    const auto* flow = run ? &run->flow[RunningState::least] : nullptr;
    if (!flow || !*flow || !(*flow)->losses || drawn.centre.size() < 2)
        return false;
    const bool along = ((*flow)->flow >= units::Flow()) == drawn.forward;
    const double sign = along ? -1.0 : 1.0;
    const Reach reach(drawn.centre);
    const Losses losses = lossesOf(*run, *(*flow)->losses, drawn, reach);
    double share = 0.0;
    units::Elevation grade = line.back().level;
    const auto to = [&](double next) {
        grade = units::raisedBy(grade, sign * (next - share) * losses.spread);
        share = next;
        line.push_back({reach.alongAt(share), grade});
    };
    std::size_t drop = 0;
    for (std::size_t point = 0; point < drawn.centre.size(); ++point) {
        const double end = reach.shareAt(point);
        for (; drop < losses.drops.size() && (losses.drops[drop].share <= end || point + 1 == drawn.centre.size());
             ++drop) {
            to(std::clamp(losses.drops[drop].share, share, 1.0));
            grade = units::raisedBy(grade, sign * losses.drops[drop].head);
            line.push_back({line.back().along, grade});
        }
        to(std::max(end, share));
    }
    return true;
}

// At a tee the network says what the grade is.
void meetTee(std::vector<ProfilePoint>& line, const plan::Plan& plan, const WayRun& way,
             const assessment::Assessment& results)
{
    const plan::Run* run = plan.runs.find(way.run);
    const auto* tee = run ? std::get_if<plan::TeeEnd>(way.forward ? &run->to : &run->from) : nullptr;
    const auto* met = tee ? assessment::find(results.flow->tees, tee->tee) : nullptr;
    if (met && met->grade[RunningState::least])
        line.back().level = *met->grade[RunningState::least];
}

std::optional<GradeStretch> pressureLine(const SectionPath& path, const assessment::Assessment& results)
{
    const auto* pump = assessment::find(results.pumps->pumps, path.pump.id);
    const auto& water = path.vessels.front().profile.water.least;
    if (!pump || !pump->duty[RunningState::least] || !water)
        return std::nullopt;
    GradeStretch stretch;
    stretch.points = {{path.vessels.front().profile.left, *water},
                      {path.pump.along, *water},
                      {path.pump.along, units::raisedBy(*water, pump->duty[RunningState::least]->head)}};
    for (std::size_t i = 0; i < path.way.lift.size(); ++i) {
        if (!addRun(stretch.points, path.runs[i], results))
            return std::nullopt;
        meetTee(stretch.points, results.plan, path.way.lift[i], results);
    }
    return stretch;
}

// Along one gravity run, from the water found in it; false where there is none.
bool addOpenRun(std::vector<ProfilePoint>& line, const SectionRun& drawn, const assessment::Assessment& results)
{
    const auto* run = assessment::find(results.flow->runs, drawn.id);
    const auto* flow = run ? &run->flow[RunningState::least] : nullptr;
    if (!flow || !*flow || !(*flow)->open || (*flow)->open->stretches.size() + 1 != drawn.centre.size())
        return false;
    const auto& stretches = (*flow)->open->stretches;
    for (std::size_t leg = 0; leg < stretches.size(); ++leg) {
        const auto& water = stretches[drawn.forward ? leg : stretches.size() - 1 - leg];
        line.push_back({drawn.centre[leg].along, drawn.forward ? water.startGrade : water.endGrade});
        line.push_back({drawn.centre[leg + 1].along, drawn.forward ? water.endGrade : water.startGrade});
    }
    return true;
}

// From the water at the outlet, along the runs, to the mouth or to the water over it; straight where a run's water is
// not known.
std::optional<GradeStretch> gravityLine(const SectionVessel& above, const SectionVessel& below,
                                        const std::vector<SectionRun>& runs, const assessment::Assessment& results)
{
    if (!above.profile.water.least || above.profile.ports.empty() || below.profile.ports.empty())
        return std::nullopt;
    const PortProfile& outlet = above.profile.ports.back();
    const PortProfile& mouth = below.profile.ports.front();
    const ProfilePoint start{outlet.along, *above.profile.water.least};
    const ProfilePoint end{mouth.along, std::max(mouth.level, below.profile.water.least.value_or(mouth.level))};
    GradeStretch stretch{false, false, {start}};
    for (const SectionRun& run : runs)
        if (!addOpenRun(stretch.points, run, results))
            return GradeStretch{false, true, {start, end}};
    if (below.profile.water.least && *below.profile.water.least > mouth.level)
        stretch.points.push_back(end);
    return stretch;
}

} // namespace

std::vector<GradeStretch> gradeLineOf(const SectionPath& path, const assessment::Assessment& results)
{
    std::vector<GradeStretch> stretches;
    if (auto pressure = pressureLine(path, results))
        stretches.push_back(std::move(*pressure));
    std::size_t next = path.way.lift.size();
    for (std::size_t i = 0; i + 2 < path.vessels.size(); ++i) {
        const std::size_t count = path.way.stops[i].onward.size();
        const auto first = path.runs.begin() + static_cast<std::ptrdiff_t>(next);
        next += count;
        const std::vector<SectionRun> runs(first, first + static_cast<std::ptrdiff_t>(count));
        if (auto gravity = gravityLine(path.vessels[i + 1], path.vessels[i + 2], runs, results))
            stretches.push_back(std::move(*gravity));
    }
    return stretches;
}

} // namespace sumpwright::report
