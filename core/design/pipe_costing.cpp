#include "core/design/pipe_costing.hpp"

#include <algorithm>
#include <utility>

#include "core/assessment/place_in.hpp"
#include "core/assessment/pump_curve_of.hpp"
#include "core/design/circuit_setting.hpp"
#include "core/design/size_groups.hpp"
#include "core/hydraulics/energy.hpp"
#include "core/hydraulics/fittings.hpp"

namespace sumpwright::design
{
namespace
{

using assessment::CircuitNetwork;

constexpr units::Time longestPeriod = units::hours(100.0 * 8760.0);
constexpr units::Money highestPrice = units::money(1e5);
constexpr units::EnergyPrice highestPowerPrice = units::perKilowattHour(1000.0);

base::Refusal missing(const char* id, const std::string& place, const char* what, const char* mend)
{
    return {id, place, what, mend};
}

units::Velocity sizeOf(units::Velocity velocity) { return std::max(velocity, -velocity); }

} // namespace

PipeCosting::PipeCosting(const plan::Plan& plan, CataloguePointer catalogue, PipeQuestion question)
    : m_plan(plan), m_open(plan), m_catalogue(std::move(catalogue)), m_question(std::move(question)),
      m_bench(benchOf(plan, m_catalogue))
{
}

base::Outcome<PipeCosting> PipeCosting::begin(const plan::Plan& plan, const CataloguePointer& catalogue,
                                              const PipeQuestion& question)
{
    if (question.period <= units::Time() || question.period > longestPeriod)
        return missing("design.period-out-of-range", "years", "not a time to plan for", "above 0, at most 100 years");
    if (question.fastest <= units::Velocity() || question.fastest > velocityLimit ||
        question.slowest < units::Velocity() || question.slowest >= question.fastest)
        return missing("design.velocity-over-limit", "highest velocity", "not a velocity pipes may run at",
                       "the highest above the least, at most 2 m/s");
    for (const PipePrice& price : question.prices)
        if (price.perMetre < units::Money() || price.perMetre > highestPrice)
            return missing("design.price-out-of-range", price.pipeId, "not a price of pipe", "0 to 100 000 a metre");
    PipeCosting costing(plan, catalogue, question);
    if (auto refusal = costing.takePump())
        return *refusal;
    if (auto refusal = costing.takeFlows())
        return *refusal;
    if (auto refusal = costing.takePower())
        return *refusal;
    return costing;
}

std::optional<base::Refusal> PipeCosting::takePump()
{
    std::size_t count = 0;
    for (std::size_t circuit = 0; circuit < m_bench.circuits.all.size(); ++circuit) {
        const auto& pumps = m_bench.circuits.all[circuit].circuit.pumps;
        for (std::size_t place = 0; place < pumps.size(); ++place) {
            const assessment::DrawnPump& pump = m_bench.pipework->pumps[pumps[place]];
            if (!pump.running || pump.fault)
                continue;
            if (++count > 1)
                return missing("design.several-pumps", plan::tagOf(m_plan, pump.id), "more than one pump runs",
                               "one running pump: switch the others off for this question");
            m_circuit = circuit;
            m_place = place;
            m_pump = pump.id;
        }
    }
    if (count == 0)
        return missing("design.no-pump", "", "no pump runs", "a running pump with a curve");
    return std::nullopt;
}

std::optional<base::Refusal> PipeCosting::takeFlows()
{
    const assessment::SolvedCircuit& circuit = m_bench.circuits.all[m_circuit];
    const assessment::CircuitState* state = shownState(circuit);
    if (!state)
        return base::Refusal{"design.not-solved", plan::tagOf(m_plan, m_pump),
                             circuit.state[assessment::RunningState::most].reason().text,
                             "a plan whose flows are solved: see the findings"};
    const CircuitNetwork& network = state->network;
    const auto* link = network.pumpLink(m_place);
    const auto suction = network.gradeAtNode(network.pumpSuction(m_place));
    m_flow = link ? link->flow : units::Flow();
    if (m_flow <= units::Flow() || !suction)
        return missing("design.no-flow", plan::tagOf(m_plan, m_pump), "the pump delivers nothing",
                       "a pump that lifts water to an outlet");
    m_suction = *suction;
    m_outletNode = network.pumpOutlet(m_place);
    std::vector<base::Id> runs;
    for (std::size_t place = 0; place < circuit.circuit.runs.size(); ++place) {
        const units::Flow along = network.flowAlong(place);
        if (along == units::Flow())
            continue;
        const bool forward = along > units::Flow();
        const std::size_t run = circuit.circuit.runs[place];
        Way way{run, network.startNode(place), network.endNode(place), along, {}};
        if (!forward) {
            std::swap(way.from, way.to);
            way.flow = -along;
        }
        const assessment::DrawnRun& drawn = m_bench.pipework->runs[run];
        if ((forward ? drawn.to : drawn.from).kind == assessment::EndKind::vessel)
            way.mouth = network.gradeAtNode(way.to);
        m_ways.push_back(way);
        runs.push_back(drawn.id);
        for (const Throttle& throttle : throttlesOf(*m_plan.runs.find(drawn.id)))
            m_open = withOpening(m_open, throttle.valve, 1.0);
    }
    m_groups = sizeGroupsOf(m_plan, m_catalogue, runs, m_question.byPart);
    return std::nullopt;
}

std::optional<base::Refusal> PipeCosting::takePower()
{
    const auto price = m_question.powerPrice ? m_question.powerPrice : m_plan.site->powerPrice;
    if (!price)
        return missing("design.no-power-price", "price of power", "no price of power is given",
                       "a price here, or in the site data");
    if (*price < units::EnergyPrice() || *price > highestPowerPrice)
        return missing("design.power-price-out-of-range", "price of power", "not a price of power", "0 to 1000 a kWh");
    m_price = *price;
    if (m_question.wireToWater && (*m_question.wireToWater <= 0.0 || *m_question.wireToWater > 1.0))
        return missing("design.efficiency-missing", "wire-to-water", "not an efficiency", "above 0, at most 100 %");
    const assessment::DrawnPump& pump = m_bench.pipework->pumps[m_bench.circuits.all[m_circuit].circuit.pumps[m_place]];
    const auto curve = assessment::curveOf(pump);
    const auto power = curve ? curve->powerAt(m_flow, pump.speed) : std::nullopt;
    if (m_question.kept == Kept::pump && !power)
        return missing("design.pump-power-missing", plan::tagOf(m_plan, m_pump), "the pump's power is not known",
                       "its electrical input with the curve, or the question with the flow kept");
    if (m_question.wireToWater) {
        m_wireToWater = *m_question.wireToWater;
    } else if (power && *power > units::Power() && m_bench.site.density) {
        const auto hydraulic =
            hydraulics::hydraulicPower(m_flow, curve->headAt(m_flow, pump.speed), *m_bench.site.density);
        m_wireToWater = hydraulics::wireToWater(hydraulic, *power);
    }
    if (m_question.kept == Kept::flow && (m_wireToWater <= 0.0 || !m_bench.site.density))
        return missing("design.efficiency-missing", "wire-to-water", "the pump's efficiency is not known",
                       "a wire-to-water efficiency: small pumps reach 5 to 35 %");
    return std::nullopt;
}

units::Flow PipeCosting::flowIn(const PipeGroup& group) const
{
    units::Flow greatest;
    for (const Way& way : m_ways)
        if (std::find(group.runs.begin(), group.runs.end(), m_bench.pipework->runs[way.run].id) != group.runs.end())
            greatest = std::max(greatest, way.flow);
    return greatest;
}

bool PipeCosting::isAssumed(const std::string& pipe) const
{
    return std::none_of(m_question.prices.begin(), m_question.prices.end(),
                        [&pipe](const PipePrice& price) { return price.pipeId == pipe; });
}

units::Money PipeCosting::priceOf(const std::string& pipe) const
{
    for (const PipePrice& price : m_question.prices)
        if (price.pipeId == pipe)
            return price.perMetre;
    const auto row = m_catalogue->pipe(pipe);
    return row ? assumedPrice((*row)->outsideDiameter) : units::Money();
}

std::optional<PipeChoice> PipeCosting::cost(const std::vector<std::string>& pipes) const
{
    plan::Plan plan = m_question.kept == Kept::flow ? m_open : m_plan;
    for (std::size_t i = 0; i < m_groups.size(); ++i)
        for (const base::Id id : m_groups[i].runs) {
            plan::Run run = *plan.runs.find(id);
            run.pipeId = pipes[i];
            plan.runs.put(std::move(run));
        }
    auto choice = costOf(plan);
    if (choice)
        choice->pipes = pipes;
    return choice;
}

PipeChoice PipeCosting::costNow() const
{
    PipeChoice now = costOf(m_question.kept == Kept::flow ? m_open : m_plan).value_or(PipeChoice());
    for (const PipeGroup& group : m_groups)
        now.pipes.push_back(group.now);
    return now;
}

std::optional<PipeChoice> PipeCosting::costOf(const plan::Plan& plan) const
{
    auto choice = m_question.kept == Kept::flow ? withFlowKept(plan) : withPumpKept(plan);
    if (!choice)
        return std::nullopt;
    for (const PipeGroup& group : m_groups)
        for (const base::Id id : group.runs) {
            const plan::Run& run = *plan.runs.find(id);
            choice->pipeCost += priceOf(run.pipeId) * units::inMetres(plan::lengthOf(run));
        }
    choice->energyCost = hydraulics::costPerYear(hydraulics::energyPerYear(choice->power, m_question.period), m_price);
    return choice;
}

void PipeCosting::takeVelocity(PipeChoice& choice, base::Id run, units::Flow flow, units::Length bore) const
{
    const bool sized = std::any_of(m_groups.begin(), m_groups.end(), [run](const PipeGroup& group) {
        return std::find(group.runs.begin(), group.runs.end(), run) != group.runs.end();
    });
    if (!sized || flow <= units::Flow())
        return;
    const units::Velocity velocity = sizeOf(hydraulics::meanVelocity(flow, bore));
    choice.fastest = std::max(choice.fastest, velocity);
    choice.slowest = choice.slowest > units::Velocity() ? std::min(choice.slowest, velocity) : velocity;
    choice.allowed = choice.allowed && velocity <= m_question.fastest;
}

std::optional<PipeChoice> PipeCosting::withFlowKept(const plan::Plan& plan) const
{
    const assessment::Pipework pipework = pipesOf(plan, m_catalogue);
    PipeChoice choice;
    std::vector<units::Head> losses;
    for (const Way& way : m_ways) {
        const assessment::DrawnRun& run = pipework.runs[way.run];
        if (run.fault)
            return std::nullopt;
        const units::Velocity velocity = hydraulics::meanVelocity(way.flow, run.bore);
        losses.push_back(
            hydraulics::frictionLoss({run.bore, run.length, run.roughness}, way.flow, *m_bench.site.viscosity) +
            hydraulics::fittingLoss(run.sumK, velocity) + run.openingHead);
        takeVelocity(choice, run.id, way.flow, run.bore);
    }
    std::map<std::size_t, units::Elevation> known;
    choice.flow = m_flow;
    choice.head = std::max(units::liftBetween(m_suction, neededAt(m_outletNode, losses, known)), units::Head());
    choice.power = hydraulics::electricalPower(
        hydraulics::hydraulicPower(choice.flow, choice.head, *m_bench.site.density), m_wireToWater);
    return choice;
}

// The grade a node must have for every outlet behind it to get its flow.
units::Elevation PipeCosting::neededAt(std::size_t node, const std::vector<units::Head>& losses,
                                       std::map<std::size_t, units::Elevation>& known) const
{
    const auto [at, fresh] = known.try_emplace(node, units::elevationMetres(-1e6));
    if (!fresh)
        return at->second; // in a ring the flow never comes back to where it was
    units::Elevation needed = at->second;
    for (std::size_t i = 0; i < m_ways.size(); ++i) {
        const Way& way = m_ways[i];
        if (way.from != node)
            continue;
        const units::Elevation end = way.mouth ? *way.mouth : neededAt(way.to, losses, known);
        needed = std::max(needed, units::raisedBy(end, losses[i]));
    }
    known[node] = needed;
    return needed;
}

std::optional<PipeChoice> PipeCosting::withPumpKept(const plan::Plan& plan) const
{
    const Bench bench = benchOf(plan, m_catalogue);
    const assessment::SolvedCircuit& circuit = bench.circuits.all[m_circuit];
    const assessment::CircuitState* state = shownState(circuit);
    const auto* link = state ? state->network.pumpLink(m_place) : nullptr;
    const assessment::DrawnPump& pump = bench.pipework->pumps[circuit.circuit.pumps[m_place]];
    const auto curve = assessment::curveOf(pump);
    const auto power = link && curve ? curve->powerAt(link->flow, pump.speed) : std::nullopt;
    if (!power)
        return std::nullopt;
    PipeChoice choice;
    choice.flow = link->flow;
    choice.head = link->headGained;
    choice.power = *power;
    for (std::size_t place = 0; place < circuit.circuit.runs.size(); ++place) {
        const assessment::DrawnRun& run = bench.pipework->runs[circuit.circuit.runs[place]];
        const units::Flow along = state->network.flowAlong(place);
        takeVelocity(choice, run.id, std::max(along, -along), run.bore);
    }
    constexpr double rounding = 1e-6;
    choice.allowed = choice.allowed && choice.flow >= m_flow * (1.0 - rounding);
    return choice;
}

} // namespace sumpwright::design
