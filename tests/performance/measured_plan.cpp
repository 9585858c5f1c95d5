#include "tests/performance/measured_plan.hpp"

#include <cstdlib>
#include <fstream>
#include <iostream>
#include <sstream>

#include "core/plan/edits/move.hpp"
#include "core/plan/edits/rename.hpp"
#include "core/plan/edits/run.hpp"
#include "core/plan/edits/valve.hpp"
#include "core/storage/plan_text.hpp"
#include "tests/support/large_plan.hpp"

namespace sumpwright::performance
{
namespace
{

[[noreturn]] void giveUp(const std::string& why)
{
    std::cerr << "cannot measure: " << why << '\n';
    std::exit(1);
}

template <class T> T valueOr(base::Outcome<T> outcome)
{
    if (!outcome)
        giveUp(base::oneLine(outcome.refusal()));
    return std::move(outcome).value();
}

// The first bed, the pressure run that feeds it, and the first valve.
MeasuredPlan typicalPlan()
{
    MeasuredPlan made;
    made.plan = valueOr(storage::loadText(textOf(Size::typical))).plan;
    for (const auto& vessel : made.plan.vessels)
        if (vessel->kind == plan::VesselKind::mediaBed && !made.bed.valid())
            made.bed = vessel->id;
    for (const auto& run : made.plan.runs) {
        const auto* port = std::get_if<plan::PortEnd>(&run->to);
        if (run->service == plan::Service::pressure && port && port->vessel == made.bed)
            made.run = run->id;
        if (!run->valves.empty() && !made.valve.valid()) {
            made.valveRun = run->id;
            made.valve = run->valves.front().id;
        }
    }
    if (!made.bed.valid() || !made.run.valid() || !made.valve.valid())
        giveUp("the shed has no bed, no run that feeds it or no valve");
    return made;
}

MeasuredPlan largestPlan()
{
    const test::LargePlan large = test::largePlan();
    return {large.plan, large.middleBed, large.valveRun, large.valveRun, large.valve};
}

plan::Edit editOf(const MeasuredPlan& from, EditKind kind)
{
    switch (kind) {
    case EditKind::moveBed:
        return plan::moveElements({from.bed}, {units::millimetres(50.0), units::millimetres(0.0)});
    case EditKind::pipeSize:
        return plan::setRunPipe({from.run}, "pvcu-pn16-32");
    case EditKind::level:
        return plan::raiseElements({from.bed}, units::millimetres(20.0));
    case EditKind::valve:
        return plan::setOpening({{from.valveRun, from.valve}}, 0.55);
    case EditKind::rename:
        return plan::renameTag(from.bed, "BX1");
    }
    giveUp("no such edit");
}

} // namespace

std::string_view nameOf(EditKind kind)
{
    switch (kind) {
    case EditKind::moveBed:
        return "move bed";
    case EditKind::pipeSize:
        return "pipe size";
    case EditKind::level:
        return "raise bed";
    case EditKind::valve:
        return "valve opening";
    case EditKind::rename:
        return "rename bed";
    }
    return {};
}

std::string_view nameOf(Size size) { return size == Size::typical ? "typical" : "large"; }

MeasuredPlan measuredPlan(Size size) { return size == Size::typical ? typicalPlan() : largestPlan(); }

plan::Plan edited(const MeasuredPlan& from, EditKind kind) { return valueOr(editOf(from, kind).apply(from.plan)); }

std::string textOf(Size size)
{
    if (size == Size::large)
        return storage::saveText(test::largePlan().plan);
    const std::string path = std::string(SUMPWRIGHT_SOURCE) + "/resources/examples/community_shed.sumpwright";
    std::ifstream file(path, std::ios::binary);
    std::ostringstream text;
    text << file.rdbuf();
    if (!file)
        giveUp("cannot read " + path);
    return text.str();
}

} // namespace sumpwright::performance
