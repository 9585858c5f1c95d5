// Run: a pipe drawn as a polyline in plan with a level at each vertex; and the tees where runs meet.
//
// Levels are of the bore's centre line, metres above datum. The water is led from `from` to `to`; a pressure run
// may carry water the other way where the network says so.
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "core/base/id.hpp"
#include "core/plan/point.hpp"

namespace sumpwright::plan
{

enum class Service { pressure, gravity };

struct OpenEnd {
    friend bool operator==(const OpenEnd&, const OpenEnd&) = default;
};
struct PortEnd {
    base::Id vessel;
    base::Id port;
    std::optional<double> lossCoefficient; // entry or exit K, overridden
    std::string extra{};                   // keys this version does not know, JSON object text, kept
    friend bool operator==(const PortEnd&, const PortEnd&) = default;
};
struct PumpEnd {
    base::Id pump;
    std::string extra{};
    friend bool operator==(const PumpEnd&, const PumpEnd&) = default;
};
struct TeeEnd {
    base::Id tee;
    std::optional<double> lossCoefficient; // K this run suffers at the tee, overridden
    std::string extra{};
    friend bool operator==(const TeeEnd&, const TeeEnd&) = default;
};
using RunEnd = std::variant<OpenEnd, PortEnd, PumpEnd, TeeEnd>;

struct Vertex {
    Point at;
    units::Elevation level = units::elevationMetres(0.0);
    std::string bendFittingId;             // catalogue; empty: chosen from the drawn angle
    std::optional<double> lossCoefficient; // bend K, overridden
    std::string extra{};
    friend bool operator==(const Vertex&, const Vertex&) = default;
};

// A valve or another fitting sitting at a station along the run.
struct Valve {
    base::Id id;
    std::string tag;
    std::string fittingId;                 // catalogue: ball-valve, gate-valve, swing-check, ...
    double station = 0.5;                  // fraction of the run's length from its start, [0, 1]
    double opening = 1.0;                  // 1 open ... 0 closed
    std::optional<double> lossCoefficient; // overridden
    std::string extra{};
    friend bool operator==(const Valve&, const Valve&) = default;
};

struct ExtraFitting {
    std::string fittingId;
    int count = 1;
    std::optional<double> lossCoefficient; // of one, overridden
    std::string extra{};
    friend bool operator==(const ExtraFitting&, const ExtraFitting&) = default;
};

struct Run {
    base::Id id;
    std::string tag;
    Service service = Service::pressure;
    std::string pipeId; // catalogue
    RunEnd from = OpenEnd{};
    RunEnd to = OpenEnd{};
    std::vector<Vertex> vertices; // two or more; the first and last lie at the ends
    std::vector<Valve> valves;
    std::vector<ExtraFitting> extraFittings;
    std::string extra;

    friend bool operator==(const Run&, const Run&) = default;
};

struct Tee {
    base::Id id;
    std::string tag;
    Point at;
    units::Elevation level = units::elevationMetres(0.0);
    bool onVertex = false; // made at a vertex of the run it split; joining gives the vertex back
    std::string extra;

    friend bool operator==(const Tee&, const Tee&) = default;
};

units::Length lengthOf(const Run& run); // true length in space
// Place and level at a station in [0, 1].
Vertex placeAlong(const Run& run, double station);

// A bend met at an inner vertex: the angle the water is turned by, 0 (straight on) to pi.
struct Bend {
    std::size_t vertex = 0;
    units::Angle angle;
};
std::vector<Bend> bendsOf(const Run& run); // turns under one degree are no bends

} // namespace sumpwright::plan
