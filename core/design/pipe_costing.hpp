// What one choice of pipes costs: the evaluation behind pipe_sizes.hpp, for one pump of a solved plan.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/design/pipe_sizes.hpp"

namespace sumpwright::design
{

class PipeCosting
{
public:
    // What must be there before anything can be costed; refusals as choosePipes().
    static base::Outcome<PipeCosting> begin(const plan::Plan& plan, const CataloguePointer& catalogue,
                                            const PipeQuestion& question);

    base::Id pump() const { return m_pump; }
    double wireToWater() const { return m_wireToWater; }
    std::vector<PipeGroup>& groups() { return m_groups; }
    const std::vector<PipeGroup>& groups() const { return m_groups; }
    // The greatest flow a run of the group carries now.
    units::Flow flowIn(const PipeGroup& group) const;
    units::Money priceOf(const std::string& pipe) const;
    bool isAssumed(const std::string& pipe) const;

    // Nothing: not solved with these pipes.
    std::optional<PipeChoice> cost(const std::vector<std::string>& pipes) const;
    PipeChoice costNow() const; // as drawn, each run with its own pipe

private:
    PipeCosting(const plan::Plan& plan, CataloguePointer catalogue, PipeQuestion question);
    std::optional<base::Refusal> takePump();
    std::optional<base::Refusal> takeFlows();
    std::optional<base::Refusal> takePower();
    std::optional<PipeChoice> costOf(const plan::Plan& plan) const;
    std::optional<PipeChoice> withFlowKept(const plan::Plan& plan) const;
    std::optional<PipeChoice> withPumpKept(const plan::Plan& plan) const;
    void takeVelocity(PipeChoice& choice, base::Id run, units::Flow flow, units::Length bore) const;

    struct Way {             // a run that flows, along its flow
        std::size_t run = 0; // index into the pipework
        std::size_t from = 0;
        std::size_t to = 0; // nodes
        units::Flow flow;
        std::optional<units::Elevation> mouth; // the level to reach, where it ends at an outlet
    };
    units::Elevation neededAt(std::size_t node, const std::vector<units::Head>& losses,
                              std::map<std::size_t, units::Elevation>& known) const;

    plan::Plan m_plan;
    plan::Plan m_open; // every throttle open
    CataloguePointer m_catalogue;
    PipeQuestion m_question;
    Bench m_bench;
    std::size_t m_circuit = 0; // index into the bench's circuits
    std::size_t m_place = 0;   // of the pump in it
    base::Id m_pump;
    std::vector<Way> m_ways;
    std::size_t m_outletNode = 0; // of the pump
    units::Elevation m_suction;
    units::Flow m_flow; // of the pump, now
    double m_wireToWater = 0.0;
    units::EnergyPrice m_price;
    std::vector<PipeGroup> m_groups;
};

} // namespace sumpwright::design
