#include "core/hydraulics/network.hpp"

#include <algorithm>
#include <cmath>
#include <string>
#include <utility>

#include "core/hydraulics/kernel/one_way_set.hpp"
#include "core/hydraulics/network_check.hpp"

namespace sumpwright::hydraulics
{
namespace
{

using kernel::FlowProblem;
using kernel::LinkLaw;
using kernel::Settled;

struct Prepared {
    FlowProblem problem;
    std::vector<double> grades;
    std::vector<bool> present; // by link: not a closed valve
    std::vector<bool> fed;     // by link: present and reached by water
    std::vector<bool> reached; // by node
};

LinkLaw lawOf(const PipeLink& pipe, double viscosity)
{
    return LinkLaw::ofPipe({units::inMetres(pipe.bore), units::inMetres(pipe.length), units::inMetres(pipe.roughness),
                            pipe.sumK, pipe.corrugatedFactor},
                           viscosity, pipe.oneWay, units::inMetresHead(pipe.openingHead));
}

LinkLaw lawOf(const PumpLink& pump, double) { return LinkLaw::ofPump(pump.curve, pump.speed); }

LinkLaw lawOf(const ClosedLink&, double) { return {}; }

void takeNodes(const Network& network, Prepared& prepared)
{
    double sum = 0.0;
    int held = 0;
    prepared.problem.held.reserve(network.nodes.size());
    prepared.problem.supply.reserve(network.nodes.size());
    prepared.grades.reserve(network.nodes.size());
    for (const NetworkNode& node : network.nodes) {
        const auto* fixed = std::get_if<FixedGrade>(&node);
        const auto* junction = std::get_if<Junction>(&node);
        prepared.problem.held.push_back(fixed != nullptr);
        prepared.problem.supply.push_back(junction ? units::inCubicMetresPerSecond(junction->supply) : 0.0);
        prepared.grades.push_back(fixed ? units::inMetres(fixed->grade) : 0.0);
        sum += prepared.grades.back();
        held += fixed ? 1 : 0;
    }
    for (std::size_t node = 0; node < prepared.grades.size(); ++node)
        if (!prepared.problem.held[node] && held > 0)
            prepared.grades[node] = sum / held;
}

Prepared prepare(const Network& network)
{
    Prepared prepared;
    takeNodes(network, prepared);
    const double viscosity = units::inSquareMetresPerSecond(network.viscosity);
    prepared.problem.links.reserve(network.links.size());
    prepared.present.reserve(network.links.size());
    prepared.fed.reserve(network.links.size());
    for (const NetworkLink& link : network.links) {
        prepared.problem.links.push_back(
            {static_cast<kernel::Index>(link.from), static_cast<kernel::Index>(link.to),
             std::visit([&](const auto& part) { return lawOf(part, viscosity); }, link.part)});
        prepared.present.push_back(!std::holds_alternative<ClosedLink>(link.part));
    }
    prepared.reached = kernel::reachedNodes(prepared.problem, prepared.present);
    for (std::size_t k = 0; k < network.links.size(); ++k)
        prepared.fed.push_back(prepared.present[k] && prepared.reached[network.links[k].from] &&
                               prepared.reached[network.links[k].to]);
    return prepared;
}

std::vector<std::vector<std::size_t>> islandsOf(const Prepared& prepared)
{
    if (std::all_of(prepared.reached.begin(), prepared.reached.end(), [](bool reached) { return reached; }))
        return {};
    std::vector<bool> unfed(prepared.present);
    for (std::size_t k = 0; k < unfed.size(); ++k)
        unfed[k] = prepared.present[k] && !prepared.reached[prepared.problem.links[k].from] &&
                   !prepared.reached[prepared.problem.links[k].to];
    const std::vector<kernel::Index> part = kernel::partsOf(prepared.problem, unfed);
    std::vector<std::vector<std::size_t>> byLabel(part.size()), islands;
    for (std::size_t node = 0; node < part.size(); ++node)
        if (!prepared.reached[node])
            byLabel[part[node]].push_back(node);
    for (std::vector<std::size_t>& island : byLabel)
        if (!island.empty())
            islands.push_back(std::move(island));
    return islands;
}

base::Refusal reasonOf(const Settled& settled)
{
    const std::string number = std::to_string(settled.where);
    switch (settled.fault) {
    case kernel::SettleFault::None:
        break;
    case kernel::SettleFault::DemandUnfed:
        return {"hydraulics.network-demand-unfed", "node " + number,
                "the water drawn or put in here has nowhere to come from or go to",
                "a way to a water level that no closed or one-way link bars"};
    case kernel::SettleFault::Unsettled:
        return {"hydraulics.network-one-way-unsettled", "link " + number,
                "this one-way link neither opens nor shuts for good",
                "levels or pump heads that are not balanced on a knife's edge"};
    case kernel::SettleFault::NotConverged:
        break;
    }
    return {"hydraulics.network-not-converged", "network",
            "no flow was found that fits all links; " + std::to_string(settled.newton.steps) + " steps were tried",
            "less extreme sizes and levels"};
}

void fillPipe(const PipeLink& pipe, LinkLaw law, const Network& network, LinkFlow& result)
{
    const LinkLaw::Value loss = law.at(units::inCubicMetresPerSecond(result.flow));
    result.frictionLoss = units::metresHead(loss.friction);
    // The law's rest: the spring's opening head, or the least resistance of a link without length and K.
    result.fittingLoss = units::metresHead(result.flow == units::Flow() ? 0.0 : loss.loss - loss.friction);
    result.velocity = units::metresPerSecond(std::fabs(units::inMetresPerSecond(meanVelocity(result.flow, pipe.bore))));
    result.reynolds = reynoldsNumber(result.flow, pipe.bore, network.viscosity);
    result.regime = regimeOf(result.reynolds);
}

void fillLinks(const Network& network, const Prepared& prepared, const Settled& settled, NetworkResult& result)
{
    for (std::size_t k = 0; k < network.links.size(); ++k) {
        LinkFlow& link = result.links[k];
        if (!prepared.present[k] || !prepared.fed[k]) {
            link.state = prepared.present[k] ? LinkState::Unfed : LinkState::Removed;
            continue;
        }
        if (!settled.open[k]) {
            link.state = LinkState::Shut;
            continue;
        }
        if (std::fabs(settled.state.flow[k]) > kernel::stillFlow)
            link.flow = units::cubicMetresPerSecond(settled.state.flow[k]);
        if (const auto* pipe = std::get_if<PipeLink>(&network.links[k].part))
            fillPipe(*pipe, prepared.problem.links[k].law, network, link);
        if (const auto* pump = std::get_if<PumpLink>(&network.links[k].part)) {
            link.headGained = pump->curve.headAt(link.flow, pump->speed);
            link.runOut = pump->curve.runsOut(link.flow, pump->speed);
        }
        result.nodes[network.links[k].from].delivered -= link.flow;
        result.nodes[network.links[k].to].delivered += link.flow;
    }
}

void fillNodes(const Network& network, const Prepared& prepared, const Settled& settled, NetworkResult& result)
{
    for (std::size_t i = 0; i < network.nodes.size(); ++i) {
        NodeGrade& node = result.nodes[i];
        const bool fixed = prepared.problem.held[i];
        if (!prepared.reached[i])
            node.state = NodeState::Unfed;
        else if (fixed)
            node.state = NodeState::Fixed;
        else if (settled.standing[i])
            node.state = NodeState::Standing;
        if (fixed || (prepared.reached[i] && settled.graded[i]))
            node.grade = units::elevationMetres(settled.state.grade[i]);
        const auto* junction = std::get_if<Junction>(&network.nodes[i]);
        if (node.grade && junction && junction->level)
            node.lowPressure = units::liftBetween(*junction->level, *node.grade) < lowestPressureHead;
    }
}

} // namespace

std::size_t Network::addFixedGrade(units::Elevation grade)
{
    nodes.emplace_back(FixedGrade{grade});
    return nodes.size() - 1;
}

std::size_t Network::addJunction(units::Flow supply, std::optional<units::Elevation> level)
{
    nodes.emplace_back(Junction{supply, level});
    return nodes.size() - 1;
}

std::size_t Network::addLink(std::size_t from, std::size_t to, LinkPart part)
{
    links.push_back({from, to, std::move(part)});
    return links.size() - 1;
}

NetworkResult solve(const Network& network)
{
    NetworkResult result;
    result.links.resize(network.links.size());
    result.nodes.resize(network.nodes.size());
    if ((result.notSolved = faultOf(network)))
        return result;
    Prepared prepared = prepare(network);
    result.islands = islandsOf(prepared);
    const Settled settled = kernel::settle(prepared.problem, prepared.fed, prepared.fed, prepared.grades);
    for (std::size_t node = 0; node < network.nodes.size(); ++node)
        result.unknowns += !prepared.problem.held[node] && prepared.reached[node] ? 1 : 0;
    result.iterations = settled.newton.steps;
    result.rounds = settled.rounds;
    if (std::isfinite(settled.newton.headResidual) && std::isfinite(settled.newton.massResidual)) {
        result.massResidual = units::cubicMetresPerSecond(settled.newton.massResidual);
        result.headResidual = units::metresHead(settled.newton.headResidual);
    }
    if (settled.fault != kernel::SettleFault::None) {
        result.notSolved = reasonOf(settled);
        return result;
    }
    fillLinks(network, prepared, settled, result);
    fillNodes(network, prepared, settled, result);
    return result;
}

} // namespace sumpwright::hydraulics
