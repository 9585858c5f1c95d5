// The side charts of the window in their order: Water, Head, Duty point, Floor; each with a stable id.
#pragma once

#include <vector>

#include "ui/charts/chart_panel.hpp"

namespace sumpwright::ui::charts
{

struct SideChart {
    QString id;   // "water", "head", "duty", "floor"
    QString name; // "Water"
    ChartPanel* panel = nullptr;
};

std::vector<SideChart> makeSideCharts(document::Document& document, const DisplayNow& display, QWidget* parent);

} // namespace sumpwright::ui::charts
