// The person's own parts in a file: of a plan, or of the catalogue the person keeps.
#include "core/storage/object_writer.hpp"
#include "core/storage/read_elements.hpp"
#include "core/storage/write_elements.hpp"

namespace sumpwright::storage
{

namespace
{

void takePart(ObjectReader& reader, plan::OwnPart& part)
{
    part.id = reader.text("id");
    part.name = reader.text("name");
    part.origin = reader.optionalText("origin");
}

plan::OwnPipe pipeIn(const JsonNode& node, const std::string& path, UnknownKeys& unknown)
{
    ObjectReader reader(node, path, unknown);
    plan::OwnPipe pipe;
    takePart(reader, pipe);
    pipe.outsideDiameter = reader.quantity<units::Length>("outside_diameter");
    pipe.bore = reader.quantity<units::Length>("bore");
    pipe.roughness = reader.quantity<units::Length>("roughness");
    pipe.corrugatedFactor = reader.optionalRatio("corrugated_factor");
    pipe.gravityOnly = reader.find("gravity_only") != nullptr && reader.flag("gravity_only");
    pipe.extra = reader.extra();
    return pipe;
}

plan::OwnFitting fittingIn(const JsonNode& node, const std::string& path, UnknownKeys& unknown)
{
    ObjectReader reader(node, path, unknown);
    plan::OwnFitting fitting;
    takePart(reader, fitting);
    fitting.kind = reader.oneOf("kind", words::ownFittingKind);
    fitting.k = reader.optionalRatio("k");
    fitting.flowFactor = reader.optionalQuantity<units::Flow>("flow_factor");
    fitting.cracking = reader.optionalQuantity<units::Head>("cracking_head");
    fitting.extra = reader.extra();
    return fitting;
}

plan::OwnPump ownPumpIn(const JsonNode& node, const std::string& path, UnknownKeys& unknown)
{
    ObjectReader reader(node, path, unknown);
    plan::OwnPump pump;
    takePart(reader, pump);
    const auto& points = reader.listAt("curve");
    for (std::size_t i = 0; i < points.size(); ++i)
        pump.curve.push_back(curvePointIn(points[i], reader.pathOf("curve/" + std::to_string(i))));
    pump.twoNumbers = reader.find("two_numbers") != nullptr && reader.flag("two_numbers");
    pump.power = reader.optionalQuantity<units::Power>("power");
    pump.leastDepth = reader.optionalQuantity<units::Length>("least_depth");
    pump.extra = reader.extra();
    return pump;
}

template <class Part, class Read>
void takeList(ObjectReader& reader, const char* key, std::vector<Part>& into, UnknownKeys& unknown, Read readIn)
{
    const auto& nodes = reader.listAt(key);
    for (std::size_t i = 0; i < nodes.size(); ++i)
        into.push_back(readIn(nodes[i], reader.pathOf(std::string(key) + "/" + std::to_string(i)), unknown));
}

ObjectWriter begun(const plan::OwnPart& part)
{
    ObjectWriter writer;
    writer.text("id", part.id).text("name", part.name).textUnlessEmpty("origin", part.origin);
    return writer;
}

JsonNode pipeNode(const plan::OwnPipe& pipe)
{
    return begun(pipe)
        .quantity("outside_diameter", pipe.outsideDiameter)
        .quantity("bore", pipe.bore)
        .quantity("roughness", pipe.roughness)
        .ratio("corrugated_factor", pipe.corrugatedFactor)
        .flagIfSet("gravity_only", pipe.gravityOnly)
        .done(pipe.extra);
}

JsonNode fittingNode(const plan::OwnFitting& fitting)
{
    return begun(fitting)
        .word("kind", fitting.kind, words::ownFittingKind)
        .ratio("k", fitting.k)
        .quantity("flow_factor", fitting.flowFactor)
        .quantity("cracking_head", fitting.cracking)
        .done(fitting.extra);
}

JsonNode ownPumpNode(const plan::OwnPump& pump)
{
    return begun(pump)
        .list("curve", pump.curve, [](const plan::CurvePoint& point) { return nodeOf(point); })
        .flagIfSet("two_numbers", pump.twoNumbers)
        .quantity("power", pump.power)
        .quantity("least_depth", pump.leastDepth)
        .done(pump.extra);
}

} // namespace

plan::OwnParts ownPartsIn(const JsonNode& node, const std::string& path, UnknownKeys& unknown)
{
    ObjectReader reader(node, path, unknown);
    plan::OwnParts parts;
    takeList(reader, "pipes", parts.pipes, unknown, pipeIn);
    takeList(reader, "fittings", parts.fittings, unknown, fittingIn);
    takeList(reader, "pumps", parts.pumps, unknown, ownPumpIn);
    parts.extra = reader.extra();
    return parts;
}

JsonNode nodeOf(const plan::OwnParts& parts)
{
    return ObjectWriter()
        .list("pipes", parts.pipes, pipeNode)
        .list("fittings", parts.fittings, fittingNode)
        .list("pumps", parts.pumps, ownPumpNode)
        .done(parts.extra);
}

} // namespace sumpwright::storage
