// RunLine: a run's way in plan as the drawing needs it - its corners in scene millimetres, its vertical legs, and the
// stretches that are hidden under a vessel or broken where another run crosses above.
//
// Distances along the line are measured in plan (scene millimetres), vertical legs count nothing.
#pragma once

#include <QPainterPath>
#include <QPointF>

#include <vector>

#include "core/plan/plan.hpp"

namespace sumpwright::ui::canvas
{

struct Corner {
    QPointF at;
    double distance = 0.0;   // along the line in plan
    units::Elevation before; // level where the water arrives
    units::Elevation after;  // level where it goes on: differs where a vertical leg stands here
};

struct RunLine {
    std::vector<Corner> corners; // one at least
    double width = 0.0;          // outside diameter
    QRectF bounds;               // of corners, grown by half the width

    double length() const { return corners.empty() ? 0.0 : corners.back().distance; }
    QPointF at(double distance) const;
    double turnAt(double distance) const; // direction from `from` to `to`, degrees clockwise
    units::Elevation levelAt(double distance) const;
};

RunLine runLineOf(const plan::Run& run, units::Length outsideDiameter);
// Distance in plan of a station that counts true length, vertical legs included.
double distanceAtStation(const plan::Run& run, const RunLine& line, double station);

enum class StretchKind { open, hidden };
struct Stretch {
    double from = 0.0;
    double to = 0.0;
    StretchKind kind = StretchKind::open;
    friend bool operator==(const Stretch&, const Stretch&) = default;
};

// A crossing of two lines in plan: distances along each, and the sine of the angle between them.
struct Crossing {
    double here = 0.0;
    double there = 0.0;
    double sine = 1.0;
};
std::vector<Crossing> crossingsOf(const RunLine& here, const RunLine& there);
// Where another run passes clear above, the line is broken over that run's width and some air on both sides.
struct Break {
    double centre = 0.0;
    double width = 0.0; // of the run above
    double sine = 1.0;
    friend bool operator==(const Break&, const Break&) = default;
};
std::vector<Break> breaksUnder(const RunLine& line, const RunLine& other);
// Where the line passes below the underside of a vessel.
std::vector<Stretch> hiddenUnder(const RunLine& line, const plan::Vessel& vessel);

// The whole line cut into what is drawn: breaks left out with `air` on both sides, hidden stretches marked.
std::vector<Stretch> stretchesOf(double length, const std::vector<Break>& breaks, const std::vector<Stretch>& hidden,
                                 double air);

// The path of a stretch, its corners rounded by `radius`.
QPainterPath pathOf(const RunLine& line, double from, double to, double radius);

} // namespace sumpwright::ui::canvas
