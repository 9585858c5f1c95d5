// Valves and other fittings that sit at a station of a run.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/plan/edits/edit.hpp"

namespace sumpwright::plan
{

struct ValveRef {
    base::Id run;
    base::Id valve;
    friend bool operator==(const ValveRef&, const ValveRef&) = default;
};

// The new valve gets the id plan.nextId had before and the next free tag V1, V2, ...
Edit addValve(base::Id run, std::string fittingId, double station);
Edit moveValve(ValveRef valve, double station);
Edit setOpening(std::vector<ValveRef> valves, double opening); // 1 open ... 0 closed
Edit setValveFitting(std::vector<ValveRef> valves, std::string fittingId);
Edit setValveLoss(std::vector<ValveRef> valves, std::optional<double> lossCoefficient);
Edit removeValves(std::vector<ValveRef> valves);

} // namespace sumpwright::plan
