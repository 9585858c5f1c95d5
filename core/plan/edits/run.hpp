// Properties of whole runs and of what sits at their ends and in them.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/plan/edits/edit.hpp"
#include "core/plan/edits/target.hpp"

namespace sumpwright::plan
{

Edit setRunPipe(std::vector<base::Id> runs, std::string pipeId);
Edit setRunService(std::vector<base::Id> runs, Service service);
Edit reverseRuns(std::vector<base::Id> runs); // leads the water the other way; a run that starts at a pump is refused
// K of entry, exit or tee suffered at this end; absent: from the catalogue. Open ends and pumps have none.
Edit setEndLoss(base::Id run, RunSide side, std::optional<double> lossCoefficient);
// The whole list of fittings that are not drawn (unions, strainers ...).
Edit setExtraFittings(std::vector<base::Id> runs, std::vector<ExtraFitting> fittings);

} // namespace sumpwright::plan
