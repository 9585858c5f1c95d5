// Site: what holds for the whole plan - whose it is, where it stands, and the conditions it is designed for.
#pragma once

#include <optional>
#include <string>

#include "core/units/measures.hpp"

namespace sumpwright::plan
{

// The state of the pipe walls the design is computed for; roughness from the catalogue's condition table.
enum class PipeCondition { asNew, inService, fouled };

// Least clear distances, common practice, no source; the person may change each.
struct Clearances {
    units::Length aisle = units::metres(0.60);      // free width between vessels, or vessel and wall
    units::Length reach = units::metres(0.75);      // from a standing place to what a hand must reach
    units::Length headroom = units::metres(0.60);   // free height above a rim
    units::Length doorMargin = units::metres(0.05); // door width beyond the vessel's smallest way through

    friend bool operator==(const Clearances&, const Clearances&) = default;
};

struct Site {
    std::string name;
    std::string client;
    std::string designer;
    std::optional<units::Length> altitude; // above sea level; no silent default
    units::Temperature designWater = units::celsius(20.0);
    std::optional<units::Temperature> coldestWater; // in the year; absent: no colder than designed for
    std::optional<units::Temperature> warmestWater; // absent: no warmer
    units::Temperature designAir = units::celsius(20.0);
    std::string currency = "EUR"; // ISO 4217
    std::optional<units::EnergyPrice> powerPrice;
    PipeCondition pipeCondition = PipeCondition::inService;
    std::string floorUse;                      // id in the catalogue's live-load table; empty: no comparison wanted
    units::Angle north = units::degrees(90.0); // direction of north on the sheet
    Clearances clearances;
    std::string extra; // keys this version does not know, JSON object text, kept

    friend bool operator==(const Site&, const Site&) = default;
};

} // namespace sumpwright::plan
