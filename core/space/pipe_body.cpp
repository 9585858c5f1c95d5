#include "core/space/pipe_body.hpp"

#include <algorithm>

namespace sumpwright::space
{
namespace
{

Joint jointOf(const plan::RunEnd& end, const plan::Plan& plan)
{
    if (const auto* port = std::get_if<plan::PortEnd>(&end))
        return {port->port, port->vessel};
    if (const auto* at = std::get_if<plan::PumpEnd>(&end)) {
        const plan::Pump* pump = plan.pumps.find(at->pump);
        return {at->pump, pump ? pump->vessel : base::Id{}};
    }
    if (const auto* tee = std::get_if<plan::TeeEnd>(&end))
        return {tee->tee, {}};
    return {};
}

units::Length outsideOf(const std::string& pipeId, const catalogue::Catalogue& catalogue)
{
    const auto& rows = catalogue.pipes();
    const auto row = std::find_if(rows.begin(), rows.end(), [&](const catalogue::Pipe& p) { return p.id == pipeId; });
    return row == rows.end() ? units::Length() : row->outsideDiameter;
}

} // namespace

PipeBody bodyOf(const plan::Run& run, const plan::Plan& plan, const catalogue::Catalogue& catalogue)
{
    PipeBody body;
    body.run = run.id;
    body.radius = outsideOf(run.pipeId, catalogue) / 2.0;
    for (const plan::Vertex& vertex : run.vertices)
        body.spots.push_back({vertex.at, vertex.level});
    body.ends = {jointOf(run.from, plan), jointOf(run.to, plan)};
    return body;
}

std::vector<PipeBody> bodiesOf(const plan::Plan& plan, const catalogue::Catalogue& catalogue)
{
    std::vector<PipeBody> bodies;
    for (const auto& run : plan.runs) {
        PipeBody body = bodyOf(*run, plan, catalogue);
        if (body.spots.size() > 1 && body.radius > units::Length())
            bodies.push_back(std::move(body));
    }
    return bodies;
}

} // namespace sumpwright::space
