#include "core/design/size_groups.hpp"

#include <algorithm>

namespace sumpwright::design
{
namespace
{

PipePart partOf(const plan::Run& run)
{
    const auto meets = [&run](auto kind) {
        using End = decltype(kind);
        return std::holds_alternative<End>(run.from) || std::holds_alternative<End>(run.to);
    };
    if (meets(plan::PumpEnd{}))
        return PipePart::riser;
    return meets(plan::PortEnd{}) ? PipePart::branch : PipePart::header;
}

// A PN names a row of sizes; the pressures printed on schedule pipe differ from size to size of one row.
bool sameFamily(const catalogue::Pipe& a, const catalogue::Pipe& b)
{
    const bool named = a.pressureClass.starts_with("PN") || b.pressureClass.starts_with("PN");
    return a.standard == b.standard && a.material == b.material && a.gravityOnly == b.gravityOnly &&
           (!named || a.pressureClass == b.pressureClass);
}

} // namespace

std::vector<const catalogue::Pipe*> sizesLike(const catalogue::Catalogue& catalogue, const std::string& pipeId)
{
    std::vector<const catalogue::Pipe*> sizes;
    const auto now = catalogue.pipe(pipeId);
    if (!now)
        return sizes;
    for (const catalogue::Pipe& pipe : catalogue.pipes())
        if (sameFamily(pipe, **now))
            sizes.push_back(&pipe);
    std::stable_sort(sizes.begin(), sizes.end(),
                     [](const catalogue::Pipe* a, const catalogue::Pipe* b) { return a->bore < b->bore; });
    return sizes;
}

std::vector<PipeGroup> sizeGroupsOf(const plan::Plan& plan, const CataloguePointer& catalogue,
                                    const std::vector<base::Id>& runs, bool byPart)
{
    std::vector<PipeGroup> groups;
    for (const base::Id id : runs) {
        const plan::Run& run = *plan.runs.find(id);
        const PipePart part = byPart ? partOf(run) : PipePart::all;
        const auto pipe = catalogue->pipe(run.pipeId);
        const auto fits = [&](const PipeGroup& group) {
            if (group.part != part)
                return false;
            if (byPart)
                return group.now == run.pipeId;
            const auto other = catalogue->pipe(group.now);
            return pipe && other && sameFamily(**pipe, **other);
        };
        auto group = std::find_if(groups.begin(), groups.end(), fits);
        if (group == groups.end()) {
            groups.push_back({part, {}, {}, run.pipeId, {}});
            group = groups.end() - 1;
        }
        group->runs.push_back(id);
        group->length += plan::lengthOf(run);
    }
    std::stable_sort(groups.begin(), groups.end(),
                     [](const PipeGroup& a, const PipeGroup& b) { return a.part < b.part; });
    return groups;
}

} // namespace sumpwright::design
