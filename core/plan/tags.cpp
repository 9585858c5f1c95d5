#include "core/plan/tags.hpp"

namespace sumpwright::plan
{

std::string_view tagPrefix(VesselKind kind)
{
    switch (kind) {
    case VesselKind::fishTank:
        return "T";
    case VesselKind::sump:
        return "S";
    case VesselKind::mediaBed:
    case VesselKind::raftBed:
        return "B";
    case VesselKind::settler:
        return "ST";
    }
    return "";
}

std::string_view tagPrefix(PortKind kind)
{
    switch (kind) {
    case PortKind::inlet:
        return "I";
    case PortKind::lip:
        return "L";
    case PortKind::sideOutlet:
        return "O";
    }
    return "";
}

std::string_view tagPrefix(FixtureKind kind)
{
    switch (kind) {
    case FixtureKind::wall:
        return "W";
    case FixtureKind::door:
        return "D";
    case FixtureKind::post:
        return "PS";
    case FixtureKind::powerPoint:
        return "PP";
    }
    return "";
}

Tags tagsOf(const Plan& plan)
{
    Tags tags;
    const auto enter = [&tags](const auto& table) {
        for (const auto& element : table)
            tags.insert(element->tag);
    };
    enter(plan.fixtures);
    enter(plan.vessels);
    enter(plan.pumps);
    enter(plan.tees);
    enter(plan.runs);
    for (const auto& run : plan.runs)
        for (const Valve& valve : run->valves)
            tags.insert(valve.tag);
    return tags;
}

Tags portTagsOf(const Vessel& vessel)
{
    Tags tags;
    for (const Port& port : vessel.ports)
        tags.insert(port.tag);
    return tags;
}

std::string freeTag(Tags& taken, std::string_view prefix, int from)
{
    for (int number = from;; ++number) {
        std::string tag = std::string(prefix) + std::to_string(number);
        if (taken.insert(tag).second)
            return tag;
    }
}

} // namespace sumpwright::plan
