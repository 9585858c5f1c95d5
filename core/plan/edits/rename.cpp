#include "core/plan/edits/rename.hpp"

#include "core/plan/edits/draft.hpp"

namespace sumpwright::plan
{

namespace
{

void refuseTaken(const std::string& tag)
{
    refuse("plan.tag-clash", "tag", "tag " + tag + " is already used", "a free tag");
}

template <class Element> bool renameIn(Draft& draft, base::Id id, const std::string& tag)
{
    if (!(draft.plan.*Kept<Element>::table).find(id))
        return false;
    draft.change<Element>(id, [&](Element& element) {
        if (element.tag != tag && tagsOf(draft.plan).count(tag))
            refuseTaken(tag);
        element.tag = tag;
    });
    return true;
}

bool renameValve(Draft& draft, base::Id id, const std::string& tag)
{
    const Tags taken = tagsOf(draft.plan);
    for (const auto& run : draft.plan.runs)
        for (std::size_t i = 0; i < run->valves.size(); ++i) {
            if (run->valves[i].id != id)
                continue;
            if (run->valves[i].tag != tag && taken.count(tag))
                refuseTaken(tag);
            Run changed = *run;
            changed.valves[i].tag = tag;
            draft.put(std::move(changed));
            return true;
        }
    return false;
}

bool renamePort(Draft& draft, base::Id id, const std::string& tag)
{
    for (const auto& vessel : draft.plan.vessels)
        for (std::size_t i = 0; i < vessel->ports.size(); ++i) {
            if (vessel->ports[i].id != id)
                continue;
            if (vessel->ports[i].tag != tag && portTagsOf(*vessel).count(tag))
                refuseTaken(tag);
            Vessel changed = *vessel;
            changed.ports[i].tag = tag;
            draft.put(std::move(changed));
            return true;
        }
    return false;
}

} // namespace

Edit renameTag(base::Id subject, std::string tag)
{
    return makeEdit("edit.rename", {subject}, [subject, tag](Draft& draft) {
        const bool found = renameIn<Vessel>(draft, subject, tag) || renameIn<Run>(draft, subject, tag) ||
                           renameIn<Pump>(draft, subject, tag) || renameIn<Tee>(draft, subject, tag) ||
                           renameIn<Fixture>(draft, subject, tag) || renameValve(draft, subject, tag) ||
                           renamePort(draft, subject, tag);
        if (!found)
            refuseUnknown(subject, "element with a tag");
    });
}

} // namespace sumpwright::plan
