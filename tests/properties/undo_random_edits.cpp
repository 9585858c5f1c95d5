// The makers of random edits, one for every intent.
#include <array>

#include "core/plan/edits/intent.hpp"
#include "core/plan/edits/own_parts.hpp"
#include "tests/support/edited_plan.hpp"
#include "tests/support/random_edits.hpp"

namespace sumpwright::test
{

using namespace plan;
using Draw = RandomEdits;
using Maker = Edit (*)(Draw&);

namespace
{

units::Length length(Draw& draw, double low, double high) { return units::metres(draw.between(low, high)); }
units::Elevation level(Draw& draw) { return units::elevationMetres(draw.between(-0.2, 2.0)); }
template <class Value> std::optional<Value> maybe(Draw& draw, Value value)
{
    return draw.oneIn(3) ? std::nullopt : std::optional<Value>(value);
}
std::optional<double> loss(Draw& draw) { return maybe(draw, draw.between(-0.1, 5.0)); }
PumpArrangement arrangement(Draw& draw)
{
    return draw.oneIn(2) ? PumpArrangement::one
                         : (draw.oneIn(2) ? PumpArrangement::twoParallel : PumpArrangement::twoInSeries);
}
OwnFitting ownJoint(Draw& draw) // one of four
{
    const std::string number = std::to_string(draw.whole(1, 4));
    OwnFitting joint;
    joint.id = "own-joint-" + number;
    joint.name = "Joint " + number;
    joint.k = draw.between(-0.5, 5.0);
    return joint;
}
std::string pipe(Draw& draw) { return draw.oneIn(4) ? "pvcu-pn16-25" : "pvcu-pn16-32"; }
Point offset(Draw& draw) { return at(draw.between(-0.5, 0.5), draw.between(-0.4, 0.4)); }
VesselKind vesselKind(Draw& draw) { return static_cast<VesselKind>(draw.whole(0, 4)); }
FixtureKind fixtureKind(Draw& draw) { return static_cast<FixtureKind>(draw.whole(0, 3)); }
PortKind portKind(Draw& draw) { return static_cast<PortKind>(draw.whole(0, 2)); }
RunSide side(Draw& draw) { return draw.oneIn(2) ? RunSide::from : RunSide::to; }
std::vector<base::Id> vessels(Draw& draw)
{
    return draw.some([&] { return draw.vessel(); });
}
std::vector<base::Id> pumps(Draw& draw)
{
    return draw.some([&] { return draw.pump(); });
}
std::vector<base::Id> runs(Draw& draw)
{
    return draw.some([&] { return draw.run(); });
}
std::vector<base::Id> fixtures(Draw& draw)
{
    return draw.some([&] { return draw.fixture(); });
}
std::vector<base::Id> elements(Draw& draw)
{
    return draw.some([&] { return draw.element(); });
}

PortRef port(Draw& draw)
{
    const Vessel* vessel = draw.plan().vessels.find(draw.vessel());
    if (!vessel || vessel->ports.empty())
        return {};
    return {vessel->id, vessel->ports[static_cast<std::size_t>(draw.whole(0, 999)) % vessel->ports.size()].id};
}
ValveRef valve(Draw& draw)
{
    for (const auto& run : draw.plan().runs)
        if (!run->valves.empty() && draw.oneIn(2))
            return {run->id, run->valves.back().id};
    return {};
}
std::size_t vertexOf(Draw& draw, base::Id id)
{
    const Run* run = draw.plan().runs.find(id);
    return run ? static_cast<std::size_t>(draw.whole(0, static_cast<int>(run->vertices.size()))) : 0;
}
Shape shape(Draw& draw)
{
    switch (draw.whole(0, 2)) {
    case 0:
        return RoundShape{length(draw, 0.4, 2.0)};
    case 1:
        return RectangleShape{length(draw, 0.4, 2.5), length(draw, 0.4, 1.5)};
    default:
        return CagedShape{};
    }
}

Target target(Draw& draw)
{
    switch (draw.whole(0, 6)) {
    case 0:
        return Nowhere{};
    case 1: {
        const PortRef ref = port(draw);
        return AtPort{ref.vessel, ref.port};
    }
    case 2:
        return AtPump{draw.pump()};
    case 3:
        return AtTee{draw.tee()};
    case 4:
        return NewPort{draw.vessel(), portKind(draw), offset(draw), level(draw)};
    default:
        return OntoRun{draw.run(), draw.between(0, 1)};
    }
}

Edit drawnRun(Draw& draw)
{
    RunWish wish;
    wish.service = draw.oneIn(3) ? Service::gravity : Service::pressure;
    wish.pipeId = pipe(draw);
    wish.from = target(draw);
    wish.to = target(draw);
    for (int left = draw.whole(2, 5); left > 0; --left) {
        Vertex made;
        made.at = draw.place();
        made.level = level(draw);
        wish.vertices.push_back(made);
    }
    return drawRun(wish);
}

Edit placedVessel(Draw& draw)
{
    VesselWish wish;
    wish.kind = vesselKind(draw);
    wish.centre = draw.place();
    wish.turn = units::degrees(draw.whole(-4, 4) * 45.0);
    return placeVessel(wish);
}

Edit placedPump(Draw& draw)
{
    const base::Id vessel = draw.vessel();
    return placePump(vessel, anchorOf(draw.plan(), vessel) + offset(draw), "G2500");
}

Underlay sketch(Draw& draw)
{
    Underlay underlay;
    underlay.fileName = draw.oneIn(4) ? "../elsewhere.png" : "sketch.png";
    underlay.corner = draw.place();
    return underlay;
}

std::vector<CurvePoint> curve(Draw& draw)
{
    return {{units::litresPerHour(0), units::metresHead(draw.between(1, 4))},
            {units::litresPerHour(1000), units::metresHead(draw.between(0, 2))}};
}

std::vector<Point> outline(Draw& draw)
{
    const Point a = draw.place();
    return {a, a + at(draw.between(-1, 6), 0), a + at(draw.between(-1, 6), draw.between(1, 8)), a + at(0, 5)};
}

// A maker a line; the number is how often it is drawn.
struct Weighted {
    int weight;
    Maker make;
};
const Weighted makers[] = {
    {6, placedVessel},
    {4, placedPump},
    {3, [](Draw& d) { return placeFixture(fixtureKind(d), d.place(), d.place()); }},
    {1, [](Draw& d) { return placeNote(d.place(), "note"); }},
    {1, [](Draw& d) { return placeDimension(d.place(), d.place(), length(d, -1, 1)); }},
    {16, drawnRun},
    {6, [](Draw& d) { return connectEnd(d.run(), side(d), target(d)); }},
    {3, [](Draw& d) { return detachEnd(d.run(), side(d)); }},
    {6, [](Draw& d) { return moveElements(elements(d), at(d.between(-1, 1), d.between(-1, 1))); }},
    {2, [](Draw& d) { return moveElementTo(d.element(), d.place()); }},
    {4, [](Draw& d) { return turnElements(elements(d), d.place(), units::degrees(d.whole(-7, 8) * 22.5)); }},
    {4, [](Draw& d) { return raiseElements(elements(d), length(d, -0.5, 0.5)); }},
    {2, [](Draw& d) { return setTurn(vessels(d), units::degrees(d.whole(-180, 180))); }},
    {2, [](Draw& d) { return setBaseLevel(vessels(d), level(d)); }},
    {2, [](Draw& d) { return setTeeLevel({d.tee()}, level(d)); }},
    {2, [](Draw& d) { return setShape(vessels(d), shape(d)); }},
    {2, [](Draw& d) { return resizeVessel(d.vessel(), shape(d), d.place()); }},
    {2, [](Draw& d) { return setWallHeight(vessels(d), length(d, 0.1, 1.5)); }},
    {1, [](Draw& d) { return setWallThickness(vessels(d), length(d, -0.01, 0.3)); }},
    {1, [](Draw& d) { return setVesselKind(vessels(d), vesselKind(d)); }},
    {2,
     [](Draw& d) {
         return setMedium(vessels(d), maybe(d, Medium{"expanded-clay", length(d, 0.1, 0.5)}));
     }},
    {1,
     [](Draw& d) {
         return setStand(vessels(d), maybe(d, Stand{StandKind::blocks, {}, d.whole(0, 6)}));
     }},
    {1, [](Draw& d) { return setMeasuredTare(vessels(d), maybe(d, units::kilograms(d.between(-5, 90)))); }},
    {2, [](Draw& d) { return setRunningLevel({d.vessel()}, maybe(d, level(d))); }},
    {3, [](Draw& d) { return addPort(d.vessel(), portKind(d), offset(d), level(d)); }},
    {2, [](Draw& d) { return removePorts({port(d)}); }},
    {2, [](Draw& d) { return setPortKind({port(d)}, portKind(d)); }},
    {3, [](Draw& d) { return setPortOffset(port(d), offset(d)); }},
    {3, [](Draw& d) { return setPortLevel({port(d)}, level(d)); }},
    {1, [](Draw& d) { return setPortBore({port(d)}, maybe(d, length(d, -0.01, 0.1))); }},
    {2, [](Draw& d) { return setDrainLevel({port(d)}, maybe(d, level(d))); }},
    {2, [](Draw& d) { return setVentLevel({port(d)}, maybe(d, level(d))); }},
    {1, [](Draw& d) { return setTargetFlow({port(d)}, maybe(d, units::litresPerHour(d.between(-50, 900)))); }},
    {2, [](Draw& d) { return setOpenFraction({port(d)}, maybe(d, d.between(-0.1, 1.1))); }},
    {1, [](Draw& d) { return setColdestWater(maybe(d, units::celsius(d.between(0, 22)))); }},
    {1, [](Draw& d) { return setWarmestWater(maybe(d, units::celsius(d.between(18, 34)))); }},
    {1, [](Draw& d) { return setPumpArrangement(pumps(d), static_cast<PumpArrangement>(d.whole(0, 2))); }},
    {1, [](Draw& d) { return inSequence("edit.set-valves", {setOpening({valve(d)}, d.between(0, 1))}); }},
    {1, [](Draw& d) { return inSequence("edit.choose-pump", {setPumpModel(pumps(d), "G15000")}); }},
    {1, [](Draw& d) { return inSequence("edit.choose-pipes", {setRunPipe(runs(d), pipe(d))}); }},
    {1, [](Draw& d) { return setPumpModel(pumps(d), "G8000"); }},
    {1, [](Draw& d) { return setPumpCurve(pumps(d), curve(d), maybe(d, units::watts(40))); }},
    {1, [](Draw& d) { return setPumpArrangement(pumps(d), arrangement(d)); }},
    {1, [](Draw& d) { return putOwnPart(ownJoint(d)); }},
    {1,
     [](Draw& d) {
         OwnParts parts;
         parts.fittings = {ownJoint(d)};
         return importOwnParts(parts);
     }},
    {2, [](Draw& d) { return removeOwnPart(ownJoint(d).id); }},
    {1, [](Draw& d) { return setPumpSpeed(pumps(d), d.between(-0.1, 1.6)); }},
    {1, [](Draw& d) { return setLeastDepth(pumps(d), maybe(d, length(d, -0.1, 0.3))); }},
    {1, [](Draw& d) { return setPumpRunning(pumps(d), d.oneIn(2)); }},
    {2, [](Draw& d) { return setPumpOutlet(pumps(d), level(d)); }},
    {2,
     [](Draw& d) {
         const base::Id vessel = d.vessel();
         return standPump(d.pump(), vessel, anchorOf(d.plan(), vessel) + offset(d));
     }},
    {2, [](Draw& d) { return setRunPipe(runs(d), pipe(d)); }},
    {1, [](Draw& d) { return setRunService(runs(d), d.oneIn(2) ? Service::gravity : Service::pressure); }},
    {2, [](Draw& d) { return reverseRuns(runs(d)); }},
    {1, [](Draw& d) { return setEndLoss(d.run(), side(d), loss(d)); }},
    {1,
     [](Draw& d) {
         return setExtraFittings(runs(d), {{"union", d.whole(0, 3), loss(d)}});
     }},
    {3, [](Draw& d) { return insertVertex(d.run(), d.between(0, 1)); }},
    {2,
     [](Draw& d) {
         const base::Id run = d.run();
         return insertVertexAt(run, vertexOf(d, run), d.place(), level(d));
     }},
    {3,
     [](Draw& d) {
         const base::Id run = d.run();
         return moveVertex(run, vertexOf(d, run), d.place());
     }},
    {2,
     [](Draw& d) {
         const base::Id run = d.run();
         return removeVertex(run, vertexOf(d, run));
     }},
    {2,
     [](Draw& d) {
         const base::Id run = d.run();
         return setVertexLevel(run, vertexOf(d, run), level(d));
     }},
    {2,
     [](Draw& d) {
         const base::Id run = d.run();
         return setVertexInvert(run, vertexOf(d, run), level(d), units::millimetres(27.2));
     }},
    {1, [](Draw& d) { return setBendFitting(d.run(), 1, "elbow-90"); }},
    {1, [](Draw& d) { return setBendLoss(d.run(), 1, loss(d)); }},
    {4, [](Draw& d) { return addValve(d.run(), "ball-valve", d.between(-0.05, 1.05)); }},
    {2, [](Draw& d) { return moveValve(valve(d), d.between(0, 1)); }},
    {2, [](Draw& d) { return setOpening({valve(d)}, d.between(-0.1, 1.1)); }},
    {1, [](Draw& d) { return setValveFitting({valve(d)}, "gate-valve"); }},
    {1, [](Draw& d) { return setValveLoss({valve(d)}, loss(d)); }},
    {1, [](Draw& d) { return removeValves({valve(d)}); }},
    {4, [](Draw& d) { return setFall({d.run()}, units::metresPerMetre(d.between(-0.01, 0.05)), side(d)); }},
    {3, [](Draw& d) { return setInvert(d.run(), side(d), level(d), units::millimetres(50)); }},
    {1, [](Draw& d) { return setFixtureEnds(d.fixture(), d.place(), d.place()); }},
    {1, [](Draw& d) { return setFixtureKind(fixtures(d), fixtureKind(d)); }},
    {1, [](Draw& d) { return setFixtureSize(fixtures(d), length(d, -0.1, 0.4)); }},
    {1, [](Draw& d) { return setFixtureHeight(fixtures(d), length(d, -0.1, 3)); }},
    {1, [](Draw& d) { return setFixtureLevel(fixtures(d), level(d)); }},
    {2, [](Draw& d) { return setOutline(outline(d)); }},
    {1, [](Draw& d) { return setFloorLevel(level(d)); }},
    {1, [](Draw& d) { return setFloorFall(units::metresPerMetre(d.between(-0.01, 0.03)), units::degrees(30)); }},
    {1, [](Draw& d) { return setDrainPoint(maybe(d, d.place())); }},
    {1, [](Draw& d) { return setClearHeight(maybe(d, length(d, -1, 4))); }},
    {1, [](Draw& d) { return setFloorThickness(maybe(d, length(d, -0.1, 0.3))); }},
    {1, [](Draw& d) { return setSiteName("Site " + std::to_string(d.whole(1, 9))); }},
    {1, [](Draw& d) { return setClient("Client " + std::to_string(d.whole(1, 9))); }},
    {1, [](Draw&) { return setDesigner("Designer"); }},
    {1, [](Draw& d) { return setAltitude(maybe(d, length(d, -600, 3000))); }},
    {1, [](Draw& d) { return setDesignWater(units::celsius(d.between(-5, 35))); }},
    {1, [](Draw& d) { return setDesignAir(units::celsius(d.between(-20, 40))); }},
    {1, [](Draw& d) { return setCurrency(d.oneIn(3) ? "euro" : "USD"); }},
    {1, [](Draw& d) { return setPowerPrice(maybe(d, units::perKilowattHour(d.between(-0.1, 0.6)))); }},
    {1, [](Draw& d) { return setPipeCondition(static_cast<PipeCondition>(d.whole(0, 2))); }},
    {1, [](Draw& d) { return setFloorUse(d.oneIn(2) ? "" : "dwelling-asce"); }},
    {1, [](Draw& d) { return setNorth(units::degrees(d.whole(-180, 180))); }},
    {1,
     [](Draw& d) {
         return setClearances({length(d, 0.3, 1), length(d, 0.3, 1), length(d, 0.3, 1), length(d, 0, 0.1)});
     }},
    {1, [](Draw& d) { return setNoteText(d.note(), d.oneIn(3) ? "" : "changed"); }},
    {1, [](Draw& d) { return setDimensionEnds(d.dimension(), d.place(), d.place()); }},
    {1, [](Draw& d) { return setDimensionOffset({d.dimension()}, length(d, -1, 1)); }},
    {1, [](Draw& d) { return setUnderlay(sketch(d)); }},
    {1, [](Draw&) { return removeUnderlay(); }},
    {1, [](Draw& d) { return scaleUnderlay(d.place(), d.place(), length(d, -1, 6)); }},
    {1, [](Draw& d) { return moveUnderlay(d.place()); }},
    {1, [](Draw& d) { return turnUnderlay(units::degrees(d.whole(-180, 180))); }},
    {1, [](Draw& d) { return setUnderlayOpacity(d.between(-0.1, 1.1)); }},
    {2, [](Draw& d) { return renameTag(d.element(), "N" + std::to_string(d.whole(1, 60))); }},
    {3, [](Draw& d) { return duplicate(elements(d), at(d.between(-2, 2), d.between(-2, 2))); }},
    {1, [](Draw& d) { return arrayCopy({d.vessel()}, d.whole(0, 3), d.whole(1, 2), at(1.5, 0), at(0, 1.5)); }},
    {3, [](Draw& d) { return align(elements(d), static_cast<Alignment>(d.whole(0, 5))); }},
    {3, [](Draw& d) { return distribute(elements(d), d.oneIn(2) ? Axis::x : Axis::y); }},
    {4, [](Draw& d) { return deleteElements({d.element()}); }},
    {3, [](Draw& d) { return deleteElements({d.run()}); }},
    {2, [](Draw& d) { return deleteElements({d.tee()}); }},
    {1, [](Draw& d) { return deleteElements(elements(d)); }},
};

template <class Element> base::Id drawnFrom(RandomEdits& draw, const Table<Element>& table)
{
    if (table.empty())
        return {static_cast<std::uint64_t>(draw.whole(0, 3))};
    const auto index = static_cast<std::ptrdiff_t>(draw.whole(0, static_cast<int>(table.size()) - 1));
    return (*(table.begin() + index))->id;
}

} // namespace

double RandomEdits::between(double low, double high)
{
    // To the millimetre, as a person draws; now and then to the last bit.
    const double value = low + (high - low) * (static_cast<double>(m_random()) / 4294967296.0);
    return m_random() % 5 == 0 ? value : std::round(value * 1000.0) / 1000.0;
}

int RandomEdits::whole(int low, int high)
{
    return low + static_cast<int>(m_random() % static_cast<unsigned>(high - low + 1));
}

Point RandomEdits::place() { return at(between(0, 6), between(0, 9)); }
base::Id RandomEdits::vessel() { return drawnFrom(*this, m_plan->vessels); }
base::Id RandomEdits::pump() { return drawnFrom(*this, m_plan->pumps); }
base::Id RandomEdits::run() { return drawnFrom(*this, m_plan->runs); }
base::Id RandomEdits::tee() { return drawnFrom(*this, m_plan->tees); }
base::Id RandomEdits::fixture() { return drawnFrom(*this, m_plan->fixtures); }
base::Id RandomEdits::note() { return drawnFrom(*this, m_plan->notes); }
base::Id RandomEdits::dimension() { return drawnFrom(*this, m_plan->dimensions); }

base::Id RandomEdits::element()
{
    switch (whole(0, 9)) {
    case 0:
        return pump();
    case 1:
        return fixture();
    case 2:
        return note();
    case 3:
        return dimension();
    case 4:
        return tee();
    case 5:
    case 6:
        return run();
    default:
        return vessel();
    }
}

std::vector<base::Id> RandomEdits::some(const std::function<base::Id()>& draw)
{
    std::vector<base::Id> ids;
    for (int left = whole(1, 5); left > 0; --left)
        ids.push_back(draw());
    return ids;
}

Edit RandomEdits::next(const Plan& plan)
{
    m_plan = &plan;
    static const int all = [] {
        int sum = 0;
        for (const Weighted& maker : makers)
            sum += maker.weight;
        return sum;
    }();
    int left = whole(0, all - 1);
    for (const Weighted& maker : makers) {
        if (left < maker.weight)
            return maker.make(*this);
        left -= maker.weight;
    }
    return makers[0].make(*this);
}

} // namespace sumpwright::test
