// PipeSketch: the run being drawn - where it starts, its vertices with their levels - until it becomes an edit.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/plan/edits/draw_run.hpp"

namespace sumpwright::ui::tools
{

class PipeSketch
{
public:
    bool begun() const { return !m_vertices.empty(); }
    void begin(plan::Target from, const plan::Vertex& start);
    void clear();
    void addCorner(plan::Point at); // at the level the sketch has; a place already held is left out
    // A vertical leg at the last vertex; a second level there replaces the first. False before the start.
    bool setLevel(units::Elevation level);
    // The last corner, with the vertical leg that stands on it. The start stays. False when nothing was left to drop.
    bool dropLast();

    const std::vector<plan::Vertex>& vertices() const { return m_vertices; }
    const plan::Target& from() const { return m_from; }
    units::Elevation level() const;
    plan::Point last() const;
    // The place pointed at, put straight above, beside or at 45 degrees from the last vertex where it is within reach.
    plan::Point aligned(plan::Point raw, units::Length reach) const;

    plan::RunWish wish(const plan::Target& to, const plan::Vertex& end) const; // without pipe and service
    // Ends where the last corner lies. Nothing with less than two places.
    std::optional<plan::RunWish> wishEndingHere(const plan::Target& to) const;

private:
    plan::Target m_from = plan::Nowhere{};
    std::vector<plan::Vertex> m_vertices;
};

} // namespace sumpwright::ui::tools
