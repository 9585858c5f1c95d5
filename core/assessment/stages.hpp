// Stages: from plan to results, each stage with its own typed input, run only when that input differs from the last.
// Starts no stage from an earlier result, so results are those of a fresh assessment, bit for bit.
// Budget of all stages together: 4 ms on the typical plan, 16 ms on the large one (release build, one thread).
#pragma once

#include <array>
#include <cstdint>
#include <memory>
#include <optional>
#include <string_view>
#include <tuple>
#include <vector>

#include "core/assessment/assessment.hpp"
#include "core/assessment/loads.hpp"
#include "core/assessment/memo.hpp"
#include "core/assessment/pipework.hpp"
#include "core/assessment/pump_stop.hpp"
#include "core/assessment/running.hpp"
#include "core/assessment/season.hpp"

namespace sumpwright::assessment
{

enum class StageName {
    site,
    pipework,
    basins,
    circuits,
    pumpStop,
    water,
    flow,
    sumps,
    pumps,
    season,
    headPaths,
    service,
    floor
};
inline constexpr std::array allStages{
    StageName::site,      StageName::pipework, StageName::basins, StageName::circuits, StageName::pumpStop,
    StageName::water,     StageName::flow,     StageName::sumps,  StageName::pumps,    StageName::season,
    StageName::headPaths, StageName::service,  StageName::floor};
std::string_view nameOf(StageName stage);

class Stages
{
public:
    explicit Stages(std::shared_ptr<const catalogue::Catalogue> catalogue) : m_catalogue(std::move(catalogue)) {}

    // Everything but the findings.
    Assessment assess(const plan::Plan& plan);
    std::uint64_t runsOf(StageName stage) const; // since the beginning

private:
    using Vessels = plan::Table<plan::Vessel>;
    template <class T> using Shared = std::shared_ptr<const T>;
    struct SiteInput {
        units::Temperature water;
        std::optional<units::Length> altitude;
        friend bool operator==(const SiteInput&, const SiteInput&) = default;
    };
    struct BasinInput {
        Vessels vessels;
        Shared<Pipework> pipework;
        friend bool operator==(const BasinInput&, const BasinInput&) = default;
    };
    struct CircuitInput {
        Shared<Pipework> pipework;
        Shared<std::vector<Basin>> basins;
        Stage<units::KinematicViscosity> viscosity;
        friend bool operator==(const CircuitInput&, const CircuitInput&) = default;
    };
    struct StopInput {
        Shared<Pipework> pipework;
        Shared<std::vector<Basin>> basins;
        Shared<Circuits> circuits;
        friend bool operator==(const StopInput&, const StopInput&) = default;
    };
    struct StoppedInput {
        StopInput running;
        Shared<StoppedCircuits> stopped;
        friend bool operator==(const StoppedInput&, const StoppedInput&) = default;
    };
    struct FlowInput {
        Shared<Pipework> pipework;
        Shared<Circuits> circuits;
        friend bool operator==(const FlowInput&, const FlowInput&) = default;
    };
    struct SeasonInput {
        Shared<Pipework> pipework;
        Shared<std::vector<Basin>> basins;
        PerYearEnd<units::Temperature> water;
        friend bool operator==(const SeasonInput&, const SeasonInput&) = default;
    };
    struct PumpInput {
        FlowInput flow;
        Stage<units::Density> density;
        std::optional<units::EnergyPrice> price;
        friend bool operator==(const PumpInput&, const PumpInput&) = default;
    };

    struct ServiceInput {
        Shared<Pipework> pipework;
        Shared<std::vector<Basin>> basins;
        Shared<WaterResult> water;
        friend bool operator==(const ServiceInput&, const ServiceInput&) = default;
    };
    // The catalogue with the plan's own parts.
    const Shared<catalogue::Catalogue>& tablesFor(const plan::Plan& plan);

    Shared<catalogue::Catalogue> m_catalogue;
    Shared<plan::OwnParts> m_ownParts; // those that m_tables holds
    Shared<catalogue::Catalogue> m_tables;
    Memo<SiteInput, SiteResult> m_site;
    Memo<PipeworkInput, Pipework> m_pipework;
    Memo<BasinInput, std::vector<Basin>> m_basins;
    Memo<CircuitInput, Circuits> m_circuits;
    Memo<StopInput, StoppedCircuits> m_stopped;
    Memo<StoppedInput, WaterResult> m_water;
    Memo<FlowInput, FlowResult> m_flow;
    Memo<StoppedInput, SumpResults> m_sumps;
    Memo<PumpInput, PumpResults> m_pumps;
    Memo<SeasonInput, SeasonResult> m_season;
    Memo<FlowInput, HeadPaths> m_headPaths;
    Memo<ServiceInput, ServiceResult> m_service;
    Memo<LoadInput, FloorResult> m_floor;
};

} // namespace sumpwright::assessment
