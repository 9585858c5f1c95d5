#include <algorithm>
#include <cmath>

#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

// A pipe hooked over a rim stays above the first; lifting to its highest point would cost about a tenth of the flow.
constexpr units::Head worthSaying = units::metresHead(-0.3);
constexpr units::Head sucking = units::metresHead(-1.0); // from here on soft pipe may close and joints draw air

std::optional<units::Elevation> gradeAtEnd(const Situation& situation, const plan::RunEnd& end)
{
    if (const auto* tee = std::get_if<plan::TeeEnd>(&end)) {
        const auto* result = assessment::find(situation.results().flow->tees, tee->tee);
        return result && result->grade[RunningState::least] ? std::optional(*result->grade[RunningState::least])
                                                            : std::nullopt;
    }
    const auto* port = std::get_if<plan::PortEnd>(&end);
    const plan::Vessel* vessel = port ? situation.plan().vessels.find(port->vessel) : nullptr;
    const plan::Port* mouth = vessel ? plan::findPort(*vessel, port->port) : nullptr;
    if (!mouth)
        return std::nullopt;
    const auto* water = assessment::find(situation.results().water->vessels, vessel->id);
    const auto& level = water->water[assessment::WaterState::runningLeast];
    return level ? std::max(mouth->level, level->level) : mouth->level;
}

// By vertex: how much of the run's length lies before it.
std::vector<double> sharesOf(const plan::Run& run)
{
    std::vector<double> shares{0.0};
    for (std::size_t i = 1; i < run.vertices.size(); ++i) {
        const plan::Vertex &a = run.vertices[i - 1], &b = run.vertices[i];
        shares.push_back(shares.back() + std::hypot(units::inMetres(b.at.x - a.at.x), units::inMetres(b.at.y - a.at.y),
                                                    units::inMetres(b.level - a.level)));
    }
    const double all = std::max(shares.back(), 1e-9);
    for (double& share : shares)
        share /= all;
    return shares;
}

// Has the water that passed vertex `at` still to pass the fitting? Fittings without a place count as passed.
bool ahead(const assessment::FittingLoss& loss, std::size_t at, double share, bool forward)
{
    switch (loss.place) {
    case assessment::FittingPlace::start:
        return !forward;
    case assessment::FittingPlace::end:
        return forward;
    case assessment::FittingPlace::vertex:
        return forward ? loss.vertex > at : loss.vertex < at;
    case assessment::FittingPlace::station:
        return forward ? loss.station > share : loss.station < share;
    case assessment::FittingPlace::alongRun:
        break;
    }
    return false;
}

// The least head over the pipe's own level at a corner, in the state of least flow, from the end the water runs to.
// Losses at the corner itself count as taken before it: the lower figure.
std::optional<units::Head> leastPressure(const Situation& situation, const plan::Run& run,
                                         const assessment::RunResult& result)
{
    const auto& flow = result.flow[RunningState::least];
    if (!flow || !flow->losses || flow->flow == units::Flow())
        return std::nullopt;
    const bool forward = flow->flow > units::Flow();
    const auto end = gradeAtEnd(situation, forward ? run.to : run.from);
    if (!end)
        return std::nullopt;
    const std::vector<double> shares = sharesOf(run);
    std::optional<units::Head> least;
    for (std::size_t i = 1; i + 1 < run.vertices.size(); ++i) {
        double k = 0.0;
        for (const assessment::FittingLoss& loss : result.fittings)
            if (ahead(loss, i, shares[i], forward))
                k += loss.k * loss.count;
        const double share = forward ? 1.0 - shares[i] : shares[i];
        const units::Head pressure = units::liftBetween(run.vertices[i].level, *end) + flow->losses->friction * share +
                                     flow->losses->velocityHead * (k - 1.0);
        least = least ? std::min(*least, pressure) : pressure;
    }
    return least;
}

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    for (const assessment::RunResult& result : situation.results().flow->runs) {
        const plan::Run* run = situation.plan().runs.find(result.id);
        if (!run || run->service != plan::Service::pressure || !situation.anyPumpRuns())
            continue;
        const auto least = leastPressure(situation, *run, result);
        if (!least || *least >= worthSaying)
            continue;
        findings.push_back(findingOf(rule, *least < sucking ? Severity::warning : Severity::note, {run->id}));
        findings.back().value = *least;
        findings.back().limit = worthSaying;
    }
}

} // namespace

// A pipe that falls behind its highest point runs full there only while the air stays out.
const Rule runLowPressure{"run.low-pressure", "vent-or-lower-crest", "common-practice", tell};

} // namespace sumpwright::findings
