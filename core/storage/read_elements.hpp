// Plan elements out of JSON objects; what is wrong is thrown as Unreadable with line and path.
#pragma once

#include "core/plan/plan.hpp"
#include "core/storage/object_reader.hpp"

namespace sumpwright::storage
{

using UnknownKeys = std::vector<std::string>;

plan::Site siteIn(const JsonNode& node, const std::string& path, UnknownKeys& unknown);
plan::Floor floorIn(const JsonNode& node, const std::string& path, UnknownKeys& unknown);
plan::Fixture fixtureIn(const JsonNode& node, const std::string& path, UnknownKeys& unknown);
plan::Vessel vesselIn(const JsonNode& node, const std::string& path, UnknownKeys& unknown);
plan::Pump pumpIn(const JsonNode& node, const std::string& path, UnknownKeys& unknown);
plan::OwnParts ownPartsIn(const JsonNode& node, const std::string& path, UnknownKeys& unknown);
plan::Tee teeIn(const JsonNode& node, const std::string& path, UnknownKeys& unknown);
plan::Run runIn(const JsonNode& node, const std::string& path, UnknownKeys& unknown);
plan::Note noteIn(const JsonNode& node, const std::string& path, UnknownKeys& unknown);
plan::DimensionLine dimensionIn(const JsonNode& node, const std::string& path, UnknownKeys& unknown);
plan::Underlay underlayIn(const JsonNode& node, const std::string& path, UnknownKeys& unknown);

plan::CurvePoint curvePointIn(const JsonNode& node, const std::string& path);
plan::Point pointIn(const JsonNode& node, const std::string& path);

} // namespace sumpwright::storage
