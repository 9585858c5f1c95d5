#include "core/assessment/working.hpp"
#include "core/assessment/working_parts.hpp"

namespace sumpwright::assessment
{

std::optional<Working> workingOfService(const Assessment& assessment, base::Id element)
{
    const Service* service = find(assessment.service->elements, element);
    if (!service)
        return std::nullopt;
    ListText pipes, vessels;
    for (const std::size_t index : service->pipes)
        for (const ServicePart& part : assessment.service->pipeWaters[index])
            pipes.add(plan::tagOf(assessment.plan, part.element), part.volume);
    for (const ServicePart& part : service->vessels)
        vessels.add(plan::tagOf(assessment.plan, part.element), part.volume);
    if (pipes.empty() && vessels.empty())
        return std::nullopt;
    Working working{"water-total", "total", {}, {}};
    vessels.into(working, "vessels");
    pipes.into(working, "pipes");
    return working;
}

} // namespace sumpwright::assessment
