#include "core/plan/edits/run.hpp"

#include "core/plan/edits/draft.hpp"
#include "core/plan/edits/run_shape.hpp"

namespace sumpwright::plan
{

Edit setRunPipe(std::vector<base::Id> runs, std::string pipeId)
{
    return setEach<Run>("edit.pipe", std::move(runs), &Run::pipeId, std::move(pipeId));
}

Edit setRunService(std::vector<base::Id> runs, Service service)
{
    return setEach<Run>("edit.service", std::move(runs), &Run::service, service);
}

Edit reverseRuns(std::vector<base::Id> runs)
{
    return changeEach<Run>("edit.reverse", std::move(runs), [](Run& run) { run = reversed(std::move(run)); });
}

Edit setEndLoss(base::Id id, RunSide side, std::optional<double> lossCoefficient)
{
    return makeEdit("edit.end-loss", {id}, [=](Draft& draft) {
        draft.change<Run>(id, [&](Run& run) {
            RunEnd& end = endOf(run, side);
            if (auto* port = std::get_if<PortEnd>(&end))
                port->lossCoefficient = lossCoefficient;
            else if (auto* tee = std::get_if<TeeEnd>(&end))
                tee->lossCoefficient = lossCoefficient;
            else
                refuse("plan.no-end-loss", run.tag, "nothing at this end has a loss of its own",
                       "an end at a port or a tee");
        });
    });
}

Edit setExtraFittings(std::vector<base::Id> runs, std::vector<ExtraFitting> fittings)
{
    return setEach<Run>("edit.extra-fittings", std::move(runs), &Run::extraFittings, std::move(fittings));
}

} // namespace sumpwright::plan
