#include "core/plan/edits/floor.hpp"

#include <algorithm>

#include "core/plan/edits/draft.hpp"
#include "core/plan/tidy.hpp"

namespace sumpwright::plan
{

namespace
{

Edit changeFloor(const char* intent, std::function<void(Floor&)> how)
{
    return makeEdit(intent, {}, [how](Draft& draft) {
        Floor floor = *draft.plan.floor;
        how(floor);
        if (!(floor == *draft.plan.floor))
            draft.plan.floor = std::make_shared<const Floor>(std::move(floor));
    });
}

bool clockwise(const std::vector<Point>& corners)
{
    units::Area twice = units::squareMetres(0.0);
    for (std::size_t i = 0; i < corners.size(); ++i) {
        const Point& a = corners[i];
        const Point& b = corners[(i + 1) % corners.size()];
        twice += a.x * b.y - b.x * a.y;
    }
    return units::inSquareMetres(twice) < 0.0;
}

} // namespace

Edit setOutline(std::vector<Point> corners)
{
    for (Point& corner : corners)
        corner = tidy(corner);
    if (corners.size() > 1 && corners.front() == corners.back())
        corners.pop_back();
    if (clockwise(corners))
        std::reverse(corners.begin(), corners.end());
    return changeFloor("edit.outline", [corners](Floor& floor) { floor.outline = corners; });
}

Edit setFloorLevel(units::Elevation level)
{
    return changeFloor("edit.floor-level", [level](Floor& floor) { floor.level = level; });
}

Edit setFloorFall(units::Slope fall, units::Angle direction)
{
    return changeFloor("edit.floor-fall", [fall, direction](Floor& floor) {
        floor.fall = fall;
        floor.fallDirection = direction;
    });
}

Edit setDrainPoint(std::optional<Point> place)
{
    return changeFloor("edit.drain-point", [place](Floor& floor) { floor.drainPoint = place; });
}

Edit setClearHeight(std::optional<units::Length> height)
{
    return changeFloor("edit.clear-height", [height](Floor& floor) { floor.clearHeight = height; });
}

Edit setFloorThickness(std::optional<units::Length> thickness)
{
    return changeFloor("edit.floor-thickness", [thickness](Floor& floor) { floor.thickness = thickness; });
}

} // namespace sumpwright::plan
