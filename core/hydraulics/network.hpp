// A network of full pipes and pumps, and the steady flow through it: one solve gives every flow and every grade.
//
// Nodes are water levels that hold (fixed grades: tanks, free outlets) or junctions. A junction's supply is the flow
// put in there (positive) or drawn (negative). Flow along a link is positive from `from` to `to`, and so is its loss.
// A free outlet is a fixed grade at its level behind a one-way pipe whose sumK has the exit loss. A closed valve is a
// link that is not there. Values in, values out: the same network gives the same answer, whatever the order of its
// nodes (to 1e-9). Valid: bores above 0, lengths and K from 0 up, relative roughness to 0.5.
// Source: the global gradient method, Todini and Pilati 1988; content, Collins et al. 1978.
// Keys: todini-pilati-1988, collins-1978.
#pragma once

#include <cstddef>
#include <optional>
#include <variant>
#include <vector>

#include "core/base/outcome.hpp"
#include "core/hydraulics/friction.hpp"
#include "core/hydraulics/pump_curve.hpp"
#include "core/units/measures.hpp"

namespace sumpwright::hydraulics
{

struct FixedGrade {
    units::Elevation grade;
};

struct Junction {
    units::Flow supply;                    // put in positive, drawn negative
    std::optional<units::Elevation> level; // of the pipe; where given, low pressure there is reported
};

using NetworkNode = std::variant<FixedGrade, Junction>;

struct PipeLink {
    units::Length bore;
    units::Length length;
    units::Length roughness;
    double sumK = 0.0;             // all fittings, on the velocity in this bore
    bool oneWay = false;           // free outlet or non-return valve
    units::Head openingHead;       // of a spring-loaded non-return valve; read only where oneWay
    double corrugatedFactor = 0.0; // least friction factor of corrugated hose; 0: a plain wall
};

struct PumpLink { // lifts from `from` to `to`; never runs backwards
    PumpCurve curve;
    double speed = 1.0;
};

struct ClosedLink {
};

using LinkPart = std::variant<PipeLink, PumpLink, ClosedLink>;

struct NetworkLink {
    std::size_t from = 0; // index into nodes
    std::size_t to = 0;
    LinkPart part;
};

struct Network {
    std::vector<NetworkNode> nodes;
    std::vector<NetworkLink> links;
    units::KinematicViscosity viscosity;

    // Each returns the index of what it added.
    std::size_t addFixedGrade(units::Elevation grade);
    std::size_t addJunction(units::Flow supply = {}, std::optional<units::Elevation> level = {});
    std::size_t addLink(std::size_t from, std::size_t to, LinkPart part);
};

enum class LinkState {
    Open,
    Shut,    // one-way, and the water would run backwards (or the pump or spring cannot push); flow exactly 0
    Removed, // a closed valve; flow exactly 0
    Unfed,   // in a part no water level reaches; flow exactly 0
};

struct LinkFlow {
    units::Flow flow;
    LinkState state = LinkState::Open;
    units::Head frictionLoss; // signed as the flow
    units::Head fittingLoss;  // signed as the flow; with the opening head of a spring
    units::Head headGained;   // pumps only
    units::Velocity velocity; // size; 0 for pumps
    double reynolds = 0.0;
    FlowRegime regime = FlowRegime::Still;
    bool runOut = false; // pump past the last point of its curve
};

enum class NodeState {
    Fixed,
    Flowing,
    Standing, // behind shut one-way links: water stands at the highest grade that could reach it
    Unfed,    // no water level reaches it: no grade
};

struct NodeGrade {
    std::optional<units::Elevation> grade; // absent where Unfed, and everywhere when not solved
    NodeState state = NodeState::Flowing;
    units::Flow delivered;    // sum of the flows of the links into the node, less those out of it
    bool lowPressure = false; // a junction with a level, and the grade more than 0.05 m below it: may draw in air
};

struct NetworkResult {
    std::vector<LinkFlow> links; // as Network::links; all flows 0 when not solved
    std::vector<NodeGrade> nodes;
    std::vector<std::vector<std::size_t>> islands; // groups of nodes that no water level reaches
    // Why there is no answer: "hydraulics.network-bad-link", "-bad-node" (place "link 3"), "-demand-unfed" (place
    // "node 2"), "-one-way-unsettled", "-not-converged".
    std::optional<base::Refusal> notSolved;
    std::size_t unknowns = 0; // junction grades solved for
    int iterations = 0;       // Newton steps, all rounds together
    int rounds = 0;           // times the set of shut links was tried
    units::Flow massResidual; // largest imbalance at a junction
    units::Head headResidual; // largest misfit of a link's own law

    bool solved() const { return !notSolved.has_value(); }
};

constexpr units::Head lowestPressureHead = units::metresHead(-0.05);

NetworkResult solve(const Network& network);

} // namespace sumpwright::hydraulics
