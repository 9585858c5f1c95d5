// SoundPlan: one tank, one sump and two siphon beds on a floor of 6 x 5 m that raises no error and no warning.
#pragma once

#include <algorithm>

#include "tests/support/drawn_plan.hpp"

namespace sumpwright::test
{

struct SoundPlan {
    DrawnPlan drawn;
    Id sump, tank, bed1, bed2, pump, tee1, tee2;
    Id tankInlet, tankLip;
    Id riser, tankBranch, header, branch1, branch2;
    Id tankDrain, drain1, drain2;

    SoundPlan()
    {
        using plan::PortKind, plan::Service, plan::VesselKind;
        drawn.floor(6.0, 5.0);
        drawn.changeSite([](plan::Site& site) {
            site.altitude = units::metres(120.0);
            site.powerPrice = units::perKilowattHour(0.30);
        });
        sump = drawn.sump({1.0, 1.0, 0.006}, 1.0, 0.8, 0.6, 0.35);
        tank = drawn.vessel(VesselKind::fishTank, {1.0, 3.5, 0.006}, 1.2, 1.2, 0.9);
        tankInlet = drawn.port(tank, PortKind::inlet, {1.0, 3.5, 1.0});
        pump = drawn.pump(sump, "G4500", 0.1);
        tee1 = drawn.tee({1.0, 2.2, 1.2});
        tee2 = drawn.tee({3.0, 2.2, 1.2});
        riser = drawn.run(Service::pressure, "pvcu-pn16-40", plan::PumpEnd{pump}, plan::TeeEnd{tee1, {}},
                          {{1.0, 1.0, 0.1}, {1.0, 1.0, 1.2}, {1.0, 2.2, 1.2}});
        tankBranch = drawn.run(Service::pressure, "pvcu-pn16-32", plan::TeeEnd{tee1, {}},
                               plan::PortEnd{tank, tankInlet, {}}, {{1.0, 2.2, 1.2}, {1.0, 3.5, 1.2}, {1.0, 3.5, 1.0}});
        header = drawn.run(Service::pressure, "pvcu-pn16-32", plan::TeeEnd{tee1, {}}, plan::TeeEnd{tee2, {}},
                           {{1.0, 2.2, 1.2}, {3.0, 2.2, 1.2}});
        tankDrain = drawn.drain(tank, sump, {0.7, 3.5, 0.8}, 0.0638, {0.7, 1.1, 0.55}, "pvcu-pn16-75");
        tankLip = std::get<plan::PortEnd>(drawn.plan.runs.find(tankDrain)->from).port;
        bed1 = addBed({3.0, 1.2, 0.706}, 1.4, branch1, drain1, 0.8);
        bed2 = addBed({3.0, 3.4, 0.706}, 3.1, branch2, drain2, 1.2);
    }

private:
    Id addBed(Place at, double inletY, Id& branch, Id& drain, double sumpY)
    {
        using plan::PortKind, plan::Service;
        const Id bed = drawn.vessel(plan::VesselKind::mediaBed, at, 1.2, 0.8, 0.35);
        drawn.medium(bed, "gravel", 0.3);
        drawn.changeVessel(bed, [](plan::Vessel& v) {
            v.stand = plan::Stand{plan::StandKind::legs, units::kilograms(25.0), 6, units::metres(0.1)};
        });
        const Id inlet = drawn.port(bed, PortKind::inlet, {at.x, inletY, 1.1});
        branch = drawn.run(Service::pressure, "pvcu-pn16-25", plan::TeeEnd{tee2, {}}, plan::PortEnd{bed, inlet, {}},
                           {{3.0, 2.2, 1.2}, {3.0, inletY, 1.2}, {3.0, inletY, 1.1}});
        drain = drawn.drain(bed, sump, {at.x - 0.4, at.y, 0.956}, 0.0266, {1.2, sumpY, 0.55}, "pvcu-pn16-50");
        const Id lip = std::get<plan::PortEnd>(drawn.plan.runs.find(drain)->from).port;
        drawn.changePort(bed, lip, [](plan::Port& port) { port.drainLevel = units::elevationMetres(0.736); });
        return bed;
    }
};

} // namespace sumpwright::test
