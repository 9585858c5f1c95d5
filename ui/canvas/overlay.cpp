#include "ui/canvas/overlay.hpp"

namespace sumpwright::ui::canvas
{

QRectF targetOf(const Handle& handle, double pixel)
{
    const double side = handleTarget * pixel;
    return {handle.at - QPointF(side, side) / 2.0, QSizeF(side, side)};
}

bool Overlay::empty() const
{
    return handles.empty() && !cue && guides.empty() && !marquee && sketch.isEmpty() && figures.empty() && !crosshair &&
           readOut.isEmpty();
}

QRectF Overlay::extent() const
{
    QRectF all;
    const auto add = [&all](const QRectF& rect) {
        const QRectF solid = rect.adjusted(-0.5, -0.5, 0.5, 0.5);
        all = all.isNull() ? solid : all.united(solid);
    };
    const auto addPoint = [&add](QPointF point) { add(QRectF(point, QSizeF(0.0, 0.0))); };
    for (const auto& handle : handles)
        addPoint(handle.at);
    for (const auto& guide : guides)
        add(QRectF(guide.p1(), guide.p2()).normalized());
    for (const auto& figure : figures) {
        add(QRectF(figure.from, figure.to)
                .normalized()
                .adjusted(-figure.offset, -figure.offset, figure.offset, figure.offset));
    }
    if (cue)
        addPoint(cue->at);
    if (marquee)
        add(*marquee);
    if (!sketch.isEmpty())
        add(sketch.boundingRect().adjusted(-sketchWidth, -sketchWidth, sketchWidth, sketchWidth));
    if (crosshair)
        addPoint(*crosshair);
    if (!readOut.isEmpty())
        addPoint(readOutAt);
    return all;
}

} // namespace sumpwright::ui::canvas
