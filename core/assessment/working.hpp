// Working: the worksheet a result of the plan comes from, with this plan's own numbers as its inputs, written as the
// command line takes them ("flow" = "1520 L/h"). The worksheet calls the very function the plan called.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/assessment/assessment.hpp"

namespace sumpwright::assessment
{

struct WorkingInput {
    std::string name;
    std::string value;
    friend bool operator==(const WorkingInput&, const WorkingInput&) = default;
};

struct Working {
    std::string worksheet; // id, e.g. "pipe-friction"
    std::vector<WorkingInput> inputs;
    std::string note; // "network-as-one-pipe": sum_k stands for all branches and fittings; otherwise empty
    friend bool operator==(const Working&, const Working&) = default;
};

// Nothing when the result has no value, so that there is nothing to work out. The duty point is shown as one pipe: that
// of the first run of the worst path, with the K that gives the whole network's head. Of a mass the vessel's inside
// sizes are told, so the worksheet's pressure is over the inside area.
std::optional<Working> workingOfRunLoss(const Assessment& assessment, base::Id run, RunningState state);
// Of a fitting whose K is the table's, or that of a valve partly open; not of an overridden K, nor of a bend drawn at
// an angle of its own.
std::optional<Working> workingOfFitting(const Assessment& assessment, base::Id run, const FittingLoss& loss,
                                        RunningState state);
std::optional<Working> workingOfDutyPoint(const Assessment& assessment, base::Id pump, RunningState state);
std::optional<Working> workingOfEnergy(const Assessment& assessment, base::Id pump);
std::optional<Working> workingOfOverflow(const Assessment& assessment, base::Id vessel, RunningState state);
std::optional<Working> workingOfMass(const Assessment& assessment, base::Id vessel, LoadCase loadCase);

} // namespace sumpwright::assessment
