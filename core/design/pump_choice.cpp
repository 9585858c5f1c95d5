#include "core/design/pump_choice.hpp"

#include <algorithm>
#include <cmath>
#include <tuple>

#include "core/assessment/place_in.hpp"
#include "core/assessment/pump_curve_of.hpp"
#include "core/assessment/stages.hpp"
#include "core/design/circuit_setting.hpp"
#include "core/design/valve_setting.hpp"
#include "core/plan/edits/pump.hpp"
#include "core/plan/edits/sequence.hpp"
#include "core/plan/limits.hpp"

namespace sumpwright::design
{
namespace
{

using assessment::RunningState;

constexpr double enough = 0.995; // of the wanted flow
constexpr double leastSpeed = 0.2;
constexpr int halvings = 18;

const plan::Pump* pumpAsked(const plan::Plan& plan, base::Id asked)
{
    if (asked.valid())
        return plan.pumps.find(asked);
    for (const auto& pump : plan.pumps)
        if (pump->running)
            return pump.get();
    return plan.pumps.empty() ? nullptr : plan.pumps.begin()->get();
}

class Ranker
{
public:
    Ranker(const plan::Plan& plan, const plan::Pump& pump, const CataloguePointer& catalogue,
           const PumpQuestion& question, const base::StopToken& stop)
        : m_plan(plan), m_pump(pump), m_catalogue(catalogue), m_question(question), m_stop(stop)
    {
    }

    base::Outcome<PumpRanking> rank()
    {
        const std::vector<Outlet> outlets = outletsOf(m_plan);
        if (outlets.empty())
            return base::Refusal{"design.no-pressure-outlet", "", "no pressure run brings water into a vessel",
                                 "pressure runs from the pump to inlets of tanks and beds"};
        m_ranking.pump = m_pump.id;
        m_ranking.wanted = m_question.wanted.value_or(wantedFlow(outlets));
        m_ranking.byTargets = !m_question.wanted && m_ranking.wanted > units::Flow();
        if (m_question.wanted &&
            (*m_question.wanted <= units::Flow() || *m_question.wanted > plan::limits::largestFlow))
            return base::Refusal{"design.wanted-out-of-range", "wanted flow", "not a flow a pump could be wanted for",
                                 "above 0, at most 1 000 000 L/h"};
        if (m_ranking.wanted <= units::Flow()) {
            const auto now = dutyIn(assessment::Stages(m_catalogue).assess(m_plan));
            if (!now)
                return base::Refusal{"design.not-solved", m_pump.tag, "no flow is wanted and none flows now",
                                     "a wanted flow, or target flows at the inlets"};
            m_ranking.wanted = now->flow;
        }
        addChoices();
        for (PumpChoice& choice : m_ranking.choices)
            judge(choice);
        std::stable_sort(m_ranking.choices.begin(), m_ranking.choices.end(), better);
        return m_ranking;
    }

private:
    void addChoices()
    {
        for (const catalogue::Pump& row : m_catalogue->pumps()) {
            PumpChoice choice;
            choice.modelId = row.id;
            choice.present = m_pump.modelId == row.id;
            m_ranking.choices.push_back(choice);
        }
        for (const auto& pump : m_plan.pumps)
            if (pump->modelId.empty()) {
                PumpChoice choice;
                choice.owner = pump->id;
                choice.present = pump->id == m_pump.id;
                m_ranking.choices.push_back(choice);
            }
    }

    plan::Edit exchangeFor(const PumpChoice& choice) const
    {
        std::vector<plan::Edit> edits;
        if (!choice.present) {
            if (choice.owner.valid()) {
                const plan::Pump& owner = *m_plan.pumps.find(choice.owner);
                edits.push_back(plan::setPumpCurve({m_pump.id}, owner.ownCurve, owner.ownPower));
            } else {
                edits.push_back(plan::setPumpModel({m_pump.id}, choice.modelId));
            }
            if (m_pump.leastDepth) // it was the other pump's
                edits.push_back(plan::setLeastDepth({m_pump.id}, std::nullopt));
        }
        if (choice.speed != m_pump.speed)
            edits.push_back(plan::setPumpSpeed({m_pump.id}, choice.speed));
        if (!m_pump.running)
            edits.push_back(plan::setPumpRunning({m_pump.id}, true));
        return plan::inSequence("edit.choose-pump", std::move(edits));
    }

    void judge(PumpChoice& choice)
    {
        m_stop.checkpoint();
        choice.speed = choice.present ? m_pump.speed : 1.0;
        const auto exchanged = exchangeFor(choice).apply(m_plan);
        if (!exchanged) {
            choice.verdict = PumpVerdict::faulty;
            return;
        }
        if (m_ranking.byTargets)
            judgeByTargets(choice, *exchanged);
        else
            judgeByFlow(choice, *exchanged);
        if (choice.verdict == PumpVerdict::faulty)
            choice.edit.reset();
    }

    void judgeByTargets(PumpChoice& choice, const plan::Plan& exchanged)
    {
        const auto setting = setValves(exchanged, m_catalogue, {m_question.mayChangeSpeed}, m_stop);
        plan::Plan set = exchanged;
        std::vector<plan::Edit> edits{exchangeFor(choice)};
        if (setting && setting->edit) {
            edits.push_back(*setting->edit);
            set = setting->edit->apply(exchanged).value();
        }
        if (setting && setting->speed && m_question.mayChangeSpeed)
            choice.speed = setting->speed->after;
        choice.share = setting ? setting->share : 0.0;
        if (set != m_plan)
            choice.edit = plan::inSequence("edit.choose-pump", std::move(edits));
        read(choice, set);
        if (choice.verdict == PumpVerdict::faulty)
            return;
        const bool all = setting && setting->share >= 1.0 &&
                         std::none_of(setting->outlets.begin(), setting->outlets.end(),
                                      [](const OutletSetting& outlet) { return outlet.aim == Aim::unreachable; });
        if (!all) {
            choice.verdict = PumpVerdict::tooWeak;
            const units::Flow reached = setting ? setting->reached : units::Flow();
            choice.missingFlow = std::max(m_ranking.wanted - reached, units::Flow());
            choice.missingHead =
                setting && setting->missing > units::Head() ? setting->missing : headMissing(exchanged);
        }
    }

    void judgeByFlow(PumpChoice& choice, const plan::Plan& exchanged)
    {
        read(choice, exchanged);
        if (choice.verdict == PumpVerdict::faulty)
            return;
        if (choice.flow < enough * m_ranking.wanted) {
            choice.verdict = PumpVerdict::tooWeak;
            choice.missingFlow = m_ranking.wanted - choice.flow;
            choice.missingHead = headMissing(exchanged);
            choice.share = choice.flow / m_ranking.wanted;
        } else if (m_question.mayChangeSpeed) {
            choice.speed = slowestFor(exchanged, choice.speed);
            read(choice, withSpeed(exchanged, m_pump.id, choice.speed));
        }
        if (!choice.present || choice.speed != m_pump.speed || !m_pump.running)
            choice.edit = exchangeFor(choice);
    }

    // Speed, to three digits, at which the wanted flow still comes.
    double slowestFor(const plan::Plan& plan, double highest) const
    {
        const auto does = [&](double speed) {
            m_stop.checkpoint();
            const auto flow = flowIn(benchOf(withSpeed(plan, m_pump.id, speed), m_catalogue));
            return flow && *flow >= m_ranking.wanted;
        };
        if (!does(highest))
            return highest;
        double low = std::min(leastSpeed, highest), high = highest;
        for (int i = 0; i < halvings && high - low > 1e-4; ++i) {
            const double middle = (low + high) / 2.0;
            (does(middle) ? high : low) = middle;
        }
        return std::min(highest, std::ceil(high * 1000.0) / 1000.0);
    }

    struct Place {
        const assessment::SolvedCircuit* circuit;
        std::size_t pump; // in it
    };
    std::optional<Place> placeIn(const Bench& bench) const
    {
        for (const assessment::SolvedCircuit& circuit : bench.circuits.all) {
            const auto& pumps = circuit.circuit.pumps;
            const std::size_t at = assessment::placeIn(pumps, bench.pipework->pumps, m_pump.id);
            if (at != pumps.size())
                return Place{&circuit, at};
        }
        return std::nullopt;
    }

    std::optional<units::Flow> flowIn(const Bench& bench) const
    {
        const auto place = placeIn(bench);
        const auto* state = place ? shownState(*place->circuit) : nullptr;
        const auto* link = state ? state->network.pumpLink(place->pump) : nullptr;
        return link ? std::optional(link->flow) : std::nullopt;
    }

    // The head the pipework asks for at the wanted flow, over what the pump gives there.
    units::Head headMissing(const plan::Plan& plan) const
    {
        const Bench bench = benchOf(plan, m_catalogue);
        const auto place = placeIn(bench);
        const auto* state = place ? shownState(*place->circuit) : nullptr;
        if (!state)
            return {};
        assessment::CircuitNetwork network = state->network;
        network.impose(place->pump, m_ranking.wanted);
        network.solve();
        const auto suction = network.gradeAtNode(network.pumpSuction(place->pump));
        const auto grade = network.gradeAtNode(network.pumpOutlet(place->pump));
        const assessment::DrawnPump& pump = bench.pipework->pumps[place->circuit->circuit.pumps[place->pump]];
        const auto curve = assessment::curveOf(pump);
        if (!network.result().solved() || !suction || !grade || !curve)
            return {};
        return std::max(units::liftBetween(*suction, *grade) - curve->headAt(m_ranking.wanted, pump.speed),
                        units::Head());
    }

    const assessment::DutyPoint* dutyOf(const assessment::PumpResult& pump) const
    {
        for (const RunningState state : assessment::allRunningStates)
            if (pump.duty[state])
                return &*pump.duty[state];
        return nullptr;
    }
    std::optional<assessment::DutyPoint> dutyIn(const assessment::Assessment& results) const
    {
        const auto* pump = assessment::find(results.pumps->pumps, m_pump.id);
        const auto* duty = pump ? dutyOf(*pump) : nullptr;
        return duty && duty->flow > units::Flow() ? std::optional(*duty) : std::nullopt;
    }

    // Duty point, power and depth from a fresh assessment; the verdict as far as they tell it.
    void read(PumpChoice& choice, const plan::Plan& plan) const
    {
        const assessment::Assessment results = assessment::Stages(m_catalogue).assess(plan);
        const auto* pump = assessment::find(results.pumps->pumps, m_pump.id);
        const auto* duty = pump ? dutyOf(*pump) : nullptr;
        choice.verdict = PumpVerdict::does;
        if (!pump || pump->pumpCurve.empty()) {
            choice.verdict = PumpVerdict::faulty;
            return;
        }
        if (duty)
            readDuty(choice, *pump, *duty);
        readDepth(choice, results);
        if (choice.depth && choice.neededDepth && *choice.depth < *choice.neededDepth)
            choice.verdict = PumpVerdict::uncovered;
        else if (duty && duty->beyondCurve)
            choice.verdict = PumpVerdict::beyondCurve;
        else if (choice.shareOfBoxFigure < lowestGoodShare)
            choice.verdict = PumpVerdict::lowOnCurve;
    }

    static void readDuty(PumpChoice& choice, const assessment::PumpResult& pump, const assessment::DutyPoint& duty)
    {
        choice.flow = duty.flow;
        choice.head = duty.head;
        choice.shareOfBoxFigure = duty.shareOfBoxFigure;
        choice.toShutOff = pump.shutOff - duty.head;
        choice.toRunOut = pump.boxFigure - duty.flow;
        if (!duty.power)
            return;
        choice.power = duty.power->electrical;
        choice.wireToWater = duty.power->wireToWater;
        choice.energyPerYear = duty.power->energyPerYear;
        choice.costPerYear = duty.power->costPerYear;
    }

    void readDepth(PumpChoice& choice, const assessment::Assessment& results) const
    {
        for (const assessment::SumpResult& sump : results.sumps->sumps) {
            if (!sump.cover)
                continue;
            for (const assessment::PumpCover& cover : *sump.cover)
                if (cover.pump == m_pump.id) {
                    choice.depth = cover.depth;
                    choice.neededDepth = cover.needed;
                }
        }
    }

    static int rankOf(PumpVerdict verdict)
    {
        switch (verdict) {
        case PumpVerdict::does:
            return 0;
        case PumpVerdict::lowOnCurve:
        case PumpVerdict::beyondCurve:
        case PumpVerdict::uncovered:
            return 1;
        case PumpVerdict::tooWeak:
            return 2;
        case PumpVerdict::faulty:
            return 3;
        }
        return 3;
    }

    static bool better(const PumpChoice& a, const PumpChoice& b)
    {
        const auto key = [](const PumpChoice& choice) {
            const int rank = rankOf(choice.verdict);
            const double energy = choice.energyPerYear ? units::inSi(*choice.energyPerYear) : 1e30;
            const double missing = rank == 2 ? -choice.share : 0.0;
            return std::tuple(rank, missing, rank == 2 ? 0.0 : energy, units::inSi(choice.flow));
        };
        return key(a) < key(b);
    }

    const plan::Plan& m_plan;
    const plan::Pump& m_pump;
    const CataloguePointer& m_catalogue;
    const PumpQuestion& m_question;
    const base::StopToken& m_stop;
    PumpRanking m_ranking;
};

} // namespace

base::Outcome<PumpRanking> choosePump(const plan::Plan& plan, const CataloguePointer& catalogue,
                                      const PumpQuestion& question, const base::StopToken& stop)
{
    const plan::Pump* pump = pumpAsked(plan, question.pump);
    if (!pump)
        return base::Refusal{"design.no-pump", "", "the plan has no such pump",
                             "a pump of any model, standing in the sump, with its run"};
    return Ranker(plan, *pump, catalogue, question, stop).rank();
}

} // namespace sumpwright::design
