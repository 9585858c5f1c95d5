#include "core/plan/edits/vessel.hpp"

#include "core/plan/edits/draft.hpp"
#include "core/plan/tidy.hpp"

namespace sumpwright::plan
{

namespace
{

// The same proportion of the new frame, kept inside a round outline.
Point keptInside(Point offset, const RectangleShape& was, const Shape& shape)
{
    const RectangleShape now = frameOf(shape);
    Point place{offset.x * (now.length / was.length), offset.y * (now.width / was.width)};
    if (std::holds_alternative<RoundShape>(shape)) {
        const units::Length reach = distanceBetween({}, place);
        if (reach > now.length / 2.0) {
            const double share = now.length / (2.0 * reach);
            place = {share * place.x, share * place.y};
        }
    }
    return tidy(place);
}

void reshape(Draft& draft, base::Id id, const Shape& shape)
{
    const Vessel before = draft.the<Vessel>(id);
    const RectangleShape was = frameOf(before.shape);
    if (!(units::inMetres(was.length) > 0.0 && units::inMetres(was.width) > 0.0) || before.shape == shape)
        return;
    draft.change<Vessel>(id, [&](Vessel& vessel) {
        vessel.shape = shape;
        for (Port& port : vessel.ports)
            port.offset = keptInside(port.offset, was, shape);
    });
    const auto pumps = draft.plan.pumps;
    for (const auto& pump : pumps)
        if (pump->vessel == id)
            draft.change<Pump>(pump->id,
                               [&](Pump& changed) { changed.offset = keptInside(changed.offset, was, shape); });
}

} // namespace

Edit setShape(std::vector<base::Id> vessels, Shape shape)
{
    return makeEdit("edit.resize", vessels, [vessels, shape](Draft& draft) {
        for (const base::Id id : vessels)
            reshape(draft, id, shape);
    });
}

Edit resizeVessel(base::Id vessel, Shape shape, Point centre)
{
    return makeEdit("edit.resize", {vessel}, [vessel, shape, centre](Draft& draft) {
        reshape(draft, vessel, shape);
        draft.change<Vessel>(vessel, [centre](Vessel& changed) { changed.centre = tidy(centre); });
    });
}

Edit setWallHeight(std::vector<base::Id> vessels, units::Length height)
{
    return setEach<Vessel>("edit.wall-height", std::move(vessels), &Vessel::wallHeight, height);
}

Edit setWallThickness(std::vector<base::Id> vessels, units::Length thickness)
{
    return setEach<Vessel>("edit.wall-thickness", std::move(vessels), &Vessel::wallThickness, thickness);
}

Edit setVesselKind(std::vector<base::Id> vessels, VesselKind kind)
{
    return changeEach<Vessel>("edit.vessel-kind", std::move(vessels), [kind](Vessel& vessel) {
        vessel.kind = kind;
        if (kind != VesselKind::sump)
            vessel.runningLevel.reset();
        if (kind != VesselKind::mediaBed)
            vessel.medium.reset();
    });
}

Edit setMedium(std::vector<base::Id> vessels, std::optional<Medium> medium)
{
    return setEach<Vessel>("edit.medium", std::move(vessels), &Vessel::medium, std::move(medium));
}

Edit setStand(std::vector<base::Id> vessels, std::optional<Stand> stand)
{
    return setEach<Vessel>("edit.stand", std::move(vessels), &Vessel::stand, stand);
}

Edit setMeasuredTare(std::vector<base::Id> vessels, std::optional<units::Mass> tare)
{
    return setEach<Vessel>("edit.tare", std::move(vessels), &Vessel::measuredTare, tare);
}

Edit setRunningLevel(std::vector<base::Id> sumps, std::optional<units::Elevation> level)
{
    return setEach<Vessel>("edit.running-level", std::move(sumps), &Vessel::runningLevel, level);
}

} // namespace sumpwright::plan
