// How long the core takes: every kind of edit through the quick lane, a whole assessment, reading and writing a plan.
// Targets for the quick lane, one thread: 4 ms on the typical plan, 16 ms on the large one.
#include <string>

#include <benchmark/benchmark.h>

#include "core/engine/engine.hpp"
#include "core/engine/pipeline.hpp"
#include "core/findings/rules.hpp"
#include "core/plan/check.hpp"
#include "core/storage/plan_text.hpp"
#include "tests/performance/measured_plan.hpp"
#include "tests/performance/spread.hpp"

namespace sumpwright::performance
{
namespace
{

double stagesRun(const engine::Pipeline& pipeline)
{
    std::uint64_t runs = pipeline.findingsRuns();
    for (const assessment::StageName stage : assessment::allStages)
        runs += pipeline.runsOf(stage);
    return static_cast<double>(runs);
}

// The edit and its opposite in turn, so that every repetition has something to compute.
void quickLane(benchmark::State& state, Size size, EditKind kind)
{
    const MeasuredPlan from = measuredPlan(size);
    const std::array<plan::Plan, 2> plans{edited(from, kind), from.plan};
    engine::Pipeline pipeline(catalogue::Catalogue::builtIn());
    pipeline.assess(plans[1], 0);
    const double before = stagesRun(pipeline);
    Spread spread;
    std::uint64_t revision = 0;
    for ([[maybe_unused]] auto _ : state) {
        ++revision;
        spread.time([&] { benchmark::DoNotOptimize(pipeline.assess(plans[(revision - 1) % 2], revision)); });
    }
    spread.tell(state);
    state.counters["stages_per_edit"] = (stagesRun(pipeline) - before) / static_cast<double>(revision);
}

void makeEdit(benchmark::State& state, Size size, EditKind kind)
{
    const MeasuredPlan from = measuredPlan(size);
    Spread spread;
    for ([[maybe_unused]] auto _ : state)
        spread.time([&] { benchmark::DoNotOptimize(edited(from, kind)); });
    spread.tell(state);
}

void wholeAssessment(benchmark::State& state, Size size)
{
    const MeasuredPlan from = measuredPlan(size);
    const auto catalogue = catalogue::Catalogue::builtIn();
    Spread spread;
    for ([[maybe_unused]] auto _ : state)
        spread.time([&] { benchmark::DoNotOptimize(engine::assess(from.plan, catalogue)); });
    spread.tell(state);
    state.counters["runs"] = static_cast<double>(from.plan.runs.size());
    state.counters["vessels"] = static_cast<double>(from.plan.vessels.size());
}

void findingsAlone(benchmark::State& state, Size size)
{
    const auto result = engine::assess(measuredPlan(size).plan, catalogue::Catalogue::builtIn());
    Spread spread;
    for ([[maybe_unused]] auto _ : state)
        spread.time([&] { benchmark::DoNotOptimize(findings::findingsOf(*result)); });
    spread.tell(state);
    state.counters["findings"] = static_cast<double>(result->findings->list.size());
}

void checkPlan(benchmark::State& state, Size size)
{
    const MeasuredPlan from = measuredPlan(size);
    Spread spread;
    for ([[maybe_unused]] auto _ : state)
        spread.time([&] { benchmark::DoNotOptimize(plan::check(from.plan)); });
    spread.tell(state);
}

void loadPlan(benchmark::State& state, Size size)
{
    const std::string text = textOf(size);
    Spread spread;
    for ([[maybe_unused]] auto _ : state)
        spread.time([&] { benchmark::DoNotOptimize(storage::loadText(text)); });
    spread.tell(state);
    state.counters["bytes"] = static_cast<double>(text.size());
}

void savePlan(benchmark::State& state, Size size)
{
    const MeasuredPlan from = measuredPlan(size);
    Spread spread;
    for ([[maybe_unused]] auto _ : state)
        spread.time([&] { benchmark::DoNotOptimize(storage::saveText(from.plan)); });
    spread.tell(state);
}

template <class... Extra>
void add(Size size, const std::string& work, void (*measure)(benchmark::State&, Extra...), Extra... extra)
{
    const std::string name = std::string(nameOf(size)) + "/" + work;
    benchmark::RegisterBenchmark(name.c_str(), measure, extra...)->Unit(benchmark::kMillisecond);
}

void addAll(Size size)
{
    for (const EditKind kind : allEditKinds) {
        add(size, "quick lane/" + std::string(nameOf(kind)), quickLane, size, kind);
        add(size, "make edit/" + std::string(nameOf(kind)), makeEdit, size, kind);
    }
    add(size, "whole assessment", wholeAssessment, size);
    add(size, "findings alone", findingsAlone, size);
    add(size, "check plan", checkPlan, size);
    add(size, "load text", loadPlan, size);
    add(size, "save text", savePlan, size);
}

} // namespace
} // namespace sumpwright::performance

int main(int argc, char** argv)
{
    using namespace sumpwright::performance;
    addAll(Size::typical);
    addAll(Size::large);
    benchmark::Initialize(&argc, argv);
    if (benchmark::ReportUnrecognizedArguments(argc, argv))
        return 1;
    benchmark::RunSpecifiedBenchmarks();
}
