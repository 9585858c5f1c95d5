#include "ui/tools/pipe_sketch.hpp"

#include <algorithm>
#include <cmath>

namespace sumpwright::ui::tools
{

namespace
{
constexpr auto sameplace = units::millimetres(0.5);

bool same(plan::Point a, plan::Point b) { return plan::distanceBetween(a, b) < sameplace; }

double magnitude(units::Length v) { return std::abs(units::inMetres(v)); }
} // namespace

void PipeSketch::begin(plan::Target from, const plan::Vertex& start)
{
    m_from = std::move(from);
    m_vertices = {start};
}

void PipeSketch::clear()
{
    m_from = plan::Nowhere{};
    m_vertices.clear();
}

void PipeSketch::addCorner(plan::Point at)
{
    if (!begun() || same(last(), at))
        return;
    plan::Vertex corner;
    corner.at = at;
    corner.level = level();
    m_vertices.push_back(corner);
}

bool PipeSketch::setLevel(units::Elevation level)
{
    if (!begun())
        return false;
    const auto count = m_vertices.size();
    const bool onLeg = count >= 2 && same(m_vertices[count - 2].at, last());
    if (onLeg)
        m_vertices.pop_back();
    if (m_vertices.back().level != level) {
        plan::Vertex top = m_vertices.back();
        top.level = level;
        m_vertices.push_back(top);
    }
    return true;
}

bool PipeSketch::dropLast()
{
    if (m_vertices.size() < 2)
        return false;
    const auto place = last();
    while (m_vertices.size() > 1 && same(last(), place))
        m_vertices.pop_back();
    return true;
}

units::Elevation PipeSketch::level() const { return begun() ? m_vertices.back().level : units::elevationMetres(0.0); }

plan::Point PipeSketch::last() const { return begun() ? m_vertices.back().at : plan::Point{}; }

plan::Point PipeSketch::aligned(plan::Point raw, units::Length reach) const
{
    if (!begun())
        return raw;
    const auto off = raw - last();
    const double within = units::inMetres(reach);
    // Near the last corner both are within reach: the leg goes where the place lies further off.
    const bool upright = magnitude(off.x) <= magnitude(off.y);
    if (upright && magnitude(off.x) <= within)
        return {last().x, raw.y};
    if (!upright && magnitude(off.y) <= within)
        return {raw.x, last().y};
    const double slant = magnitude(off.x) - magnitude(off.y);
    if (std::abs(slant) > within)
        return raw;
    const double side = (magnitude(off.x) + magnitude(off.y)) / 2.0;
    return {last().x + units::metres(std::copysign(side, units::inMetres(off.x))),
            last().y + units::metres(std::copysign(side, units::inMetres(off.y)))};
}

plan::RunWish PipeSketch::wish(const plan::Target& to, const plan::Vertex& end) const
{
    plan::RunWish wish;
    wish.from = m_from;
    wish.to = to;
    wish.vertices = m_vertices;
    // The last corner's level is carried to the end; a difference becomes a vertical leg there.
    if (!same(last(), end.at)) {
        plan::Vertex before = end;
        before.level = level();
        wish.vertices.push_back(before);
    } else if (wish.vertices.size() == 1) {
        wish.vertices.push_back(end); // straight down or up
    }
    return wish;
}

std::optional<plan::RunWish> PipeSketch::wishEndingHere(const plan::Target& to) const
{
    if (m_vertices.size() < 2)
        return std::nullopt;
    plan::RunWish wish;
    wish.from = m_from;
    wish.to = to;
    wish.vertices = m_vertices;
    return wish;
}

} // namespace sumpwright::ui::tools
