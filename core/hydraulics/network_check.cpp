#include "core/hydraulics/network_check.hpp"

#include <cmath>
#include <string>

namespace sumpwright::hydraulics
{
namespace
{

// Far beyond any plan, far from where squares and fifth powers leave the range of a double.
constexpr double largest = 1e6;       // m, m3/s
constexpr double largestK = 1e12;     // ratio
constexpr double smallestBore = 1e-5; // m
constexpr double fastest = 1e3;       // speed ratio
constexpr double slowest = 1e-3;

bool within(double value, double low, double high) { return value >= low && value <= high; }

base::Refusal badLink(std::size_t index, const char* what, const char* accepts)
{
    return {"hydraulics.network-bad-link", "link " + std::to_string(index), what, accepts};
}

struct PartFault {
    const char* what;
    const char* accepts;
};

std::optional<PartFault> faultOfPart(const PipeLink& pipe)
{
    const double bore = units::inMetres(pipe.bore);
    if (!within(bore, smallestBore, largest))
        return PartFault{"the bore is not above zero", "a bore of 0.01 mm or more"};
    if (!within(units::inMetres(pipe.length), 0.0, largest))
        return PartFault{"the length is below zero or no number", "a length from 0 up"};
    if (!within(units::inMetres(pipe.roughness), 0.0, roughestComputed * bore))
        return PartFault{"the roughness is below zero or fills the bore", "a roughness of 0 to half the bore"};
    if (!within(pipe.sumK, 0.0, largestK))
        return PartFault{"the sum of K is below zero or no number", "a sum of K from 0 up; close the valve instead"};
    if (!within(pipe.corrugatedFactor, 0.0, largest))
        return PartFault{"the friction factor is below zero or no number", "a factor from 0 up"};
    if (!within(units::inMetresHead(pipe.openingHead), 0.0, largest))
        return PartFault{"the opening head is below zero or no number", "an opening head from 0 up"};
    return std::nullopt;
}

std::optional<PartFault> faultOfPart(const PumpLink& pump)
{
    if (!within(pump.speed, slowest, fastest))
        return PartFault{"the speed is not above zero", "a speed ratio such as 0.8; remove a pump that stands still"};
    return std::nullopt;
}

std::optional<PartFault> faultOfPart(const ClosedLink&) { return std::nullopt; }

std::optional<base::Refusal> faultOfNode(const Network& network, std::size_t index)
{
    const auto bad = [&](const char* what) {
        return base::Refusal{"hydraulics.network-bad-node", "node " + std::to_string(index), what, "a number"};
    };
    if (const auto* fixed = std::get_if<FixedGrade>(&network.nodes[index]))
        if (!within(units::inMetres(fixed->grade), -largest, largest))
            return bad("the level is no number");
    if (const auto* junction = std::get_if<Junction>(&network.nodes[index])) {
        if (!within(units::inCubicMetresPerSecond(junction->supply), -largest, largest))
            return bad("the supply is no number");
        if (junction->level && !within(units::inMetres(*junction->level), -largest, largest))
            return bad("the pipe's level is no number");
    }
    return std::nullopt;
}

} // namespace

std::optional<base::Refusal> faultOf(const Network& network)
{
    const double viscosity = units::inSquareMetresPerSecond(network.viscosity);
    if (!within(viscosity, 1e-9, 1.0))
        return base::Refusal{"hydraulics.network-bad-node", "viscosity", "the viscosity is not above zero",
                             "the kinematic viscosity of water"};
    for (std::size_t i = 0; i < network.nodes.size(); ++i)
        if (const auto fault = faultOfNode(network, i))
            return fault;
    for (std::size_t i = 0; i < network.links.size(); ++i) {
        const NetworkLink& link = network.links[i];
        if (link.from >= network.nodes.size() || link.to >= network.nodes.size())
            return badLink(i, "an end is not at any node", "two nodes of the network");
        if (link.from == link.to)
            return badLink(i, "both ends are at one node", "two different nodes");
        if (const auto fault = std::visit([](const auto& part) { return faultOfPart(part); }, link.part))
            return badLink(i, fault->what, fault->accepts);
    }
    return std::nullopt;
}

} // namespace sumpwright::hydraulics
