// DrawnPlan: draws plans for tests in plain numbers: metres, degrees Celsius, inside sizes of vessels (walls of 6 mm
// are added outside). Every element gets the next id and a tag from it.
#pragma once

#include <array>
#include <initializer_list>
#include <string>
#include <vector>

#include "core/plan/plan.hpp"

namespace sumpwright::test
{

using base::Id;

struct Place {
    double x = 0.0;
    double y = 0.0;
    double z = 0.0; // level
};

class DrawnPlan
{
public:
    plan::Plan plan;

    DrawnPlan()
    {
        changeSite([](plan::Site& site) { site.pipeCondition = plan::PipeCondition::asNew; });
    }

    template <class Change> void changeSite(Change change)
    {
        plan::Site site = *plan.site;
        change(site);
        plan.site = std::make_shared<const plan::Site>(site);
    }
    template <class Change> void changeVessel(Id id, Change change)
    {
        plan::Vessel vessel = *plan.vessels.find(id);
        change(vessel);
        plan.vessels = plan.vessels.with(vessel);
    }
    template <class Change> void changeRun(Id id, Change change)
    {
        plan::Run run = *plan.runs.find(id);
        change(run);
        plan.runs = plan.runs.with(run);
    }
    template <class Change> void changePump(Id id, Change change)
    {
        plan::Pump pump = *plan.pumps.find(id);
        change(pump);
        plan.pumps = plan.pumps.with(pump);
    }

    void floor(double length, double width)
    {
        plan::Floor floor;
        floor.outline = {point(0, 0), point(length, 0), point(length, width), point(0, width)};
        plan.floor = std::make_shared<const plan::Floor>(floor);
    }

    // Centre and inside bottom at `at`; inside sizes.
    Id vessel(plan::VesselKind kind, Place at, double length, double width, double depth)
    {
        constexpr double wall = 0.006;
        plan::Vessel vessel;
        vessel.id = next();
        vessel.tag = "V" + std::to_string(vessel.id.number);
        vessel.kind = kind;
        vessel.shape = plan::RectangleShape{units::metres(length + 2 * wall), units::metres(width + 2 * wall)};
        vessel.centre = point(at.x, at.y);
        vessel.baseLevel = units::elevationMetres(at.z - wall);
        vessel.wallHeight = units::metres(depth + wall);
        vessel.wallThickness = units::metres(wall);
        plan.vessels = plan.vessels.with(vessel);
        return vessel.id;
    }
    Id sump(Place at, double length, double width, double depth, double runningLevel)
    {
        const Id id = vessel(plan::VesselKind::sump, at, length, width, depth);
        changeVessel(id, [&](plan::Vessel& v) { v.runningLevel = units::elevationMetres(runningLevel); });
        return id;
    }
    void medium(Id vessel, const std::string& mediumId, double depth)
    {
        changeVessel(vessel, [&](plan::Vessel& v) { v.medium = plan::Medium{mediumId, units::metres(depth)}; });
    }
    // A port at a place on the sheet, not an offset; vessels of this class are not turned.
    Id port(Id vesselId, plan::PortKind kind, Place at, double bore = 0.0)
    {
        plan::Port port;
        port.id = next();
        port.tag = "O" + std::to_string(port.id.number);
        port.kind = kind;
        port.offset = point(at.x, at.y) - plan.vessels.find(vesselId)->centre;
        port.level = units::elevationMetres(at.z);
        if (bore > 0.0)
            port.bore = units::metres(bore);
        changeVessel(vesselId, [&](plan::Vessel& v) { v.ports.push_back(port); });
        return port.id;
    }
    template <class Change> void changePort(Id vesselId, Id portId, Change change)
    {
        changeVessel(vesselId, [&](plan::Vessel& v) {
            for (plan::Port& port : v.ports)
                if (port.id == portId)
                    change(port);
        });
    }
    Id pump(Id vesselId, const std::string& modelId, double outletLevel)
    {
        plan::Pump pump;
        pump.id = next();
        pump.tag = "P" + std::to_string(pump.id.number);
        pump.vessel = vesselId;
        pump.modelId = modelId;
        pump.outletLevel = units::elevationMetres(outletLevel);
        plan.pumps = plan.pumps.with(pump);
        return pump.id;
    }
    Id tee(Place at)
    {
        plan::Tee tee;
        tee.id = next();
        tee.tag = "T" + std::to_string(tee.id.number);
        tee.at = point(at.x, at.y);
        tee.level = units::elevationMetres(at.z);
        plan.tees = plan.tees.with(tee);
        return tee.id;
    }
    Id run(plan::Service service, const std::string& pipeId, plan::RunEnd from, plan::RunEnd to,
           std::initializer_list<Place> places)
    {
        plan::Run run;
        run.id = next();
        run.tag = "R" + std::to_string(run.id.number);
        run.service = service;
        run.pipeId = pipeId;
        run.from = from;
        run.to = to;
        for (const Place& place : places)
            run.vertices.push_back({point(place.x, place.y), units::elevationMetres(place.z), {}, {}});
        plan.runs = plan.runs.with(run);
        return run.id;
    }
    Id valve(Id runId, const std::string& fittingId, double opening, double k = -1.0)
    {
        plan::Valve valve;
        valve.id = next();
        valve.tag = "VL" + std::to_string(valve.id.number);
        valve.fittingId = fittingId;
        valve.opening = opening;
        if (k >= 0.0)
            valve.lossCoefficient = k;
        changeRun(runId, [&](plan::Run& r) { r.valves.push_back(valve); });
        return valve.id;
    }
    // Every bend of the run gets this K.
    void bends(Id runId, double k)
    {
        changeRun(runId, [&](plan::Run& r) {
            for (std::size_t i = 1; i + 1 < r.vertices.size(); ++i)
                r.vertices[i].lossCoefficient = k;
        });
    }
    // A lip with a gravity run of its own into the sump: the lip stands 50 mm above the run's fall.
    Id drain(Id vesselId, Id sumpId, Place lip, double bore, Place into, const std::string& pipeId = "pvcu-pn16-63")
    {
        const Id from = port(vesselId, plan::PortKind::lip, lip, bore);
        const Id to = port(sumpId, plan::PortKind::inlet, into);
        return run(plan::Service::gravity, pipeId, plan::PortEnd{vesselId, from, {}}, plan::PortEnd{sumpId, to, {}},
                   {lip, {lip.x, lip.y, into.z + 0.05}, into});
    }

private:
    static plan::Point point(double x, double y) { return {units::metres(x), units::metres(y)}; }
    Id next() { return Id{plan.nextId++}; }
};

} // namespace sumpwright::test
