// Plan elements as JSON objects, keys in the file's fixed order.
#pragma once

#include "core/plan/plan.hpp"
#include "core/storage/json_node.hpp"

namespace sumpwright::storage
{

JsonNode nodeOf(plan::Point place);
JsonNode nodeOf(const plan::Site& site);
JsonNode nodeOf(const plan::Floor& floor);
JsonNode nodeOf(const plan::Fixture& fixture);
JsonNode nodeOf(const plan::Vessel& vessel);
JsonNode nodeOf(const plan::Pump& pump);
JsonNode nodeOf(const plan::CurvePoint& point);
JsonNode nodeOf(const plan::OwnParts& parts);
JsonNode nodeOf(const plan::Tee& tee);
JsonNode nodeOf(const plan::Run& run);
JsonNode nodeOf(const plan::Note& note);
JsonNode nodeOf(const plan::DimensionLine& dimension);
JsonNode nodeOf(const plan::Underlay& underlay);
// Adds the kept unknown keys of an element.
void addExtra(JsonNode& node, const std::string& extra);

} // namespace sumpwright::storage
