// The rows of the form of an own part, by its kind.
#pragma once

#include "ui/parts/own_part_form.hpp"

namespace sumpwright::ui::parts
{

void addPipeRows(OwnPartForm& form);
void addFittingRows(OwnPartForm& form);
void addPumpRows(OwnPartForm& form);
// Changes when other rows are needed for the part: its kind, how a pump's curve is given. Empty: no such part.
std::string shapeOf(const plan::OwnParts& parts, const std::string& id);

} // namespace sumpwright::ui::parts
