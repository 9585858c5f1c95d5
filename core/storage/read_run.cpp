#include "core/storage/read_elements.hpp"
#include "core/storage/words.hpp"

namespace sumpwright::storage
{

namespace
{

plan::RunEnd endIn(ObjectReader& run, std::string_view key, UnknownKeys& unknown)
{
    const JsonNode* node = run.find(key);
    if (!node)
        return plan::OpenEnd{};
    ObjectReader reader(*node, run.pathOf(key), unknown);
    if (node->find("pump")) {
        const base::Id pump{reader.id("pump")};
        return plan::PumpEnd{pump, reader.extra()};
    }
    if (node->find("tee")) {
        const base::Id tee{reader.id("tee")};
        const auto loss = reader.optionalRatio("loss_coefficient");
        return plan::TeeEnd{tee, loss, reader.extra()};
    }
    if (!node->find("vessel"))
        refuseAt(*node, reader.path(), "storage.unknown-end", "an end that names neither vessel, pump nor tee",
                 "\"vessel\" and \"port\", \"pump\", or \"tee\"; an open end is left out");
    const base::Id vessel{reader.id("vessel")};
    const base::Id port{reader.id("port")};
    const auto loss = reader.optionalRatio("loss_coefficient");
    return plan::PortEnd{vessel, port, loss, reader.extra()};
}

plan::Vertex vertexIn(const JsonNode& node, const std::string& path, UnknownKeys& unknown)
{
    ObjectReader reader(node, path, unknown);
    plan::Vertex vertex;
    vertex.at = pointIn(reader.need("at"), reader.pathOf("at"));
    vertex.level = reader.quantity<units::Elevation>("level");
    vertex.bendFittingId = reader.optionalText("bend_fitting");
    vertex.lossCoefficient = reader.optionalRatio("loss_coefficient");
    vertex.extra = reader.extra();
    return vertex;
}

plan::Valve valveIn(const JsonNode& node, const std::string& path, UnknownKeys& unknown)
{
    ObjectReader reader(node, path, unknown);
    plan::Valve valve;
    valve.id = {reader.id("id")};
    valve.tag = reader.text("tag");
    valve.fittingId = reader.text("fitting");
    valve.station = reader.ratio("station");
    valve.opening = reader.ratio("opening");
    valve.lossCoefficient = reader.optionalRatio("loss_coefficient");
    valve.extra = reader.extra();
    return valve;
}

plan::ExtraFitting extraFittingIn(const JsonNode& node, const std::string& path, UnknownKeys& unknown)
{
    ObjectReader reader(node, path, unknown);
    plan::ExtraFitting fitting;
    fitting.fittingId = reader.text("fitting");
    fitting.count = reader.count("count");
    fitting.lossCoefficient = reader.optionalRatio("loss_coefficient");
    fitting.extra = reader.extra();
    return fitting;
}

template <class Element, class Read>
void readList(ObjectReader& reader, const std::string& key, std::vector<Element>& into, UnknownKeys& unknown, Read read)
{
    const auto& nodes = reader.listAt(key);
    for (std::size_t i = 0; i < nodes.size(); ++i)
        into.push_back(read(nodes[i], reader.pathOf(key + "/" + std::to_string(i)), unknown));
}

} // namespace

plan::Run runIn(const JsonNode& node, const std::string& path, UnknownKeys& unknown)
{
    ObjectReader reader(node, path, unknown);
    plan::Run run;
    run.id = {reader.id("id")};
    run.tag = reader.text("tag");
    run.service = reader.oneOf("service", words::service);
    run.pipeId = reader.text("pipe");
    run.from = endIn(reader, "from", unknown);
    run.to = endIn(reader, "to", unknown);
    readList(reader, "vertices", run.vertices, unknown, vertexIn);
    readList(reader, "valves", run.valves, unknown, valveIn);
    readList(reader, "extra_fittings", run.extraFittings, unknown, extraFittingIn);
    run.extra = reader.extra();
    return run;
}

} // namespace sumpwright::storage
