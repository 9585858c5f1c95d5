// Drawing: what every item of the scene draws with - theme, zoom, figures, tables and results. Owned by the scene.
#pragma once

#include <memory>

#include "core/catalogue/catalogue.hpp"
#include "core/plan/plan.hpp"
#include "ui/canvas/figures.hpp"
#include "ui/canvas/ink.hpp"
#include "ui/canvas/run_colours.hpp"
#include "ui/canvas/water_view.hpp"

namespace sumpwright::ui::canvas
{

struct Drawing {
    const style::Theme* theme = nullptr;
    double pixel = 10.0; // scene millimetres per pixel
    Figures figures;
    std::shared_ptr<const catalogue::Catalogue> catalogue;
    plan::Plan plan; // the plan drawn
    WaterView water;
    RunScale scale;     // what the runs are coloured by
    QString planFolder; // where the site sketch lies

    Ink ink() const { return {theme, pixel}; }
    units::Length outsideDiameter(const plan::Run& run) const; // of an unknown pipe: 32 mm
    bool coloursRuns() const { return scale.measure() != RunMeasure::nothing; }
    std::optional<int> classOf(base::Id run) const; // none: not computed
};

} // namespace sumpwright::ui::canvas
