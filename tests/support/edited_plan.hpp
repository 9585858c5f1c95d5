// Plans made by edits alone, in plain numbers, for tests of plan, storage and properties.
#pragma once

#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "core/plan/check.hpp"
#include "core/plan/edits/annotation.hpp"
#include "core/plan/edits/arrange.hpp"
#include "core/plan/edits/copy.hpp"
#include "core/plan/edits/delete.hpp"
#include "core/plan/edits/draw_run.hpp"
#include "core/plan/edits/fall.hpp"
#include "core/plan/edits/fixture.hpp"
#include "core/plan/edits/floor.hpp"
#include "core/plan/edits/move.hpp"
#include "core/plan/edits/place.hpp"
#include "core/plan/edits/port.hpp"
#include "core/plan/edits/pump.hpp"
#include "core/plan/edits/rename.hpp"
#include "core/plan/edits/run.hpp"
#include "core/plan/edits/sequence.hpp"
#include "core/plan/edits/site.hpp"
#include "core/plan/edits/underlay.hpp"
#include "core/plan/edits/valve.hpp"
#include "core/plan/edits/vertex.hpp"
#include "core/plan/edits/vessel.hpp"

namespace sumpwright::test
{

inline plan::Point at(double x, double y) { return {units::metres(x), units::metres(y)}; }

inline plan::Vertex vertex(double x, double y, double level)
{
    plan::Vertex made;
    made.at = at(x, y);
    made.level = units::elevationMetres(level);
    return made;
}

// Applies edits one after another; a refusal fails the test and leaves the plan as it was.
class EditedPlan
{
public:
    plan::Plan plan;

    base::Id apply(const plan::Edit& edit)
    {
        const base::Id next{plan.nextId};
        const auto outcome = edit.apply(plan);
        if (outcome.ok())
            plan = outcome.value();
        else
            ADD_FAILURE() << edit.intent << " refused: " << base::oneLine(outcome.refusal());
        for (const plan::Fault& fault : plan::check(plan))
            ADD_FAILURE() << "after " << edit.intent << ": " << base::oneLine(fault.refusal);
        return next;
    }
    // The id of the refusal; empty when the edit was not refused.
    std::string refusalOf(const plan::Edit& edit) const
    {
        const auto outcome = edit.apply(plan);
        return outcome.ok() ? std::string() : outcome.refusal().id;
    }

    base::Id vessel(plan::VesselKind kind, double x, double y)
    {
        plan::VesselWish wish;
        wish.kind = kind;
        wish.centre = at(x, y);
        if (kind == plan::VesselKind::sump)
            wish.shape = plan::RectangleShape{units::metres(1.2), units::metres(0.8)};
        const base::Id placed = apply(plan::placeVessel(wish));
        if (kind == plan::VesselKind::sump)
            apply(plan::setRunningLevel({placed}, units::elevationMetres(0.3)));
        return placed;
    }
    base::Id run(const plan::Target& from, const plan::Target& to, std::vector<plan::Vertex> vertices,
                 plan::Service service = plan::Service::pressure)
    {
        plan::RunWish wish;
        wish.service = service;
        wish.pipeId = service == plan::Service::pressure ? "pvcu-pn16-32" : "pvcu-pn10-50";
        wish.from = from;
        wish.to = to;
        wish.vertices = std::move(vertices);
        return apply(plan::drawRun(wish));
    }
    const plan::Vessel& vesselOf(base::Id id) const { return *plan.vessels.find(id); }
    const plan::Run& runOf(base::Id id) const { return *plan.runs.find(id); }
    base::Id portOf(base::Id vessel, plan::PortKind kind) const
    {
        for (const plan::Port& port : vesselOf(vessel).ports)
            if (port.kind == kind)
                return port.id;
        return {};
    }
    plan::AtPort inlet(base::Id vessel) const { return {vessel, portOf(vessel, plan::PortKind::inlet)}; }
    plan::AtPort lip(base::Id vessel) const { return {vessel, portOf(vessel, plan::PortKind::lip)}; }
};

// A small whole system: tank, sump with pump, two beds, a rising main that splits to tank and beds, drains back to
// the sump, valves, surroundings and annotations.
struct SmallSystem : EditedPlan {
    base::Id tank, sump, bedA, bedB, pump, main, toBed, toSecondBed, tankDrain, drainA, drainB, valve, wall, note, line;

    SmallSystem()
    {
        using namespace plan;
        apply(setOutline({at(0, 0), at(6, 0), at(6, 9), at(0, 9)}));
        apply(setSiteName("Shed under the oaks"));
        apply(setAltitude(units::metres(240)));
        apply(setPowerPrice(units::perKilowattHour(0.31)));
        tank = vessel(VesselKind::fishTank, 1.5, 7.0);
        sump = vessel(VesselKind::sump, 1.5, 1.5);
        bedA = vessel(VesselKind::mediaBed, 4.5, 3.0);
        bedB = vessel(VesselKind::mediaBed, 4.5, 5.0);
        pump = apply(placePump(sump, at(1.3, 1.5), "G4500"));
        main = run(AtPump{pump}, inlet(tank),
                   {vertex(1.3, 1.5, 1.4), vertex(0.5, 1.5, 1.4), vertex(0.5, 7.0, 1.4), vertex(0.94, 7.0, 1.4)});
        toBed = run(OntoRun{main, 0.4}, inlet(bedA), {vertex(0.5, 3.0, 1.4), vertex(3.7, 3.0, 1.4)});
        toSecondBed = run(OntoRun{toBed, 0.5}, inlet(bedB),
                          {vertex(2.0, 3.0, 1.4), vertex(2.0, 5.0, 1.4), vertex(3.7, 5.0, 1.4)});
        tankDrain = run(lip(tank), NewPort{sump, PortKind::inlet, at(0.3, 0.2), units::elevationMetres(0.5)},
                        {vertex(2.06, 7.0, 0.6), vertex(2.06, 1.7, 0.55), vertex(1.8, 1.7, 0.55)}, Service::gravity);
        drainA = run(lip(bedA), NewPort{sump, PortKind::inlet, at(0.4, -0.2), units::elevationMetres(0.5)},
                     {vertex(5.3, 3.0, 0.55), vertex(5.3, 1.3, 0.53), vertex(1.9, 1.3, 0.51)}, Service::gravity);
        drainB = run(lip(bedB), Nowhere{}, {vertex(5.3, 5.0, 0.55), vertex(5.7, 5.0, 0.54)}, Service::gravity);
        valve = apply(addValve(toBed, "ball-valve", 0.3));
        apply(setExtraFittings({main}, {{"union", 2, std::nullopt}}));
        wall = apply(placeFixture(FixtureKind::wall, at(0, 9), at(6, 9)));
        apply(placeFixture(FixtureKind::door, at(2, 0), at(2.9, 0)));
        apply(placeFixture(FixtureKind::post, at(3, 8), {}));
        apply(placeFixture(FixtureKind::powerPoint, at(0.1, 0.5), {}));
        note = apply(placeNote(at(3, 8.5), "north light"));
        line = apply(placeDimension(at(0, 0), at(6, 0), units::metres(-0.4)));
        Underlay sketch;
        sketch.fileName = "shed.png";
        apply(setUnderlay(sketch));
    }
};

} // namespace sumpwright::test
