// Properties of walls, doors, posts and power points.
#pragma once

#include <vector>

#include "core/plan/edits/edit.hpp"

namespace sumpwright::plan
{

Edit setFixtureEnds(base::Id fixture, Point from, Point to); // post and power point: `from` alone counts
Edit setFixtureKind(std::vector<base::Id> fixtures, FixtureKind kind);
Edit setFixtureSize(std::vector<base::Id> fixtures, units::Length size);
Edit setFixtureHeight(std::vector<base::Id> fixtures, units::Length height);
Edit setFixtureLevel(std::vector<base::Id> fixtures, units::Elevation level);

} // namespace sumpwright::plan
