#include "ui/canvas/scene_point.hpp"

namespace sumpwright::ui::canvas
{

QPolygonF toScene(const std::vector<plan::Point>& corners)
{
    QPolygonF polygon;
    polygon.reserve(static_cast<int>(corners.size()));
    for (const auto& corner : corners)
        polygon.append(toScene(corner));
    return polygon;
}

} // namespace sumpwright::ui::canvas
