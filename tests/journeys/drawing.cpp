#include "tests/journeys/drawing.hpp"

#include <cmath>
#include <map>

#include <gtest/gtest.h>

#include "core/catalogue/catalogue.hpp"

namespace sumpwright::tests
{
namespace
{

using Json = nlohmann::json;

QString text(const Json& json) { return QString::fromStdString(json.get<std::string>()); }
double metres(const Json& json) { return numberOf(text(json)); }
QString percent(double share) { return QString::number(share * 100.0, 'g', 6) + QStringLiteral(" %"); }

template <class Fields> void enterAll(Hands& hands, const Json& from, const Fields& fields)
{
    for (const auto& [key, name] : fields)
        if (from.contains(key))
            hands.enter(QString::fromLatin1(name), text(from.at(key)));
}

using Names = std::vector<std::pair<const char*, const char*>>;

void describeSite(Hands& hands, const Json& site)
{
    hands.command("check.site");
    enterAll(hands, site,
             Names{{"name", "Name"},
                   {"client", "Client"},
                   {"designer", "Designer"},
                   {"altitude", "Altitude"},
                   {"design_water", "Design water temperature"},
                   {"design_air", "Design air temperature"},
                   {"north", "Direction of north"},
                   {"currency", "Currency"},
                   {"power_price", "Power price"},
                   {"aisle_width", "Aisle width"},
                   {"reach", "Reach of a hand"},
                   {"headroom", "Headroom over a rim"},
                   {"door_margin", "Door wider than vessel by"}});
}

void drawFloor(Hands& hands, const Json& floor)
{
    hands.command("place.floor");
    const Json& outline = floor.at("outline");
    hands.drag(metres(outline[0][0]), metres(outline[0][1]), metres(outline[2][0]), metres(outline[2][1]));
    hands.command("view.fit");
    hands.command("check.datum");
    if (floor.contains("drain_point")) {
        hands.enter(QStringLiteral("Drain point, x"), text(floor["drain_point"][0]));
        hands.enter(QStringLiteral("Drain point, y"), text(floor["drain_point"][1]));
    }
    enterAll(hands, floor,
             Names{{"clear_height", "Floor to ceiling"},
                   {"thickness", "Slab thickness"},
                   {"fall", "Fall"},
                   {"fall_direction", "Direction it falls to"}});
}

void placeFixtures(Hands& hands, const Json& fixtures)
{
    const std::map<std::string, const char*> tools{
        {"wall", "place.wall"}, {"door", "place.door"}, {"power-point", "place.power-point"}};
    std::string last;
    for (const Json& fixture : fixtures) {
        const std::string kind = fixture.at("kind");
        const Json& from = fixture.at("from");
        const Json& to = fixture.at("to");
        if (kind != last || kind != "wall") {
            if (last == "wall")
                hands.endLine();
            hands.command(tools.at(kind));
            hands.point(metres(from[0]), metres(from[1]));
        }
        if (kind != "power-point")
            hands.point(metres(to[0]), metres(to[1]));
        last = kind;
    }
    hands.command("select");
    for (const Json& fixture : fixtures) {
        if (testing::Test::HasFailure())
            return;
        hands.select(text(fixture.at("tag")));
        const bool spot = fixture.at("kind") == "power-point";
        hands.enter(spot ? QStringLiteral("x, to the right") : QStringLiteral("Start, x"), text(fixture["from"][0]));
        hands.enter(spot ? QStringLiteral("y, up the sheet") : QStringLiteral("Start, y"), text(fixture["from"][1]));
        if (!spot) {
            hands.enter(QStringLiteral("End, x"), text(fixture["to"][0]));
            hands.enter(QStringLiteral("End, y"), text(fixture["to"][1]));
        }
        hands.enter(QStringLiteral("Level"), text(fixture.at("level")));
    }
}

void placePorts(Hands& hands, const Json& vessel)
{
    const std::map<std::string, QString> buttons{
        {"inlet", QStringLiteral("Add inlet")},
        {"lip", vessel.at("kind") == "media-bed" ? QStringLiteral("Add standpipe") : QStringLiteral("Add overflow")}};
    for (const Json& port : vessel.at("ports")) {
        const auto field = [&](const char* what) {
            return QString::fromLatin1(what) + QStringLiteral(", *") + text(port.at("tag"));
        };
        if (!hands.named(field("Level")))
            hands.push(buttons.at(port.at("kind")));
        hands.enter(field("Level"), text(port.at("level")));
        if (port.contains("drain_level"))
            hands.enter(field("Siphon breaks at"), text(port["drain_level"]));
        if (port.contains("bore"))
            hands.enter(field("Bore"), text(port["bore"]));
        hands.enter(field("Along its length"), text(port.at("offset")[0]));
        hands.enter(field("Along its width"), text(port.at("offset")[1]));
    }
}

void placeVessel(Hands& hands, const Json& vessel)
{
    const std::map<std::string, const char*> tools{{"fish-tank round", "place.fish-tank"},
                                                   {"fish-tank caged", "place.fish-tank-caged"},
                                                   {"sump rectangle", "place.sump"},
                                                   {"media-bed rectangle", "place.media-bed"}};
    hands.command(tools.at(vessel.at("kind").get<std::string>() + " " + vessel.at("shape").get<std::string>()));
    hands.point(metres(vessel["centre"][0]), metres(vessel["centre"][1]));
    enterAll(hands, vessel,
             Names{{"length", "Length, outside"}, {"width", "Width, outside"}, {"diameter", "Diameter, outside"}});
    hands.enter(QStringLiteral("x, to the right"), text(vessel["centre"][0]));
    hands.enter(QStringLiteral("y, up the sheet"), text(vessel["centre"][1]));
    enterAll(hands, vessel,
             Names{{"turn", "Turn"},
                   {"base_level", "Base level"},
                   {"wall_height", "Wall height, base to rim"},
                   {"wall_thickness", "Wall thickness"},
                   {"running_level", "Level while running, beds drained"}});
    if (vessel.contains("medium"))
        hands.enter(QStringLiteral("Depth of medium"), text(vessel["medium"]["depth"]));
    placePorts(hands, vessel);
}

void placePump(Hands& hands, const Json& pump, const Json& vessels)
{
    for (const Json& vessel : vessels)
        if (vessel.at("id") == pump.at("vessel")) {
            hands.command("place.pump");
            for (const auto& each : catalogue::Catalogue::builtIn()->pumps())
                if (each.id == pump.at("model"))
                    hands.choose(QStringLiteral("Pump"), QString::fromStdString(each.name));
            hands.point(metres(vessel["centre"][0]) + metres(pump["offset"][0]),
                        metres(vessel["centre"][1]) + metres(pump["offset"][1]));
            hands.enter(QStringLiteral("x, to the right"),
                        QString::number(metres(vessel["centre"][0]) + metres(pump["offset"][0])) +
                            QStringLiteral(" m"));
            hands.enter(QStringLiteral("y, up the sheet"),
                        QString::number(metres(vessel["centre"][1]) + metres(pump["offset"][1])) +
                            QStringLiteral(" m"));
            enterAll(hands, pump, Names{{"outlet_level", "Outlet level"}});
        }
}

QString pipeName(const std::string& id)
{
    for (const auto& pipe : catalogue::Catalogue::builtIn()->pipes())
        if (pipe.id == id)
            return QString::fromStdString(pipe.name);
    return {};
}

QString levelText(double level) { return QString::number(level, 'f', 6) + QStringLiteral(" m"); }

void drawRun(Hands& hands, const Stroke& stroke)
{
    hands.command("place.run");
    hands.pipe(pipeName(stroke.pipe));
    const auto& corners = stroke.corners;
    const auto samePlace = [&](std::size_t a, std::size_t b) {
        return std::hypot(corners[a].x - corners[b].x, corners[a].y - corners[b].y) < 1e-4;
    };
    hands.point(corners[0].x, corners[0].y);
    double level = corners[0].level;
    std::size_t drawn = 1;                             // vertices so far
    std::vector<std::pair<std::size_t, double>> falls; // vertex as the form counts, and its level
    bool spare = false;
    for (std::size_t i = 1; i < corners.size(); ++i) {
        const bool endsHere = i + 1 == corners.size() || (i + 2 == corners.size() && samePlace(i, i + 1));
        ++drawn;
        if (samePlace(i, i - 1) && !endsHere) {
            hands.level(levelText(corners[i].level));
            level = corners[i].level;
            continue;
        }
        if (endsHere) {
            hands.point(corners[i].x, corners[i].y);
            spare = i + 1 == corners.size() && std::fabs(corners[i].level - level) > 1e-6 && !samePlace(i, i - 1);
            break;
        }
        hands.corner(corners[i].x, corners[i].y, corners[i - 1].x, corners[i - 1].y);
        if (std::fabs(corners[i].level - level) > 1e-6)
            falls.emplace_back(drawn, corners[i].level);
    }
    for (const auto& [vertex, wanted] : falls)
        hands.enter(QStringLiteral("Vertex %1, centre line").arg(vertex), levelText(wanted));
    if (spare) // level to the end, and down there: the vertex above is too much
        hands.push(QStringLiteral("Remove vertex %1").arg(drawn));
}

void finishRun(Hands& hands, const Json& run)
{
    const Json valves = run.value("valves", Json::array());
    if (valves.empty() && hands.toldOf(text(run.at("tag"))).startsWith(pipeName(run.at("pipe"))))
        return;              // as it was drawn
    hands.command("select"); // the pipe tool's own fields go
    hands.select(text(run.at("tag")));
    hands.choose(QStringLiteral("Pipe"), pipeName(run.at("pipe")));
    for (const Json& valve : valves) {
        hands.push(QStringLiteral("Add a ball valve in the middle"));
        hands.enter(QStringLiteral("Open, *") + text(valve.at("tag")), percent(valve.at("opening")));
        hands.enter(QStringLiteral("Place, *") + text(valve.at("tag")), percent(valve.at("station")));
    }
}

} // namespace

void drawAll(Hands& hands, const Json& plan, const std::vector<Stroke>& strokes)
{
    const auto stop = [] { return testing::Test::HasFailure(); };
    drawFloor(hands, plan.at("floor"));
    describeSite(hands, plan.at("site"));
    if (!plan.at("fixtures").empty())
        placeFixtures(hands, plan.at("fixtures"));
    for (const Json& vessel : plan.at("vessels"))
        if (!stop())
            placeVessel(hands, vessel);
    for (const Json& pump : plan.at("pumps"))
        if (!stop())
            placePump(hands, pump, plan.at("vessels"));
    for (const Stroke& stroke : strokes)
        if (!stop())
            drawRun(hands, stroke);
    std::vector<Json> runs(plan.at("runs").begin(), plan.at("runs").end());
    std::sort(runs.begin(), runs.end(), [](const Json& a, const Json& b) {
        const auto valve = [](const Json& run) {
            return run.contains("valves") ? run["valves"][0]["tag"].get<std::string>() : "~";
        };
        return valve(a) < valve(b);
    });
    for (const Json& run : runs)
        if (!stop())
            finishRun(hands, run);
    for (const Json& note : plan.at("notes"))
        if (!stop()) {
            hands.command("place.note");
            hands.point(metres(note["at"][0]), metres(note["at"][1]));
            hands.typeWords(text(note.at("text")));
            hands.confirm();
            hands.enter(QStringLiteral("x, to the right"), text(note["at"][0]));
            hands.enter(QStringLiteral("y, up the sheet"), text(note["at"][1]));
        }
    for (const Json& line : plan.at("dimensions"))
        if (!stop()) {
            hands.command("place.dimension");
            hands.point(metres(line["from"][0]), metres(line["from"][1]));
            hands.point(metres(line["to"][0]), metres(line["to"][1]));
            hands.point((metres(line["from"][0]) + metres(line["to"][0])) / 2.0 + 0.3,
                        (metres(line["from"][1]) + metres(line["to"][1])) / 2.0 - 0.3);
            hands.enter(QStringLiteral("Drawn off by"), text(line.at("offset")));
        }
}

std::vector<Stroke> strokesOfCommunityShed()
{
    const auto p40 = "pvcu-pn10-40", p25 = "pvcu-pn16-25";
    const auto w50 = "waste-pvcu-50", w75 = "waste-pvcu-75";
    const double duct = -0.06, over = 0.88, mouth = 0.8, lip = 0.73;
    // A bed's own pipe, straight down onto the drain below or off the main beside it.
    const auto down = [&](double x, double y) { return Stroke{w50, {{x, y, lip}, {x, y, -0.07}}}; };
    const auto off = [&](double x, double from, double to) {
        return Stroke{p25, {{x, from, over}, {x, to, over}, {x, to, mouth}}};
    };
    return {
        {p40,
         {{2.4, 1.6, -0.55},
          {2.4, 1.6, duct},
          {2.95, 1.6, duct},
          {2.95, 5.55, duct},
          {2.95, 5.55, over},
          {7.8, 5.55, over},
          {7.8, 5.18, over},
          {7.8, 5.18, mouth}}},
        {p40,
         {{2.95, 1.6, duct},
          {2.95, 0.45, duct},
          {2.95, 0.45, over},
          {7.8, 0.45, over},
          {7.8, 0.82, over},
          {7.8, 0.82, mouth}}},
        {p40, {{2.95, 4.3, duct}, {2.8, 4.3, duct}, {2.8, 4.3, 1.2}, {2.5, 4.3, 1.2}, {2.5, 4.3, 1.02}}},
        off(4.4, 5.55, 5.18),
        off(6.1, 5.55, 5.18),
        off(4.4, 0.45, 0.82),
        off(6.1, 0.45, 0.82),
        {w75,
         {{7.8, 3.8, lip},
          {7.8, 3.8, -0.04},
          {3.3, 3.8, -0.09},
          {3.3, 2.6, -0.125},
          {2.1, 2.6, -0.14},
          {2.1, 1.8, -0.15}}},
        down(6.1, 3.8),
        down(4.4, 3.8),
        {w75, {{7.8, 2.2, lip}, {7.8, 2.2, -0.04}, {3.3, 2.2, -0.11}, {3.3, 1.2, -0.13}, {2.5, 1.2, -0.14}}},
        down(6.1, 2.2),
        down(4.4, 2.2),
        {w75, {{1.65, 3.5, 0.95}, {1.65, 3.5, duct}, {1.65, 1.95, -0.12}}},
        {w75, {{1.15, 3.6, 1.01}, {1.15, 3.6, duct}, {1.15, 1.95, -0.12}}},
    };
}

std::vector<Stroke> strokesOfBackGarden()
{
    const auto p40 = "pvcu-pn10-40", p32 = "pvcu-pn16-32", p25 = "pvcu-pn16-25", w50 = "waste-pvcu-50";
    return {
        {p40,
         {{1.4, 0.7, -0.32},
          {1.4, 0.7, 0.2},
          {1.85, 0.7, 0.2},
          {1.85, 2.75, 0.2},
          {1.85, 2.75, 0.85},
          {4.2, 2.75, 0.85},
          {4.2, 2.35, 0.85},
          {4.2, 2.35, 0.73}}},
        {p32, {{1.85, 2.2, 0.2}, {1.75, 2.2, 0.2}, {1.75, 2.2, 1.2}, {1.45, 2.2, 1.2}, {1.45, 2.2, 1.02}}},
        {p25, {{2.6, 2.75, 0.85}, {2.6, 2.35, 0.85}, {2.6, 2.35, 0.73}}},
        {w50, {{4.2, 1.15, 0.66}, {4.2, 1.15, 0.06}, {4.2, 0.4, 0.05}, {1.5, 0.4, -0.02}}},
        {w50, {{2.6, 1.15, 0.66}, {2.6, 1.15, 0.0285205}, {2.6, 0.4, 0.0085205}}},
        {"waste-pvcu-75", {{0.8, 1.82, 0.93}, {0.8, 1.82, 0.06}, {0.8, 0.9, 0.02}}},
    };
}

} // namespace sumpwright::tests
