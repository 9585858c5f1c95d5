#include "core/space/supports.hpp"

#include <algorithm>
#include <cmath>

#include "core/space/vec.hpp"

namespace sumpwright::space
{
namespace
{

constexpr double timesDiameter = 10.0;
const units::Length onTheFloor = units::millimetres(30.0); // of the pipe's bottom over the floor

units::Length at(const catalogue::Support& row, units::Temperature water)
{
    const auto& spans = row.spans;
    if (water <= spans.front().temperature)
        return spans.front().span;
    for (std::size_t i = 1; i < spans.size(); ++i)
        if (water <= spans[i].temperature) {
            const double low = units::inSi(spans[i - 1].temperature), high = units::inSi(spans[i].temperature);
            const double share = (units::inSi(water) - low) / (high - low);
            return spans[i - 1].span + (spans[i].span - spans[i - 1].span) * share;
        }
    return spans.back().span;
}

// The rows meant for a pipe, thinnest first: those of its standard, else those of its material.
std::vector<const catalogue::Support*> rowsFor(const catalogue::Pipe& pipe, const catalogue::Catalogue& catalogue)
{
    std::vector<const catalogue::Support*> own, general;
    for (const catalogue::Support& row : catalogue.supports())
        if (row.material == pipe.material && row.standard == pipe.standard)
            own.push_back(&row);
        else if (row.material == pipe.material && row.standard.empty())
            general.push_back(&row);
    auto& rows = own.empty() ? general : own;
    std::sort(rows.begin(), rows.end(),
              [](const auto* a, const auto* b) { return a->outsideDiameter < b->outsideDiameter; });
    return rows;
}

// A stretch that hangs free, between what holds the run.
struct Free {
    units::Length level;
    bool heldBefore = false;
    bool heldBehind = false;
};

int countFor(const Free& free, units::Length most)
{
    const double spans = free.level / most;
    constexpr double rounding = 1e-6;
    const int held = static_cast<int>(free.heldBefore) + static_cast<int>(free.heldBehind);
    const double wanted = held == 2 ? spans - 1.0 : held == 1 ? spans - 0.5 : spans;
    return std::max(0, static_cast<int>(std::ceil(wanted - rounding)));
}

} // namespace

SupportDistance supportDistanceOf(const catalogue::Pipe& pipe, units::Temperature water,
                                  const catalogue::Catalogue& catalogue)
{
    const auto rows = rowsFor(pipe, catalogue);
    if (pipe.gravityOnly || rows.empty())
        return {pipe.outsideDiameter * timesDiameter, "common-practice"};
    const catalogue::Support* thinner = rows.front();
    for (const catalogue::Support* row : rows) {
        if (row->outsideDiameter >= pipe.outsideDiameter) {
            const double gap = units::inMetres(row->outsideDiameter - thinner->outsideDiameter);
            const double share =
                gap > 0.0 ? units::inMetres(pipe.outsideDiameter - thinner->outsideDiameter) / gap : 1.0;
            const units::Length low = at(*thinner, water), high = at(*row, water);
            return {low + (high - low) * share, row->provenance.source};
        }
        thinner = row;
    }
    return {at(*thinner, water), thinner->provenance.source};
}

SupportNeed supportNeedOf(const PipeBody& body, const plan::Floor& floor, units::Length most)
{
    const auto over = [&](const Spot& spot) {
        return units::inMetres(spot.level - body.radius - onTheFloor) - units::inMetres(plan::levelAt(floor, spot.at));
    };
    const auto held = [&](std::size_t end) { return body.ends[end].owner.valid(); };
    SupportNeed need;
    Free free{{}, held(0), false};
    const auto close = [&](bool byHold) {
        free.heldBehind = byHold;
        need.longestFree = std::max(need.longestFree, free.level);
        need.count += countFor(free, most);
        free = {{}, true, false};
    };
    for (std::size_t i = 1; i < body.spots.size(); ++i) {
        const Vec leg = Vec(body.spots[i]) - Vec(body.spots[i - 1]);
        const double level = std::hypot(leg.x(), leg.y());
        const double before = over(body.spots[i - 1]), behind = over(body.spots[i]);
        if (std::fabs(leg.z()) > level) { // upright: it stands on the floor or hangs from its neighbour
            if (before <= 0.0 || behind <= 0.0)
                close(true);
            continue;
        }
        const double share = before <= 0.0 && behind <= 0.0 ? 0.0
                             : before > 0.0 && behind > 0.0 ? 1.0
                                                            : std::max(before, behind) / std::fabs(before - behind);
        if (before <= 0.0 && behind > 0.0)
            close(true);
        free.level += units::metres(level * share);
        if (behind <= 0.0)
            close(true);
    }
    close(held(1));
    return need;
}

} // namespace sumpwright::space
