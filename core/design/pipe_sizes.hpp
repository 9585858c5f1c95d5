// Choosing pipe sizes: the bores of one pump's pressure runs with the least cost of pipe and pumping energy together
// over the years, inside a velocity limit and the sizes of each run's own pipe standard.
//
// Runs are sized in groups: by their part in the pipework (riser from the pump, header between tees, branch to an
// outlet) and the pipe they have now, or all that share a standard together. Two questions:
//   flow kept: every run carries what it carries now; the head the neediest outlet then asks for, with the valves on
//     its way open, is paid for at the wire-to-water efficiency: a pump that gives just that.
//   pump kept: the pump stays, the network is solved anew; a choice must bring at least the flow of today.
// Exact by trying every combination, up to a limit; above it by stepping from several starts to the best neighbour
// until none is better, told as `exact` false. Cost of pipe: length times price a metre; fittings not counted.
// Source: own enumeration; the balance of pipe and energy cost, genereaux-1937 (checked in the tests).
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "core/base/outcome.hpp"
#include "core/base/stop.hpp"
#include "core/design/bench.hpp"
#include "core/plan/edits/edit.hpp"

namespace sumpwright::design
{

enum class PipePart { riser, header, branch, all };
enum class Kept { flow, pump };

struct PipePrice {
    std::string pipeId;
    units::Money perMetre;
};

struct PipeQuestion {
    Kept kept = Kept::flow;
    bool byPart = true;
    units::Time period = units::hours(10.0 * 8760.0);
    std::optional<units::EnergyPrice> powerPrice; // absent: the site's
    std::vector<PipePrice> prices;                // sizes not named are assumed: assumedPrice()
    std::optional<double> wireToWater;            // flow kept; absent: the pump's own at its duty point
    units::Velocity fastest = units::metresPerSecond(1.5);
    // At the flow of today a size may not run slower, unless every smaller one runs too fast: solids settle.
    units::Velocity slowest = units::metresPerSecond(0.6);
};

// An invented, typical price of a metre of pressure pipe, by its outside diameter; in whatever currency. Invented.
units::Money assumedPrice(units::Length outsideDiameter);
constexpr units::Velocity velocityLimit = units::metresPerSecond(2.0); // common practice, no source

struct PipeGroup {
    PipePart part = PipePart::all;
    std::vector<base::Id> runs;
    units::Length length;
    std::string now;                  // pipe
    std::vector<std::string> offered; // pipes of the same standard inside the velocities asked for, small to large
};

// One choice of pipes, a pipe for each group.
struct PipeChoice {
    std::vector<std::string> pipes;
    units::Money pipeCost;
    units::Money energyCost; // over the period
    units::Money total() const { return pipeCost + energyCost; }
    units::Flow flow; // of the pump
    units::Head head;
    units::Power power;      // electrical
    units::Velocity fastest; // in any run that is sized
    units::Velocity slowest; // of those that flow
    bool allowed = true;     // keeps velocity, and the flow of today
};

struct PipeSizing {
    base::Id pump;
    std::vector<PipeGroup> groups;
    PipeChoice now;
    PipeChoice best;
    std::vector<PipeChoice> neighbours; // one group one size up or down from the best; dearest last
    std::vector<PipeChoice> tradeOff;   // by cost of pipe: those that no cheaper pipe beats in energy
    std::vector<PipePrice> assumed;     // prices nobody typed, of the sizes offered
    double wireToWater = 0.0;           // flow kept: that was counted with
    std::size_t tried = 0;
    bool exact = true;
    std::optional<plan::Edit> edit; // none: the pipes are the best already
};

// The edit that makes one of the choices; none: nothing would change.
std::optional<plan::Edit> editFor(const plan::Plan& plan, const std::vector<PipeGroup>& groups,
                                  const PipeChoice& choice);

// Refusals: "design.no-pump", "design.several-pumps", "design.not-solved", "design.no-flow", "design.no-power-price",
// "design.efficiency-missing", "design.pump-power-missing", "design.period-out-of-range", "design.velocity-over-limit"
// (also a least velocity that is not below the highest), "design.no-size" (place: the run),
// "design.price-out-of-range", "design.power-price-out-of-range", "design.no-choice".
base::Outcome<PipeSizing> choosePipes(const plan::Plan& plan, const CataloguePointer& catalogue,
                                      const PipeQuestion& question = {}, const base::StopToken& stop = {});

} // namespace sumpwright::design
