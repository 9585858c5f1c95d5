// Label wishes: what is written beside each element - tag, water level, volume, flow - and where it may stand.
#pragma once

#include <vector>

#include "ui/canvas/drawing.hpp"
#include "ui/canvas/label.hpp"
#include "ui/canvas/run_item.hpp"

namespace sumpwright::ui::canvas
{

// Millimetres per pixel beyond which letters beside every pipe would hide the drawing: about 1:150 on a usual screen.
// From there on only what is chosen, and vessels where there is room, are labelled.
constexpr double farPixel = 40.0;

LabelWish vesselWish(const plan::Vessel& vessel, const Drawing& drawing);
LabelWish pumpWish(const plan::Pump& pump, QPointF place, const Drawing& drawing);
LabelWish runWish(const RunItem& run, const Drawing& drawing);
LabelWish fixtureWish(const plan::Fixture& fixture, const Drawing& drawing);
// Of a chosen run: the level at each corner, the tag of each valve.
std::vector<LabelWish> runDetailWishes(const RunItem& run, const Drawing& drawing);

} // namespace sumpwright::ui::canvas
