#include "ui/tools/connecting.hpp"

#include <algorithm>
#include <cmath>

#include "ui/tools/snap.hpp"

namespace sumpwright::ui::tools
{

namespace
{
// Common practice, no source: where a new port is drilled when nobody says otherwise.
constexpr auto aboveBottom = units::millimetres(60.0); // centre line of a side outlet
constexpr auto belowRim = units::millimetres(100.0);   // lip of a standpipe
constexpr auto aboveRim = units::millimetres(50.0);    // mouth of a free inlet
constexpr auto nearWall = units::millimetres(80.0);    // a place this near the outline means the wall
constexpr auto pressurePipe = units::millimetres(32.0);
constexpr auto gravityPipe = units::millimetres(50.0);

double distanceToWall(const plan::Vessel& vessel, plan::Point offset)
{
    const double x = std::abs(units::inMetres(offset.x));
    const double y = std::abs(units::inMetres(offset.y));
    if (const auto* round = std::get_if<plan::RoundShape>(&vessel.shape))
        return units::inMetres(round->diameter) / 2.0 - std::hypot(x, y);
    const auto frame = plan::frameOf(vessel.shape);
    return std::min(units::inMetres(frame.length) / 2.0 - x, units::inMetres(frame.width) / 2.0 - y);
}

const plan::Port* freePort(const plan::Plan& plan, const plan::Vessel& vessel,
                           std::initializer_list<plan::PortKind> kinds)
{
    for (const auto kind : kinds)
        for (const auto& port : vessel.ports)
            if (port.kind == kind && !plan::runAtPort(plan, vessel.id, port.id))
                return &port;
    return nullptr;
}

bool meetsPressure(const plan::Plan& plan, const plan::Target& target)
{
    if (std::holds_alternative<plan::AtPump>(target))
        return true;
    if (const auto* onto = std::get_if<plan::OntoRun>(&target)) {
        const auto* run = plan.runs.find(onto->run);
        return run && run->service == plan::Service::pressure;
    }
    if (const auto* tee = std::get_if<plan::AtTee>(&target))
        return std::any_of(plan.runs.begin(), plan.runs.end(), [&](const auto& run) {
            const auto meets = [&](const plan::RunEnd& end) {
                const auto* at = std::get_if<plan::TeeEnd>(&end);
                return at && at->tee == tee->tee;
            };
            return run->service == plan::Service::pressure && (meets(run->from) || meets(run->to));
        });
    return false;
}

// Pumps give water; of two vessels the one with the higher way out.
int rankAsSource(const plan::Plan& plan, base::Id element)
{
    if (plan.pumps.find(element))
        return 0;
    return plan.runs.find(element) || plan.tees.find(element) ? 1 : 2;
}

units::Elevation sourceLevel(const plan::Plan& plan, base::Id vesselId)
{
    const auto* vessel = plan.vessels.find(vesselId);
    if (!vessel)
        return units::elevationMetres(0.0);
    const auto* lip = plan::mainLip(*vessel);
    return lip ? lip->level : plan::rimLevel(*vessel);
}
} // namespace

plan::NewPort outletAt(const plan::Vessel& vessel, plan::Point place, std::optional<units::Elevation> level)
{
    const auto offset = offsetIn(vessel, place);
    const bool atWall = distanceToWall(vessel, offset) < units::inMetres(nearWall);
    if (atWall)
        return {vessel.id, plan::PortKind::sideOutlet, offset,
                level.value_or(plan::insideBottom(vessel) + aboveBottom)};
    return {vessel.id, plan::PortKind::lip, offset, level.value_or(plan::rimLevel(vessel) - belowRim)};
}

plan::NewPort inletAt(const plan::Vessel& vessel, plan::Point place, std::optional<units::Elevation> level)
{
    return {vessel.id, plan::PortKind::inlet, offsetIn(vessel, place),
            level.value_or(plan::rimLevel(vessel) + aboveRim)};
}

std::optional<plan::Target> sourceOf(const plan::Plan& plan, base::Id element)
{
    if (plan.pumps.find(element))
        return plan::AtPump{element};
    if (plan.tees.find(element))
        return plan::AtTee{element};
    if (plan.runs.find(element))
        return plan::OntoRun{element, 0.5};
    const auto* vessel = plan.vessels.find(element);
    if (!vessel)
        return std::nullopt;
    if (const auto* port = freePort(plan, *vessel, {plan::PortKind::lip, plan::PortKind::sideOutlet}))
        return plan::AtPort{element, port->id};
    return outletAt(*vessel, vessel->centre);
}

std::optional<plan::Target> sinkOf(const plan::Plan& plan, base::Id element)
{
    if (plan.tees.find(element))
        return plan::AtTee{element};
    if (plan.runs.find(element))
        return plan::OntoRun{element, 0.5};
    const auto* vessel = plan.vessels.find(element);
    if (!vessel)
        return std::nullopt; // a pump takes no run's end
    if (const auto* port = freePort(plan, *vessel, {plan::PortKind::inlet}))
        return plan::AtPort{element, port->id};
    return inletAt(*vessel, vessel->centre);
}

std::optional<plan::Service> serviceFrom(const plan::Plan& plan, const plan::Target& from)
{
    const auto ofPort = [](plan::PortKind kind) {
        return kind == plan::PortKind::inlet ? std::nullopt : std::optional(plan::Service::gravity);
    };
    if (const auto* made = std::get_if<plan::NewPort>(&from))
        return ofPort(made->kind);
    if (const auto* at = std::get_if<plan::AtPort>(&from)) {
        const auto* vessel = plan.vessels.find(at->vessel);
        const auto* port = vessel ? plan::findPort(*vessel, at->port) : nullptr;
        return port ? ofPort(port->kind) : std::nullopt;
    }
    if (std::holds_alternative<plan::Nowhere>(from))
        return std::nullopt;
    return meetsPressure(plan, from) ? plan::Service::pressure : plan::Service::gravity;
}

std::vector<base::Id> ofOtherService(const plan::Plan& plan, plan::Service service)
{
    std::vector<base::Id> others;
    for (const auto& run : plan.runs) {
        if (run->service == service)
            continue;
        others.push_back(run->id);
        for (const auto* end : {&run->from, &run->to})
            if (const auto* at = std::get_if<plan::TeeEnd>(end))
                others.push_back(at->tee);
    }
    return others;
}

plan::Service serviceBetween(const plan::Plan& plan, const plan::Target& from, const plan::Target& to)
{
    return meetsPressure(plan, from) || meetsPressure(plan, to) ? plan::Service::pressure : plan::Service::gravity;
}

std::string usualPipe(const catalogue::Catalogue& catalogue, plan::Service service)
{
    const auto wanted = service == plan::Service::pressure ? pressurePipe : gravityPipe;
    const catalogue::Pipe* best = nullptr;
    double bestOff = 0.0;
    for (const auto& pipe : catalogue.pipes()) {
        if (pipe.gravityOnly && service == plan::Service::pressure)
            continue;
        const double off = std::abs(units::inMetres(pipe.outsideDiameter - wanted));
        if (!best || off < bestOff - 1e-9) {
            best = &pipe;
            bestOff = off;
        }
    }
    return best ? best->id : std::string();
}

std::optional<plan::RunWish> connectWish(const plan::Plan& plan, const catalogue::Catalogue& catalogue, base::Id a,
                                         base::Id b)
{
    const int rankA = rankAsSource(plan, a);
    const int rankB = rankAsSource(plan, b);
    const bool swapped = rankB < rankA || (rankA == rankB && sourceLevel(plan, b) > sourceLevel(plan, a));
    const auto from = sourceOf(plan, swapped ? b : a);
    const auto to = sinkOf(plan, swapped ? a : b);
    if (!from || !to)
        return std::nullopt;
    const auto start = plan::placeOf(plan, *from);
    const auto end = plan::placeOf(plan, *to);
    if (!start || !end)
        return std::nullopt;
    plan::RunWish wish;
    wish.service = serviceBetween(plan, *from, *to);
    wish.pipeId = usualPipe(catalogue, wish.service);
    wish.from = *from;
    wish.to = *to;
    wish.vertices.push_back(*start);
    plan::Vertex corner;
    corner.at = {end->at.x, start->at.y};
    corner.level = start->level;
    const auto least = units::millimetres(1.0);
    if (plan::distanceBetween(corner.at, start->at) > least && plan::distanceBetween(corner.at, end->at) > least)
        wish.vertices.push_back(corner);
    wish.vertices.push_back(*end);
    return wish;
}

} // namespace sumpwright::ui::tools
