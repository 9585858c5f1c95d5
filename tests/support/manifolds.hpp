// Two dividing manifolds drawn as whole plans; every bend and tee has its K given. Tank and beds are kept at constant
// level, so that both running states are the one state the reference cases tell.
#pragma once

#include <vector>

#include "tests/support/drawn_plan.hpp"

namespace sumpwright::test
{

// Sump at +0.20 m, pump G4500, riser 27.2 mm x 2.0 m with K 1.8, five take-offs 1.2 m apart on a header of 27.2 mm:
// J1 to a fish tank (27.2 mm x 3.0 m, K 3.5, mouth +1.30), J2..J5 to beds (17.0 mm x 0.6 m, K 6.0, mouths +1.10).
struct ManifoldM1 {
    DrawnPlan drawn;
    Id sump, tank, pump, riser, tankBranch;
    std::vector<Id> beds, tees, header, bedBranches, bedInlets;

    ManifoldM1()
    {
        using plan::PortKind, plan::Service, plan::VesselKind;
        sump = drawn.sump({0, -1.1, 0}, 1.2, 0.8, 0.6, 0.20);
        pump = drawn.pump(sump, "G4500", 0.1);
        for (int j = 0; j < 5; ++j)
            tees.push_back(drawn.tee({1.2 * j, 0, 1.0}));
        riser = drawn.run(Service::pressure, "pvcu-pn16-32", plan::PumpEnd{pump}, plan::TeeEnd{tees[0], 0.9},
                          {{0, -1.1, 0.1}, {0, -1.1, 1.0}, {0, 0, 1.0}});
        drawn.bends(riser, 0.9);
        for (int j = 0; j < 4; ++j)
            header.push_back(drawn.run(Service::pressure, "pvcu-pn16-32", plan::TeeEnd{tees[j], 0.0},
                                       plan::TeeEnd{tees[j + 1], 0.0}, {{1.2 * j, 0, 1.0}, {1.2 * (j + 1), 0, 1.0}}));
        tank = drawn.vessel(VesselKind::fishTank, {0, 3.2, 0.4}, 1.2, 1.2, 0.85);
        drawn.drain(tank, sump, {0, 3.6, 1.1}, 0.0532, {0.1, -1.1, 0.5});
        const Id tankInlet = drawn.port(tank, PortKind::inlet, {0, 2.7, 1.3});
        tankBranch = drawn.run(Service::pressure, "pvcu-pn16-32", plan::TeeEnd{tees[0], 1.6},
                               plan::PortEnd{tank, tankInlet, {}}, {{0, 0, 1.0}, {0, 0, 1.3}, {0, 2.7, 1.3}});
        drawn.bends(tankBranch, 0.9);
        for (int j = 1; j < 5; ++j)
            addBed(1.2 * j, tees[j]);
    }

private:
    void addBed(double x, Id tee)
    {
        using plan::PortKind, plan::Service;
        beds.push_back(drawn.vessel(plan::VesselKind::mediaBed, {x, 0.9, 0.6}, 1.0, 0.9, 0.4));
        drawn.medium(beds.back(), "expanded-clay", 0.35);
        drawn.drain(beds.back(), sump, {x, 1.2, 0.9}, 0.0426, {0.1 + 0.1 * x / 1.2, -1.2, 0.5});
        bedInlets.push_back(drawn.port(beds.back(), PortKind::inlet, {x, 0.5, 1.1}));
        bedBranches.push_back(drawn.run(Service::pressure, "pvcu-pn16-20", plan::TeeEnd{tee, 4.1},
                                        plan::PortEnd{beds.back(), bedInlets.back(), {}},
                                        {{x, 0, 1.0}, {x, 0, 1.1}, {x, 0.5, 1.1}}));
        drawn.bends(bedBranches.back(), 0.9);
    }
};

// Sump at 0, pump G4500, riser 27.2 mm x 1.5 m with K 2.5, header 27.2 mm in sections of 1.0 m, four equal beds by
// 21.2 mm x 1.0 m with K 5, mouths at +1.0 m.
struct ManifoldM2 {
    DrawnPlan drawn;
    Id sump, pump, riser;
    std::vector<Id> beds, tees, bedBranches;

    ManifoldM2()
    {
        using plan::PortKind, plan::Service;
        sump = drawn.sump({0, -0.8, -0.3}, 1.0, 0.8, 0.6, 0.0);
        pump = drawn.pump(sump, "G4500", -0.1);
        for (int j = 0; j < 4; ++j)
            tees.push_back(drawn.tee({1.0 * j, 0, 0.6}));
        riser = drawn.run(Service::pressure, "pvcu-pn16-32", plan::PumpEnd{pump}, plan::TeeEnd{tees[0], 1.6},
                          {{0, -0.8, -0.1}, {0, -0.8, 0.6}, {0, 0, 0.6}});
        drawn.bends(riser, 0.9);
        for (int j = 0; j < 3; ++j)
            drawn.run(Service::pressure, "pvcu-pn16-32", plan::TeeEnd{tees[j], 0.0}, plan::TeeEnd{tees[j + 1], 0.0},
                      {{1.0 * j, 0, 0.6}, {1.0 * (j + 1), 0, 0.6}});
        for (int j = 0; j < 4; ++j) {
            const double x = 1.0 * j;
            beds.push_back(drawn.vessel(plan::VesselKind::mediaBed, {x, 1.0, 0.5}, 0.9, 0.9, 0.4));
            drawn.medium(beds.back(), "gravel", 0.3);
            drawn.drain(beds.back(), sump, {x, 1.3, 0.8}, 0.0426, {0.1 * j, -0.9, 0.2});
            const Id inlet = drawn.port(beds.back(), PortKind::inlet, {x, 0.6, 1.0});
            bedBranches.push_back(drawn.run(Service::pressure, "pvcu-pn16-25", plan::TeeEnd{tees[j], 3.0},
                                            plan::PortEnd{beds.back(), inlet, 1.0},
                                            {{x, 0, 0.6}, {x, 0, 1.0}, {x, 0.6, 1.0}}));
            drawn.bends(bedBranches.back(), 1.0);
        }
    }
};

} // namespace sumpwright::test
