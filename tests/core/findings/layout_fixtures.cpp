#include "tests/core/findings/fixtures.hpp"

namespace sumpwright::test
{
namespace
{

using assessment::Severity;
using P = SoundPlan;

void moveTo(P& p, Id vessel, double x, double y)
{
    p.drawn.changeVessel(vessel, [&](plan::Vessel& v) { v.centre = {units::metres(x), units::metres(y)}; });
}

void fixture(P& p, plan::FixtureKind kind, Place from, Place to)
{
    plan::Fixture fixture;
    fixture.id = Id{p.drawn.plan.nextId++};
    fixture.tag = "F1";
    fixture.kind = kind;
    fixture.from = {units::metres(from.x), units::metres(from.y)};
    fixture.to = {units::metres(to.x), units::metres(to.y)};
    fixture.level = units::elevationMetres(from.z);
    p.drawn.plan.fixtures = p.drawn.plan.fixtures.with(fixture);
}

void shortArms(P& p)
{
    p.drawn.changeSite([](plan::Site& site) { site.clearances.reach = units::metres(0.05); });
    p.drawn.valve(p.riser, "ball-valve", 1.0);
    p.drawn.changeRun(p.riser, [](plan::Run& run) { run.valves[0].station = 0.1; }); // over the sump
}

void floorUse(P& p, const char* use)
{
    p.drawn.changeSite([use](plan::Site& site) { site.floorUse = use; });
}

void extra(P& p, const char* fittingId)
{
    p.drawn.changeRun(p.riser, [&](plan::Run& run) { run.extraFittings.push_back({fittingId, 1, {}}); });
}

} // namespace

std::vector<RuleFixture> layoutFixtures()
{
    return {
        {"layout.overlap", Severity::error, [](P& p) { moveTo(p, p.bed2, 3.4, 1.5); }},
        {"layout.outside-floor", Severity::warning, [](P& p) { moveTo(p, p.bed2, 5.8, 3.4); }},
        {"layout.aisle", Severity::warning, [](P& p) { moveTo(p, p.bed2, 3.0, 2.412); }},
        {"layout.headroom", Severity::warning,
         [](P& p) {
             plan::Floor floor = *p.drawn.plan.floor;
             floor.clearHeight = units::metres(1.3);
             p.drawn.plan.floor = std::make_shared<const plan::Floor>(floor);
         }},
        {"layout.door", Severity::warning,
         [](P& p) {
             fixture(p, plan::FixtureKind::door, {0, 2, 0}, {0, 2.7, 0});
         }},
        {"layout.reach-valve", Severity::warning, shortArms},
        {"layout.reach-siphon", Severity::warning, shortArms},
        {"layout.reach-bed", Severity::warning, shortArms},
        {"floor.stand-missing", Severity::warning,
         [](P& p) { p.drawn.changeVessel(p.bed1, [](plan::Vessel& v) { v.stand.reset(); }); }},
        {"floor.legs", Severity::note, [](P&) {}},
        {"floor.above-live-load", Severity::warning, [](P& p) { floorUse(p, "dwelling-us"); }},
        {"floor.use-unknown", Severity::warning, [](P& p) { floorUse(p, "no-such-use"); }},
        {"floor.caution", Severity::note, [](P&) {}},
        {"electric.caution", Severity::note, [](P&) {}},
        {"electric.power-point", Severity::warning,
         [](P& p) {
             fixture(p, plan::FixtureKind::powerPoint, {0, 1, 0.3}, {0, 1, 0.3});
         }},
        {"catalogue.unknown-row", Severity::warning, [](P& p) { extra(p, "no-such-fitting"); }},
        {"catalogue.out-of-range", Severity::note, [](P&) {}},
        {"catalogue.from-memory", Severity::note, [](P& p) { extra(p, "union"); }},
        {"catalogue.own", Severity::note,
         [](P& p) {
             plan::OwnParts parts;
             plan::OwnFitting fitting;
             fitting.id = "own-quick-joint";
             fitting.name = "Quick joint";
             fitting.k = 0.3;
             parts.fittings.push_back(fitting);
             p.drawn.plan.ownParts = std::make_shared<const plan::OwnParts>(parts);
             extra(p, "own-quick-joint");
         }},
        {"catalogue.invented", Severity::note, [](P&) {}},
    };
}

} // namespace sumpwright::test
