#include "core/plan/edits/place.hpp"

#include "core/plan/edits/draft.hpp"
#include "core/plan/tidy.hpp"

namespace sumpwright::plan
{

namespace
{

// Usual sizes of small systems; common practice, no source.
Shape usualShape(VesselKind kind)
{
    switch (kind) {
    case VesselKind::fishTank:
        return RoundShape{units::metres(1.4)};
    case VesselKind::sump:
        return RectangleShape{units::metres(2.0), units::metres(1.0)}; // holds the tide of two usual beds
    case VesselKind::mediaBed:
        return RectangleShape{units::metres(2.0), units::metres(1.0)};
    case VesselKind::raftBed:
        return RectangleShape{units::metres(2.4), units::metres(1.2)};
    case VesselKind::settler:
        return RoundShape{units::metres(0.6)};
    }
    return RoundShape{units::metres(1.0)};
}

units::Length usualWallHeight(VesselKind kind)
{
    switch (kind) {
    case VesselKind::fishTank:
        return units::metres(0.9);
    case VesselKind::sump:
        return units::metres(0.6);
    case VesselKind::mediaBed:
    case VesselKind::raftBed:
        return units::metres(0.4);
    case VesselKind::settler:
        return units::metres(0.8);
    }
    return units::metres(0.5);
}

Stand usualStand(VesselKind kind)
{
    Stand stand;
    switch (kind) {
    case VesselKind::fishTank:
    case VesselKind::sump:
    case VesselKind::settler:
        stand.kind = StandKind::flat;
        break;
    case VesselKind::mediaBed:
    case VesselKind::raftBed:
        stand.kind = StandKind::legs;
        stand.legCount = 6;
        break;
    }
    return stand;
}

units::Length usualStandHeight(VesselKind kind)
{
    return units::metres(usualStand(kind).kind == StandKind::legs ? 0.6 : 0.0);
}

Port usualPort(PortKind kind, Point offset, units::Elevation level)
{
    Port port;
    port.kind = kind;
    port.offset = tidy(offset);
    port.level = tidy(level);
    return port;
}

// Ports near the ends of the vessel's own x axis: water in at the left, out at the right.
void addUsualPorts(Vessel& vessel)
{
    const units::Length reach = 0.8 * frameOf(vessel.shape).length / 2.0;
    const units::Length none = units::metres(0.0);
    const units::Elevation rim = rimLevel(vessel);
    const units::Length hand = 0.12 * vessel.wallHeight;
    Port in = usualPort(PortKind::inlet, {-reach, none}, rim + units::metres(0.05));
    Port lip = usualPort(PortKind::lip, {reach, none}, rim - hand);
    switch (vessel.kind) {
    case VesselKind::fishTank:
    case VesselKind::settler:
    case VesselKind::raftBed:
        vessel.ports = {in, lip};
        break;
    case VesselKind::mediaBed:
        lip.level = tidy(insideBottom(vessel) + 0.65 * (vessel.wallHeight - vessel.wallThickness));
        lip.drainLevel = tidy(insideBottom(vessel) + 0.1 * (vessel.wallHeight - vessel.wallThickness));
        vessel.ports = {in, lip};
        break;
    case VesselKind::sump:
        vessel.ports = {in};
        break;
    }
}

} // namespace

Vessel usualVessel(const Plan& plan, const VesselWish& wish)
{
    Vessel vessel;
    vessel.kind = wish.kind;
    vessel.centre = wish.centre;
    vessel.turn = wish.turn;
    vessel.shape = wish.shape.value_or(usualShape(wish.kind));
    vessel.wallHeight = wish.wallHeight.value_or(usualWallHeight(wish.kind));
    vessel.stand = usualStand(wish.kind);
    vessel.baseLevel = wish.baseLevel.value_or(tidy(levelAt(*plan.floor, wish.centre) + usualStandHeight(wish.kind)));
    if (wish.kind == VesselKind::mediaBed)
        vessel.medium = Medium{"expanded-clay", tidy(0.75 * vessel.wallHeight)};
    if (wish.kind == VesselKind::sump)
        vessel.runningLevel = tidy(vessel.baseLevel + 0.6 * vessel.wallHeight);
    addUsualPorts(vessel);
    return vessel;
}

Edit placeVessel(const VesselWish& wish)
{
    return makeEdit("edit.place", {}, [wish](Draft& draft) {
        Vessel vessel = usualVessel(draft.plan, wish);
        vessel.id = draft.newId();
        vessel.tag = draft.newTag(tagPrefix(vessel.kind));
        Tags portTags;
        for (Port& port : vessel.ports) {
            port.id = draft.newId();
            port.tag = freeTag(portTags, tagPrefix(port.kind));
        }
        draft.put(std::move(vessel));
    });
}

Edit placePump(base::Id vessel, Point place, std::string modelId)
{
    return makeEdit("edit.place", {}, [=](Draft& draft) {
        const Vessel& home = draft.the<Vessel>(vessel);
        Pump pump;
        pump.id = draft.newId();
        pump.tag = draft.newTag("P");
        pump.vessel = vessel;
        pump.offset = tidy(turned(place - home.centre, -home.turn));
        pump.modelId = modelId;
        pump.outletLevel = tidy(insideBottom(home) + units::metres(0.25));
        draft.put(std::move(pump));
    });
}

Edit placeFixture(FixtureKind kind, Point from, Point to)
{
    return makeEdit("edit.place", {}, [=](Draft& draft) {
        const bool twoEnds = kind == FixtureKind::wall || kind == FixtureKind::door;
        Fixture fixture;
        fixture.id = draft.newId();
        fixture.tag = draft.newTag(tagPrefix(kind));
        fixture.kind = kind;
        fixture.from = from;
        fixture.to = twoEnds ? to : from;
        fixture.level = tidy(levelAt(*draft.plan.floor, from));
        if (kind == FixtureKind::door)
            fixture.height = units::metres(2.0);
        if (kind == FixtureKind::powerPoint)
            fixture.level = tidy(fixture.level + units::metres(1.2));
        draft.put(std::move(fixture));
    });
}

Edit placeNote(Point at, std::string text)
{
    return makeEdit("edit.place", {}, [=](Draft& draft) { draft.put(Note{draft.newId(), at, text, {}}); });
}

Edit placeDimension(Point from, Point to, units::Length offset)
{
    return makeEdit("edit.place", {}, [=](Draft& draft) {
        draft.put(DimensionLine{draft.newId(), from, to, offset, {}});
    });
}

} // namespace sumpwright::plan
