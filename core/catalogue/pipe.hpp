// Pipe: one size of one standard. Lengths in m; the bore is what the hydraulics uses: outside diameter less twice
// the least wall unless the row states it. Sources per row (resources/tables/pipes.json).
#pragma once

#include <optional>
#include <string>

#include "core/catalogue/provenance.hpp"
#include "core/units/kinds.hpp"

namespace sumpwright::catalogue
{

enum class DrinkingWaterMark {
    LookForMark, // made for water supply: look for the approval mark printed on the pipe
    AskMaker,    // made for several uses: ask the maker in writing
    NotMeant,    // drainage pipe: not made for drinking water or food
};

struct Pipe {
    std::string id;   // e.g. "pvcu-pn16-32"
    std::string name; // e.g. "PVC-U 32 mm PN16"
    std::string standard;
    std::string material;
    units::Length outsideDiameter;
    units::Length wall;
    units::Length bore;
    units::Length roughnessNew; // sand-grain roughness of the new pipe
    // Corrugated hose: a Darcy friction factor that no Reynolds number takes the loss below; roughness does not count.
    std::optional<double> corrugatedFactor;
    std::string pressureClass; // as printed on the pipe, "PN16"; "none" for drainage pipe
    units::Length stockLength; // as sold: a straight length or a coil
    DrinkingWaterMark drinkingWater = DrinkingWaterMark::AskMaker;
    bool gravityOnly = false; // drainage pipe and fittings hold no pressure
    Provenance provenance;
};

// A state of the pipe wall, offered for every pipe.
struct RoughnessState {
    std::string id; // "new", "in-service", "fouled"
    std::string name;
    units::Length roughness;
    double manningN = 0.0; // of a bore that runs part full
    std::string manningSource;
    Provenance provenance;
};

} // namespace sumpwright::catalogue
