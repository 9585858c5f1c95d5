// How long one network takes from nothing: a pump, a main with take-offs, every take-off a free outlet.
// Targets: 20, 200 and 400 microseconds at 50, 500 and 1 000 pipes; Newton steps do not depend on the machine.
// "against a peer" solves the same network in turn here and by a general library, and tells the ratio of the medians.
#include <algorithm>
#include <chrono>
#include <vector>

#include <benchmark/benchmark.h>

#include "core/hydraulics/network.hpp"
#include "tests/performance/network_peer.hpp"

namespace sumpwright::performance
{
namespace
{

hydraulics::PipeLink pipe(double bore, double length, double sumK, bool oneWay)
{
    return {units::metres(bore), units::metres(length), units::metres(1.5e-5), sumK, oneWay, {}};
}

// Half the pipes are pieces of mains, half take-offs. Mains of 25 take-offs leave one feeder.
hydraulics::Network manifolds(std::size_t pipes)
{
    using namespace hydraulics;
    Network network;
    network.viscosity = units::squareMetresPerSecond(1.004e-6);
    const std::size_t sump = network.addFixedGrade(units::elevationMetres(0.0));
    std::size_t feeder = network.addJunction();
    const double scale = static_cast<double>(pipes) / 40.0;
    const std::vector<PumpPoint> points{{units::Flow(), units::metresHead(6.0)},
                                        {units::litresPerHour(4000.0 * scale), units::metresHead(4.5)},
                                        {units::litresPerHour(8000.0 * scale), units::metresHead(1.0)}};
    network.addLink(sump, feeder, PumpLink{*PumpCurve::fromPoints(points), 1.0});
    for (std::size_t made = 0; made + 1 < pipes;) {
        std::size_t before = feeder;
        for (int takeOff = 0; takeOff < 25 && made + 1 < pipes; ++takeOff, made += 2) {
            const std::size_t tee = network.addJunction();
            const std::size_t outlet = network.addFixedGrade(units::elevationMetres(1.0 + 0.01 * takeOff));
            network.addLink(before, tee, pipe(0.0452, 1.2, 0.3, false));
            network.addLink(tee, outlet, pipe(0.0170, 0.6, 6.0, true));
            before = tee;
        }
    }
    return network;
}

void solveNetwork(benchmark::State& state)
{
    const hydraulics::Network network = manifolds(static_cast<std::size_t>(state.range(0)));
    hydraulics::NetworkResult result;
    for ([[maybe_unused]] auto _ : state) {
        result = hydraulics::solve(network);
        benchmark::DoNotOptimize(result);
    }
    if (!result.solved())
        state.SkipWithError("not solved");
    state.counters["pipes"] = static_cast<double>(network.links.size() - 1);
    state.counters["newton_steps"] = result.iterations;
    state.counters["rounds"] = result.rounds;
    state.counters["head_residual_m"] = units::inMetresHead(result.headResidual);
}

BENCHMARK(solveNetwork)
    ->Name("network from nothing")
    ->Arg(40)
    ->Arg(50)
    ->Arg(500)
    ->Arg(1000)
    ->Unit(benchmark::kMicrosecond);

double medianOf(std::vector<double> values)
{
    std::nth_element(values.begin(), values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2), values.end());
    return values[values.size() / 2];
}

template <class Work> double microsecondsOf(Work&& work)
{
    const auto start = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double, std::micro>(std::chrono::steady_clock::now() - start).count();
}

void solveAgainstPeer(benchmark::State& state)
{
    const hydraulics::Network network = manifolds(static_cast<std::size_t>(state.range(0)));
    hydraulics::NetworkResult result;
    PeerAnswer peer;
    std::vector<double> ours, theirs;
    for ([[maybe_unused]] auto _ : state) {
        ours.push_back(microsecondsOf([&] { result = hydraulics::solve(network); }));
        theirs.push_back(microsecondsOf([&] { peer = solveByPeer(network, result); }));
    }
    if (!peer.solved || peer.largestDifference > 1e-7)
        state.SkipWithError("the peer found no answer, or another one");
    state.counters["ours_us"] = medianOf(ours);
    state.counters["peer_us"] = medianOf(theirs);
    state.counters["peer_ratio"] = medianOf(theirs) / medianOf(ours);
    state.counters["peer_steps"] = static_cast<double>(peer.steps);
    state.counters["peer_residual"] = peer.residual;
    state.counters["largest_difference_m3s"] = peer.largestDifference;
}

BENCHMARK(solveAgainstPeer)
    ->Name("network from nothing, against a peer")
    ->Arg(50)
    ->Arg(500)
    ->Arg(1000)
    ->Iterations(200)
    ->Unit(benchmark::kMicrosecond);

} // namespace
} // namespace sumpwright::performance

BENCHMARK_MAIN();
