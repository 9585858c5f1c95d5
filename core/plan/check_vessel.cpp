#include <algorithm>

#include "core/plan/check_elements.hpp"
#include "core/plan/limits.hpp"
#include "core/plan/tags.hpp"

namespace sumpwright::plan
{

namespace
{

void checkShape(const Vessel& vessel, FaultFinder& faults)
{
    bool sound = faults.size("wall_height", vessel.wallHeight);
    if (const auto* round = std::get_if<RoundShape>(&vessel.shape)) {
        sound = faults.size("diameter", round->diameter) && sound;
    } else if (const auto* rectangle = std::get_if<RectangleShape>(&vessel.shape)) {
        sound = faults.size("length", rectangle->length) && sound;
        sound = faults.size("width", rectangle->width) && sound;
    }
    if (!faults.within("wall_thickness", vessel.wallThickness, limits::thinnestWall, limits::largestSize) || !sound)
        return;
    const RectangleShape frame = frameOf(vessel.shape);
    const units::Length smaller = std::min(frame.length, frame.width);
    if (2.0 * vessel.wallThickness >= smaller || vessel.wallThickness >= vessel.wallHeight)
        faults.fault("wall_thickness", "plan.wall-too-thick",
                     "a wall of " + units::format(vessel.wallThickness) + " leaves no inside",
                     "less than half the smallest size and less than the wall height");
}

void checkContent(const Vessel& vessel, FaultFinder& faults)
{
    if (vessel.medium) {
        faults.words("medium/medium", vessel.medium->mediumId, limits::longestTag, true);
        if (vessel.kind != VesselKind::mediaBed)
            faults.fault("medium", "plan.not-a-media-bed", "growing medium in a vessel that is no media bed",
                         "medium in media beds only");
        else if (faults.size("medium/depth", vessel.medium->depth) &&
                 insideBottom(vessel) + vessel.medium->depth > rimLevel(vessel))
            faults.fault("medium/depth", "plan.medium-above-rim",
                         units::format(vessel.medium->depth) + " of medium stands above the rim",
                         "up to the height inside the vessel");
    }
    if (vessel.stand) {
        faults.ratio("stand/legs", vessel.stand->legCount, 1, 100);
        faults.size("stand/pad_side", vessel.stand->padSide);
        if (vessel.stand->mass)
            faults.within("stand/mass", *vessel.stand->mass, units::kilograms(0.0), units::kilograms(1e5));
    }
    if (vessel.measuredTare)
        faults.within("measured_tare", *vessel.measuredTare, units::kilograms(0.0), units::kilograms(1e5));
    if (!vessel.runningLevel || !faults.level("running_level", *vessel.runningLevel))
        return;
    if (vessel.kind != VesselKind::sump)
        faults.fault("running_level", "plan.not-a-sump", "a running level on a vessel that is no sump",
                     "the running level of the sump only; every other level follows from it");
    else if (*vessel.runningLevel < insideBottom(vessel) || *vessel.runningLevel > rimLevel(vessel))
        faults.fault("running_level", "plan.level-outside-vessel",
                     units::format(*vessel.runningLevel) + " lies outside the vessel",
                     units::format(insideBottom(vessel)) + " to " + units::format(rimLevel(vessel)));
}

void checkLip(const Vessel& vessel, const Port& port, FaultFinder& faults)
{
    if (port.level >= rimLevel(vessel))
        faults.fault("level", "plan.lip-above-rim",
                     "a lip at " + units::format(port.level) + " is not below the rim at " +
                         units::format(rimLevel(vessel)),
                     "lower the lip or raise the wall");
    if (port.level <= insideBottom(vessel))
        faults.fault("level", "plan.lip-below-bottom", "a lip at " + units::format(port.level) + " holds no water back",
                     "above the inside bottom at " + units::format(insideBottom(vessel)));
    if (port.drainLevel && faults.level("drain_level", *port.drainLevel) &&
        (*port.drainLevel >= port.level || *port.drainLevel < insideBottom(vessel)))
        faults.fault("drain_level", "plan.drain-level-outside",
                     "a drain level of " + units::format(*port.drainLevel) + " is not between bottom and lip",
                     units::format(insideBottom(vessel)) + " to below " + units::format(port.level));
}

void checkPortLevel(const Vessel& vessel, const Port& port, FaultFinder& faults)
{
    switch (port.kind) {
    case PortKind::lip:
        checkLip(vessel, port, faults);
        break;
    case PortKind::inlet:
        if (port.level < vessel.baseLevel)
            faults.fault("level", "plan.port-below-base",
                         "a mouth at " + units::format(port.level) + " is under the vessel",
                         "above the base at " + units::format(vessel.baseLevel));
        if (port.ventLevel && faults.level("vent_level", *port.ventLevel) && *port.ventLevel < port.level)
            faults.fault("vent_level", "plan.vent-below-mouth",
                         "a vent at " + units::format(*port.ventLevel) + " is below the mouth",
                         "at or above the mouth at " + units::format(port.level));
        break;
    case PortKind::sideOutlet:
        if (port.level < vessel.baseLevel || port.level >= rimLevel(vessel))
            faults.fault("level", "plan.level-outside-vessel", units::format(port.level) + " lies outside the wall",
                         units::format(vessel.baseLevel) + " to below " + units::format(rimLevel(vessel)));
        break;
    }
    if (port.openFraction && faults.ratio("open_fraction", *port.openFraction, limits::leastOpenFraction, 1.0) &&
        port.kind == PortKind::inlet)
        faults.fault("open_fraction", "plan.not-an-outlet", "a screen on a port that lets nothing out",
                     "screens on lips and outlets only");
    if (port.drainLevel && port.kind != PortKind::lip)
        faults.fault("drain_level", "plan.not-a-lip", "a drain level on a port that is no lip",
                     "drain levels on lips only");
    if (port.targetFlow && faults.within("target_flow", *port.targetFlow, units::Flow(), limits::largestFlow) &&
        port.kind != PortKind::inlet)
        faults.fault("target_flow", "plan.not-an-inlet", "a target flow on a port that is no inlet",
                     "target flows on inlets only");
    if (port.ventLevel && port.kind != PortKind::inlet)
        faults.fault("vent_level", "plan.not-an-inlet", "a vent level on a port that is no inlet",
                     "vent levels on inlets only");
}

} // namespace

bool withinOutline(const Vessel& vessel, Point offset)
{
    const RectangleShape frame = frameOf(vessel.shape);
    const units::Length x = frame.length / 2.0 + limits::endTolerance;
    const units::Length y = frame.width / 2.0 + limits::endTolerance;
    if (std::holds_alternative<RoundShape>(vessel.shape))
        return distanceBetween({}, offset) <= x;
    return offset.x >= -x && offset.x <= x && offset.y >= -y && offset.y <= y;
}

void checkVessel(const Vessel& vessel, FaultFinder& faults)
{
    faults.at(vessel.id, "vessel", vessel.tag);
    faults.words("tag", vessel.tag, limits::longestTag, true);
    const std::size_t before = faults.faults().size();
    faults.place("centre", vessel.centre);
    faults.within("turn", vessel.turn, units::degrees(-360.0), units::degrees(360.0));
    faults.level("base_level", vessel.baseLevel);
    checkShape(vessel, faults);
    if (faults.faults().size() != before)
        return; // what follows compares with these
    checkContent(vessel, faults);
    Tags tags;
    for (std::size_t i = 0; i < vessel.ports.size(); ++i) {
        const Port& port = vessel.ports[i];
        faults.inside("ports/" + std::to_string(i), port.tag);
        faults.words("tag", port.tag, limits::longestTag, true);
        if (!tags.insert(port.tag).second)
            faults.fault("tag", "plan.tag-clash", "tag " + port.tag + " is used twice in this vessel", "a free tag");
        if (faults.place("offset", port.offset) && !withinOutline(vessel, port.offset))
            faults.fault("offset", "plan.port-outside", "the port lies outside the vessel",
                         "a place within the vessel's outline");
        if (port.bore)
            faults.within("bore", *port.bore, units::millimetres(1.0), units::metres(2.0));
        if (faults.level("level", port.level))
            checkPortLevel(vessel, port, faults);
    }
    faults.inside({}, {});
}

} // namespace sumpwright::plan
