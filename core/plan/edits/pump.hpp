// Properties of pumps; each edit sets one property of one or many.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/plan/edits/edit.hpp"

namespace sumpwright::plan
{

Edit setPumpModel(std::vector<base::Id> pumps, std::string modelId); // drops an own curve
// Flow rising from 0, head falling; two points or more. Drops the catalogue model.
Edit setPumpCurve(std::vector<base::Id> pumps, std::vector<CurvePoint> curve, std::optional<units::Power> input);
// The two numbers of the box, head at no flow and flow at no head; the curve between them is an estimate.
Edit setPumpRatings(std::vector<base::Id> pumps, units::Head shutOff, units::Flow greatest,
                    std::optional<units::Power> input);
Edit setPumpArrangement(std::vector<base::Id> pumps, PumpArrangement arrangement);
Edit setPumpSpeed(std::vector<base::Id> pumps, double ratio); // (0, 1.5]
Edit setLeastDepth(std::vector<base::Id> pumps, std::optional<units::Length> depth);
Edit setPumpRunning(std::vector<base::Id> pumps, bool running);
Edit setPumpOutlet(std::vector<base::Id> pumps, units::Elevation level); // the attached run follows
// Stands a pump at a place inside a vessel, the same or another.
Edit standPump(base::Id pump, base::Id vessel, Point place);

} // namespace sumpwright::plan
