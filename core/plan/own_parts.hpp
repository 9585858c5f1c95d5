// OwnParts: pipes, fittings and pumps that the person typed in or imported, kept in the plan so that it opens anywhere.
//
// Each has an id beginning with "own-" that runs, valves and pumps name like a row of the catalogue. Bores and
// diameters in m, K on the velocity in the run's bore. Basis of every value: the person's word; `origin` keeps it.
#pragma once

#include <map>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "core/plan/point.hpp"
#include "core/plan/pump.hpp"

namespace sumpwright::plan
{

inline constexpr std::string_view ownPrefix = "own-";

struct OwnPart {
    std::string id;
    std::string name;
    std::string origin; // where the numbers are from, in the person's words: "maker's sheet of 2024"; may be empty
    std::string extra;  // keys this version does not know, JSON object text, kept

    friend bool operator==(const OwnPart&, const OwnPart&) = default;
};

struct OwnPipe : OwnPart {
    units::Length outsideDiameter;
    units::Length bore;
    units::Length roughness = units::millimetres(0.0015); // of the new pipe
    std::optional<double> corrugatedFactor;               // corrugated hose: its friction factor
    bool gravityOnly = false;                             // holds no pressure

    friend bool operator==(const OwnPipe&, const OwnPipe&) = default;
};

enum class OwnFittingKind { fitting, ballValve, gateValve, butterflyValve, globeValve, nonReturnValve };

struct OwnFitting : OwnPart {
    OwnFittingKind kind = OwnFittingKind::fitting;
    std::optional<double> k;               // fully open; or
    std::optional<units::Flow> flowFactor; // Kv: what passes fully open at 1 bar
    std::optional<units::Head> cracking;   // of a non-return valve: head that opens it at all

    friend bool operator==(const OwnFitting&, const OwnFitting&) = default;
};

struct OwnPump : OwnPart {
    std::vector<CurvePoint> curve; // flow rising from 0, head falling
    bool twoNumbers = false;       // the curve is the two numbers of the box: shut-off head, greatest flow
    std::optional<units::Power> power;
    std::optional<units::Length> leastDepth;

    friend bool operator==(const OwnPump&, const OwnPump&) = default;
};

struct OwnParts {
    std::vector<OwnPipe> pipes;
    std::vector<OwnFitting> fittings;
    std::vector<OwnPump> pumps;
    std::string extra; // as of a part

    std::size_t size() const { return pipes.size() + fittings.size() + pumps.size(); }
    bool empty() const { return size() == 0; } // of parts
    friend bool operator==(const OwnParts&, const OwnParts&) = default;
};

// Calls visit(part) for each part of each kind.
template <class Parts, class Visit> void forEachPart(Parts& parts, Visit visit)
{
    for (auto& pipe : parts.pipes)
        visit(pipe);
    for (auto& fitting : parts.fittings)
        visit(fitting);
    for (auto& pump : parts.pumps)
        visit(pump);
}

bool isOwn(std::string_view id);
// Null: no own part has this id.
const OwnPart* findOwn(const OwnParts& parts, std::string_view id);

// Gives out ids made of names that no part has yet: "own-green-hose-25", "own-green-hose-25-2".
class OwnIds
{
public:
    explicit OwnIds(const OwnParts& taken);
    std::string next(std::string_view name); // which is then taken

private:
    std::set<std::string, std::less<>> m_taken;
    std::map<std::string, int, std::less<>> m_lastNumber; // by the id without number
};

} // namespace sumpwright::plan
