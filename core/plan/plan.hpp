// Plan: the whole document as one immutable value. Copying is cheap: elements are shared.
#pragma once

#include <cstdint>
#include <memory>
#include <optional>
#include <string>

#include "core/plan/annotation.hpp"
#include "core/plan/fixture.hpp"
#include "core/plan/floor.hpp"
#include "core/plan/own_parts.hpp"
#include "core/plan/pump.hpp"
#include "core/plan/run.hpp"
#include "core/plan/site.hpp"
#include "core/plan/table.hpp"
#include "core/plan/vessel.hpp"

namespace sumpwright::plan
{

struct Plan {
    std::shared_ptr<const Site> site = std::make_shared<const Site>();
    std::shared_ptr<const Floor> floor = std::make_shared<const Floor>();
    Table<Fixture> fixtures;
    Table<Vessel> vessels;
    Table<Pump> pumps;
    Table<Tee> tees;
    Table<Run> runs;
    Table<Note> notes;
    Table<DimensionLine> dimensions;
    std::shared_ptr<const Underlay> underlay; // null: none
    std::shared_ptr<const OwnParts> ownParts = std::make_shared<const OwnParts>();
    std::uint64_t nextId = 1; // ids are given out upwards, over all kinds, ports and valves included
    std::string extra;

    friend bool operator==(const Plan& a, const Plan& b); // what is in them; nextId does not count and is not saved
};

enum class ElementKind { fixture, vessel, pump, tee, run, note, dimension };
// What kind of element an id names; nothing when the plan has no such element.
std::optional<ElementKind> kindOf(const Plan& plan, base::Id id);
std::string tagOf(const Plan& plan, base::Id id); // notes and dimensions have none: empty

} // namespace sumpwright::plan
