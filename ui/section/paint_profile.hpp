// Painting vessels, pipes, pumps and the floor as they look from the side, in the manner of the plan.
#pragma once

#include "ui/section/page.hpp"

namespace sumpwright::ui::section
{

// How the water lines and the grade are told apart: by dash first.
enum class LineKind { least, most, stopped, grade, plainGrade };
QPen penOf(LineKind kind, const Pens& pens);

void paintVessel(QPainter& painter, const Sheet& sheet, const Pens& pens, const report::VesselProfile& vessel);
void paintPipe(QPainter& painter, const Sheet& sheet, const Pens& pens, base::Id run, plan::Service service,
               units::Length outside, const QPolygonF& centre);
void paintPump(QPainter& painter, const Sheet& sheet, const Pens& pens, const report::PumpProfile& pump);
// A line on the ground with short strokes beneath.
void paintGround(QPainter& painter, const Pens& pens, QPointF from, QPointF to);

QRectF bodyOf(const Sheet& sheet, const report::PumpProfile& pump);

} // namespace sumpwright::ui::section
