// Which runs are sized together, and the sizes each group may have.
#pragma once

#include <vector>

#include "core/design/pipe_sizes.hpp"

namespace sumpwright::design
{

// The pressure runs of one circuit that are in its solved network, grouped as asked; without the sizes offered.
std::vector<PipeGroup> sizeGroupsOf(const plan::Plan& plan, const CataloguePointer& catalogue,
                                    const std::vector<base::Id>& runs, bool byPart);
// The pipes of the same standard, material and pressure class (PN), small to large. Empty: unknown pipe.
std::vector<const catalogue::Pipe*> sizesLike(const catalogue::Catalogue& catalogue, const std::string& pipeId);

} // namespace sumpwright::design
