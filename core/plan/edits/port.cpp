#include "core/plan/edits/port.hpp"

#include <algorithm>

#include "core/plan/edits/draft.hpp"
#include "core/plan/edits/port_making.hpp"
#include "core/plan/run_ends.hpp"
#include "core/plan/tidy.hpp"

namespace sumpwright::plan
{

namespace
{

std::vector<base::Id> subjectsOf(const std::vector<PortRef>& ports)
{
    std::vector<base::Id> subjects;
    for (const PortRef& ref : ports)
        subjects.push_back(ref.port);
    return subjects;
}

void changePort(Draft& draft, const PortRef& ref, const std::function<void(Port&)>& how)
{
    draft.change<Vessel>(ref.vessel, [&](Vessel& vessel) {
        const auto at = std::find_if(vessel.ports.begin(), vessel.ports.end(),
                                     [&](const Port& port) { return port.id == ref.port; });
        if (at == vessel.ports.end())
            refuseUnknown(ref.port, "port");
        how(*at);
    });
}

Edit changePorts(const char* intent, const std::vector<PortRef>& ports, std::function<void(Port&)> how)
{
    return makeEdit(intent, subjectsOf(ports), [ports, how](Draft& draft) {
        for (const PortRef& ref : ports)
            changePort(draft, ref, how);
    });
}

} // namespace

base::Id makePort(Draft& draft, base::Id vessel, PortKind kind, Point offset, units::Elevation level)
{
    const base::Id id = draft.newId();
    draft.change<Vessel>(vessel, [&](Vessel& home) {
        Tags taken = portTagsOf(home);
        Port port;
        port.id = id;
        port.tag = freeTag(taken, tagPrefix(kind));
        port.kind = kind;
        port.offset = tidy(offset);
        port.level = level;
        home.ports.push_back(std::move(port));
    });
    return id;
}

Edit addPort(base::Id vessel, PortKind kind, Point offset, units::Elevation level)
{
    return makeEdit("edit.add-port", {vessel}, [=](Draft& draft) { makePort(draft, vessel, kind, offset, level); });
}

Edit removePorts(std::vector<PortRef> ports)
{
    return makeEdit("edit.remove-port", subjectsOf(ports), [ports](Draft& draft) {
        for (const PortRef& ref : ports) {
            changePort(draft, ref, [](Port&) {});
            draft.change<Vessel>(ref.vessel, [&](Vessel& vessel) {
                std::erase_if(vessel.ports, [&](const Port& port) { return port.id == ref.port; });
            });
            if (const Run* met = runAtPort(draft.plan, ref.vessel, ref.port)) {
                Run run = *met;
                for (RunEnd* end : {&run.from, &run.to})
                    if (const auto* at = std::get_if<PortEnd>(end); at && at->port == ref.port)
                        *end = OpenEnd{};
                draft.put(std::move(run));
            }
        }
    });
}

Edit setPortKind(std::vector<PortRef> ports, PortKind kind)
{
    return changePorts("edit.port-kind", ports, [kind](Port& port) {
        port.kind = kind;
        if (kind != PortKind::lip)
            port.drainLevel.reset();
        if (kind != PortKind::inlet) {
            port.ventLevel.reset();
            port.targetFlow.reset();
        } else {
            port.openFraction.reset();
        }
    });
}

Edit setPortOffset(PortRef port, Point offset)
{
    return changePorts("edit.move-port", {port}, [offset](Port& changed) { changed.offset = tidy(offset); });
}

Edit setPortLevel(std::vector<PortRef> ports, units::Elevation level)
{
    return changePorts("edit.port-level", ports, [level](Port& port) { port.level = level; });
}

Edit setPortBore(std::vector<PortRef> ports, std::optional<units::Length> bore)
{
    return changePorts("edit.port-bore", ports, [bore](Port& port) { port.bore = bore; });
}

Edit setDrainLevel(std::vector<PortRef> lips, std::optional<units::Elevation> level)
{
    return changePorts("edit.drain-level", lips, [level](Port& port) { port.drainLevel = level; });
}

Edit setVentLevel(std::vector<PortRef> inlets, std::optional<units::Elevation> level)
{
    return changePorts("edit.vent-level", inlets, [level](Port& port) { port.ventLevel = level; });
}

Edit setOpenFraction(std::vector<PortRef> outlets, std::optional<double> openFraction)
{
    return changePorts("edit.screen", outlets, [openFraction](Port& port) { port.openFraction = openFraction; });
}

Edit setTargetFlow(std::vector<PortRef> inlets, std::optional<units::Flow> flow)
{
    return changePorts("edit.target-flow", inlets, [flow](Port& port) { port.targetFlow = flow; });
}

} // namespace sumpwright::plan
