#include "core/hydraulics/kernel/gradient_method.hpp"

#include <algorithm>
#include <cmath>

namespace sumpwright::hydraulics::kernel
{
namespace
{

constexpr double massGoal = 1e-13;  // of the largest flow
constexpr double massNoise = 1e-18; // m3/s, where nothing flows

std::vector<Index> rowsOf(const FlowProblem& problem)
{
    std::vector<Index> rows(problem.held.size(), -1);
    Index next = 0;
    for (std::size_t node = 0; node < rows.size(); ++node)
        if (!problem.held[node])
            rows[node] = next++;
    return rows;
}

SparseLdl matrixOf(const FlowProblem& problem, const std::vector<Index>& rows)
{
    std::vector<SparseLdl::Pair> pairs;
    pairs.reserve(problem.links.size());
    for (const ProblemLink& link : problem.links)
        if (rows[link.from] >= 0 && rows[link.to] >= 0)
            pairs.emplace_back(rows[link.from], rows[link.to]);
    const auto junctions = std::count_if(rows.begin(), rows.end(), [](Index row) { return row >= 0; });
    return SparseLdl(static_cast<Index>(junctions), pairs);
}

} // namespace

GradientMethod::GradientMethod(FlowProblem& problem)
    : m_problem(problem), m_row(rowsOf(problem)), m_matrix(matrixOf(problem, m_row)), m_place(problem.held.size(), -1),
      m_betweenAll(problem.links.size(), -1), m_balance(problem.held.size())
{
    for (std::size_t k = 0; k < problem.links.size(); ++k) {
        const Index from = m_row[problem.links[k].from], to = m_row[problem.links[k].to];
        if (from >= 0 && to >= 0)
            m_betweenAll[k] = m_matrix.offDiagonalPlace(from, to);
    }
}

void GradientMethod::setOut(const std::vector<bool>& open, const std::vector<bool>& pinned)
{
    m_pinnedPlaces.clear();
    for (std::size_t node = 0; node < m_row.size(); ++node) {
        m_place[node] = m_row[node] >= 0 && !pinned[node] ? m_matrix.placeOf(m_row[node]) : -1;
        if (m_row[node] >= 0 && pinned[node])
            m_pinnedPlaces.push_back(m_matrix.placeOf(m_row[node]));
    }
    m_active.clear();
    m_ends.clear();
    for (std::size_t k = 0; k < open.size(); ++k) {
        if (!open[k])
            continue;
        const Index from = m_place[m_problem.links[k].from], to = m_place[m_problem.links[k].to];
        m_active.push_back(static_cast<Index>(k));
        m_ends.push_back({from, to, from >= 0 && to >= 0 ? m_betweenAll[k] : -1});
    }
    m_conductance.resize(m_active.size());
    m_misfit.resize(m_active.size());
    m_change.resize(m_active.size());
    m_law.resize(m_active.size());
}

// Apart from the sums, so that no link waits for another's. Friction factors go one step a time along with the flows.
void GradientMethod::lookUpLaws(const FlowState& state)
{
    m_rootsSettled = true;
    m_anyBackward = false;
    for (std::size_t i = 0; i < m_active.size(); ++i) {
        LinkLaw& law = m_problem.links[m_active[i]].law;
        const double flow = state.flow[m_active[i]];
        m_law[i] = law.at<Roots::OneStep>(flow);
        m_anyBackward = m_anyBackward || (flow < 0.0 && law.oneWay());
        m_rootsSettled = m_rootsSettled && law.rootSettled();
    }
}

// At a guess far from the answer tangents overshoot below zero flow. A chord through rest does not.
void GradientMethod::takeChords(const FlowState& state)
{
    for (std::size_t i = 0; i < m_active.size(); ++i) {
        const LinkLaw& law = m_problem.links[m_active[i]].law;
        const double flow = state.flow[m_active[i]];
        if (!law.isPump() && flow > 0.0)
            m_law[i].slope = std::max((m_law[i].loss - law.atRest()) / flow, smallestResistance);
    }
}

GradientMethod::Misfit GradientMethod::assemble(const FlowState& state, Lines lines)
{
    m_matrix.clear();
    for (Index place : m_pinnedPlaces)
        m_matrix.diagonal(place) = 1.0;
    m_balance = m_problem.supply;
    lookUpLaws(state);
    if (lines == Lines::Chords)
        takeChords(state);
    double head = 0.0, largestFlow = 0.0;
    for (std::size_t i = 0; i < m_active.size(); ++i) {
        const ProblemLink& link = m_problem.links[m_active[i]];
        const double flow = state.flow[m_active[i]];
        const double misfit = state.grade[link.from] - state.grade[link.to] - m_law[i].loss;
        const double conductance = 1.0 / m_law[i].slope;
        const double aimed = flow + conductance * misfit;
        m_conductance[i] = conductance;
        m_misfit[i] = misfit;
        head = std::max(head, std::fabs(misfit));
        largestFlow = std::max(largestFlow, std::fabs(flow));
        m_balance[link.from] -= flow;
        m_balance[link.to] += flow;
        const Ends& ends = m_ends[i];
        if (ends.from >= 0) {
            m_matrix.diagonal(ends.from) += conductance;
            m_matrix.rightSide(ends.from) -= aimed;
        }
        if (ends.to >= 0) {
            m_matrix.diagonal(ends.to) += conductance;
            m_matrix.rightSide(ends.to) += aimed;
        }
        if (ends.between >= 0)
            m_matrix.offDiagonal(ends.between) -= conductance;
    }
    double mass = 0.0;
    for (std::size_t node = 0; node < m_place.size(); ++node)
        if (m_place[node] >= 0) {
            m_matrix.rightSide(m_place[node]) += m_problem.supply[node];
            mass = std::max(mass, std::fabs(m_balance[node]));
            largestFlow = std::max(largestFlow, std::fabs(m_problem.supply[node]));
        }
    return {head, mass, largestFlow};
}

// Grades take the whole step (they are multipliers, any will do); flows take a part of theirs.
void GradientMethod::moveGrades(FlowState& state)
{
    const auto rise = [&](Index place) { return place >= 0 ? m_matrix.solution(place) : 0.0; };
    for (std::size_t i = 0; i < m_active.size(); ++i)
        m_change[i] = m_conductance[i] * (m_misfit[i] + rise(m_ends[i].from) - rise(m_ends[i].to));
    for (std::size_t node = 0; node < m_place.size(); ++node)
        state.grade[node] += rise(m_place[node]);
}

void GradientMethod::moveFlows(FlowState& state, double part)
{
    for (std::size_t i = 0; i < m_active.size(); ++i)
        state.flow[m_active[i]] += part * m_change[i];
}

// One-way pipes whose flow changed its sign in the step that moveFlows() made.
void GradientMethod::setTurnedFlows(FlowState& state)
{
    for (std::size_t i = 0; i < m_active.size(); ++i) {
        const ProblemLink& link = m_problem.links[m_active[i]];
        double& flow = state.flow[m_active[i]];
        if (link.law.oneWay() && !link.law.isPump() && (flow < 0.0) != (flow - m_change[i] < 0.0))
            flow = link.law.flowAcross(state.grade[link.from] - state.grade[link.to]);
    }
}

// d content / d part along the step. The changes of flow balance at every junction, so any grades may be set against
// the losses there: those of the step's end make the terms small.
double GradientMethod::contentSlope(const FlowState& state, double part)
{
    double slope = 0.0;
    for (std::size_t i = 0; i < m_active.size(); ++i) {
        ProblemLink& link = m_problem.links[m_active[i]];
        const double loss = link.law.at(state.flow[m_active[i]] + part * m_change[i]).loss;
        slope += (loss - state.grade[link.from] + state.grade[link.to]) * m_change[i];
    }
    return slope;
}

// The content's slope rises along the step (convexity), so its change over [0, p] is at most
// p/2 (slope(p/2) + slope(p)): Armijo's condition is asked of that bound, which needs no integral of a friction law.
double GradientMethod::armijoPart(const FlowState& state)
{
    constexpr double sufficient = 1e-4;
    constexpr int halvings = 40;
    const double start = contentSlope(state, 0.0);
    double part = 1.0;
    double atPart = contentSlope(state, part);
    for (int i = 0; i < halvings; ++i) {
        const double atHalf = contentSlope(state, part / 2.0);
        if (0.5 * (atHalf + atPart) <= sufficient * start)
            break;
        part /= 2.0;
        atPart = atHalf;
    }
    return part;
}

bool GradientMethod::iterate(FlowState& state, const Way& way, bool damped, NewtonReport& report)
{
    const int limit = damped ? way.dampedSteps : way.fullSteps;
    double best = std::numeric_limits<double>::infinity();
    int stalled = 0;
    for (int step = 0;; ++step) {
        const Misfit misfit = assemble(state, step == 0 ? way.first : Lines::Tangents);
        report.headResidual = misfit.head;
        report.massResidual = misfit.mass;
        if (!std::isfinite(misfit.head) || !std::isfinite(misfit.mass))
            return false;
        const bool balanced = misfit.mass <= std::min(massGoal * misfit.largestFlow + massNoise, massAccepted);
        if (balanced) {
            stalled = misfit.head < 0.5 * best ? 0 : stalled + 1;
            best = std::min(best, misfit.head);
        }
        const double goal = way.onlyToShut && m_anyBackward ? headAccepted : headGoal;
        if (balanced && m_rootsSettled && (misfit.head <= goal || (misfit.head <= headAccepted && stalled >= 2)))
            return true;
        if (step == limit || !m_matrix.solve())
            return false;
        ++report.steps;
        moveGrades(state);
        // The first step balances the junctions; near the end rounding blurs the content's slope.
        const bool search = damped && step > 0 && misfit.head > headAccepted;
        moveFlows(state, search ? armijoPart(state) : 1.0);
        if (!damped)
            setTurnedFlows(state);
    }
}

NewtonReport GradientMethod::run(const std::vector<bool>& open, const std::vector<bool>& pinned, FlowState& state,
                                 const Way& way)
{
    NewtonReport report;
    setOut(open, pinned);
    const FlowState start = state;
    report.converged = iterate(state, way, false, report);
    if (!report.converged && way.dampedSteps > 0) {
        state = start;
        report.converged = iterate(state, way, true, report);
    }
    return report;
}

} // namespace sumpwright::hydraulics::kernel
