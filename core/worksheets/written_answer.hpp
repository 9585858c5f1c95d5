// An answer and the list of worksheets as JSON (schemas worksheet-answer.json and worksheet-list.json under
// resources/schema) and as lines for a terminal. JSON numbers use the point and the fixed units.
#pragma once

#include <string>
#include <vector>

#include "core/worksheets/worksheet.hpp"

namespace sumpwright::worksheets
{

std::string answerJson(const Answer& answer);
std::string answerLines(const Worksheet& worksheet, const Answer& answer, const catalogue::Catalogue& tables,
                        const units::NumberStyle& style = units::NumberStyle::point());
std::string listJson(const std::vector<Worksheet>& worksheets, const catalogue::Catalogue& tables);
std::string listLines(const std::vector<Worksheet>& worksheets, const catalogue::Catalogue& tables);

} // namespace sumpwright::worksheets
