// The answers of worksheets and the list of them as JSON text (schemas worksheet-answer.json and worksheet-list.json
// under resources/schema) and as plain text for a terminal. Numbers always use the point.
#pragma once

#include <string>
#include <vector>

#include "core/worksheets/worksheet.hpp"

namespace sumpwright::worksheets
{

std::string answerJson(const Answer& answer);
std::string answerText(const Worksheet& worksheet, const Answer& answer, const catalogue::Catalogue& tables);
std::string listJson(const std::vector<Worksheet>& worksheets);
std::string listText(const std::vector<Worksheet>& worksheets);

} // namespace sumpwright::worksheets
