// Page: one of the two drawings of levels - front elevation or section - made anew from the plan and its results when
// these change, and painted as often as the window asks. Knows nothing of pointer and keys.
#pragma once

#include <QPainter>
#include <QPolygonF>

#include <optional>
#include <vector>

#include "core/assessment/assessment.hpp"
#include "core/plan/level_ref.hpp"
#include "ui/canvas/figures.hpp"
#include "ui/canvas/label_placement.hpp"
#include "ui/section/sheet.hpp"

namespace sumpwright::ui::section
{

// What a page is made from. Results may be null, or of an older plan.
struct Shown {
    const plan::Plan& plan;
    const assessment::Assessment* results = nullptr;
    const catalogue::Catalogue* catalogue = nullptr;
};

// How it is to be painted.
struct Pens {
    canvas::Ink ink; // in pixels
    canvas::Figures figures;
    std::vector<base::Id> selection;
    base::Id highlighted{};
    bool stale = false;
    bool chosen(base::Id id) const;
    bool lit(base::Id id) const { return chosen(id) || (highlighted.valid() && id == highlighted); }
};

// A level that can be taken hold of, and where.
struct LevelHandle {
    plan::LevelRef level;
    units::Length along;
    units::Elevation at = units::elevationMetres(0.0);
    units::Length left{}; // of the vessel it belongs to, if any
};

// What belongs to an element on the sheet, in pixels; the later lies on top. A line has width, a surface has none.
struct Target {
    base::Id element;
    QPolygonF shape;
    double width = 0.0;
    bool holds(QPointF place) const;
};

// Levels others may be lined up with.
struct LevelMark {
    base::Id element; // none: the floor, the datum
    units::Length along;
    units::Elevation level;
};

class Page
{
public:
    virtual ~Page() = default;
    virtual void show(const Shown& shown) = 0;
    virtual void paint(QPainter& painter, const Sheet& sheet, const Pens& pens) const = 0;
    // What letters keep away from, and the letters.
    virtual void letter(const Sheet& sheet, const Pens& pens, canvas::Clutter& clutter,
                        std::vector<canvas::LabelWish>& wishes) const = 0;
    virtual const std::vector<LevelHandle>& handles() const = 0; // from left to right, in each element from below
    virtual std::vector<Target> targets(const Sheet& sheet) const = 0;
    virtual const std::vector<LevelMark>& marks() const = 0;
    virtual QRectF extent() const = 0; // metres; y is the level, upwards
    virtual QString empty() const = 0; // what to say where there is nothing to draw; empty: there is
    virtual QString told() const = 0;  // the drawing in words, for assistive technology
};

} // namespace sumpwright::ui::section
