#include "core/plan/edits/valve.hpp"

#include <algorithm>

#include "core/plan/edits/draft.hpp"
#include "core/plan/edits/run_shape.hpp"
#include "core/plan/tidy.hpp"

namespace sumpwright::plan
{

namespace
{

std::vector<base::Id> subjectsOf(const std::vector<ValveRef>& valves)
{
    std::vector<base::Id> subjects;
    for (const ValveRef& ref : valves)
        subjects.push_back(ref.valve);
    return subjects;
}

Edit changeValves(const char* intent, const std::vector<ValveRef>& valves, std::function<void(Valve&)> how)
{
    return makeEdit(intent, subjectsOf(valves), [valves, how](Draft& draft) {
        for (const ValveRef& ref : valves)
            draft.change<Run>(ref.run, [&](Run& run) {
                const auto at = std::find_if(run.valves.begin(), run.valves.end(),
                                             [&](const Valve& valve) { return valve.id == ref.valve; });
                if (at == run.valves.end())
                    refuseUnknown(ref.valve, "valve");
                how(*at);
                sortValves(run);
            });
    });
}

} // namespace

Edit addValve(base::Id id, std::string fittingId, double station)
{
    return makeEdit("edit.add-valve", {id}, [=](Draft& draft) {
        Valve valve;
        valve.id = draft.newId();
        valve.tag = draft.newTag("V");
        valve.fittingId = fittingId;
        valve.station = tidyRatio(station);
        draft.change<Run>(id, [&](Run& run) {
            run.valves.push_back(valve);
            sortValves(run);
        });
    });
}

Edit moveValve(ValveRef valve, double station)
{
    return changeValves("edit.move-valve", {valve},
                        [station](Valve& changed) { changed.station = tidyRatio(station); });
}

Edit setOpening(std::vector<ValveRef> valves, double opening)
{
    return changeValves("edit.opening", valves, [opening](Valve& valve) { valve.opening = opening; });
}

Edit setValveFitting(std::vector<ValveRef> valves, std::string fittingId)
{
    return changeValves("edit.valve-fitting", valves, [fittingId](Valve& valve) { valve.fittingId = fittingId; });
}

Edit setValveLoss(std::vector<ValveRef> valves, std::optional<double> lossCoefficient)
{
    return changeValves("edit.valve-loss", valves, [=](Valve& valve) { valve.lossCoefficient = lossCoefficient; });
}

Edit removeValves(std::vector<ValveRef> valves)
{
    return makeEdit("edit.remove-valve", subjectsOf(valves), [valves](Draft& draft) {
        for (const ValveRef& ref : valves)
            draft.change<Run>(ref.run, [&](Run& run) {
                if (std::erase_if(run.valves, [&](const Valve& valve) { return valve.id == ref.valve; }) == 0)
                    refuseUnknown(ref.valve, "valve");
            });
    });
}

} // namespace sumpwright::plan
