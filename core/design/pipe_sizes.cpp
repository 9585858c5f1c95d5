#include "core/design/pipe_sizes.hpp"

#include <algorithm>
#include <cmath>
#include <set>

#include "core/design/pipe_costing.hpp"
#include "core/design/size_groups.hpp"
#include "core/plan/edits/run.hpp"
#include "core/plan/edits/sequence.hpp"
#include "core/units/format.hpp"

namespace sumpwright::design
{
namespace
{

constexpr std::size_t mostWithFlowKept = 20'000; // combinations that are all tried
constexpr std::size_t mostWithPumpKept = 3'000;

using Sizes = std::vector<std::size_t>; // of each group, an index into what it is offered

class Search
{
public:
    Search(PipeCosting& costing, const base::StopToken& stop) : m_costing(costing), m_stop(stop) {}

    void everyCombination()
    {
        Sizes sizes(groups().size(), 0);
        do
            take(sizes);
        while (next(sizes));
    }

    // From each start to the best neighbour until none is better.
    void stepDown(const Sizes& start)
    {
        Sizes at = start;
        take(at);
        for (bool better = true; better;) {
            better = false;
            for (const Sizes& neighbour : neighboursOf(at)) {
                take(neighbour);
                if (m_best && m_bestSizes == neighbour && neighbour != at) {
                    at = neighbour;
                    better = true;
                }
            }
        }
    }

    std::vector<Sizes> neighboursOf(const Sizes& sizes) const
    {
        std::vector<Sizes> all;
        for (std::size_t group = 0; group < sizes.size(); ++group)
            for (const int step : {-1, 1}) {
                const auto wanted = static_cast<std::ptrdiff_t>(sizes[group]) + step;
                if (wanted < 0 || wanted >= static_cast<std::ptrdiff_t>(groups()[group].offered.size()))
                    continue;
                Sizes other = sizes;
                other[group] = static_cast<std::size_t>(wanted);
                all.push_back(other);
            }
        return all;
    }

    std::optional<PipeChoice> costOf(const Sizes& sizes) const
    {
        std::vector<std::string> pipes;
        for (std::size_t group = 0; group < sizes.size(); ++group)
            pipes.push_back(groups()[group].offered[sizes[group]]);
        return m_costing.cost(pipes);
    }

    const std::optional<PipeChoice>& best() const { return m_best; }
    const Sizes& bestSizes() const { return m_bestSizes; }
    std::size_t tried() const { return m_tried.size(); }

    // Of all that were tried and are allowed: those that no cheaper pipe beats in energy.
    std::vector<PipeChoice> tradeOff()
    {
        std::stable_sort(m_allowed.begin(), m_allowed.end(), [](const PipeChoice& a, const PipeChoice& b) {
            return a.pipeCost < b.pipeCost || (a.pipeCost == b.pipeCost && a.energyCost < b.energyCost);
        });
        std::vector<PipeChoice> frontier;
        for (const PipeChoice& choice : m_allowed)
            if (frontier.empty() || choice.energyCost < frontier.back().energyCost)
                frontier.push_back(choice);
        return frontier;
    }

private:
    const std::vector<PipeGroup>& groups() const { return m_costing.groups(); }

    bool next(Sizes& sizes) const
    {
        for (std::size_t group = 0; group < sizes.size(); ++group) {
            if (++sizes[group] < groups()[group].offered.size())
                return true;
            sizes[group] = 0;
        }
        return false;
    }

    void take(const Sizes& sizes)
    {
        m_stop.checkpoint();
        if (!m_tried.insert(sizes).second)
            return;
        const auto choice = costOf(sizes);
        if (!choice || !choice->allowed)
            return;
        m_allowed.push_back(*choice);
        if (!m_best || choice->total() < m_best->total()) {
            m_best = choice;
            m_bestSizes = sizes;
        }
    }

    PipeCosting& m_costing;
    const base::StopToken& m_stop;
    std::set<Sizes> m_tried;
    std::vector<PipeChoice> m_allowed;
    std::optional<PipeChoice> m_best;
    Sizes m_bestSizes;
};

// The sizes of each group's standard. With the flow kept the velocities are known beforehand.
std::optional<base::Refusal> offerSizes(const plan::Plan& plan, const catalogue::Catalogue& catalogue,
                                        const PipeQuestion& question, PipeCosting& costing)
{
    for (PipeGroup& group : costing.groups()) {
        const units::Flow flow = costing.flowIn(group);
        units::Velocity slowest;
        bool fits = false; // a smaller size keeps to the highest velocity already
        for (const catalogue::Pipe* pipe : sizesLike(catalogue, group.now)) {
            slowest = hydraulics::meanVelocity(flow, pipe->bore);
            const bool slow = slowest < question.slowest && fits;
            fits = fits || slowest <= question.fastest;
            if (!slow && (question.kept == Kept::pump || slowest <= question.fastest))
                group.offered.push_back(pipe->id);
        }
        if (group.offered.empty())
            return base::Refusal{"design.no-size", plan::tagOf(plan, group.runs.front()),
                                 "the largest size of its standard runs at " + units::format(slowest),
                                 "a higher velocity, less flow, or pipe of another standard"};
    }
    return std::nullopt;
}

double combinations(const std::vector<PipeGroup>& groups)
{
    double count = 1.0;
    for (const PipeGroup& group : groups)
        count *= static_cast<double>(group.offered.size());
    return count;
}

Sizes nowIn(const std::vector<PipeGroup>& groups)
{
    Sizes sizes;
    for (const PipeGroup& group : groups) {
        const auto at = std::find(group.offered.begin(), group.offered.end(), group.now);
        sizes.push_back(at == group.offered.end() ? group.offered.size() - 1
                                                  : static_cast<std::size_t>(at - group.offered.begin()));
    }
    return sizes;
}

void search(Search& searching, const std::vector<PipeGroup>& groups, PipeSizing& sizing, Kept kept)
{
    const auto most = static_cast<double>(kept == Kept::flow ? mostWithFlowKept : mostWithPumpKept);
    sizing.exact = combinations(groups) <= most;
    if (sizing.exact) {
        searching.everyCombination();
    } else {
        Sizes largest;
        for (const PipeGroup& group : groups)
            largest.push_back(group.offered.size() - 1);
        searching.stepDown(nowIn(groups));
        searching.stepDown(largest);
        searching.stepDown(Sizes(groups.size(), 0));
    }
    sizing.tried = searching.tried();
}

} // namespace

std::optional<plan::Edit> editFor(const plan::Plan& plan, const std::vector<PipeGroup>& groups,
                                  const PipeChoice& choice)
{
    std::vector<plan::Edit> edits;
    for (std::size_t i = 0; i < groups.size(); ++i) {
        std::vector<base::Id> changed;
        for (const base::Id run : groups[i].runs)
            if (plan.runs.find(run)->pipeId != choice.pipes[i])
                changed.push_back(run);
        if (!changed.empty())
            edits.push_back(plan::setRunPipe(changed, choice.pipes[i]));
    }
    if (edits.empty())
        return std::nullopt;
    return plan::inSequence("edit.choose-pipes", std::move(edits));
}

// 0.40 + 0.035 d^1.25 a metre, d in mm: 32 mm costs about 3, 63 mm about 7. Invented.
units::Money assumedPrice(units::Length outsideDiameter)
{
    return units::money(0.40 + 0.035 * std::pow(units::inMillimetres(outsideDiameter), 1.25));
}

base::Outcome<PipeSizing> choosePipes(const plan::Plan& plan, const CataloguePointer& catalogue,
                                      const PipeQuestion& question, const base::StopToken& stop)
{
    auto begun = PipeCosting::begin(plan, catalogue, question);
    if (!begun)
        return begun.refusal();
    PipeCosting costing = std::move(begun).value();
    if (const auto refusal = offerSizes(plan, *catalogue, question, costing))
        return *refusal;
    PipeSizing sizing;
    sizing.pump = costing.pump();
    sizing.wireToWater = costing.wireToWater();
    Search searching(costing, stop);
    search(searching, costing.groups(), sizing, question.kept);
    if (!searching.best())
        return base::Refusal{"design.no-choice", plan::tagOf(plan, sizing.pump),
                             "no sizes keep to the velocity limit and bring the flow of today",
                             "a higher velocity limit, or the question with the flow kept"};
    sizing.groups = costing.groups();
    sizing.best = *searching.best();
    sizing.now = costing.costNow();
    for (const Sizes& neighbour : searching.neighboursOf(searching.bestSizes()))
        if (const auto choice = searching.costOf(neighbour))
            sizing.neighbours.push_back(*choice);
    std::stable_sort(sizing.neighbours.begin(), sizing.neighbours.end(),
                     [](const PipeChoice& a, const PipeChoice& b) { return a.total() < b.total(); });
    sizing.tradeOff = searching.tradeOff();
    for (const PipeGroup& group : sizing.groups)
        for (const std::string& pipe : group.offered)
            if (costing.isAssumed(pipe) &&
                std::none_of(sizing.assumed.begin(), sizing.assumed.end(),
                             [&pipe](const PipePrice& price) { return price.pipeId == pipe; }))
                sizing.assumed.push_back({pipe, costing.priceOf(pipe)});
    sizing.edit = editFor(plan, sizing.groups, sizing.best);
    return sizing;
}

} // namespace sumpwright::design
