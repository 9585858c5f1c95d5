#include "core/storage/read_elements.hpp"
#include "core/storage/words.hpp"

namespace sumpwright::storage
{

namespace
{

plan::Shape shapeIn(ObjectReader& reader)
{
    switch (reader.oneOf("shape", words::shape)) {
    case 0:
        return plan::RoundShape{reader.quantity<units::Length>("diameter")};
    case 1:
        return plan::RectangleShape{reader.quantity<units::Length>("length"), reader.quantity<units::Length>("width")};
    default:
        return plan::CagedShape{};
    }
}

plan::Medium mediumIn(const JsonNode& node, const std::string& path, UnknownKeys& unknown)
{
    ObjectReader reader(node, path, unknown);
    plan::Medium medium;
    medium.mediumId = reader.text("medium");
    medium.depth = reader.quantity<units::Length>("depth");
    medium.extra = reader.extra();
    return medium;
}

plan::Stand standIn(const JsonNode& node, const std::string& path, UnknownKeys& unknown)
{
    ObjectReader reader(node, path, unknown);
    plan::Stand stand;
    stand.kind = reader.oneOf("kind", words::standKind);
    stand.mass = reader.optionalQuantity<units::Mass>("mass");
    stand.legCount = reader.count("legs");
    stand.padSide = reader.quantity<units::Length>("pad_side");
    stand.extra = reader.extra();
    return stand;
}

plan::Port portIn(const JsonNode& node, const std::string& path, UnknownKeys& unknown)
{
    ObjectReader reader(node, path, unknown);
    plan::Port port;
    port.id = {reader.id("id")};
    port.tag = reader.text("tag");
    port.kind = reader.oneOf("kind", words::portKind);
    port.offset = pointIn(reader.need("offset"), reader.pathOf("offset"));
    port.level = reader.quantity<units::Elevation>("level");
    port.bore = reader.optionalQuantity<units::Length>("bore");
    port.drainLevel = reader.optionalQuantity<units::Elevation>("drain_level");
    port.ventLevel = reader.optionalQuantity<units::Elevation>("vent_level");
    port.openFraction = reader.optionalRatio("open_fraction");
    port.targetFlow = reader.optionalQuantity<units::Flow>("target_flow");
    port.extra = reader.extra();
    return port;
}

} // namespace

plan::Vessel vesselIn(const JsonNode& node, const std::string& path, UnknownKeys& unknown)
{
    ObjectReader reader(node, path, unknown);
    plan::Vessel vessel;
    vessel.id = {reader.id("id")};
    vessel.tag = reader.text("tag");
    vessel.kind = reader.oneOf("kind", words::vesselKind);
    vessel.shape = shapeIn(reader);
    vessel.centre = pointIn(reader.need("centre"), reader.pathOf("centre"));
    vessel.turn = reader.quantity<units::Angle>("turn");
    vessel.baseLevel = reader.quantity<units::Elevation>("base_level");
    vessel.wallHeight = reader.quantity<units::Length>("wall_height");
    vessel.wallThickness = reader.quantity<units::Length>("wall_thickness");
    if (const JsonNode* medium = reader.find("medium"))
        vessel.medium = mediumIn(*medium, reader.pathOf("medium"), unknown);
    if (const JsonNode* stand = reader.find("stand"))
        vessel.stand = standIn(*stand, reader.pathOf("stand"), unknown);
    vessel.measuredTare = reader.optionalQuantity<units::Mass>("measured_tare");
    vessel.runningLevel = reader.optionalQuantity<units::Elevation>("running_level");
    const auto& ports = reader.listAt("ports");
    for (std::size_t i = 0; i < ports.size(); ++i)
        vessel.ports.push_back(portIn(ports[i], reader.pathOf("ports/" + std::to_string(i)), unknown));
    vessel.extra = reader.extra();
    return vessel;
}

} // namespace sumpwright::storage
