// Findings in sentences, with the window's own names of things and the person's units: the templates are the core's,
// looked up in the translation whole.
#pragma once

#include <QString>

#include "core/assessment/assessment.hpp"
#include "ui/text/display.hpp"

namespace sumpwright::ui::text
{

struct FindingWords {
    QString message; // what is wrong, where, by how much
    QString advice;  // what mends it; empty where nothing is to be mended
    QString source;  // who says so
};
FindingWords findingWords(const assessment::Finding& finding, const assessment::Assessment& results,
                          const DisplaySettings& display);
QString amountText(const assessment::Amount& amount, const DisplaySettings& display); // empty for none

} // namespace sumpwright::ui::text
