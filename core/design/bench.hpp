// Bench: a plan's pipes and water as the design functions need them: drawn, and solved in both running states, from
// nothing. A plan without faults gives a bench; what could not be solved says why in its circuits.
#pragma once

#include <memory>
#include <optional>
#include <vector>

#include "core/assessment/pipework.hpp"
#include "core/assessment/running.hpp"
#include "core/assessment/site_result.hpp"
#include "core/catalogue/catalogue.hpp"
#include "core/plan/plan.hpp"

namespace sumpwright::design
{

using CataloguePointer = std::shared_ptr<const catalogue::Catalogue>;

struct Bench {
    std::shared_ptr<const assessment::Pipework> pipework;
    std::vector<assessment::Basin> basins;
    assessment::SiteResult site;
    assessment::Circuits circuits;
};

Bench benchOf(const plan::Plan& plan, const CataloguePointer& catalogue);
// The pipes alone: for asking what other pipes would lose, without solving anything.
assessment::Pipework pipesOf(const plan::Plan& plan, const CataloguePointer& catalogue);

// The state the drawing shows: least flow; most flow where that one is not computed. Null: neither.
const assessment::CircuitState* shownState(const assessment::SolvedCircuit& circuit);
// Of each basin of the circuit, as it stands in that state; where a level is not known, at its lip or bottom.
std::vector<units::Elevation> levelsIn(const Bench& bench, const assessment::SolvedCircuit& circuit,
                                       const assessment::CircuitState& state);

} // namespace sumpwright::design
