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
    std::string output;    // the answer that is the result, e.g. "head_loss"
    std::vector<WorkingInput> inputs;
    std::string note; // "network-as-one-pipe": sum_k stands for all branches and fittings; otherwise empty
    friend bool operator==(const Working&, const Working&) = default;
};

// Each is nothing when the result has no value, so that there is nothing to work out, and where no single worksheet
// gives it: a K the person entered, a flow that divides over several outlets, water that spills.

// Runs and fittings.
std::optional<Working> workingOfRunFlow(const Assessment& assessment, base::Id run, RunningState state);
std::optional<Working> workingOfRunLoss(const Assessment& assessment, base::Id run, RunningState state);
// What the flattest stretch of a gravity run carries when just full; with its flow, how full it is in uniform flow.
std::optional<Working> workingOfDrain(const Assessment& assessment, base::Id run, RunningState state);
std::optional<Working> workingOfContent(const Assessment& assessment, base::Id run);
std::optional<Working> workingOfSumK(const Assessment& assessment, base::Id run);
// Without a flow in a full bore only the K is worked out.
std::optional<Working> workingOfFitting(const Assessment& assessment, base::Id run, const FittingLoss& loss,
                                        RunningState state);
std::optional<Working> workingOfGrade(const Assessment& assessment, base::Id tee, RunningState state);

// Pumps. The duty point is shown as one pipe: that of the first run of the worst path, with the K that gives the whole
// network's head.
std::optional<Working> workingOfDutyPoint(const Assessment& assessment, base::Id pump, RunningState state);
// The same at one end of the year, in the state of least flow.
std::optional<Working> workingOfSeason(const Assessment& assessment, base::Id pump, YearEnd end);
std::optional<Working> workingOfEnergy(const Assessment& assessment, base::Id pump);
std::optional<Working> workingOfLift(const Assessment& assessment, base::Id pump); // of the worst path, least flow
std::optional<Working> workingOfPumpHead(const Assessment& assessment, base::Id pump, units::Flow flow);

// Water.
std::optional<Working> workingOfWater(const Assessment& assessment, base::Id vessel, RunningState state);
std::optional<Working> workingOfOverflow(const Assessment& assessment, base::Id vessel, RunningState state);
std::optional<Working> workingOfInflow(const Assessment& assessment, base::Id vessel, RunningState state);
std::optional<Working> workingOfPumpStop(const Assessment& assessment, base::Id sump);
std::optional<Working> workingOfWaterTotal(const Assessment& assessment, WaterState state);
// Of these vessels alone; and of the pipes alone.
std::optional<Working> workingOfWaterIn(const Assessment& assessment, const std::vector<base::Id>& vessels,
                                        WaterState state);
std::optional<Working> workingOfWaterInPipes(const Assessment& assessment, WaterState state);
// What comes out first when a bed, a pump or a long run is opened; none where nothing does.
std::optional<Working> workingOfService(const Assessment& assessment, base::Id element);

// Floor and site.
std::optional<Working> workingOfMass(const Assessment& assessment, base::Id vessel, LoadCase loadCase);
std::optional<Working> workingOfLoadTotal(const Assessment& assessment, LoadCase loadCase);
std::optional<Working> workingOfLiveLoad(const Assessment& assessment);
std::optional<Working> workingOfAirPressure(const Assessment& assessment);

} // namespace sumpwright::assessment
