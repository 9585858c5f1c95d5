#include "core/hydraulics/kernel/one_way_set.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

namespace sumpwright::hydraulics::kernel
{
namespace
{

constexpr double unknownGrade = -std::numeric_limits<double>::infinity();

// Parts of the network that shut links have cut off from every held grade, each pinned at one node.
struct Pockets {
    std::vector<Index> part;  // by node
    std::vector<bool> cutOff; // by part label
    std::vector<bool> pinned; // by node
};

Pockets pocketsOf(const FlowProblem& problem, const std::vector<bool>& open)
{
    Pockets pockets;
    pockets.part = partsOf(problem, open);
    pockets.cutOff.assign(problem.held.size(), true);
    pockets.pinned.assign(problem.held.size(), false);
    for (std::size_t node = 0; node < problem.held.size(); ++node)
        if (problem.held[node])
            pockets.cutOff[pockets.part[node]] = false;
    for (std::size_t node = 0; node < problem.held.size(); ++node) {
        const std::size_t label = pockets.part[node];
        pockets.pinned[node] = pockets.cutOff[label] && label == node; // one node per part is its own label
    }
    return pockets;
}

// A junction of a pocket whose water comes or goes nowhere, or -1.
Index unbalanced(const FlowProblem& problem, const Pockets& pockets)
{
    std::vector<double> sum(problem.held.size(), 0.0), size(problem.held.size(), 0.0);
    std::vector<Index> where(problem.held.size(), -1);
    for (std::size_t node = 0; node < problem.held.size(); ++node) {
        const std::size_t label = pockets.part[node];
        if (!pockets.cutOff[label] || problem.supply[node] == 0.0)
            continue;
        sum[label] += problem.supply[node];
        size[label] += std::fabs(problem.supply[node]);
        where[label] = static_cast<Index>(node);
    }
    for (std::size_t label = 0; label < sum.size(); ++label)
        if (std::fabs(sum[label]) > 1e-12 * size[label])
            return where[label];
    return -1;
}

// Water stands in a pocket at the highest grade that a shut link into it could bring there. Pockets may feed pockets.
void raisePockets(const FlowProblem& problem, const std::vector<bool>& fed, const Pockets& pockets, Settled& settled)
{
    std::vector<double>& grade = settled.state.grade;
    std::vector<double> rise(problem.held.size(), unknownGrade); // by part
    for (std::size_t node = 0; node < problem.held.size(); ++node)
        if (!pockets.cutOff[pockets.part[node]])
            rise[pockets.part[node]] = 0.0;
    bool changed = true;
    for (std::size_t pass = 0; changed && pass <= problem.held.size(); ++pass) {
        changed = false;
        for (std::size_t k = 0; k < problem.links.size(); ++k) {
            const ProblemLink& link = problem.links[k];
            const std::size_t to = pockets.part[link.to], from = pockets.part[link.from];
            if (!fed[k] || settled.open[k] || !pockets.cutOff[to] || rise[from] == unknownGrade || from == to)
                continue;
            const double here = grade[link.from] + rise[from] - link.law.atRest() - grade[link.to];
            if (here > rise[to] + 1e-12) {
                rise[to] = here;
                changed = true;
            }
        }
    }
    for (std::size_t node = 0; node < problem.held.size(); ++node) {
        settled.graded[node] = rise[pockets.part[node]] != unknownGrade;
        if (settled.graded[node])
            grade[node] += rise[pockets.part[node]];
    }
}

// Shuts links that run backwards or carry nothing (their mouth must not hold up standing water) and opens links that
// hold back more than they may. The first of them, or -1.
Index turnWrongLinks(FlowProblem& problem, const std::vector<bool>& fed, Settled& settled)
{
    Index first = -1;
    for (std::size_t k = problem.links.size(); k-- > 0;) {
        const ProblemLink& link = problem.links[k];
        if (!fed[k] || !link.law.oneWay())
            continue;
        double& flow = settled.state.flow[k];
        const double across = settled.state.grade[link.from] - settled.state.grade[link.to];
        const bool wrong = settled.open[k] ? flow < stillFlow : across > link.law.atRest() + shutTolerance;
        if (!wrong)
            continue;
        first = static_cast<Index>(k);
        settled.open[k] = !settled.open[k];
        flow = settled.open[k] ? link.law.start() : 0.0;
    }
    return first;
}

FlowState startOf(const FlowProblem& problem, const std::vector<bool>& open, const std::vector<double>& grades)
{
    FlowState state{grades, std::vector<double>(problem.links.size(), 0.0)};
    for (std::size_t k = 0; k < problem.links.size(); ++k)
        if (open[k])
            state.flow[k] = problem.links[k].law.start();
    return state;
}

} // namespace

std::vector<Index> partsOf(const FlowProblem& problem, const std::vector<bool>& joined)
{
    std::vector<Index> parent(problem.held.size());
    std::iota(parent.begin(), parent.end(), 0);
    const auto top = [&](Index node) {
        while (parent[node] != node) {
            parent[node] = parent[parent[node]];
            node = parent[node];
        }
        return node;
    };
    for (std::size_t k = 0; k < problem.links.size(); ++k) {
        if (!joined[k])
            continue;
        const Index a = top(problem.links[k].from), b = top(problem.links[k].to);
        parent[std::max(a, b)] = std::min(a, b);
    }
    for (std::size_t node = 0; node < parent.size(); ++node)
        parent[node] = top(static_cast<Index>(node));
    return parent;
}

std::vector<bool> reachedNodes(const FlowProblem& problem, const std::vector<bool>& present)
{
    // By node where its ways on begin in one list of all.
    std::vector<Index> start(problem.held.size() + 1, 0), next;
    const auto eachWay = [&](auto&& take) {
        for (std::size_t k = 0; k < problem.links.size(); ++k) {
            const ProblemLink& link = problem.links[k];
            if (!present[k])
                continue;
            take(link.from, link.to);
            if (!link.law.oneWay())
                take(link.to, link.from);
        }
    };
    eachWay([&](Index from, Index) { ++start[from]; });
    std::partial_sum(start.begin(), start.end(), start.begin());
    next.resize(static_cast<std::size_t>(start.back()));
    eachWay([&](Index from, Index to) { next[--start[from]] = to; });
    std::vector<bool> reached(problem.held.size(), false);
    std::vector<Index> waiting;
    waiting.reserve(problem.held.size());
    for (std::size_t node = 0; node < reached.size(); ++node)
        if (problem.held[node] || problem.supply[node] > 0.0) {
            reached[node] = true;
            waiting.push_back(static_cast<Index>(node));
        }
    while (!waiting.empty()) {
        const Index node = waiting.back();
        waiting.pop_back();
        for (Index way = start[node]; way < start[node + 1]; ++way)
            if (!reached[next[way]]) {
                reached[next[way]] = true;
                waiting.push_back(next[way]);
            }
    }
    return reached;
}

Settled settle(FlowProblem& problem, const std::vector<bool>& fed, const std::vector<bool>& open,
               const std::vector<double>& grades)
{
    Settled settled;
    settled.open = open;
    settled.standing.assign(problem.held.size(), false);
    settled.graded.assign(problem.held.size(), false);
    settled.state = startOf(problem, open, grades);
    GradientMethod method(problem);
    int steps = 0;
    while (true) {
        ++settled.rounds;
        const Pockets pockets = pocketsOf(problem, settled.open);
        if ((settled.where = unbalanced(problem, pockets)) >= 0) {
            settled.fault = SettleFault::DemandUnfed;
            break;
        }
        // Links that run backward are shut after the round, and all is solved again from there.
        const GradientMethod::Way way{settled.rounds == 1 ? Lines::Chords : Lines::Tangents, true};
        settled.newton = method.run(settled.open, pockets.pinned, settled.state, way);
        steps += settled.newton.steps;
        if (!settled.newton.converged) {
            settled.fault = SettleFault::NotConverged;
            break;
        }
        raisePockets(problem, fed, pockets, settled);
        for (std::size_t node = 0; node < problem.held.size(); ++node)
            settled.standing[node] = pockets.cutOff[pockets.part[node]];
        const Index wrong = turnWrongLinks(problem, fed, settled);
        if (wrong < 0)
            break;
        if (settled.rounds == roundLimit) {
            settled.fault = SettleFault::Unsettled;
            settled.where = wrong;
            break;
        }
    }
    settled.newton.steps = steps;
    return settled;
}

} // namespace sumpwright::hydraulics::kernel
