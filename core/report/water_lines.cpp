#include "core/report/line_parts.hpp"
#include "core/report/text_table.hpp"

namespace sumpwright::report
{
namespace
{

using namespace assessment;

const char* titleOf(WaterState state)
{
    switch (state) {
    case WaterState::runningLeast:
        return "running, beds flooded (least flow)";
    case WaterState::runningMost:
        return "running, beds drained (most flow)";
    case WaterState::pumpStopped:
        return "after the pump has stopped";
    case WaterState::toRim:
        return "every vessel to its rim";
    }
    return "";
}

std::string totalsLines(const Assessment& assessment)
{
    TextTable table({"", "in vessels", "in pipes", "spilled", "all"});
    std::string reasons;
    for (const WaterState state : allWaterStates) {
        const Stage<WaterTotal>& total = assessment.water->totals[state];
        if (total)
            table.add({titleOf(state), shown(total->inVessels), shown(total->inPipes), shown(total->spilled),
                       shown(total->all())});
        else
            reasons += std::string("  ") + titleOf(state) + ": " + whyMissing(total) + "\n";
    }
    std::string text = table.empty() ? std::string() : table.lines();
    const Stage<WaterTotal>& least = assessment.water->totals[WaterState::toRim];
    if (least && !least->leftOut.empty()) {
        reasons += "  not counted:";
        for (const base::Id vessel : least->leftOut)
            reasons += " " + nameOf(assessment.plan, vessel);
        reasons += "\n";
    }
    return text + reasons;
}

} // namespace

std::string siteLines(const Assessment& assessment)
{
    const SiteResult& site = *assessment.site;
    std::string text = "Site\n";
    text += "  design water " + shown(site.water);
    if (site.density && site.viscosity)
        text += ", " + shown(*site.density) + ", kinematic viscosity " + shown(*site.viscosity);
    else
        text += ": " + whyMissing(site.density);
    text += "\n  air pressure " + told(site.airPressure, shown<units::Pressure>) + "\n";
    return text;
}

std::string waterLines(const Assessment& assessment)
{
    TextTable table({"", "flooded", "", "drained", "", "stopped", "", "to rim", "inflow", "pumped out"});
    for (const VesselResult& vessel : assessment.water->vessels) {
        std::vector<std::string> cells{nameOf(assessment.plan, vessel.id)};
        for (const WaterState state : allWaterStates) {
            const Stage<VesselWater>& water = vessel.water[state];
            if (state != WaterState::toRim)
                cells.push_back(cell(water, [](const VesselWater& w) { return shown(w.level); }));
            cells.push_back(cell(water, [](const VesselWater& w) { return shown(w.volume); }));
        }
        cells.push_back(cell(vessel.inflow[RunningState::least], shown<units::Flow>));
        const Stage<units::Flow>& out = vessel.pumpedOut[RunningState::least];
        cells.push_back(out && *out == units::Flow() ? std::string() : cell(out, shown<units::Flow>));
        table.add(std::move(cells));
    }
    return "Water\n" + totalsLines(assessment) + (table.empty() ? std::string() : "\nVessels\n" + table.lines());
}

std::string findingLines(const Assessment& assessment)
{
    std::string text = "Findings\n";
    for (const Finding& finding : assessment.findings->list) {
        const FindingWords words = wordsOf(finding, assessment);
        text += std::string("  ") + wordFor(finding.severity) + ": " + words.message;
        if (!words.advice.empty())
            text += " " + words.advice;
        text += " [" + words.source + "]\n";
    }
    return assessment.findings->list.empty() ? text + "  none\n" : text;
}

} // namespace sumpwright::report
