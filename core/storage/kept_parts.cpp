#include "core/storage/kept_parts.hpp"

#include <algorithm>

#include "core/plan/check_elements.hpp"
#include "core/storage/file.hpp"
#include "core/storage/plan_text.hpp"
#include "core/storage/read_elements.hpp"
#include "core/storage/write_elements.hpp"

namespace sumpwright::storage
{

namespace
{

constexpr std::size_t mostPartValues = 400'000;

plan::OwnParts partsIn(const JsonNode& root)
{
    UnknownKeys unknown;
    ObjectReader reader(root, {}, unknown);
    if (reader.text("format") != partsFormat)
        refuseAt(reader.need("format"), "/format", "storage.other-format", "this is no file of kept parts",
                 "a file whose format is \"" + std::string(partsFormat) + "\"");
    if (reader.count("version") > planVersion)
        refuseAt(reader.need("version"), "/version", "storage.newer-version", "a newer program wrote this",
                 "version " + std::to_string(planVersion) + "; the file is untouched");
    plan::OwnParts parts = ownPartsIn(reader.need("own_parts"), "/own_parts", unknown);
    plan::FaultFinder faults;
    plan::checkOwnParts(parts, faults);
    if (!faults.faults().empty()) {
        const base::Refusal& why = faults.faults().front().refusal;
        refuseAt(reader.need("own_parts"), "/own_parts/" + faults.faults().front().key, why.id, why.what, why.accepts);
    }
    return parts;
}

template <class Part> void mergeList(std::vector<Part>& into, const std::vector<Part>& from, plan::OwnIds& ids)
{
    for (const Part& part : from) {
        const auto same =
            std::find_if(into.begin(), into.end(), [&](const Part& each) { return each.name == part.name; });
        Part copy = part;
        copy.id = same == into.end() ? ids.next(part.name) : same->id;
        if (same == into.end())
            into.push_back(std::move(copy));
        else
            *same = std::move(copy);
    }
}

} // namespace

std::string keptPartsText(const plan::OwnParts& parts)
{
    JsonNode root = JsonNode::object();
    root.add("format", JsonNode::ofText(partsFormat));
    root.add("version", JsonNode::ofNumber(planVersion));
    root.add("own_parts", nodeOf(parts));
    return laidOut(root) + "\n";
}

base::Outcome<plan::OwnParts> keptPartsFrom(std::string_view text)
{
    const auto root = readJson(text, {largestPlanBytes, deepestNesting, mostPartValues});
    if (!root)
        return root.refusal();
    try {
        return partsIn(*root);
    } catch (const Unreadable& unreadable) {
        return unreadable.refusal;
    }
}

base::Outcome<plan::OwnParts> readKeptParts(const std::filesystem::path& path)
{
    std::error_code error;
    if (!std::filesystem::exists(path, error))
        return plan::OwnParts();
    const auto bytes = readFile(path, largestPlanBytes);
    return bytes ? keptPartsFrom(*bytes) : base::Outcome<plan::OwnParts>(bytes.refusal());
}

std::optional<base::Refusal> writeKeptParts(const std::filesystem::path& path, const plan::OwnParts& parts)
{
    std::error_code error; // a folder that cannot be made is told by the writing
    std::filesystem::create_directories(path.parent_path(), error);
    return writeFile(path, keptPartsText(parts));
}

plan::OwnParts mergedParts(plan::OwnParts into, const plan::OwnParts& from)
{
    plan::OwnIds ids(into);
    mergeList(into.pipes, from.pipes, ids);
    mergeList(into.fittings, from.fittings, ids);
    mergeList(into.pumps, from.pumps, ids);
    return into;
}

} // namespace sumpwright::storage
