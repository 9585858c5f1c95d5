#include "tests/core/findings/fixtures.hpp"

namespace sumpwright::test
{
namespace
{

using assessment::Severity;
using P = SoundPlan;

void capped(P& p, const char* pipeId, std::initializer_list<Place> places)
{
    p.drawn.run(plan::Service::pressure, pipeId, plan::OpenEnd{}, plan::OpenEnd{}, places);
}

void fixture(P& p, plan::FixtureKind kind, Place from, Place to)
{
    plan::Fixture fixture;
    fixture.id = Id{p.drawn.plan.nextId++};
    fixture.tag = "F2";
    fixture.kind = kind;
    fixture.from = {units::metres(from.x), units::metres(from.y)};
    fixture.to = {units::metres(to.x), units::metres(to.y)};
    p.drawn.plan.fixtures = p.drawn.plan.fixtures.with(fixture);
}

void clearHeight(P& p, double metres)
{
    plan::Floor floor = *p.drawn.plan.floor;
    floor.clearHeight = units::metres(metres);
    p.drawn.plan.floor = std::make_shared<const plan::Floor>(floor);
}

// The header from tee to tee, led up and down again on its way.
void hump(P& p)
{
    p.drawn.changeRun(p.header, [](plan::Run& run) {
        run.pipeId = "pvcu-pn16-63"; // slow
        for (const double x : {2.0, 1.5}) {
            plan::Vertex vertex = run.vertices.front();
            vertex.at.x = units::metres(x);
            vertex.level = units::elevationMetres(x > 1.7 ? 0.9 : 1.5);
            run.vertices.insert(run.vertices.begin() + 1, vertex);
        }
    });
}

} // namespace

std::vector<RuleFixture> spaceFixtures()
{
    return {
        {"run.crosses", Severity::warning,
         [](P& p) {
             capped(p, "pvcu-pn16-32", {{2, 1.5, 1.21}, {2, 3, 1.21}});
         }},
        {"run.through-vessel", Severity::warning,
         [](P& p) {
             capped(p, "pvcu-pn16-32", {{0.2, 3, 0.4}, {2, 3, 0.4}});
         }},
        {"run.through-wall", Severity::warning,
         [](P& p) {
             fixture(p, plan::FixtureKind::wall, {2, 2, 0}, {2, 4, 0});
         }},
        {"run.in-doorway", Severity::warning,
         [](P& p) {
             fixture(p, plan::FixtureKind::door, {2, 2, 0}, {2, 4, 0});
         }},
        {"run.above-ceiling", Severity::warning, [](P& p) { clearHeight(p, 1.21); }},
        {"run.below-floor", Severity::note,
         [](P& p) {
             capped(p, "pvcu-pn16-32", {{4, 1, -0.1}, {5, 1, -0.1}});
         }},
        {"run.high-point", Severity::warning, hump},
        {"service.no-valve", Severity::note, [](P&) {}},
        {"service.no-union", Severity::note, [](P& p) { p.drawn.valve(p.branch1, "ball-valve", 1.0); }},
        {"run.supports", Severity::note, [](P&) {}},
    };
}

} // namespace sumpwright::test
