// A whole assessment as text for people, and as JSON (schema: resources/schema/assessment.schema.json). JSON numbers
// are in the unit beside them, coherent SI but degC, kWh and money; a stage without a value tells its status and its
// reason. Both end with a line end. Number style and units of the text: the point and metric.
#pragma once

#include <string>

#include "core/assessment/assessment.hpp"

namespace sumpwright::report
{

std::string assessmentJson(const assessment::Assessment& assessment);
std::string assessmentLines(const assessment::Assessment& assessment);

} // namespace sumpwright::report
