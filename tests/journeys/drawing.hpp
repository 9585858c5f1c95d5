// Drawing: the order in which a person draws one of the example plans again, from an empty window. What is drawn comes
// from the example's own file; only how the runs were led before tees cut them is told here.
#pragma once

#include <string>
#include <vector>

#include <nlohmann/json.hpp>

#include "tests/journeys/hands.hpp"

namespace sumpwright::tests
{

struct Corner {
    double x; // m
    double y;
    double level; // m, of the centre line
};

// A run as it was drawn at first. Where the level changes from one place to another the leg falls; on one place it is
// a vertical leg.
struct Stroke {
    std::string pipe; // catalogue id
    std::vector<Corner> corners;
};

void drawAll(Hands& hands, const nlohmann::json& plan, const std::vector<Stroke>& strokes);

std::vector<Stroke> strokesOfBackGarden();
std::vector<Stroke> strokesOfCommunityShed();

} // namespace sumpwright::tests
