#include "core/assessment/working.hpp"
#include "core/report/json_parts.hpp"
#include "core/report/line_parts.hpp"
#include "core/report/text_table.hpp"

namespace sumpwright::report
{

using assessment::Service;

void putService(JsonText& json, const assessment::Assessment& assessment)
{
    json.beginList("service");
    for (const Service& service : assessment.service->elements) {
        json.beginObject();
        putElement(json, service.id, assessment.plan);
        json.flag("shut_off", service.shutOff);
        json.flag("comes_apart", service.comesApart);
        json.beginList("valves");
        for (const base::Id valve : service.valves) {
            json.beginObject();
            putElement(json, valve, assessment.plan);
            json.endObject();
        }
        json.endList();
        put(json, "opened_at", service.openedAt);
        put(json, "comes_out", service.comesOut);
        putWorking(json, assessment::workingOfService(assessment, service.id));
        json.endObject();
    }
    json.endList();
}

std::string serviceLines(const assessment::Assessment& assessment)
{
    TextTable table({"", "shut off by", "union", "comes out first"});
    for (const Service& service : assessment.service->elements)
        table.add({nameOf(assessment.plan, service.id),
                   service.shutOff ? namesOf(assessment.plan, service.valves) : std::string("nothing"),
                   service.comesApart ? "yes" : "no", shown(service.comesOut)});
    return table.empty() ? std::string() : "Service (estimate)\n" + table.lines();
}

} // namespace sumpwright::report
