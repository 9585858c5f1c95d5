#include "ui/properties/run_levels.hpp"

#include <cmath>

namespace sumpwright::ui::properties
{

std::optional<units::Length> boreOf(const catalogue::Catalogue& catalogue, const plan::Run& run)
{
    const auto pipe = catalogue.pipe(run.pipeId);
    return pipe ? std::optional((*pipe)->bore) : std::nullopt;
}

units::Elevation invertOf(const plan::Vertex& vertex, units::Length bore) { return vertex.level - bore / 2.0; }

std::vector<units::Slope> lyingFalls(const plan::Run& run)
{
    const units::Length least = units::millimetres(1.0);
    std::vector<units::Slope> falls;
    for (std::size_t index = 1; index < run.vertices.size(); ++index) {
        const auto& start = run.vertices[index - 1];
        const auto& end = run.vertices[index];
        const units::Length along = plan::distanceBetween(start.at, end.at);
        if (along < least)
            continue;
        const double fall = units::inMetresPerMetre(units::slopeOf(start.level - end.level, along));
        falls.push_back(units::metresPerMetre(std::round(fall * 1e4) / 1e4));
    }
    return falls;
}

} // namespace sumpwright::ui::properties
