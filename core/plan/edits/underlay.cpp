#include "core/plan/edits/underlay.hpp"

#include "core/plan/edits/draft.hpp"
#include "core/plan/limits.hpp"
#include "core/plan/tidy.hpp"

namespace sumpwright::plan
{

namespace
{

Edit changeUnderlay(const char* intent, std::function<void(Underlay&)> how)
{
    return makeEdit(intent, {}, [how](Draft& draft) {
        if (!draft.plan.underlay)
            refuse("plan.no-underlay", "underlay", "the plan has no picture under it", "add one first");
        Underlay underlay = *draft.plan.underlay;
        how(underlay);
        if (!(underlay == *draft.plan.underlay))
            draft.plan.underlay = std::make_shared<const Underlay>(std::move(underlay));
    });
}

} // namespace

Edit setUnderlay(Underlay underlay)
{
    return makeEdit("edit.underlay", {}, [underlay](Draft& draft) {
        if (!draft.plan.underlay || !(*draft.plan.underlay == underlay))
            draft.plan.underlay = std::make_shared<const Underlay>(underlay);
    });
}

Edit removeUnderlay()
{
    return makeEdit("edit.remove-underlay", {}, [](Draft& draft) { draft.plan.underlay = nullptr; });
}

Edit scaleUnderlay(Point first, Point second, units::Length trueDistance)
{
    return changeUnderlay("edit.scale-underlay", [=](Underlay& underlay) {
        const units::Length shown = distanceBetween(first, second);
        if (!(shown >= limits::leastLeg))
            refuse("plan.no-length", "underlay", "the two places are one", "two places well apart");
        if (!(trueDistance >= limits::leastLeg && trueDistance <= limits::farthest))
            refuse("plan.out-of-range", "underlay, true distance",
                   "the distance is not one between two places on a floor", "1 mm to 1000 m");
        const double factor = trueDistance / shown;
        const Point reach = underlay.corner - first;
        underlay.corner = tidy(first + Point{factor * reach.x, factor * reach.y});
        underlay.pixelSize = factor * underlay.pixelSize;
    });
}

Edit moveUnderlay(Point corner)
{
    return changeUnderlay("edit.move-underlay", [corner](Underlay& underlay) { underlay.corner = corner; });
}

Edit turnUnderlay(units::Angle turn)
{
    return changeUnderlay("edit.turn-underlay", [turn](Underlay& underlay) { underlay.turn = turn; });
}

Edit setUnderlayOpacity(double opacity)
{
    return changeUnderlay("edit.underlay-opacity", [opacity](Underlay& underlay) { underlay.opacity = opacity; });
}

} // namespace sumpwright::plan
