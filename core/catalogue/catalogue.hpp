// Catalogue: the tables of resources/tables with their sources, immutable once made. Every row names its source and
// basis; a row that does not is refused, with file and row.
#pragma once

#include <map>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/outcome.hpp"
#include "core/catalogue/fitting.hpp"
#include "core/catalogue/live_load.hpp"
#include "core/catalogue/medium.hpp"
#include "core/catalogue/pipe.hpp"
#include "core/catalogue/provenance.hpp"
#include "core/catalogue/pump.hpp"
#include "core/catalogue/support.hpp"
#include "core/catalogue/vessel_template.hpp"

namespace sumpwright::catalogue
{

// File name ("pipes.json") to its text.
using TableTexts = std::map<std::string, std::string, std::less<>>;

struct Tables {
    std::vector<Source> sources;
    std::vector<Pipe> pipes;
    std::vector<RoughnessState> roughness;
    std::vector<Fitting> fittings; // fittings.json and valves.json together
    std::vector<Pump> pumps;
    std::vector<Medium> media;
    std::vector<LiveLoad> liveLoads;
    std::vector<VesselTemplate> vessels;
    std::vector<Support> supports;
};

class Catalogue
{
public:
    // The tables embedded in the program, parsed once.
    static std::shared_ptr<const Catalogue> builtIn();
    // A table that is absent is empty; sources.json is needed as soon as any row is there.
    static base::Outcome<std::shared_ptr<const Catalogue>> fromJson(const TableTexts& texts);
    // The texts embedded in the program.
    static TableTexts builtInTexts();

    explicit Catalogue(Tables tables) : m_tables(std::move(tables)) {}

    const Tables& tables() const { return m_tables; }
    const std::vector<Source>& sources() const { return m_tables.sources; }
    const std::vector<Pipe>& pipes() const { return m_tables.pipes; }
    const std::vector<RoughnessState>& roughness() const { return m_tables.roughness; }
    const std::vector<Fitting>& fittings() const { return m_tables.fittings; }
    const std::vector<Pump>& pumps() const { return m_tables.pumps; }
    const std::vector<Medium>& media() const { return m_tables.media; }
    const std::vector<LiveLoad>& liveLoads() const { return m_tables.liveLoads; }
    const std::vector<VesselTemplate>& vessels() const { return m_tables.vessels; }
    const std::vector<Support>& supports() const { return m_tables.supports; }

    // By id, or a Refusal "catalogue.unknown-id" that names the nearest ids. Pointers live as long as the catalogue.
    base::Outcome<const Source*> source(std::string_view id) const;
    base::Outcome<const Pipe*> pipe(std::string_view id) const;
    base::Outcome<const RoughnessState*> roughnessState(std::string_view id) const;
    base::Outcome<const Fitting*> fitting(std::string_view id) const;
    base::Outcome<const Pump*> pump(std::string_view id) const;
    base::Outcome<const Medium*> medium(std::string_view id) const;
    base::Outcome<const LiveLoad*> liveLoad(std::string_view id) const;
    base::Outcome<const VesselTemplate*> vessel(std::string_view id) const;

private:
    Tables m_tables;
};

} // namespace sumpwright::catalogue
