// Aligning and distributing by the outlines in plan. Attached pumps and run ends follow as in a move.
#pragma once

#include <vector>

#include "core/plan/edits/edit.hpp"

namespace sumpwright::plan
{

enum class Alignment { left, right, top, bottom, centreX, centreY };
enum class Axis { x, y };

// To the outermost of the elements; the centre ones to the middle of all. Two or more.
Edit align(std::vector<base::Id> elements, Alignment alignment);
// Equal gaps between the outlines; the two outermost stay. Three or more.
Edit distribute(std::vector<base::Id> elements, Axis axis);

struct Box {
    Point low;
    Point high;
};
// The smallest box around an element in plan.
Box boxOf(const Plan& plan, base::Id element);

} // namespace sumpwright::plan
