// Vertices of runs. Indices count from 0 at `from`. Ends attached to a port, pump or tee move with that, not here.
// Valves keep their place on the legs that do not change.
#pragma once

#include <cstddef>
#include <optional>
#include <string>

#include "core/plan/edits/edit.hpp"

namespace sumpwright::plan
{

Edit insertVertex(base::Id run, double station); // on the run as it lies
// A new vertex before vertex `before` (1 ... count-1), anywhere.
Edit insertVertexAt(base::Id run, std::size_t before, Point at, units::Elevation level);
Edit moveVertex(base::Id run, std::size_t vertex, Point to); // takes along vertices straight above and below
Edit removeVertex(base::Id run, std::size_t vertex);         // inner ones, and open ends while two remain
Edit setVertexLevel(base::Id run, std::size_t vertex, units::Elevation centreLine);
Edit setVertexInvert(base::Id run, std::size_t vertex, units::Elevation invert, units::Length bore);
Edit setBendFitting(base::Id run, std::size_t vertex, std::string fittingId); // empty: chosen from the drawn angle
Edit setBendLoss(base::Id run, std::size_t vertex, std::optional<double> lossCoefficient);

} // namespace sumpwright::plan
