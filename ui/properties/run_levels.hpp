// Levels of a run as its form shows them: bore from the catalogue, inverts, falls of the legs that lie.
#pragma once

#include <optional>
#include <vector>

#include "core/catalogue/catalogue.hpp"
#include "core/plan/run.hpp"

namespace sumpwright::ui::properties
{

std::optional<units::Length> boreOf(const catalogue::Catalogue& catalogue, const plan::Run& run);
// Lowest line of the bore at a vertex: centre line less half the bore.
units::Elevation invertOf(const plan::Vertex& vertex, units::Length bore);
// Rounded to a hundredth of a percent, so that a run laid at one fall reads as one; vertical legs have none.
std::vector<units::Slope> lyingFalls(const plan::Run& run);

} // namespace sumpwright::ui::properties
