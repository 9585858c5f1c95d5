#include "core/plan/edits/own_parts.hpp"

#include <algorithm>

#include "core/plan/edits/draft.hpp"

namespace sumpwright::plan
{

namespace
{

constexpr std::size_t mostNamed = 8; // users a refusal lists

template <class Part> void put(std::vector<Part>& list, const Part& part)
{
    const auto at = std::find_if(list.begin(), list.end(), [&](const Part& each) { return each.id == part.id; });
    if (at == list.end())
        list.push_back(part);
    else
        *at = part;
}

void putPart(OwnParts& parts, const OwnPipe& pipe) { put(parts.pipes, pipe); }
void putPart(OwnParts& parts, const OwnFitting& fitting) { put(parts.fittings, fitting); }
void putPart(OwnParts& parts, const OwnPump& pump) { put(parts.pumps, pump); }

void keep(Draft& draft, OwnParts parts)
{
    if (!(parts == *draft.plan.ownParts))
        draft.plan.ownParts = std::make_shared<const OwnParts>(std::move(parts));
}

template <class Part> Edit putEdit(Part part)
{
    return makeEdit("edit.own-part", {}, [part = std::move(part)](Draft& draft) {
        OwnParts parts = *draft.plan.ownParts;
        const std::size_t before = parts.size();
        const bool known = findOwn(parts, part.id) != nullptr;
        putPart(parts, part);
        if (known && parts.size() != before)
            refuse("plan.own-kind", part.name, "another kind of part has the id " + part.id, "an id of its own");
        keep(draft, std::move(parts));
    });
}

bool uses(const Run& run, std::string_view id)
{
    return run.pipeId == id ||
           std::any_of(run.valves.begin(), run.valves.end(), [id](const Valve& v) { return v.fittingId == id; }) ||
           std::any_of(run.extraFittings.begin(), run.extraFittings.end(),
                       [id](const ExtraFitting& f) { return f.fittingId == id; }) ||
           std::any_of(run.vertices.begin(), run.vertices.end(),
                       [id](const Vertex& v) { return v.bendFittingId == id; });
}

std::string listed(const std::vector<std::string>& tags)
{
    std::string text;
    for (std::size_t i = 0; i < tags.size() && i < mostNamed; ++i)
        text += (i == 0 ? "" : ", ") + tags[i];
    return tags.size() > mostNamed ? text + " and " + std::to_string(tags.size() - mostNamed) + " more" : text;
}

} // namespace

Edit putOwnPart(OwnPipe pipe) { return putEdit(std::move(pipe)); }
Edit putOwnPart(OwnFitting fitting) { return putEdit(std::move(fitting)); }
Edit putOwnPart(OwnPump pump) { return putEdit(std::move(pump)); }

Edit importOwnParts(OwnParts added)
{
    return makeEdit("edit.import-parts", {}, [added = std::move(added)](Draft& draft) {
        OwnParts parts = *draft.plan.ownParts;
        forEachPart(added, [&parts](const auto& part) { putPart(parts, part); });
        keep(draft, std::move(parts));
    });
}

Edit removeOwnPart(std::string id)
{
    return makeEdit("edit.remove-own-part", {}, [id = std::move(id)](Draft& draft) {
        OwnParts parts = *draft.plan.ownParts;
        const OwnPart* part = findOwn(parts, id);
        if (!part)
            refuse("plan.no-such-part", id, "the plan has no own part " + id, "a part that is in the plan");
        if (const auto users = usersOf(draft.plan, id); !users.empty())
            refuse("plan.own-in-use", part->name, "it is used by " + listed(users), "give them another part first");
        const auto isIt = [&id](const OwnPart& each) { return each.id == id; };
        std::erase_if(parts.pipes, isIt);
        std::erase_if(parts.fittings, isIt);
        std::erase_if(parts.pumps, isIt);
        keep(draft, std::move(parts));
    });
}

std::vector<std::string> usersOf(const Plan& plan, std::string_view partId)
{
    std::vector<std::string> tags;
    for (const auto& run : plan.runs)
        if (uses(*run, partId))
            tags.push_back(run->tag);
    for (const auto& pump : plan.pumps)
        if (pump->modelId == partId)
            tags.push_back(pump->tag);
    return tags;
}

} // namespace sumpwright::plan
