// Migrations: one step from each older version of the plan file to the next, done on the JSON before it is read.
#pragma once

#include "core/storage/json_node.hpp"

namespace sumpwright::storage
{

// From `version` to planVersion. Version 1 is the first, so there is no step yet; the next version adds one.
void migrate(JsonNode& root, int version);

} // namespace sumpwright::storage
