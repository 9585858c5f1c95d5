// Fitting: loss coefficients of one kind of fitting or valve by four published ways. All K are ratios on the velocity
// head in the pipe the fitting belongs to. Valid where the row says. Sources per row (resources/tables/fittings.json,
// valves.json).
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/catalogue/provenance.hpp"
#include "core/units/kinds.hpp"

namespace sumpwright::catalogue
{

// K = k1/Re + kInfinity (1 + 1 in / bore)
struct HooperCoefficients {
    double k1 = 0.0;
    double kInfinity = 0.0;
};

// K = k1/Re + ki (1 + kd (1 in)^0.3 / nominal^0.3)
struct DarbyCoefficients {
    double k1 = 0.0;
    double ki = 0.0;
    double kd = 0.0;
};

// K = multiple x fully turbulent friction factor of clean commercial steel, or a plain K for entries and exits.
struct CraneCoefficient {
    double multiple = 0.0;
    bool plainK = false;
};

enum class ValveKind {
    NotAValve,
    Ball,      // quarter turn: fraction closed x 90 degrees
    Gate,      // rising gate: fraction of the bore closed
    Butterfly, // quarter turn, a disc that stays in the bore
    Globe,     // no opening table: open only
    Check,     // one way, opened by the flow
};

// The K added to that of the open valve when part of it is closed.
struct OpeningPoint {
    double fractionClosed = 0.0; // 0 open .. 1 closed
    double addedK = 0.0;
};

struct Fitting {
    std::string id; // e.g. "elbow-90"
    std::string name;
    ValveKind valve = ValveKind::NotAValve;
    double defaultK = 0.0;
    std::optional<units::Flow> flowFactor; // Kv: what passes fully open at 1 bar; it then gives the K by the bore
    units::Length defaultKFrom;            // least bore the default K is meant for
    units::Length defaultKTo;              // largest
    std::optional<HooperCoefficients> hooper;
    std::optional<DarbyCoefficients> darby;
    std::optional<CraneCoefficient> crane;
    std::vector<OpeningPoint> openings;  // ascending in fractionClosed; empty: open or shut only
    double shutFrom = 1.0;               // at this fraction closed and above the valve counts as shut
    std::optional<units::Head> cracking; // head needed to open a spring check at all
    Provenance provenance;
    std::string coefficientSource; // key of the source of the Hooper, Darby and Crane columns; empty where none
    std::string openingSource;     // key of the source of the openings; empty where none
};

} // namespace sumpwright::catalogue
