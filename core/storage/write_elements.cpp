#include "core/storage/write_elements.hpp"

#include "core/base/ensure.hpp"
#include "core/storage/object_writer.hpp"

namespace sumpwright::storage
{

namespace
{

constexpr JsonLimits extraLimits{20'000'000, 64, 1'000'000};

JsonNode nodeOf(const plan::Port& port)
{
    return ObjectWriter()
        .id("id", port.id)
        .text("tag", port.tag)
        .word("kind", port.kind, words::portKind)
        .place("offset", port.offset)
        .quantity("level", port.level)
        .quantity("bore", port.bore)
        .quantity("drain_level", port.drainLevel)
        .quantity("vent_level", port.ventLevel)
        .ratio("open_fraction", port.openFraction)
        .quantity("target_flow", port.targetFlow)
        .done(port.extra);
}

JsonNode nodeOf(const plan::Medium& medium)
{
    return ObjectWriter().text("medium", medium.mediumId).quantity("depth", medium.depth).done(medium.extra);
}

JsonNode nodeOf(const plan::Stand& stand)
{
    return ObjectWriter()
        .word("kind", stand.kind, words::standKind)
        .quantity("mass", stand.mass)
        .node("legs", JsonNode::ofNumber(static_cast<std::uint64_t>(stand.legCount)))
        .quantity("pad_side", stand.padSide)
        .done(stand.extra);
}

void writeShape(ObjectWriter& writer, const plan::Shape& shape)
{
    writer.word("shape", shape.index(), words::shape);
    if (const auto* round = std::get_if<plan::RoundShape>(&shape))
        writer.quantity("diameter", round->diameter);
    if (const auto* rectangle = std::get_if<plan::RectangleShape>(&shape))
        writer.quantity("length", rectangle->length).quantity("width", rectangle->width);
}

JsonNode nodeOf(const plan::Vertex& vertex)
{
    return ObjectWriter()
        .place("at", vertex.at)
        .quantity("level", vertex.level)
        .textUnlessEmpty("bend_fitting", vertex.bendFittingId)
        .ratio("loss_coefficient", vertex.lossCoefficient)
        .done(vertex.extra);
}

JsonNode nodeOf(const plan::Valve& valve)
{
    return ObjectWriter()
        .id("id", valve.id)
        .text("tag", valve.tag)
        .text("fitting", valve.fittingId)
        .ratio("station", valve.station)
        .ratio("opening", valve.opening)
        .ratio("loss_coefficient", valve.lossCoefficient)
        .done(valve.extra);
}

JsonNode nodeOf(const plan::ExtraFitting& fitting)
{
    return ObjectWriter()
        .text("fitting", fitting.fittingId)
        .node("count", JsonNode::ofNumber(static_cast<std::uint64_t>(fitting.count)))
        .ratio("loss_coefficient", fitting.lossCoefficient)
        .done(fitting.extra);
}

void writeEnd(ObjectWriter& writer, std::string_view key, const plan::RunEnd& end)
{
    if (const auto* port = std::get_if<plan::PortEnd>(&end))
        writer.node(key, ObjectWriter()
                             .id("vessel", port->vessel)
                             .id("port", port->port)
                             .ratio("loss_coefficient", port->lossCoefficient)
                             .done(port->extra));
    else if (const auto* pump = std::get_if<plan::PumpEnd>(&end))
        writer.node(key, ObjectWriter().id("pump", pump->pump).done(pump->extra));
    else if (const auto* tee = std::get_if<plan::TeeEnd>(&end))
        writer.node(
            key, ObjectWriter().id("tee", tee->tee).ratio("loss_coefficient", tee->lossCoefficient).done(tee->extra));
}

} // namespace

JsonNode nodeOf(const plan::CurvePoint& point)
{
    JsonNode pair = JsonNode::list();
    pair.items = {JsonNode::ofText(units::exactText(point.flow)), JsonNode::ofText(units::exactText(point.head))};
    return pair;
}

void addExtra(JsonNode& node, const std::string& extra)
{
    if (extra.empty())
        return;
    const auto read = readJson(extra, extraLimits);
    base::ensure(read.ok() && read->kind == JsonNode::Kind::object, "kept unknown keys are a JSON object");
    for (std::size_t i = 0; i < read->keys.size(); ++i)
        if (!node.find(read->keys[i]))
            node.add(read->keys[i], read->items[i]);
}

JsonNode nodeOf(plan::Point place)
{
    JsonNode pair = JsonNode::list();
    pair.items = {JsonNode::ofText(units::exactText(place.x)), JsonNode::ofText(units::exactText(place.y))};
    return pair;
}

JsonNode nodeOf(const plan::Site& site)
{
    return ObjectWriter()
        .text("name", site.name)
        .text("client", site.client)
        .text("designer", site.designer)
        .quantity("altitude", site.altitude)
        .quantity("design_water", site.designWater)
        .quantity("coldest_water", site.coldestWater)
        .quantity("warmest_water", site.warmestWater)
        .quantity("design_air", site.designAir)
        .text("currency", site.currency)
        .quantity("power_price", site.powerPrice)
        .word("pipe_condition", site.pipeCondition, words::pipeCondition)
        .textUnlessEmpty("floor_use", site.floorUse)
        .quantity("north", site.north)
        .quantity("aisle_width", site.clearances.aisle)
        .quantity("reach", site.clearances.reach)
        .quantity("headroom", site.clearances.headroom)
        .quantity("door_margin", site.clearances.doorMargin)
        .done(site.extra);
}

JsonNode nodeOf(const plan::Floor& floor)
{
    ObjectWriter writer;
    writer.list("outline", floor.outline, [](const plan::Point& corner) { return nodeOf(corner); })
        .quantity("level", floor.level)
        .quantity("fall", floor.fall)
        .quantity("fall_direction", floor.fallDirection);
    if (floor.drainPoint)
        writer.place("drain_point", *floor.drainPoint);
    return writer.quantity("clear_height", floor.clearHeight).quantity("thickness", floor.thickness).done(floor.extra);
}

JsonNode nodeOf(const plan::Fixture& fixture)
{
    return ObjectWriter()
        .id("id", fixture.id)
        .text("tag", fixture.tag)
        .word("kind", fixture.kind, words::fixtureKind)
        .place("from", fixture.from)
        .place("to", fixture.to)
        .quantity("size", fixture.size)
        .quantity("height", fixture.height)
        .quantity("level", fixture.level)
        .done(fixture.extra);
}

JsonNode nodeOf(const plan::Vessel& vessel)
{
    ObjectWriter writer;
    writer.id("id", vessel.id).text("tag", vessel.tag).word("kind", vessel.kind, words::vesselKind);
    writeShape(writer, vessel.shape);
    writer.place("centre", vessel.centre)
        .quantity("turn", vessel.turn)
        .quantity("base_level", vessel.baseLevel)
        .quantity("wall_height", vessel.wallHeight)
        .quantity("wall_thickness", vessel.wallThickness);
    if (vessel.medium)
        writer.node("medium", nodeOf(*vessel.medium));
    if (vessel.stand)
        writer.node("stand", nodeOf(*vessel.stand));
    return writer.quantity("measured_tare", vessel.measuredTare)
        .quantity("running_level", vessel.runningLevel)
        .list("ports", vessel.ports, [](const plan::Port& port) { return nodeOf(port); })
        .done(vessel.extra);
}

JsonNode nodeOf(const plan::Pump& pump)
{
    ObjectWriter writer;
    writer.id("id", pump.id)
        .text("tag", pump.tag)
        .id("vessel", pump.vessel)
        .place("offset", pump.offset)
        .textUnlessEmpty("model", pump.modelId)
        .list("own_curve", pump.ownCurve, [](const plan::CurvePoint& point) { return nodeOf(point); })
        .flagIfSet("two_numbers", pump.twoNumbers)
        .quantity("own_power", pump.ownPower);
    if (pump.arrangement != plan::PumpArrangement::one)
        writer.word("arrangement", pump.arrangement, words::pumpArrangement);
    return writer.ratio("speed", pump.speed)
        .quantity("outlet_level", pump.outletLevel)
        .quantity("least_depth", pump.leastDepth)
        .flag("running", pump.running)
        .done(pump.extra);
}

JsonNode nodeOf(const plan::Tee& tee)
{
    ObjectWriter writer;
    writer.id("id", tee.id).text("tag", tee.tag).place("at", tee.at).quantity("level", tee.level);
    if (tee.onVertex)
        writer.flag("on_vertex", true);
    return writer.done(tee.extra);
}

JsonNode nodeOf(const plan::Run& run)
{
    ObjectWriter writer;
    writer.id("id", run.id).text("tag", run.tag).word("service", run.service, words::service).text("pipe", run.pipeId);
    writeEnd(writer, "from", run.from);
    writeEnd(writer, "to", run.to);
    return writer.list("vertices", run.vertices, [](const plan::Vertex& vertex) { return nodeOf(vertex); })
        .list("valves", run.valves, [](const plan::Valve& valve) { return nodeOf(valve); })
        .list("extra_fittings", run.extraFittings, [](const plan::ExtraFitting& fitting) { return nodeOf(fitting); })
        .done(run.extra);
}

JsonNode nodeOf(const plan::Note& note)
{
    return ObjectWriter().id("id", note.id).place("at", note.at).text("text", note.text).done(note.extra);
}

JsonNode nodeOf(const plan::DimensionLine& dimension)
{
    return ObjectWriter()
        .id("id", dimension.id)
        .place("from", dimension.from)
        .place("to", dimension.to)
        .quantity("offset", dimension.offset)
        .done(dimension.extra);
}

JsonNode nodeOf(const plan::Underlay& underlay)
{
    return ObjectWriter()
        .text("file", underlay.fileName)
        .place("corner", underlay.corner)
        .quantity("pixel_size", underlay.pixelSize)
        .quantity("turn", underlay.turn)
        .ratio("opacity", underlay.opacity)
        .done(underlay.extra);
}

} // namespace sumpwright::storage
