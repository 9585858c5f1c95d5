#include "core/assessment/service_zones.hpp"

#include <algorithm>
#include <numeric>

#include "core/hydraulics/fittings.hpp"
#include "core/hydraulics/pipe_content.hpp"
#include "core/hydraulics/valve_opening.hpp"

namespace sumpwright::assessment
{
namespace
{

bool canBeClosed(const FittingLoss& loss)
{
    const auto kind = hydraulics::fittingFromId(loss.fittingId);
    return loss.role == FittingRole::valve && kind &&
           (hydraulics::throttleOf(*kind) || *kind == hydraulics::FittingKind::GlobeValve);
}

std::vector<const FittingLoss*> closingValves(const DrawnRun& run)
{
    std::vector<const FittingLoss*> valves; // in the order of their stations, as the losses are
    for (const FittingLoss& loss : run.fittings)
        if (canBeClosed(loss))
            valves.push_back(&loss);
    return valves;
}

bool hasUnion(const DrawnRun& run)
{
    return std::any_of(run.fittings.begin(), run.fittings.end(), [](const FittingLoss& loss) {
        return hydraulics::fittingFromId(loss.fittingId) == hydraulics::FittingKind::Union && loss.count > 0;
    });
}

std::size_t rootOf(std::vector<std::size_t>& parents, std::size_t piece)
{
    while (parents[piece] != piece)
        piece = parents[piece] = parents[parents[piece]];
    return piece;
}

} // namespace

Zones::Zones(const Pipework& pipework) : m_zoneOfPiece(pipework.runs.size()), m_pieces(pipework.runs.size())
{
    std::vector<std::size_t> firstPiece, parents;
    std::map<base::Id, std::size_t> joined; // tee or pump to a piece that meets it
    for (std::size_t i = 0; i < pipework.runs.size(); ++i) {
        const DrawnRun& run = pipework.runs[i];
        firstPiece.push_back(parents.size());
        if (run.service != plan::Service::pressure)
            continue;
        units::Length from;
        for (const FittingLoss* valve : closingValves(run)) {
            m_pieces[i].push_back({i, from, run.length * valve->station});
            from = run.length * valve->station;
        }
        m_pieces[i].push_back({i, from, run.length});
        for (std::size_t k = 0; k < m_pieces[i].size(); ++k)
            parents.push_back(parents.size());
        for (const auto& [end, piece] : {std::pair(&run.from, firstPiece[i]), std::pair(&run.to, parents.size() - 1)})
            if (end->kind == EndKind::tee || end->kind == EndKind::pump)
                if (const auto [at, added] = joined.try_emplace(end->element, piece); !added)
                    parents[rootOf(parents, piece)] = rootOf(parents, at->second);
    }
    std::map<std::size_t, std::size_t> zoneOfRoot;
    for (std::size_t i = 0; i < pipework.runs.size(); ++i) {
        const DrawnRun& run = pipework.runs[i];
        const auto valves = m_pieces[i].empty() ? std::vector<const FittingLoss*>() : closingValves(run);
        for (std::size_t k = 0; k < m_pieces[i].size(); ++k) {
            const auto [at, added] = zoneOfRoot.try_emplace(rootOf(parents, firstPiece[i] + k), m_zones.size());
            if (added)
                m_zones.emplace_back();
            m_zoneOfPiece[i].push_back(at->second);
            Zone& zone = m_zones[at->second];
            zone.pieces.push_back(m_pieces[i][k]);
            zone.hasUnion = zone.hasUnion || hasUnion(run);
            if (k > 0)
                zone.valves.push_back({valves[k - 1]->element, levelAlong(run, m_pieces[i][k].from)});
            else if (run.from.kind == EndKind::vessel || run.from.kind == EndKind::pump)
                zone.ends.push_back({run.from, i});
            if (k + 1 < m_pieces[i].size())
                zone.valves.push_back({valves[k]->element, levelAlong(run, m_pieces[i][k].to)});
            else if (run.to.kind == EndKind::vessel || run.to.kind == EndKind::pump)
                zone.ends.push_back({run.to, i});
        }
    }
}

std::size_t Zones::atEnd(std::size_t run, bool atStart) const
{
    return atStart ? m_zoneOfPiece[run].front() : m_zoneOfPiece[run].back();
}

std::size_t Zones::ofLongestPiece(std::size_t run) const
{
    const auto longest = std::max_element(m_pieces[run].begin(), m_pieces[run].end(),
                                          [](const auto& a, const auto& b) { return a.to - a.from < b.to - b.from; });
    return m_zoneOfPiece[run][static_cast<std::size_t>(longest - m_pieces[run].begin())];
}

units::Elevation levelAlong(const DrawnRun& run, units::Length along)
{
    for (const Stretch& stretch : run.stretches) {
        if (along <= stretch.length && stretch.length > units::Length())
            return stretch.start + (stretch.end - stretch.start) * (along / stretch.length);
        along -= stretch.length;
    }
    return run.stretches.empty() ? run.to.level : run.stretches.back().end;
}

units::Volume contentAbove(const DrawnRun& run, units::Length from, units::Length to, units::Elevation level)
{
    units::Length above, passed;
    for (const Stretch& stretch : run.stretches) {
        const units::Length begin = std::max(from - passed, units::Length());
        const units::Length end = std::min(to - passed, stretch.length);
        passed += stretch.length;
        if (end <= begin)
            continue;
        const double rise = units::inMetres(stretch.end - stretch.start) / units::inMetres(stretch.length);
        const double a = units::inMetres(stretch.start) + rise * units::inMetres(begin);
        const double b = units::inMetres(stretch.start) + rise * units::inMetres(end);
        const double low = std::min(a, b), high = std::max(a, b), z = units::inMetres(level);
        constexpr double sameLevel = 1e-6; // m: a level pipe runs empty where it is opened
        if (z <= low + sameLevel)
            above += end - begin;
        else if (z < high)
            above += (end - begin) * ((high - z) / (high - low));
    }
    return hydraulics::pipeContent(run.bore, above);
}

} // namespace sumpwright::assessment
