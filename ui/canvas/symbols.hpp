// Symbols: the small signs of the drawing, built from primitive shapes after ISO 14617 (connections, valves, pumps);
// the legend prints each with its meaning. Sizes are scene millimetres, turns are degrees clockwise.
#pragma once

#include <QPainter>

#include "ui/canvas/ink.hpp"

namespace sumpwright::ui::canvas
{

enum class FittingSign { ball, gate, globe, butterfly, check, other };

void paintFlowArrow(QPainter& painter, const Ink& ink, QPointF tip, double turn, double size, const QColor& colour);
// Two triangles along the pipe; shut: filled.
void paintFitting(QPainter& painter, const Ink& ink, FittingSign sign, QPointF place, double turn, double size,
                  bool shut);
// A circle with a triangle that points where the water leaves.
void paintPump(QPainter& painter, const Ink& ink, QPointF place, double turn, double diameter, bool running);

// A pipe seen from above: towards the reader (rising, a dot) or away (falling, a cross).
void paintRising(QPainter& painter, const Ink& ink, QPointF place, double diameter);
void paintFalling(QPainter& painter, const Ink& ink, QPointF place, double diameter);
void paintJoint(QPainter& painter, const Ink& ink, QPointF place, double diameter); // tee
void paintOpenEnd(QPainter& painter, const Ink& ink, QPointF place, double turn, double diameter);

void paintStandpipe(QPainter& painter, const Ink& ink, QPointF place, double bore);
void paintBell(QPainter& painter, const Ink& ink, QPointF place, double bore); // standpipe, bell and media guard
void paintInlet(QPainter& painter, const Ink& ink, QPointF place, double bore);
void paintSideOutlet(QPainter& painter, const Ink& ink, QPointF place, double turn, double bore);

void paintDrainPoint(QPainter& painter, const Ink& ink, QPointF place, double diameter);
void paintPowerPoint(QPainter& painter, const Ink& ink, QPointF place, double diameter);
void paintNorth(QPainter& painter, const Ink& ink, QPointF centre, double turn, double height);
// A triangle standing on the level it names, `size` high.
void paintLevelMark(QPainter& painter, const Ink& ink, QPointF tip, double size, const QColor& colour);

} // namespace sumpwright::ui::canvas
