// renderPlan: the drawing of a plan on paper, in a picture or in SVG, with what a sheet needs around it.
#pragma once

#include <QPainter>
#include <QRectF>

#include <memory>

#include "core/assessment/assessment.hpp"
#include "ui/canvas/figures.hpp"
#include "ui/canvas/run_colours.hpp"
#include "ui/style/palette.hpp"

namespace sumpwright::ui::canvas
{

struct RenderOptions {
    const style::Theme* theme = nullptr; // null: light
    Figures figures;
    QString planFolder;       // where the site sketch lies
    double unit = 1.0;        // painter units per pixel (1/96 inch): 1 for screen pictures, 300/96 at 300 dpi
    double denominator = 0.0; // of the scale, 50 for 1:50; 0: the largest that fits
    bool ground = true;       // paper colour behind
    bool grid = false;
    bool labels = true;
    bool legend = false;
    RunMeasure runMeasure = RunMeasure::nothing; // what the runs are coloured by; its scale is printed too
    bool furniture = true;                       // scale bar and north arrow
};

// Draws into `target` (painter units) and returns the scale denominator used. `assessment` may be null: then no
// levels and flows are written. A stale assessment must not be handed in.
double renderPlan(const plan::Plan& plan, const std::shared_ptr<const catalogue::Catalogue>& catalogue,
                  const assessment::Assessment* assessment, QPainter& painter, const QRectF& target,
                  const RenderOptions& options = {});

} // namespace sumpwright::ui::canvas
