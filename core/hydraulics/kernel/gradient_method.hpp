// Newton on flows and grades together, flows eliminated (the global gradient method): the flows and grades of a network
// whose open links are known. Full steps first; where they do not settle, damped steps that lower the network's content
// every time (Armijo), which always settle because the content is strictly convex.
// SI numbers. Source: Todini and Pilati 1988; content: Collins et al. 1978; line search: Armijo 1966.
#pragma once

#include <limits>
#include <vector>

#include "core/hydraulics/kernel/flow_problem.hpp"
#include "core/hydraulics/kernel/sparse_ldl.hpp"

namespace sumpwright::hydraulics::kernel
{

constexpr double headGoal = 1e-11;     // m, wanted of every link's own law
constexpr double headAccepted = 1e-8;  // m, enough where rounding lets the misfit fall no further
constexpr double massAccepted = 1e-10; // m3/s
constexpr int fullSteps = 40;
constexpr int dampedSteps = 400;

struct NewtonReport {
    bool converged = false;
    int steps = 0;
    double headResidual = std::numeric_limits<double>::infinity(); // m
    double massResidual = std::numeric_limits<double>::infinity(); // m3/s
};

// By what each link's law is replaced in the first step: its tangent at the flow given, or, for a guess that knows
// nothing of the answer, the chord from rest to there.
enum class Lines { Tangents, Chords };

class GradientMethod
{
public:
    // Keeps a reference: the problem must outlive it.
    explicit GradientMethod(FlowProblem& problem);

    struct Way {
        Lines first = Lines::Tangents;
        bool onlyToShut = false; // enough is enough to see which one-way links run backward, where any does
        int fullSteps = kernel::fullSteps;
        int dampedSteps = kernel::dampedSteps;
    };
    // `open` by link: takes part; the flow of the others must be 0 in the state. `pinned` by node: its grade stays,
    // as if held. Every part joined by open links needs a held or a pinned node.
    NewtonReport run(const std::vector<bool>& open, const std::vector<bool>& pinned, FlowState& state, const Way& way);

private:
    struct Ends { // of a link among the unknowns; -1 where the grade is given
        Index from;
        Index to;
        Index between; // off-diagonal place, -1 without
    };
    struct Misfit {
        double head; // m, largest of a link
        double mass; // m3/s, largest of a junction
        double largestFlow;
    };

    void setOut(const std::vector<bool>& open, const std::vector<bool>& pinned);
    void lookUpLaws(const FlowState& state);
    void takeChords(const FlowState& state);
    Misfit assemble(const FlowState& state, Lines lines);
    void moveGrades(FlowState& state);
    void moveFlows(FlowState& state, double part);
    void setTurnedFlows(FlowState& state);
    double contentSlope(const FlowState& state, double part);
    double armijoPart(const FlowState& state);
    bool iterate(FlowState& state, const Way& way, bool damped, NewtonReport& report);

    FlowProblem& m_problem;
    std::vector<Index> m_row; // by node, -1 for held
    SparseLdl m_matrix;
    std::vector<Index> m_place; // by node: place in the matrix, -1 for held and pinned
    std::vector<Index> m_pinnedPlaces;
    std::vector<Index> m_betweenAll;   // by link
    std::vector<Index> m_active;       // open links
    std::vector<Ends> m_ends;          // by active link
    std::vector<LinkLaw::Value> m_law; // by active link, as the next
    std::vector<double> m_conductance;
    std::vector<double> m_misfit;
    std::vector<double> m_change;  // of flow, by active link
    bool m_rootsSettled = true;    // of the last look at the laws
    bool m_anyBackward = false;    // one-way links, by the same look
    std::vector<double> m_balance; // by node: inflow less outflow
};

} // namespace sumpwright::hydraulics::kernel
