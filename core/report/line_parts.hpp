// Sections of an assessment as lines for people.
#pragma once

#include <string>

#include "core/assessment/assessment.hpp"
#include "core/report/words.hpp"
#include "core/units/format.hpp"

namespace sumpwright::report
{

// The value as `write` tells it, or "not computed: ..." / "not solved: ...".
template <class T, class Write> std::string told(const assessment::Stage<T>& stage, Write write)
{
    return stage ? write(*stage) : whyMissing(stage);
}
// In a cell of a table: the value, or "-"; the reasons are told among the findings.
template <class T, class Write> std::string cell(const assessment::Stage<T>& stage, Write write)
{
    return stage ? write(*stage) : std::string("-");
}
template <class Kind> std::string shown(const Kind& quantity) { return units::format(quantity); }

std::string siteLines(const assessment::Assessment& assessment);
std::string waterLines(const assessment::Assessment& assessment);
std::string runLines(const assessment::Assessment& assessment);
std::string pumpLines(const assessment::Assessment& assessment);
std::string sumpLines(const assessment::Assessment& assessment);
std::string serviceLines(const assessment::Assessment& assessment);
std::string floorLines(const assessment::Assessment& assessment);
std::string findingLines(const assessment::Assessment& assessment);

} // namespace sumpwright::report
