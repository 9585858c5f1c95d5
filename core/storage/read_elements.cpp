#include "core/storage/read_elements.hpp"

#include "core/storage/words.hpp"

namespace sumpwright::storage
{

namespace
{

plan::Point placeAt(ObjectReader& reader, std::string_view key)
{
    return pointIn(reader.need(key), reader.pathOf(key));
}

const JsonNode& pairIn(const JsonNode& node, const std::string& path, const char* of)
{
    if (node.kind != JsonNode::Kind::list || node.items.size() != 2)
        refuseAt(node, path, "storage.not-a-pair", std::string(nameOf(node.kind)) + " that is no pair stands here",
                 std::string("a list of two texts: ") + of);
    return node;
}

} // namespace

plan::CurvePoint curvePointIn(const JsonNode& node, const std::string& path)
{
    const JsonNode& pair = pairIn(node, path, "flow and head");
    return {quantityIn<units::Flow>(pair.items[0], path + "/0"), quantityIn<units::Head>(pair.items[1], path + "/1")};
}

plan::Point pointIn(const JsonNode& node, const std::string& path)
{
    const JsonNode& pair = pairIn(node, path, "x and y");
    return {quantityIn<units::Length>(pair.items[0], path + "/0"),
            quantityIn<units::Length>(pair.items[1], path + "/1")};
}

plan::Site siteIn(const JsonNode& node, const std::string& path, UnknownKeys& unknown)
{
    ObjectReader reader(node, path, unknown);
    plan::Site site;
    site.name = reader.text("name");
    site.client = reader.text("client");
    site.designer = reader.text("designer");
    site.altitude = reader.optionalQuantity<units::Length>("altitude");
    site.designWater = reader.quantity<units::Temperature>("design_water");
    site.coldestWater = reader.optionalQuantity<units::Temperature>("coldest_water");
    site.warmestWater = reader.optionalQuantity<units::Temperature>("warmest_water");
    site.designAir = reader.quantity<units::Temperature>("design_air");
    site.currency = reader.text("currency");
    site.powerPrice = reader.optionalQuantity<units::EnergyPrice>("power_price");
    site.pipeCondition = reader.oneOf("pipe_condition", words::pipeCondition);
    site.floorUse = reader.optionalText("floor_use");
    site.north = reader.quantity<units::Angle>("north");
    site.clearances.aisle = reader.quantity<units::Length>("aisle_width");
    site.clearances.reach = reader.quantity<units::Length>("reach");
    site.clearances.headroom = reader.quantity<units::Length>("headroom");
    site.clearances.doorMargin = reader.quantity<units::Length>("door_margin");
    site.extra = reader.extra();
    return site;
}

plan::Floor floorIn(const JsonNode& node, const std::string& path, UnknownKeys& unknown)
{
    ObjectReader reader(node, path, unknown);
    plan::Floor floor;
    const auto& corners = reader.listAt("outline");
    for (std::size_t i = 0; i < corners.size(); ++i)
        floor.outline.push_back(pointIn(corners[i], reader.pathOf("outline/" + std::to_string(i))));
    floor.level = reader.quantity<units::Elevation>("level");
    floor.fall = reader.quantity<units::Slope>("fall");
    floor.fallDirection = reader.quantity<units::Angle>("fall_direction");
    if (reader.find("drain_point"))
        floor.drainPoint = placeAt(reader, "drain_point");
    floor.clearHeight = reader.optionalQuantity<units::Length>("clear_height");
    floor.thickness = reader.optionalQuantity<units::Length>("thickness");
    floor.extra = reader.extra();
    return floor;
}

plan::Fixture fixtureIn(const JsonNode& node, const std::string& path, UnknownKeys& unknown)
{
    ObjectReader reader(node, path, unknown);
    plan::Fixture fixture;
    fixture.id = {reader.id("id")};
    fixture.tag = reader.text("tag");
    fixture.kind = reader.oneOf("kind", words::fixtureKind);
    fixture.from = placeAt(reader, "from");
    fixture.to = placeAt(reader, "to");
    fixture.size = reader.quantity<units::Length>("size");
    fixture.height = reader.quantity<units::Length>("height");
    fixture.level = reader.quantity<units::Elevation>("level");
    fixture.extra = reader.extra();
    return fixture;
}

plan::Pump pumpIn(const JsonNode& node, const std::string& path, UnknownKeys& unknown)
{
    ObjectReader reader(node, path, unknown);
    plan::Pump pump;
    pump.id = {reader.id("id")};
    pump.tag = reader.text("tag");
    pump.vessel = {reader.id("vessel")};
    pump.offset = placeAt(reader, "offset");
    pump.modelId = reader.optionalText("model");
    const auto& points = reader.listAt("own_curve");
    for (std::size_t i = 0; i < points.size(); ++i)
        pump.ownCurve.push_back(curvePointIn(points[i], reader.pathOf("own_curve/" + std::to_string(i))));
    pump.twoNumbers = reader.find("two_numbers") != nullptr && reader.flag("two_numbers");
    pump.ownPower = reader.optionalQuantity<units::Power>("own_power");
    if (reader.find("arrangement"))
        pump.arrangement = reader.oneOf("arrangement", words::pumpArrangement);
    pump.speed = reader.ratio("speed");
    pump.outletLevel = reader.quantity<units::Elevation>("outlet_level");
    pump.leastDepth = reader.optionalQuantity<units::Length>("least_depth");
    pump.running = reader.flag("running");
    pump.extra = reader.extra();
    return pump;
}

plan::Tee teeIn(const JsonNode& node, const std::string& path, UnknownKeys& unknown)
{
    ObjectReader reader(node, path, unknown);
    plan::Tee tee;
    tee.id = {reader.id("id")};
    tee.tag = reader.text("tag");
    tee.at = placeAt(reader, "at");
    tee.level = reader.quantity<units::Elevation>("level");
    tee.onVertex = reader.find("on_vertex") != nullptr && reader.flag("on_vertex");
    tee.extra = reader.extra();
    return tee;
}

plan::Note noteIn(const JsonNode& node, const std::string& path, UnknownKeys& unknown)
{
    ObjectReader reader(node, path, unknown);
    plan::Note note;
    note.id = {reader.id("id")};
    note.at = placeAt(reader, "at");
    note.text = reader.text("text");
    note.extra = reader.extra();
    return note;
}

plan::DimensionLine dimensionIn(const JsonNode& node, const std::string& path, UnknownKeys& unknown)
{
    ObjectReader reader(node, path, unknown);
    plan::DimensionLine dimension;
    dimension.id = {reader.id("id")};
    dimension.from = placeAt(reader, "from");
    dimension.to = placeAt(reader, "to");
    dimension.offset = reader.quantity<units::Length>("offset");
    dimension.extra = reader.extra();
    return dimension;
}

plan::Underlay underlayIn(const JsonNode& node, const std::string& path, UnknownKeys& unknown)
{
    ObjectReader reader(node, path, unknown);
    plan::Underlay underlay;
    underlay.fileName = reader.text("file");
    underlay.corner = placeAt(reader, "corner");
    underlay.pixelSize = reader.quantity<units::Length>("pixel_size");
    underlay.turn = reader.quantity<units::Angle>("turn");
    underlay.opacity = reader.ratio("opacity");
    underlay.extra = reader.extra();
    return underlay;
}

} // namespace sumpwright::storage
