#include "core/storage/plan_text.hpp"

#include <algorithm>
#include <charconv>
#include <map>
#include <set>

#include "core/plan/check.hpp"
#include "core/storage/migrations.hpp"
#include "core/storage/read_elements.hpp"
#include "core/storage/write_elements.hpp"

namespace sumpwright::storage
{

namespace
{

constexpr std::size_t mostValues = 400'000;

template <class Element> void addTable(JsonNode& root, std::string_view key, const plan::Table<Element>& table)
{
    JsonNode list = JsonNode::list();
    for (const auto& element : table)
        list.items.push_back(nodeOf(*element));
    root.add(key, std::move(list));
}

// Where an element stood in the file, to say so when a check of the whole plan fails.
struct Stood {
    const JsonNode* node = nullptr;
    std::string path;
};

class PlanReader
{
    template <class Read> auto part(const char* key, Read readIn)
    {
        const JsonNode& node = m_reader.need(key);
        m_parts[key] = {&node, m_reader.pathOf(key)};
        return readIn(node, m_reader.pathOf(key), m_loaded.unknownKeys);
    }

    template <class Element, class Read> void table(const std::string& key, plan::Table<Element>& into, Read readIn)
    {
        const auto& nodes = m_reader.listAt(key);
        m_elements += nodes.size();
        if (m_elements > mostElements)
            refuseAt(nodes.front(), m_reader.pathOf(key), "storage.too-many",
                     "more than " + std::to_string(mostElements) + " elements", "a smaller plan");
        for (std::size_t i = 0; i < nodes.size(); ++i) {
            const std::string path = m_reader.pathOf(key + "/" + std::to_string(i));
            Element element = readIn(nodes[i], path, m_loaded.unknownKeys);
            enterIds(element, nodes[i], path);
            m_stood[element.id] = {&nodes[i], path};
            into.put(std::move(element));
        }
    }

    void enter(base::Id id, const JsonNode& node, const std::string& path)
    {
        if (!m_ids.insert(id).second)
            refuseAt(node, path, "plan.id-clash", "id " + std::to_string(id.number) + " is used twice",
                     "a number of its own for every element, port and valve");
    }
    template <class Element> void enterIds(const Element& element, const JsonNode& node, const std::string& path)
    {
        enter(element.id, *node.find("id"), path + "/id");
        if constexpr (std::is_same_v<Element, plan::Vessel>)
            enterParts(element.ports, node, path, "ports");
        if constexpr (std::is_same_v<Element, plan::Run>)
            enterParts(element.valves, node, path, "valves");
    }
    template <class Part>
    void enterParts(const std::vector<Part>& parts, const JsonNode& node, const std::string& path, const char* key)
    {
        for (std::size_t i = 0; i < parts.size(); ++i)
            enter(parts[i].id, *node.find(key)->items[i].find("id"),
                  path + "/" + key + "/" + std::to_string(i) + "/id");
    }

    [[noreturn]] void refuseFault(const plan::Fault& fault) const
    {
        const auto part = m_parts.find(fault.part);
        const auto element = m_stood.find(fault.element);
        Stood at = part != m_parts.end() ? part->second : Stood{&m_root, ""};
        if (element != m_stood.end())
            at = element->second;
        const std::string path = at.path + (fault.key.empty() ? "" : "/" + fault.key);
        refuseAt(deepest(*at.node, fault.key), path, fault.refusal.id, fault.refusal.what, fault.refusal.accepts);
    }
    // The node a path leads to, or the last one on the way that is there.
    static const JsonNode& deepest(const JsonNode& start, std::string_view path)
    {
        const JsonNode* node = &start;
        while (!path.empty()) {
            const std::size_t slash = std::min(path.find('/'), path.size());
            const std::string_view step = path.substr(0, slash);
            const JsonNode* next = node->find(step);
            std::size_t index = 0;
            if (node->kind == JsonNode::Kind::list &&
                std::from_chars(step.data(), step.data() + step.size(), index).ec == std::errc{} &&
                index < node->items.size())
                next = &node->items[index];
            if (!next)
                break;
            node = next;
            path.remove_prefix(std::min(slash + 1, path.size()));
        }
        return *node;
    }

    const JsonNode& m_root;
    LoadedPlan m_loaded;
    ObjectReader m_reader;
    std::map<std::string, Stood, std::less<>> m_parts;
    std::map<base::Id, Stood> m_stood;
    std::set<base::Id> m_ids;
    std::size_t m_elements = 0;

public:
    explicit PlanReader(const JsonNode& root) : m_root(root), m_reader(root, {}, m_loaded.unknownKeys) {}

    LoadedPlan read(int version)
    {
        plan::Plan& plan = m_loaded.plan;
        m_loaded.fromVersion = version;
        m_reader.find("format");
        m_reader.find("version");
        plan.site = std::make_shared<const plan::Site>(part("site", siteIn));
        plan.floor = std::make_shared<const plan::Floor>(part("floor", floorIn));
        table("fixtures", plan.fixtures, fixtureIn);
        table("vessels", plan.vessels, vesselIn);
        table("pumps", plan.pumps, pumpIn);
        table("tees", plan.tees, teeIn);
        table("runs", plan.runs, runIn);
        table("notes", plan.notes, noteIn);
        table("dimensions", plan.dimensions, dimensionIn);
        if (m_reader.find("underlay"))
            plan.underlay = std::make_shared<const plan::Underlay>(part("underlay", underlayIn));
        if (m_reader.find("own_parts"))
            plan.ownParts = std::make_shared<const plan::OwnParts>(part("own_parts", ownPartsIn));
        plan.extra = m_reader.extra();
        plan.nextId = m_ids.empty() ? 1 : m_ids.rbegin()->number + 1;
        const std::vector<plan::Fault> faults = plan::check(plan);
        if (!faults.empty())
            refuseFault(faults.front());
        return std::move(m_loaded);
    }
};

int versionIn(const JsonNode& root)
{
    std::vector<std::string> unknown;
    ObjectReader reader(root, {}, unknown);
    const std::string format = reader.text("format");
    if (format != planFormat)
        refuseAt(reader.need("format"), "/format", "storage.other-format", "'" + format + "' is no plan",
                 "a file whose format is \"" + std::string(planFormat) + "\"");
    const int version = reader.count("version");
    if (version > planVersion)
        refuseAt(reader.need("version"), "/version", "storage.newer-version",
                 "version " + std::to_string(version) + " was written by a newer program",
                 "version " + std::to_string(planVersion) +
                     " or older; open it with a newer Sumpwright. The file is untouched");
    if (version < 1)
        refuseAt(reader.need("version"), "/version", "storage.no-version", "there never was such a version",
                 "1 to " + std::to_string(planVersion));
    return version;
}

} // namespace

std::string saveText(const plan::Plan& plan)
{
    JsonNode root = JsonNode::object();
    root.add("format", JsonNode::ofText(planFormat));
    root.add("version", JsonNode::ofNumber(planVersion));
    root.add("site", nodeOf(*plan.site));
    root.add("floor", nodeOf(*plan.floor));
    addTable(root, "fixtures", plan.fixtures);
    addTable(root, "vessels", plan.vessels);
    addTable(root, "pumps", plan.pumps);
    addTable(root, "tees", plan.tees);
    addTable(root, "runs", plan.runs);
    addTable(root, "notes", plan.notes);
    addTable(root, "dimensions", plan.dimensions);
    if (plan.underlay)
        root.add("underlay", nodeOf(*plan.underlay));
    if (!(*plan.ownParts == plan::OwnParts()))
        root.add("own_parts", nodeOf(*plan.ownParts));
    addExtra(root, plan.extra);
    return laidOut(root) + "\n";
}

base::Outcome<LoadedPlan> loadText(std::string_view text)
{
    auto root = readJson(text, {largestPlanBytes, deepestNesting, mostValues});
    if (!root)
        return root.refusal();
    try {
        JsonNode node = std::move(root).value();
        const int version = versionIn(node);
        migrate(node, version);
        return PlanReader(node).read(version);
    } catch (const Unreadable& unreadable) {
        return unreadable.refusal;
    }
}

} // namespace sumpwright::storage
