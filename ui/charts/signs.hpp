// Signs: the few figures of the plan that are always in sight, as values: water, duty point, sump room, floor load,
// findings. A sign that is not computed is absent. While a gesture lasts, a sign that gets worse says by how much.
#pragma once

#include <vector>

#include <QString>

#include "core/assessment/assessment.hpp"
#include "core/assessment/working.hpp"
#include "ui/text/display.hpp"

namespace sumpwright::ui::charts
{

struct Sign {
    QString id;       // "water", "duty", "sump", "floor", "findings"
    QString chart;    // id of the chart behind it; empty: the findings list
    QString label;    // "Pump duty"
    QString value;    // "5 230 L/h at 2.10 m"
    QString worse;    // "12 L less than before"; empty: no worse
    QString detail;   // said on asking: "through the year about 1 900 L/h to 2 300 L/h"; often empty
    bool bad = false; // something spills, does not hold, or is an error
};

// `before`: the results when the gesture began, or null.
std::vector<Sign> signsOf(const assessment::Assessment& results, const assessment::Assessment* before,
                          const text::DisplaySettings& display);

// The working of a sign's figure; of several sumps or pumps that of the one the sign tells. Nothing where there is
// none.
std::optional<assessment::Working> workingOfSign(const assessment::Assessment& results, const QString& id);

} // namespace sumpwright::ui::charts
