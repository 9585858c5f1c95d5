// Checks of the person's own parts: ids and names of their own, numbers in range.
#include <set>

#include "core/plan/check_elements.hpp"
#include "core/plan/limits.hpp"
#include "core/plan/own_parts.hpp"

namespace sumpwright::plan
{

namespace
{

using Names = std::set<std::string, std::less<>>;

void checkIdentity(const OwnPart& part, Names& ids, Names& names, FaultFinder& faults)
{
    if (!isOwn(part.id) || part.id.size() > limits::longestTag)
        faults.fault("id", "plan.own-id", "\"" + part.id.substr(0, limits::longestTag) + "\" is no id of an own part",
                     "own- and a name, at most " + std::to_string(limits::longestTag) + " letters");
    else if (!ids.insert(part.id).second)
        faults.fault("id", "plan.own-id-clash", "the id " + part.id + " is there twice", "an id of its own");
    faults.words("name", part.name, limits::longestPartName, true);
    if (!part.name.empty() && !names.insert(part.name).second)
        faults.fault("name", "plan.own-name-clash", "the name " + part.name + " is there twice", "a name of its own");
    faults.words("origin", part.origin, limits::longestPartName * 2, false);
}

void checkOwnPipe(const OwnPipe& pipe, FaultFinder& faults)
{
    const bool sound =
        faults.within("bore", pipe.bore, units::millimetres(0.5), units::metres(1.0)) &&
        faults.within("outside_diameter", pipe.outsideDiameter, units::millimetres(0.5), units::metres(1.2));
    if (sound && !(pipe.bore < pipe.outsideDiameter))
        faults.fault("bore", "plan.bore-too-large",
                     "a bore of " + units::format(pipe.bore) + " does not fit into " +
                         units::format(pipe.outsideDiameter),
                     "less than the outside diameter");
    if (faults.within("roughness", pipe.roughness, units::metres(0.0), units::millimetres(10.0)) && sound &&
        pipe.roughness > 0.5 * pipe.bore)
        faults.fault("roughness", "plan.out-of-range", "the roughness fills the bore", "at most half the bore");
    if (pipe.corrugatedFactor)
        faults.ratio("corrugated_factor", *pipe.corrugatedFactor, 0.01, 1.0);
}

void checkOwnFitting(const OwnFitting& fitting, FaultFinder& faults)
{
    faults.loss("k", fitting.k);
    if (fitting.flowFactor)
        faults.within("flow_factor", *fitting.flowFactor, units::litresPerHour(0.1), units::litresPerHour(1e7));
    if (fitting.cracking)
        faults.within("cracking_head", *fitting.cracking, units::metresHead(0.0), units::metresHead(100.0));
    if (fitting.k.has_value() == fitting.flowFactor.has_value())
        faults.fault("k", "plan.own-loss", fitting.k ? "both K and Kv are given" : "neither K nor Kv is given",
                     "one of the two");
    if (fitting.cracking && fitting.kind != OwnFittingKind::nonReturnValve)
        faults.fault("cracking_head", "plan.own-cracking", "only a non-return valve has a head that opens it",
                     "leave it out, or say that it is a non-return valve");
}

void checkOwnPump(const OwnPump& pump, FaultFinder& faults)
{
    checkPumpCurve("curve", pump.curve, pump.twoNumbers, faults);
    if (pump.power)
        faults.within("power", *pump.power, units::watts(0.0), units::watts(1e6));
    if (pump.leastDepth)
        faults.within("least_depth", *pump.leastDepth, units::metres(0.0), units::metres(20.0));
}

} // namespace

void checkOwnParts(const OwnParts& parts, FaultFinder& faults)
{
    faults.at({}, "own_parts", "own parts");
    if (parts.size() > limits::mostOwnParts) {
        faults.fault("", "plan.own-count", std::to_string(parts.size()) + " own parts",
                     "at most " + std::to_string(limits::mostOwnParts));
        return;
    }
    Names ids, names;
    const auto each = [&](const char* key, const auto& list, auto checkOne) {
        for (std::size_t i = 0; i < list.size(); ++i) {
            faults.inside(std::string(key) + "/" + std::to_string(i), list[i].name);
            checkIdentity(list[i], ids, names, faults);
            checkOne(list[i], faults);
        }
    };
    each("pipes", parts.pipes, checkOwnPipe);
    each("fittings", parts.fittings, checkOwnFitting);
    each("pumps", parts.pumps, checkOwnPump);
    faults.inside({}, {});
}

} // namespace sumpwright::plan
