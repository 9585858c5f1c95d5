// Pictures of the plan: PNG at a chosen width, or SVG with real text, on paper in the light or the dark theme.
#pragma once

#include <memory>
#include <optional>

#include <QString>

#include "core/assessment/assessment.hpp"
#include "core/base/outcome.hpp"
#include "core/units/number_style.hpp"
#include "core/units/unit_system.hpp"
#include "ui/canvas/run_colours.hpp"
#include "ui/style/palette.hpp"

namespace sumpwright::ui::window
{

struct PictureWish {
    QString path;       // ends in .png or .svg
    QString planFolder; // where a site sketch lies
    int width = 1600;   // pixels, 200 to 10 000
    style::Scheme scheme = style::Scheme::light;
    units::UnitSystem system = units::UnitSystem::metric;
    units::NumberStyle numbers;
    canvas::RunMeasure runMeasure = canvas::RunMeasure::nothing; // what the runs are coloured by
};

// Draws the plan the assessment belongs to. An empty plan, or a place that can't be written, is refused.
std::optional<base::Refusal> writePicture(const assessment::Assessment& assessment, const PictureWish& wish);

} // namespace sumpwright::ui::window
