#include "core/report/assessment_text.hpp"
#include "core/report/json_parts.hpp"

namespace sumpwright::report
{
namespace
{

using namespace assessment;

void putSite(JsonText& json, const Assessment& assessment)
{
    const SiteResult& site = *assessment.site;
    json.beginObject("site");
    json.word("name", assessment.plan.site->name);
    json.word("client", assessment.plan.site->client);
    put(json, "water_temperature", site.water);
    putValueStage(json, "density", site.density, assessment.plan);
    putValueStage(json, "kinematic_viscosity", site.viscosity, assessment.plan);
    putValueStage(json, "vapour_pressure", site.vapourPressure, assessment.plan);
    putValueStage(json, "air_pressure", site.airPressure, assessment.plan);
    json.endObject();
}

void putTotals(JsonText& json, const Assessment& assessment)
{
    json.beginObject("water");
    for (const WaterState state : allWaterStates)
        putStage(json, keyOf(state), assessment.water->totals[state], assessment.plan, [&](const WaterTotal& total) {
            put(json, "in_vessels", total.inVessels);
            put(json, "in_pipes", total.inPipes);
            put(json, "spilled", total.spilled);
            put(json, "total", total.all());
            json.beginList("left_out");
            for (const base::Id vessel : total.leftOut) {
                json.beginObject();
                putElement(json, vessel, assessment.plan);
                json.endObject();
            }
            json.endList();
        });
    json.endObject();
}

void putAmount(JsonText& json, const char* key, const Amount& amount)
{
    if (!std::holds_alternative<std::monostate>(amount))
        put(json, key, jsonNumber(amount));
}

void putFindings(JsonText& json, const Assessment& assessment)
{
    json.beginList("findings");
    for (const Finding& finding : assessment.findings->list) {
        const FindingWords words = wordsOf(finding, assessment);
        json.beginObject();
        json.word("id", finding.id);
        json.word("severity", wordFor(finding.severity));
        json.beginList("elements");
        for (const base::Id element : finding.elements) {
            json.beginObject();
            putElement(json, element, assessment.plan);
            json.endObject();
        }
        json.endList();
        putAmount(json, "value", finding.value);
        putAmount(json, "limit", finding.limit);
        putAmount(json, "beside", finding.beside);
        if (!finding.subject.empty())
            json.word("subject", finding.subject);
        json.word("message", words.message);
        if (!finding.mend.empty()) {
            json.word("mend", finding.mend);
            json.word("advice", words.advice);
        }
        json.word("source", finding.source);
        json.word("source_title", words.source);
        json.endObject();
    }
    json.endList();
}

} // namespace

std::string assessmentJson(const Assessment& assessment)
{
    JsonText json;
    json.beginObject();
    json.word("format", "sumpwright-assessment");
    json.number("version", 1);
    putSite(json, assessment);
    putTotals(json, assessment);
    putVessels(json, assessment);
    putRuns(json, assessment);
    putPumps(json, assessment);
    putSumps(json, assessment);
    putService(json, assessment);
    putFloor(json, assessment);
    putFindings(json, assessment);
    json.endObject();
    return json.text();
}

} // namespace sumpwright::report
