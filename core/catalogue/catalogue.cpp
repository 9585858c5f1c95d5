#include "core/catalogue/catalogue.hpp"

#include <set>

#include "core/base/ensure.hpp"
#include "core/catalogue/nearest.hpp"
#include "core/catalogue/read_rows.hpp"
#include "core/catalogue/row.hpp"

namespace sumpwright::catalogue
{
namespace
{

using SourceKeys = std::set<std::string, std::less<>>;

void requireSource(const SourceKeys& known, const std::string& key, const Row& row, const char* field)
{
    if (known.contains(key))
        return;
    const std::vector<std::string> all(known.begin(), known.end());
    throw BadRow{{"catalogue.unknown-source", row.place(field), "no source has the key \"" + key + "\"",
                  "a key of sources.json, nearest: " + commaList(nearestNames(key, all))}};
}

template <class Entry>
void addRows(const TableTexts& texts, const std::string& file, const SourceKeys& known, Entry (*read)(const Row&),
             std::vector<Entry>& entries)
{
    const auto text = texts.find(file);
    if (text == texts.end())
        return;
    for (const Row& row : rowsOf(file, text->second)) {
        Entry entry = read(row);
        requireSource(known, entry.provenance.source, row, "source");
        if constexpr (std::is_same_v<Entry, Fitting>) {
            if (!entry.coefficientSource.empty())
                requireSource(known, entry.coefficientSource, row, "coefficient_source");
            if (!entry.openingSource.empty())
                requireSource(known, entry.openingSource, row, "opening_source");
        }
        if constexpr (std::is_same_v<Entry, RoughnessState>)
            requireSource(known, entry.manningSource, row, "manning_source");
        for (const Entry& earlier : entries)
            row.require(earlier.id != entry.id, "id", "this id is there twice", "an id of its own");
        entries.push_back(std::move(entry));
    }
}

Tables readTables(const TableTexts& texts)
{
    Tables tables;
    SourceKeys known;
    if (const auto text = texts.find("sources.json"); text != texts.end())
        for (const auto& [key, row] : sourceRowsOf("sources.json", text->second)) {
            tables.sources.push_back(readSource(key, row));
            known.insert(key);
        }
    addRows(texts, "pipes.json", known, readPipe, tables.pipes);
    addRows(texts, "roughness.json", known, readRoughness, tables.roughness);
    addRows(texts, "fittings.json", known, readFitting, tables.fittings);
    addRows(texts, "valves.json", known, readFitting, tables.fittings);
    addRows(texts, "pumps.json", known, readPump, tables.pumps);
    addRows(texts, "media.json", known, readMedium, tables.media);
    addRows(texts, "live_loads.json", known, readLiveLoad, tables.liveLoads);
    addRows(texts, "vessels.json", known, readVessel, tables.vessels);
    addRows(texts, "supports.json", known, readSupport, tables.supports);
    return tables;
}

template <class Entry>
base::Outcome<const Entry*> findById(const std::vector<Entry>& entries, std::string_view id, const char* sort)
{
    std::vector<std::string> ids;
    for (const Entry& entry : entries) {
        if (entry.id == id)
            return &entry;
        ids.push_back(entry.id);
    }
    const std::string asked = id.size() > 40 ? std::string(id.substr(0, 40)) + "..." : std::string(id);
    return base::Refusal{"catalogue.unknown-id", "", "there is no " + std::string(sort) + " \"" + asked + "\"",
                         "nearest: " + commaList(nearestNames(id, ids))};
}

} // namespace

base::Outcome<std::shared_ptr<const Catalogue>> Catalogue::fromJson(const TableTexts& texts)
{
    try {
        return std::make_shared<const Catalogue>(readTables(texts));
    } catch (const BadRow& bad) {
        return bad.refusal;
    }
}

std::shared_ptr<const Catalogue> Catalogue::builtIn()
{
    static const std::shared_ptr<const Catalogue> catalogue = [] {
        const auto made = fromJson(builtInTexts());
        if (!made)
            base::ensure(false, base::oneLine(made.refusal()).c_str());
        return *made;
    }();
    return catalogue;
}

base::Outcome<const Source*> Catalogue::source(std::string_view id) const
{
    return findById(m_tables.sources, id, "source");
}

base::Outcome<const Pipe*> Catalogue::pipe(std::string_view id) const { return findById(m_tables.pipes, id, "pipe"); }

base::Outcome<const RoughnessState*> Catalogue::roughnessState(std::string_view id) const
{
    return findById(m_tables.roughness, id, "state of roughness");
}

base::Outcome<const Fitting*> Catalogue::fitting(std::string_view id) const
{
    return findById(m_tables.fittings, id, "fitting");
}

base::Outcome<const Pump*> Catalogue::pump(std::string_view id) const { return findById(m_tables.pumps, id, "pump"); }

base::Outcome<const Medium*> Catalogue::medium(std::string_view id) const
{
    return findById(m_tables.media, id, "medium");
}

base::Outcome<const LiveLoad*> Catalogue::liveLoad(std::string_view id) const
{
    return findById(m_tables.liveLoads, id, "live load");
}

base::Outcome<const VesselTemplate*> Catalogue::vessel(std::string_view id) const
{
    return findById(m_tables.vessels, id, "vessel");
}

} // namespace sumpwright::catalogue
