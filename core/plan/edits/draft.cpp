#include "core/plan/edits/draft.hpp"

#include "core/plan/check.hpp"
#include "core/plan/edits/settle.hpp"
#include "core/plan/edits/tees.hpp"

namespace sumpwright::plan
{

void refuse(std::string id, std::string place, std::string what, std::string accepts)
{
    throw Refused{{std::move(id), std::move(place), std::move(what), std::move(accepts)}};
}

void refuseUnknown(base::Id id, const char* kind)
{
    refuse("plan.no-such-element", kind,
           "the plan has no " + std::string(kind) + " number " + std::to_string(id.number),
           "something that is in the plan");
}

std::string Draft::newTag(std::string_view prefix)
{
    if (!m_tagsKnown)
        m_tags = tagsOf(plan);
    m_tagsKnown = true;
    int& last = m_lastNumber[std::string(prefix)];
    std::string tag = freeTag(m_tags, prefix, last + 1);
    last = std::stoi(tag.substr(prefix.size()));
    return tag;
}

Edit makeEdit(std::string intent, std::vector<base::Id> subjects, DraftChange body)
{
    const auto apply = [body = std::move(body)](const Plan& before) -> base::Outcome<Plan> {
        try {
            Draft draft(before);
            body(draft);
            mendTees(draft);
            settleEnds(draft);
            if (const auto fault = firstNewFault(before, draft.plan))
                return fault->refusal;
            return std::move(draft.plan);
        } catch (const Refused& refused) {
            return refused.refusal;
        }
    };
    return {std::move(intent), std::move(subjects), apply};
}

} // namespace sumpwright::plan
