#include "tests/ui/canvas_sample.hpp"

#include <gtest/gtest.h>

#include "core/catalogue/catalogue.hpp"
#include "core/plan/edits/draw_run.hpp"
#include "core/plan/edits/fixture.hpp"
#include "core/plan/edits/floor.hpp"
#include "core/plan/edits/place.hpp"
#include "core/plan/edits/rename.hpp"
#include "core/plan/edits/valve.hpp"
#include "core/plan/edits/vessel.hpp"

namespace sumpwright::test
{

using plan::Plan;
using units::elevationMetres;
using units::metres;

plan::Point at(double x, double y) { return {metres(x), metres(y)}; }

Plan applied(const Plan& plan, const plan::Edit& edit)
{
    auto outcome = edit.apply(plan);
    if (!outcome) {
        ADD_FAILURE() << edit.intent << ": " << base::oneLine(outcome.refusal());
        return plan;
    }
    return std::move(outcome).value();
}

base::Id idOf(const Plan& plan, const std::string& tag)
{
    base::Id found;
    const auto look = [&](const auto& table) {
        for (const auto& element : table)
            if (element->tag == tag)
                found = element->id;
    };
    look(plan.vessels), look(plan.pumps), look(plan.runs), look(plan.tees), look(plan.fixtures);
    EXPECT_TRUE(found.valid()) << "no element " << tag;
    return found;
}

namespace
{
std::string pipeOf(double millimetres, bool gravity)
{
    std::string best;
    double off = 1e9;
    for (const auto& pipe : catalogue::Catalogue::builtIn()->pipes()) {
        const double d = std::abs(units::inMillimetres(pipe.outsideDiameter) - millimetres);
        if (d < off && (gravity || !pipe.gravityOnly)) {
            off = d;
            best = pipe.id;
        }
    }
    return best;
}

plan::Vertex vertex(double x, double y, double level)
{
    plan::Vertex v;
    v.at = at(x, y);
    v.level = elevationMetres(level);
    return v;
}

base::Id place(Plan& plan, plan::VesselKind kind, plan::Point centre, plan::Shape shape, double base, double height)
{
    const base::Id id{plan.nextId};
    plan::VesselWish wish;
    wish.kind = kind;
    wish.centre = centre;
    wish.shape = shape;
    wish.baseLevel = elevationMetres(base);
    wish.wallHeight = metres(height);
    plan = applied(plan, plan::placeVessel(wish));
    return id;
}

base::Id draw(Plan& plan, plan::Service service, double od, plan::Target from, plan::Target to,
              std::vector<plan::Vertex> vertices)
{
    const base::Id id{plan.nextId};
    plan::RunWish wish;
    wish.service = service;
    wish.pipeId = pipeOf(od, service == plan::Service::gravity);
    wish.from = from;
    wish.to = to;
    wish.vertices = std::move(vertices);
    plan = applied(plan, plan::drawRun(wish));
    return id;
}

plan::Target portOf(const Plan& plan, base::Id vessel, plan::PortKind kind)
{
    const auto* found = plan.vessels.find(vessel);
    for (const auto& port : found->ports)
        if (port.kind == kind && !plan::runAtPort(plan, vessel, port.id))
            return plan::AtPort{vessel, port.id};
    ADD_FAILURE() << "no free port on " << found->tag << " of kind " << int(kind);
    return plan::Nowhere{};
}

void addBuilding(Plan& plan)
{
    plan = applied(plan, plan::setOutline({at(0, 0), at(9, 0), at(9, 6), at(0, 6)}));
    plan = applied(plan, plan::setFloorFall(units::metresPerMetre(0.01), units::degrees(-90.0)));
    plan = applied(plan, plan::setDrainPoint(at(8.6, 0.4)));
    using plan::FixtureKind;
    for (const auto& [a, b] :
         {std::pair(at(0, 6), at(9, 6)), std::pair(at(0, 0), at(0, 6)), std::pair(at(9, 6), at(9, 2.2))})
        plan = applied(plan, plan::placeFixture(FixtureKind::wall, a, b));
    plan = applied(plan, plan::placeFixture(FixtureKind::door, at(0, 1.4), at(0, 0.5)));
    plan = applied(plan, plan::placeFixture(FixtureKind::post, at(4.4, 3.2), at(4.4, 3.2)));
    plan = applied(plan, plan::placeFixture(FixtureKind::powerPoint, at(0.6, 5.9), at(0.6, 5.9)));
    plan = applied(plan, plan::placeNote(at(5.2, 0.75), "Keep this aisle free for the trolley"));
    plan = applied(plan, plan::placeDimension(at(0, 0), at(9, 0), metres(-0.55)));
    plan = applied(plan, plan::placeDimension(at(9, 0), at(9, 6), metres(-0.5)));
}
} // namespace

namespace
{
// The station of a run nearest to a place.
plan::OntoRun onto(const Plan& plan, plan::Service service, double x, double y)
{
    plan::OntoRun best;
    double least = 1e9;
    for (const auto& run : plan.runs)
        for (int i = 2; i < 999 && run->service == service; ++i) {
            const auto there = plan::placeAlong(*run, i / 1000.0).at;
            const double off = units::inMetres(plan::distanceBetween(there, at(x, y)));
            if (off < least - 1e-6) {
                least = off;
                best = {run->id, i / 1000.0};
            }
        }
    return best;
}

void addSupply(Plan& plan, base::Id pump, base::Id tank, const std::vector<base::Id>& beds)
{
    using plan::Service;
    const auto tankInlet = portOf(plan, tank, plan::PortKind::inlet);
    const auto mouth = *plan::placeOf(plan, tankInlet);
    const double y = units::inMetres(mouth.at.y);
    draw(plan, Service::pressure, 40, plan::AtPump{pump}, tankInlet,
         {vertex(2.1, 2.2, 0.3), vertex(2.1, 2.2, 1.4), vertex(3.0, 2.2, 1.4), vertex(3.0, y + 0.3, 2.05),
          vertex(units::inMetres(mouth.at.x), y + 0.3, 2.05), mouth});
    draw(plan, Service::pressure, 32, onto(plan, Service::pressure, 3.0, 3.25), plan::Nowhere{},
         {vertex(3.0, 3.25, 1.4), vertex(8.6, 3.25, 1.4)});
    int valve = 0;
    for (const auto bed : beds) {
        const auto inlet = portOf(plan, bed, plan::PortKind::inlet);
        const auto end = *plan::placeOf(plan, inlet);
        const double x = units::inMetres(end.at.x);
        const auto start = onto(plan, Service::pressure, x, 3.25);
        const auto branch = draw(plan, Service::pressure, 25, start, inlet,
                                 {*plan::placeOf(plan, start), vertex(x, units::inMetres(end.at.y), 1.4), end});
        plan = applied(plan, plan::addValve(branch, valve++ % 3 ? "ball-valve" : "gate-valve", 0.4));
    }
}

void addDrains(Plan& plan, base::Id sump, base::Id tank, const std::vector<base::Id>& beds)
{
    using plan::Service;
    for (const double gutter : {3.65, 0.95}) {
        bool first = true;
        for (const auto bed : beds) {
            if ((plan.vessels.find(bed)->centre.y > metres(3.25)) != (gutter > 3.25))
                continue;
            const auto lip = portOf(plan, bed, plan::PortKind::lip);
            const auto start = *plan::placeOf(plan, lip);
            const double x = units::inMetres(start.at.x);
            const double y = units::inMetres(start.at.y);
            std::vector<plan::Vertex> way{start, vertex(x, y, 0.86), vertex(x, gutter, 0.84)};
            if (first) { // the first one goes on to the sump
                const double side = gutter > 3.25 ? 0.72 : -0.72;
                way.push_back(vertex(1.2, gutter, 0.78));
                way.push_back(vertex(1.2, 2.4 + side, 0.77));
                const plan::NewPort into{sump, plan::PortKind::inlet, at(-0.3, side), elevationMetres(0.76)};
                draw(plan, Service::gravity, 63, lip, into, way);
            } else {
                const auto tee = onto(plan, Service::gravity, x, gutter);
                draw(plan, Service::gravity, 50, lip, tee, way);
            }
            first = false;
        }
    }
    const auto overflow = portOf(plan, tank, plan::PortKind::lip);
    const auto start = *plan::placeOf(plan, overflow);
    const double x = units::inMetres(start.at.x);
    const double y = units::inMetres(start.at.y);
    draw(plan, Service::gravity, 75, overflow,
         plan::NewPort{sump, plan::PortKind::inlet, at(-0.8, 0.72), elevationMetres(0.78)},
         {start, vertex(x, y, 0.86), vertex(0.7, y, 0.85), vertex(0.7, 3.12, 0.8)});
}
} // namespace

Plan samplePlan()
{
    using plan::VesselKind;
    Plan plan;
    addBuilding(plan);
    const auto tank = place(plan, VesselKind::fishTank, at(1.6, 4.6), plan::RoundShape{metres(2.0)}, 0.9, 1.0);
    const auto sump =
        place(plan, VesselKind::sump, at(1.5, 2.4), plan::RectangleShape{metres(2.2), metres(1.6)}, 0.0, 0.8);
    plan = applied(plan, plan::setRunningLevel({sump}, elevationMetres(0.66)));
    std::vector<base::Id> beds;
    for (int column = 2; column >= 0; --column) // the farthest first: its drain is the trunk
        for (int row = 0; row < 2; ++row)
            beds.push_back(place(plan, VesselKind::mediaBed, at(4.1 + 1.85 * column, row ? 4.8 : 2.0),
                                 plan::RectangleShape{metres(1.2), metres(1.6)}, 0.9, 0.35));
    const base::Id pump{plan.nextId};
    plan = applied(plan, plan::placePump(sump, at(2.1, 2.2), "G8000"));
    addSupply(plan, pump, tank, beds);
    addDrains(plan, sump, tank, beds);
    return plan;
}

Plan largePlan(int beds)
{
    Plan plan;
    plan = applied(plan, plan::setOutline({at(0, 0), at(30, 0), at(30, 30), at(0, 30)}));
    for (int i = 0; i < beds; ++i) {
        const double x = 1.0 + 2.6 * (i % 11);
        const double y = 1.2 + 2.8 * (i / 11);
        const auto bed = place(plan, plan::VesselKind::mediaBed, at(x, y),
                               plan::RectangleShape{metres(1.2), metres(2.0)}, 0.5, 0.35);
        draw(plan, plan::Service::gravity, 50, portOf(plan, bed, plan::PortKind::lip), plan::Nowhere{},
             {*plan::placeOf(plan, portOf(plan, bed, plan::PortKind::lip)), vertex(x, y, 0.4), vertex(x + 0.9, y, 0.4),
              vertex(x + 0.9, y + 1.2, 0.35), vertex(x + 1.6, y + 1.2, 0.3)});
    }
    return plan;
}

} // namespace sumpwright::test
