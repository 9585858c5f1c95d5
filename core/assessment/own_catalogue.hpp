// The catalogue with the plan's own parts in it, as rows of basis "own": what every stage, rule, form and drawing of
// that plan looks into. Key: own-part.
#pragma once

#include <memory>

#include "core/catalogue/catalogue.hpp"
#include "core/plan/own_parts.hpp"

namespace sumpwright::assessment
{

// The same catalogue where there are none.
std::shared_ptr<const catalogue::Catalogue> withOwnParts(const std::shared_ptr<const catalogue::Catalogue>& tables,
                                                         const plan::OwnParts& parts);

} // namespace sumpwright::assessment
