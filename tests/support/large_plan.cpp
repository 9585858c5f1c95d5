#include "tests/support/large_plan.hpp"

#include <memory>
#include <string>
#include <utility>

#include "core/plan/run_ends.hpp"
#include "tests/support/drawn_plan.hpp"

namespace sumpwright::test
{
namespace
{

using plan::PortKind, plan::Service, plan::VesselKind;

constexpr int rows = 10;
constexpr int columns = 10;
constexpr int tankCount = 12;
constexpr double header = 1.2;      // level of all feed pipes
constexpr double mouthLevel = 1.16; // of every inlet
constexpr double spacing = 2.2;     // between columns
constexpr double rowSpacing = 3.2;  // between rows
constexpr double nearest = 2.0;     // x of the first column
// Riser 1, mains 10, tanks 12 x 3, an emergency overflow, beds 100 x 8; fourth mouths, two runs each, make up the rest.
constexpr std::size_t wanted = 1000;

class Yard
{
public:
    LargePlan draw()
    {
        drawSumpAndPump();
        for (int row = 0; row < rows; ++row)
            drawRow(row);
        drawTanks();
        addFourthMouths();
        settleEnds();
        m_made.plan = m_drawn.plan;
        return m_made;
    }

private:
    struct SprayEnd { // of a bed with three mouths: where a fourth can be added
        Id bed, tee, last;
        double x = 0.0, y = 0.0;
    };

    struct Joint {
        Id tee;
        Place at;
    };

    static double rowAt(int row) { return 3.0 + rowSpacing * row; }
    static double collectorAt(double bedX) { return 0.55 + 0.012 * bedX; }
    static double columnAt(int column) { return nearest + spacing * column; }
    Id pipe(const std::string& pipeId, plan::RunEnd from, plan::RunEnd to, std::initializer_list<Place> places)
    {
        return m_drawn.run(Service::pressure, pipeId, std::move(from), std::move(to), places);
    }

    void drawSumpAndPump()
    {
        plan::Floor floor;
        for (const auto& [x, y] : {std::pair{-6.0, -1.0}, {30.0, -1.0}, {30.0, 42.0}, {-6.0, 42.0}})
            floor.outline.push_back({units::metres(x), units::metres(y)});
        m_drawn.plan.floor = std::make_shared<const plan::Floor>(floor);
        m_drawn.changeSite([](plan::Site& site) {
            site.name = "Large yard";
            site.altitude = units::metres(120.0);
            site.powerPrice = units::perKilowattHour(0.30);
        });
        m_made.sump = m_drawn.sump({-3.0, 18.0, 0.006}, 2.0, 34.0, 0.7, 0.4);
        m_made.pump = m_drawn.pump(m_made.sump, "", 0.1);
        m_drawn.changePump(m_made.pump, [](plan::Pump& pump) {
            for (const auto& [flow, head] : {std::pair{0.0, 7.0}, {30.0, 6.5}, {60.0, 5.4}, {90.0, 3.6}, {120.0, 1.2}})
                pump.ownCurve.push_back({units::litresPerHour(flow * 1e3), units::metresHead(head)});
            pump.ownPower = units::watts(2600.0);
        });
    }

    // The main climbs x = 0 from row to row; each row starts at its tee.
    void drawRow(int row)
    {
        const double y = rowAt(row);
        const Id tee = extendMain(y);
        Id before = tee;
        double from = 0.0;
        Joint collector;
        for (int column = 0; column < columns; ++column) {
            const double x = columnAt(column);
            const Id next = m_drawn.tee({x, y, header});
            pipe("pvcu-pn16-63", plan::TeeEnd{before, {}}, plan::TeeEnd{next, {}}, {{from, y, header}, {x, y, header}});
            const Id bed = drawBed(x, y + 0.9);
            drawSpray(bed, next, x, y);
            collector = drawDrain(bed, x, y + 0.9, collector);
            before = next;
            from = x;
        }
    }

    Id extendMain(double y)
    {
        const Id tee = m_drawn.tee({0.0, y, header});
        if (m_main.valid())
            pipe("pvcu-pn10-160", plan::TeeEnd{m_main, {}}, plan::TeeEnd{tee, {}},
                 {{0.0, m_mainAt, header}, {0.0, y, header}});
        else
            m_made.riser = pipe(
                "pvcu-pn10-160", plan::PumpEnd{m_made.pump}, plan::TeeEnd{tee, {}},
                {{-3.0, 18.0, 0.1}, {-3.0, 18.0, header}, {-1.0, 18.0, header}, {-1.0, y, header}, {0.0, y, header}});
        m_main = tee;
        m_mainAt = y;
        return tee;
    }

    Id drawBed(double x, double y)
    {
        const Id bed = m_drawn.vessel(VesselKind::mediaBed, {x, y, 0.706}, 1.2, 0.8, 0.35);
        m_drawn.medium(bed, "gravel", 0.3);
        m_drawn.changeVessel(bed, [](plan::Vessel& v) {
            v.stand = plan::Stand{plan::StandKind::legs, units::kilograms(25.0), 6, units::metres(0.1)};
        });
        m_made.beds.push_back(bed);
        return bed;
    }

    Id mouth(Id bed, Id from, double x, double fromY, double y)
    {
        const Id port = m_drawn.port(bed, PortKind::inlet, {x, y, mouthLevel});
        if (fromY == y)
            return pipe("pvcu-pn16-20", plan::TeeEnd{from, {}}, plan::PortEnd{bed, port, {}},
                        {{x, y, header}, {x, y, mouthLevel}});
        return pipe("pvcu-pn16-20", plan::TeeEnd{from, {}}, plan::PortEnd{bed, port, {}},
                    {{x, fromY, header}, {x, y, header}, {x, y, mouthLevel}});
    }

    // Row tee -> first tee over the bed -> second tee; a mouth under each and one at the end.
    void drawSpray(Id bed, Id rowTee, double x, double y)
    {
        const Id first = m_drawn.tee({x, y + 0.6, header});
        const Id feed = pipe("pvcu-pn16-25", plan::TeeEnd{rowTee, {}}, plan::TeeEnd{first, {}},
                             {{x, y, header}, {x, y + 0.6, header}});
        mouth(bed, first, x, y + 0.6, y + 0.6);
        const Id second = m_drawn.tee({x, y + 0.8, header});
        pipe("pvcu-pn16-25", plan::TeeEnd{first, {}}, plan::TeeEnd{second, {}},
             {{x, y + 0.6, header}, {x, y + 0.8, header}});
        mouth(bed, second, x, y + 0.8, y + 0.8);
        const Id last = mouth(bed, second, x, y + 0.8, y + 1.0);
        m_sprays.push_back({bed, second, last, x, y});
        if (m_made.beds.size() == rows * columns / 2) {
            m_made.middleBed = bed;
            m_made.valveRun = feed;
            m_made.valve = m_drawn.valve(feed, "ball-valve", 1.0);
        }
    }

    // Siphon and drain into the collector, which falls 12 mm in a metre towards the sump. Gives back the collector's
    // tee.
    Joint drawDrain(Id bed, double x, double y, const Joint& before)
    {
        const Place lip{x - 0.4, y, 0.956};
        const Place joint{x - 0.4, y + 0.7, collectorAt(x)};
        const Id port = m_drawn.port(bed, PortKind::lip, lip, 0.0326);
        m_drawn.changePort(bed, port, [](plan::Port& p) { p.drainLevel = units::elevationMetres(0.736); });
        const Id tee = m_drawn.tee(joint);
        m_drawn.run(Service::gravity, "pvcu-pn16-50", plan::PortEnd{bed, port, {}}, plan::TeeEnd{tee, {}},
                    {lip, {lip.x, lip.y, joint.z + 0.02}, joint});
        if (!before.tee.valid()) {
            const Place into{-2.2, joint.y, 0.53};
            const Id inlet = m_drawn.port(m_made.sump, PortKind::inlet, into);
            m_drawn.run(Service::gravity, "pvcu-pn10-110", plan::TeeEnd{tee, {}}, plan::PortEnd{m_made.sump, inlet, {}},
                        {joint, into});
        } else {
            m_drawn.run(Service::gravity, "pvcu-pn10-110", plan::TeeEnd{tee, {}}, plan::TeeEnd{before.tee, {}},
                        {joint, before.at});
        }
        return {tee, joint};
    }

    void drawTanks()
    {
        const double y = rowAt(rows);
        Id before = extendMain(y);
        double from = 0.0;
        for (int i = 0; i < tankCount; ++i) {
            const double x = columnAt(i);
            const Id tee = m_drawn.tee({x, y, header});
            pipe("pvcu-pn16-75", plan::TeeEnd{before, {}}, plan::TeeEnd{tee, {}}, {{from, y, header}, {x, y, header}});
            const Id tank = m_drawn.vessel(VesselKind::fishTank, {x, y + 1.2, 0.106}, 1.2, 1.2, 0.9);
            m_drawn.changeVessel(tank, [](plan::Vessel& v) { v.stand.emplace().kind = plan::StandKind::blocks; });
            const Id inlet = m_drawn.port(tank, PortKind::inlet, {x, y + 1.2, mouthLevel});
            pipe("pvcu-pn16-40", plan::TeeEnd{tee, {}}, plan::PortEnd{tank, inlet, {}},
                 {{x, y, header}, {x, y + 1.2, header}, {x, y + 1.2, mouthLevel}});
            const double lane = y - 0.6 - 0.08 * i;
            const Place lip{x + 0.3, y + 0.8, 0.9};
            const Place into{-2.2 - 0.05 * i, 34.5, 0.53};
            const Id out = m_drawn.port(tank, PortKind::lip, lip, 0.0638);
            const Id in = m_drawn.port(m_made.sump, PortKind::inlet, into);
            m_drawn.run(Service::gravity, "pvcu-pn16-75", plan::PortEnd{tank, out, {}},
                        plan::PortEnd{m_made.sump, in, {}},
                        {lip, {lip.x, lip.y, 0.85}, {lip.x, lane, 0.84}, {into.x, lane, 0.6}, into});
            if (i == 0)
                m_drawn.drain(tank, m_made.sump, {x - 0.3, y + 0.8, 0.96}, 0.0638, {-2.4, 34.7, 0.53});
            m_made.tanks.push_back(tank);
            before = tee;
            from = x;
        }
    }

    // Splits the last mouth of the spray pipes, from the first bed on, until the plan has as many runs as wanted.
    void addFourthMouths()
    {
        for (std::size_t i = 0; i < m_sprays.size() && m_drawn.plan.runs.size() + 2 <= wanted; ++i) {
            const SprayEnd& spray = m_sprays[i];
            const Id tee = m_drawn.tee({spray.x, spray.y + 1.0, header});
            m_drawn.changeRun(spray.last, [&](plan::Run& run) {
                run.from = plan::TeeEnd{tee, {}};
                run.vertices.erase(run.vertices.begin());
            });
            pipe("pvcu-pn16-25", plan::TeeEnd{spray.tee, {}}, plan::TeeEnd{tee, {}},
                 {{spray.x, spray.y + 0.8, header}, {spray.x, spray.y + 1.0, header}});
            mouth(spray.bed, tee, spray.x, spray.y + 1.0, spray.y + 1.15);
        }
    }

    // To the last bit, as edits leave them.
    void settleEnds()
    {
        const plan::Plan drawn = m_drawn.plan;
        for (const auto& each : drawn.runs)
            m_drawn.changeRun(each->id, [&drawn](plan::Run& run) {
                for (const plan::RunSide side : {plan::RunSide::from, plan::RunSide::to}) {
                    plan::Vertex& end = side == plan::RunSide::from ? run.vertices.front() : run.vertices.back();
                    const auto place = plan::placeOf(drawn, plan::endOf(run, side));
                    end.at = place->at;
                    end.level = place->level;
                }
            });
    }

    DrawnPlan m_drawn;
    LargePlan m_made;
    std::vector<SprayEnd> m_sprays;
    Id m_main;
    double m_mainAt = 0.0;
};

} // namespace

LargePlan largePlan() { return Yard().draw(); }

} // namespace sumpwright::test
