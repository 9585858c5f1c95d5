// Pump: head against flow at full speed, electrical input, and what it asks of the sump. Points ascend in flow from
// shut-off (flow 0) to head 0; heads fall strictly. Sources per row (resources/tables/pumps.json).
#pragma once

#include <string>
#include <vector>

#include "core/catalogue/provenance.hpp"
#include "core/units/kinds.hpp"

namespace sumpwright::catalogue
{

struct PumpPoint {
    units::Flow flow;
    units::Head head;
};

struct PowerPoint {
    units::Flow flow;
    units::Power input; // electrical
};

struct Pump {
    std::string id; // e.g. "G4500"
    std::string name;
    std::vector<PumpPoint> points;
    bool twoNumbers = false;       // only the two numbers of a box: the curve between them is an estimate
    std::vector<PowerPoint> power; // one point: the same input at every flow
    units::Length minimumDepth;    // least water depth over the sump floor while running
    units::Length dryRunDepth;     // below this it draws air
    units::Length solidsPassage;   // largest grain that passes the strainer
    units::Length outletSize;      // bore of the outlet
    Provenance provenance;
};

} // namespace sumpwright::catalogue
