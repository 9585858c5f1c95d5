#include "core/report/assessment_text.hpp"
#include "core/report/line_parts.hpp"

namespace sumpwright::report
{

std::string assessmentLines(const assessment::Assessment& assessment)
{
    const plan::Site& site = *assessment.plan.site;
    const std::string title = "Plan " + (site.name.empty() ? std::string("without a name") : site.name) +
                              (site.client.empty() ? std::string() : ", for " + site.client) + "\n";
    return title + "\n" + siteLines(assessment) + "\n" + waterLines(assessment) + "\n" + runLines(assessment) + "\n" +
           pumpLines(assessment) + "\n" + sumpLines(assessment) + "\n" + serviceLines(assessment) + "\n" +
           floorLines(assessment) + "\n" + findingLines(assessment);
}

} // namespace sumpwright::report
