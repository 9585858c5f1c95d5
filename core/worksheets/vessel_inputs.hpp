// A vessel with upright walls as several worksheets ask for it: bottom, area, and the medium that fills part of it.
#pragma once

#include <vector>

#include "core/base/outcome.hpp"
#include "core/water/vessel_volume.hpp"
#include "core/worksheets/answer_draft.hpp"
#include "core/worksheets/worksheet.hpp"

namespace sumpwright::worksheets
{

std::vector<InputSpec> vesselInputs(); // bottom, area, medium_depth, porosity
// Refusals: "worksheets.missing-input" (place "porosity" or "medium_depth": one without the other).
base::Outcome<water::UprightVessel> vesselOf(const Inputs& inputs);
// "V = A h" with the medium's pores where there is one.
void showVolume(AnswerDraft& draft, const Inputs& inputs, units::Length depth, units::Volume volume);

} // namespace sumpwright::worksheets
