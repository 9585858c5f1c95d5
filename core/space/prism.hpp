// Prism: an upright body over a convex outline between two levels, and the part of a straight pipe that lies in it.
// Built larger by `around` on every side it lets the pipe's centre line stand for the pipe; at corners of the outline
// it is then up to 0.41 times that too large.
#pragma once

#include <optional>
#include <vector>

#include "core/space/outline.hpp"
#include "core/space/pipe_body.hpp"

namespace sumpwright::space
{

enum class Face { none, side, bottom, top };

// The part of a leg inside, as shares of the leg; through which face it comes in and goes out, none where the leg
// begins or ends inside.
class Inside
{
public:
    Inside(double from, double to, Face in, Face out) : m_from(from), m_to(to), m_in(in), m_out(out) {}
    double from() const { return m_from; }
    double to() const { return m_to; }
    Face in() const { return m_in; }
    Face out() const { return m_out; }

private:
    double m_from, m_to;
    Face m_in, m_out;
};

class Prism
{
public:
    Prism(const Outline& outline, units::Length around);
    Prism(const Outline& outline, units::Elevation bottom, units::Elevation top, units::Length around);
    std::optional<Inside> partOf(const Spot& a, const Spot& b) const; // none when less than 0.1 mm lies inside

private:
    const Outline* m_outline; // outlives this object
    double m_bottom, m_top, m_around;
};

Spot placeOn(const Spot& a, const Spot& b, double share);
// The box around a run in plan; and could the run come within `around` of an outline, by the boxes around both?
struct Box {
    plan::Point low;
    plan::Point high;
};
Box boxOf(const PipeBody& body);
bool meet(const Box& box, const Outline& outline, units::Length around);

} // namespace sumpwright::space
