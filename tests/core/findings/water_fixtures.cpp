#include <algorithm>
#include <utility>

#include "tests/core/findings/fixtures.hpp"

namespace sumpwright::test
{
namespace
{

using assessment::Severity;
using plan::PortKind;
using plan::Service;
using P = SoundPlan;

units::Elevation at(double metres) { return units::elevationMetres(metres); }

void sumpLevel(P& p, double level)
{
    p.drawn.changeVessel(p.sump, [level](plan::Vessel& v) { v.runningLevel = at(level); });
}

void tankLip(P& p, double level, double bore)
{
    p.drawn.changePort(p.tank, p.tankLip, [&](plan::Port& port) {
        port.level = at(level);
        port.bore = units::metres(bore);
    });
}

void ownCurve(P& p, double greatest, double atEnd)
{
    p.drawn.changePump(p.pump, [&](plan::Pump& pump) {
        pump.modelId.clear();
        pump.ownCurve = {{units::litresPerHour(0), units::metresHead(3.0)},
                         {units::litresPerHour(greatest), units::metresHead(atEnd)}};
    });
}

void remove(P& p, Id run) { p.drawn.plan.runs = p.drawn.plan.runs.without(run); }

void secondPump(P& p)
{
    const Id pump = p.drawn.pump(p.sump, "G2500", 0.1);
    p.drawn.run(Service::pressure, "pvcu-pn16-32", plan::PumpEnd{pump}, plan::TeeEnd{p.tee1, {}},
                {{1.0, 1.0, 0.1}, {0.7, 1.0, 1.2}, {1.0, 2.2, 1.2}});
}

// A strong pump that spends its head on the friction of a thin riser of 60 m, drawn for new pipe.
void thinAndLong(P& p)
{
    p.drawn.changeSite([](plan::Site& site) {
        site.pipeCondition = plan::PipeCondition::asNew;
        site.coldestWater = units::celsius(4.0);
    });
    p.drawn.changePump(p.pump, [](plan::Pump& pump) { pump.modelId = "G15000"; });
    p.drawn.changeRun(p.riser, [](plan::Run& run) {
        run.pipeId = "pvcu-pn16-20";
        run.vertices.insert(run.vertices.begin() + 2, run.vertices[1]);
        run.vertices[2].at.x = units::metres(-29.0);
    });
}

// The tank's branch led over a height and down again.
void crest(P& p, double level)
{
    p.drawn.changeRun(p.tankBranch, [level](plan::Run& run) {
        run.vertices.insert(run.vertices.begin() + 1, run.vertices.front());
        run.vertices[1].level = run.vertices[2].level = at(level);
    });
}

void island(P& p)
{
    const Id x = p.drawn.tee({4.0, 2.2, 1.2}), y = p.drawn.tee({5.0, 2.2, 1.2});
    const Id shut = p.drawn.run(Service::pressure, "pvcu-pn16-32", plan::TeeEnd{p.tee2, {}}, plan::TeeEnd{x, {}},
                                {{3.0, 2.2, 1.2}, {4.0, 2.2, 1.2}});
    p.drawn.valve(shut, "ball-valve", 0.0);
    p.drawn.run(Service::pressure, "pvcu-pn16-32", plan::TeeEnd{x, {}}, plan::TeeEnd{y, {}},
                {{4.0, 2.2, 1.2}, {5.0, 2.2, 1.2}});
}

void secondSump(P& p)
{
    const Id second = p.drawn.sump({5.0, 1.0, 0.0}, 0.5, 0.5, 0.5, 0.3);
    const Id inlet = p.drawn.port(second, PortKind::inlet, {5.0, 1.0, 0.4});
    p.drawn.changeRun(p.drain1, [&](plan::Run& run) { run.to = plan::PortEnd{second, inlet, {}}; });
}

void loop(P& p)
{
    const Id a = p.drawn.vessel(plan::VesselKind::settler, {4.5, 1, 0}, 0.4, 0.4, 0.6);
    const Id b = p.drawn.vessel(plan::VesselKind::settler, {4.5, 3, 0}, 0.4, 0.4, 0.6);
    p.drawn.drain(a, b, {4.5, 1, 0.5}, 0.05, {4.5, 3, 0.4});
    p.drawn.drain(b, a, {4.5, 3.1, 0.5}, 0.05, {4.5, 1.1, 0.4});
}

void feedTankTwice(P& p)
{
    const Id inlet = p.drawn.port(p.tank, PortKind::inlet, {1.4, 3.3, 1.0});
    p.drawn.run(Service::pressure, "pvcu-pn16-20", plan::TeeEnd{p.tee2, {}}, plan::PortEnd{p.tank, inlet, {}},
                {{3.0, 2.2, 1.2}, {1.4, 3.3, 1.0}});
}

void levelDrain(P& p, double first, double middle, double last)
{
    p.drawn.changeRun(p.drain1, [&](plan::Run& run) {
        run.vertices[0].level = at(first);
        run.vertices[1].level = at(middle);
        run.vertices[2].level = at(last);
    });
}

// A drain of the tank with this pipe, lying at 0.55 m where it ends and at `begins` where it turns level.
void tankDrain(P& p, const char* pipe, double begins)
{
    p.drawn.changeRun(p.tankDrain, [&](plan::Run& run) {
        run.pipeId = pipe;
        plan::Vertex corner = run.vertices.front();
        corner.level = at(begins);
        run.vertices = {run.vertices.front(), corner, run.vertices.back()};
        run.vertices.back().level = at(0.55);
    });
}

void thinTankDrain(P& p) { tankDrain(p, "pvcu-pn16-20", 0.552); }

Id loneTank(P& p) { return p.drawn.vessel(plan::VesselKind::settler, {5.2, 4.4, 0}, 0.4, 0.4, 0.6); }

void againstDrawing(P& p)
{
    p.drawn.changeRun(p.header, [](plan::Run& run) {
        std::swap(run.from, run.to);
        std::reverse(run.vertices.begin(), run.vertices.end());
    });
}

void twins(P& p)
{
    p.drawn.changePump(p.pump, [](plan::Pump& pump) { pump.arrangement = plan::PumpArrangement::twoParallel; });
}

void boxNumbers(P& p)
{
    p.drawn.changePump(p.pump, [](plan::Pump& pump) {
        pump.modelId.clear();
        pump.ownCurve = {{units::Flow(), units::metresHead(3.2)}, {units::litresPerHour(4500), units::Head()}};
        pump.twoNumbers = true;
    });
}

void corrugated(P& p)
{
    p.drawn.changeRun(p.branch1, [](plan::Run& run) { run.pipeId = "corrugated-25"; });
}

} // namespace

std::vector<RuleFixture> pumpFixtures()
{
    return {
        {"plan.no-pump", Severity::warning, [](P& p) { p.drawn.plan.pumps = p.drawn.plan.pumps.without(p.pump); }},
        {"pump.fault", Severity::error,
         [](P& p) { p.drawn.changePump(p.pump, [](plan::Pump& pump) { pump.modelId = "no-such-pump"; }); }},
        {"pump.off", Severity::note,
         [](P& p) { p.drawn.changePump(p.pump, [](plan::Pump& pump) { pump.running = false; }); }},
        {"pump.no-run", Severity::error, [](P& p) { remove(p, p.riser); }},
        {"pump.cannot-lift", Severity::error,
         [](P& p) { p.drawn.changePump(p.pump, [](plan::Pump& pump) { pump.speed = 0.3; }); }},
        {"pump.beyond-curve", Severity::warning, [](P& p) { ownCurve(p, 500.0, 2.0); }},
        {"pump.low-share", Severity::warning, [](P& p) { p.drawn.valve(p.riser, "ball-valve", 1.0, 3000.0); }},
        {"pump.less-when-fouled", Severity::warning, thinAndLong},
        {"outlet.less-when-fouled", Severity::warning, thinAndLong},
        {"pump.power-missing", Severity::note, [](P& p) { ownCurve(p, 4000.0, 0.5); }},
        {"pump.parallel-without-check", Severity::warning, secondPump},
        {"pump.together", Severity::note, twins},
        {"pump.two-numbers", Severity::note, boxNumbers},
        {"pump.uncovered", Severity::error,
         [](P& p) { p.drawn.changePump(p.pump, [](plan::Pump& pump) { pump.leastDepth = units::metres(0.3); }); }},
        {"pump.near-dry", Severity::warning,
         [](P& p) {
             ownCurve(p, 2500.0, 0.5);
             sumpLevel(p, 0.24);
         }},
        {"pump.swirl", Severity::note, [](P& p) { sumpLevel(p, 0.27); }},
        {"run.open-end", Severity::error,
         [](P& p) { p.drawn.changeRun(p.branch1, [](plan::Run& run) { run.to = plan::OpenEnd{}; }); }},
        {"run.unfed", Severity::warning, island},
        {"run.unknown-pipe", Severity::error,
         [](P& p) { p.drawn.changeRun(p.branch1, [](plan::Run& run) { run.pipeId = "no-such-pipe"; }); }},
        {"run.velocity-high", Severity::warning,
         [](P& p) {
             p.drawn.changePump(p.pump, [](plan::Pump& pump) { pump.modelId = "G15000"; });
             p.drawn.changeRun(p.riser, [](plan::Run& run) { run.pipeId = "pvcu-pn16-20"; });
         }},
        {"run.above-reach", Severity::error, [](P& p) { crest(p, 6.0); }},
        {"run.low-pressure", Severity::note, [](P& p) { crest(p, 1.6); }},
        {"run.against-drawing", Severity::note, againstDrawing},
        {"run.transition", Severity::note, [](P& p) { p.drawn.valve(p.branch2, "ball-valve", 1.0, 150.0); }},
        {"run.corrugated", Severity::note, corrugated},
        {"valve.closed", Severity::note, [](P& p) { p.drawn.valve(p.branch2, "gate-valve", 0.0); }},
        {"valve.no-table", Severity::warning, [](P& p) { p.drawn.valve(p.branch2, "globe-valve", 0.5); }},
        {"tee.low-pressure", Severity::warning,
         [](P& p) {
             plan::Tee tee = *p.drawn.plan.tees.find(p.tee2);
             tee.level = at(2.0);
             p.drawn.plan.tees = p.drawn.plan.tees.with(tee);
         }},
        {"outlet.no-flow", Severity::error,
         [](P& p) { p.drawn.changePort(p.tank, p.tankInlet, [](plan::Port& port) { port.level = at(5.0); }); }},
    };
}

std::vector<RuleFixture> waterFixtures()
{
    return {
        {"run.gravity-pipe", Severity::error,
         [](P& p) { p.drawn.changeRun(p.riser, [](plan::Run& run) { run.pipeId = "waste-pvcu-50"; }); }},
        {"site.altitude-missing", Severity::note,
         [](P& p) { p.drawn.changeSite([](plan::Site& site) { site.altitude.reset(); }); }},
        {"site.water-temperature", Severity::error,
         [](P& p) { p.drawn.changeSite([](plan::Site& site) { site.designWater = units::celsius(60.0); }); }},
        {"sump.level-missing", Severity::error,
         [](P& p) { p.drawn.changeVessel(p.sump, [](plan::Vessel& v) { v.runningLevel.reset(); }); }},
        {"sump.runs-dry", Severity::error, [](P& p) { sumpLevel(p, 0.10); }},
        {"sump.spills", Severity::error, [](P& p) { sumpLevel(p, 0.59); }},
        {"sump.little-room", Severity::warning, [](P& p) { sumpLevel(p, 0.52); }},
        {"sump.missing", Severity::warning,
         [](P& p) { p.drawn.changePump(p.pump, [&p](plan::Pump& pump) { pump.vessel = p.tank; }); }},
        {"sump.several", Severity::warning, secondSump},
        {"water.not-solved", Severity::warning, loop},
        {"vessel.over-rim", Severity::error, [](P& p) { tankLip(p, 0.90, 0.02); }},
        {"vessel.little-free-board", Severity::warning, [](P& p) { tankLip(p, 0.86, 0.0638); }},
        {"vessel.no-inlet", Severity::warning, [](P& p) { loneTank(p); }},
        {"vessel.no-outlet", Severity::error,
         [](P& p) { p.drawn.changeVessel(p.tank, [](plan::Vessel& v) { v.ports.pop_back(); }); }},
        {"vessel.level-unknown", Severity::note, [](P& p) { loneTank(p); }},
        {"vessel.lip-to-nowhere", Severity::error, [](P& p) { remove(p, p.tankDrain); }},
        {"vessel.fed-twice", Severity::note, feedTankTwice},
        {"overflow.too-small", Severity::warning, [](P& p) { tankLip(p, 0.90, 0.0638); }},
        {"overflow.noisy", Severity::note,
         [](P& p) { p.drawn.changeRun(p.tankDrain, [](plan::Run& run) { run.pipeId = "pvcu-pn16-50"; }); }},
        {"overflow.bore-unknown", Severity::warning, [](P& p) { tankLip(p, 0.80, 0.005); }},
        {"overflow.emergency-missing", Severity::note, [](P&) {}},
        {"overflow.emergency-too-small", Severity::warning,
         [](P& p) {
             p.drawn.port(p.tank, PortKind::lip, {1.4, 3.3, 0.88}, 0.02);
         }},
        {"vessel.held-by-run", Severity::warning, [](P& p) { thinTankDrain(p); }},
        {"run.surcharged", Severity::warning, [](P& p) { thinTankDrain(p); }},
        {"run.fill-high", Severity::note, [](P& p) { tankDrain(p, "pvcu-pn16-75", 0.552); }},
        {"run.slow", Severity::warning, [](P& p) { tankDrain(p, "waste-pvcu-160", 0.552); }},
        {"inlet.siphon-back", Severity::warning,
         [](P& p) { p.drawn.changePort(p.tank, p.tankInlet, [](plan::Port& port) { port.level = at(0.6); }); }},
        {"gravity.no-fall", Severity::warning, [](P& p) { levelDrain(p, 0.56, 0.555, 0.55); }},
        {"gravity.rises", Severity::warning, [](P& p) { levelDrain(p, 0.956, 0.5, 0.55); }},
    };
}

} // namespace sumpwright::test
