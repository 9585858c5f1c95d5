#include "ui/properties/service_section.hpp"

#include "core/assessment/working.hpp"
#include "ui/text/subject.hpp"

namespace sumpwright::ui::properties
{

ServiceSection::ServiceSection(Chosen about, QWidget* parent) : Section(std::move(about), tr("Service"), parent)
{
    addResult(tr("Shut off by"), [this](const assessment::Assessment& results) -> QString {
        const auto* service = find(results);
        if (!service)
            return tr("told of beds, pumps and long pressure runs");
        if (!service->shutOff)
            return tr("nothing: the pumps must stop");
        return service->valves.empty() ? tr("switching it off") : text::allSubjects(results.plan, service->valves);
    });
    addResult(tr("Union behind it"), [this](const assessment::Assessment& results) -> QString {
        const auto* service = find(results);
        return !service ? QString() : service->comesApart ? tr("yes") : tr("none: the pipe must be cut");
    });
    addResult(
        tr("Comes out first"),
        [this](const assessment::Assessment& results) -> QString {
            const auto* service = find(results);
            return service ? tr("%1 (estimate)").arg(chosen().display().quantityText(service->comesOut)) : QString();
        },
        [this](const assessment::Assessment& results) {
            return assessment::workingOfService(results, chosen().first());
        });
}

const assessment::Service* ServiceSection::find(const assessment::Assessment& results) const
{
    return assessment::find(results.service->elements, chosen().first());
}

} // namespace sumpwright::ui::properties
