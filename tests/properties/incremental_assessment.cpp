// The incremental result equals a fresh one, value by value, after any sequence of edits; undone edits give the first
// results again.
#include <gtest/gtest.h>

#include <iostream>
#include <random>

#include "core/engine/engine.hpp"
#include "core/engine/pipeline.hpp"
#include "core/plan/edits/copy.hpp"
#include "core/plan/edits/delete.hpp"
#include "core/plan/edits/draw_run.hpp"
#include "core/plan/edits/move.hpp"
#include "core/plan/edits/port.hpp"
#include "core/plan/edits/pump.hpp"
#include "core/plan/edits/run.hpp"
#include "core/plan/edits/site.hpp"
#include "core/plan/edits/valve.hpp"
#include "core/plan/edits/vertex.hpp"
#include "core/plan/edits/vessel.hpp"
#include "tests/support/manifolds.hpp"
#include "tests/support/sound_plan.hpp"

namespace
{

using namespace sumpwright;

class RandomEdits
{
public:
    explicit RandomEdits(unsigned seed) : m_random(seed) {}

    plan::Edit next(const plan::Plan& plan)
    {
        const plan::Vessel& vessel = *pick(plan.vessels);
        const plan::Run& run = *pick(plan.runs);
        switch (whole(0, 15)) {
        case 0:
            return plan::moveElements({vessel.id}, {units::metres(real(-0.3, 0.3)), units::metres(real(-0.3, 0.3))});
        case 1:
            return plan::setRunPipe({run.id}, whole(0, 1) ? "pvcu-pn16-32" : "pvcu-pn16-25");
        case 2:
            return plan::setRunningLevel({sumpOf(plan)}, units::elevationMetres(real(0.05, 0.5)));
        case 3:
            return plan::addValve(run.id, whole(0, 1) ? "ball-valve" : "swing-check", real(0.1, 0.9));
        case 4:
            return valveEdit(run);
        case 5:
            return plan::setWallHeight({vessel.id}, units::metres(real(0.3, 1.2)));
        case 6:
            return portEdit(vessel);
        case 7:
            return plan::setDesignWater(units::celsius(real(5.0, 35.0)));
        case 8:
            return plan::setAltitude(units::metres(real(0.0, 2000.0)));
        case 9:
            return plan::setPowerPrice(units::perKilowattHour(real(0.1, 0.5)));
        case 10:
            return plan::deleteElements({whole(0, 1) ? vessel.id : run.id});
        case 11:
            return plan::duplicate({vessel.id}, {units::metres(0.5), units::metres(0.5)});
        case 12:
            return plan::setPumpSpeed({pumpOf(plan)}, real(0.5, 1.2));
        case 13:
            return plan::setMedium({vessel.id}, plan::Medium{"gravel", units::metres(real(0.1, 0.3))});
        case 14:
            return plan::connectEnd(run.id, plan::RunSide::to, plan::OntoRun{pick(plan.runs)->id, real(0.2, 0.8)});
        default:
            return plan::detachEnd(run.id, whole(0, 1) ? plan::RunSide::from : plan::RunSide::to);
        }
    }

private:
    int whole(int low, int high) { return std::uniform_int_distribution<int>(low, high)(m_random); }
    double real(double low, double high) { return std::uniform_real_distribution<double>(low, high)(m_random); }
    template <class Element> std::shared_ptr<const Element> pick(const plan::Table<Element>& table)
    {
        if (table.empty())
            return std::make_shared<const Element>();
        return *(table.begin() + whole(0, static_cast<int>(table.size()) - 1));
    }
    static base::Id sumpOf(const plan::Plan& plan)
    {
        for (const auto& vessel : plan.vessels)
            if (vessel->kind == plan::VesselKind::sump)
                return vessel->id;
        return {};
    }
    static base::Id pumpOf(const plan::Plan& plan)
    {
        return plan.pumps.empty() ? base::Id{} : (*plan.pumps.begin())->id;
    }
    plan::Edit valveEdit(const plan::Run& run)
    {
        const base::Id valve = run.valves.empty() ? base::Id{} : run.valves.front().id;
        return plan::setOpening({{run.id, valve}}, real(0.0, 1.0));
    }
    plan::Edit portEdit(const plan::Vessel& vessel)
    {
        const base::Id port =
            vessel.ports.empty()
                ? base::Id{}
                : vessel.ports[static_cast<std::size_t>(whole(0, static_cast<int>(vessel.ports.size()) - 1))].id;
        return plan::setPortLevel({{vessel.id, port}}, units::elevationMetres(real(0.1, 1.2)));
    }

    std::mt19937 m_random;
};

void expectSame(const assessment::Assessment& a, const assessment::Assessment& b, unsigned seed, int step)
{
    EXPECT_EQ(*a.site, *b.site) << seed << '/' << step;
    EXPECT_EQ(*a.water, *b.water) << seed << '/' << step;
    EXPECT_EQ(*a.flow, *b.flow) << seed << '/' << step;
    ASSERT_EQ(a.pumps->pumps.size(), b.pumps->pumps.size()) << seed << '/' << step;
    for (std::size_t i = 0; i < a.pumps->pumps.size(); ++i) {
        const auto &x = a.pumps->pumps[i], &y = b.pumps->pumps[i];
        EXPECT_EQ(x.duty, y.duty) << seed << '/' << step;
        EXPECT_EQ(x.pumpCurve, y.pumpCurve) << seed << '/' << step;
        ASSERT_EQ(x.systemCurve.ok(), y.systemCurve.ok()) << seed << '/' << step;
        for (std::size_t k = 0; x.systemCurve.ok() && k < x.systemCurve->size(); ++k)
            EXPECT_EQ(units::inSi((*x.systemCurve)[k].head), units::inSi((*y.systemCurve)[k].head))
                << "system curve " << k << ' ' << seed << '/' << step;
    }
    EXPECT_EQ(*a.pumps, *b.pumps) << seed << '/' << step;
    EXPECT_EQ(*a.service, *b.service) << seed << '/' << step;
    EXPECT_EQ(*a.headPaths, *b.headPaths) << seed << '/' << step;
    EXPECT_EQ(*a.sumps, *b.sumps) << seed << '/' << step;
    EXPECT_EQ(*a.floor, *b.floor) << seed << '/' << step;
    EXPECT_EQ(*a.findings, *b.findings) << seed << '/' << step;
}

TEST(IncrementalAssessment, EqualsAFreshOneAfterAnyEdits)
{
    const auto catalogue = catalogue::Catalogue::builtIn();
    int applied = 0, refused = 0, solved = 0;
    for (unsigned seed = 1; seed <= 60; ++seed) {
        const plan::Plan first = seed % 2 ? test::SoundPlan().drawn.plan : test::ManifoldM1().drawn.plan;
        plan::Plan plan = first;
        engine::Pipeline pipeline(catalogue);
        pipeline.assess(plan, 0);
        RandomEdits edits(seed);
        for (int step = 1; step <= 15; ++step) {
            const plan::Edit edit = edits.next(plan);
            const auto edited = edit.apply(plan);
            SCOPED_TRACE(edit.intent);
            ++(edited ? applied : refused);
            if (!edited)
                continue;
            plan = *edited;
            const auto incremental = pipeline.assess(plan, static_cast<std::uint64_t>(step));
            expectSame(*incremental, *engine::assess(plan, catalogue), seed, step);
            if (::testing::Test::HasFailure())
                return;
            solved += incremental->water->totals[assessment::WaterState::runningLeast].ok() ? 1 : 0;
        }
        expectSame(*pipeline.assess(first, 99), *engine::assess(first, catalogue), seed, 99);
    }
    std::cout << applied << " edits applied, " << refused << " refused; solved after " << solved << " of them\n";
    EXPECT_GT(applied, 400);
    EXPECT_GT(solved, 100);
}

} // namespace
