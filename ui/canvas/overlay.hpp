// Overlay: what the active tool shows on top of the drawing, as a value - handles, snap cue, marquee, the line being
// drawn, figures, the keyboard's crosshair. Scene coordinates.
#pragma once

#include <QLineF>
#include <QPolygonF>
#include <QRectF>
#include <QString>

#include <optional>
#include <vector>

namespace sumpwright::ui::canvas
{

enum class HandleKind { corner, side, turn, vertex };
struct Handle {
    HandleKind kind = HandleKind::corner;
    int index = 0;
    QPointF at;
    double turn = 0.0; // degrees clockwise, of the frame it belongs to
    QString name;
};
constexpr double handleTarget = 24.0; // pixels: side of the square that takes a press
QRectF targetOf(const Handle& handle, double pixel);

enum class CueKind { grid, edge, centre, port, run, pump, tee, vertex, line };
struct SnapCue {
    CueKind kind = CueKind::grid;
    QPointF at;
    QString name; // "port I1 of grow bed B2", shown beside it and in the status bar
};

struct Figure {
    QPointF from;
    QPointF to;
    double offset = 0.0;
    QString text;
};

struct Overlay {
    std::vector<Handle> handles;
    std::optional<SnapCue> cue;
    std::vector<QLineF> guides; // alignment with something else
    std::optional<QRectF> marquee;
    bool marqueeTouching = false;
    QPolygonF sketch; // the line or outline being drawn
    bool sketchClosed = false;
    double sketchWidth = 0.0; // true width; 0: a plain line
    std::vector<Figure> figures;
    std::optional<QPointF> crosshair;
    QString readOut; // beside the pointer
    QPointF readOutAt;

    bool empty() const;
    // Everything painted, without pixel margins.
    QRectF extent() const;
};

} // namespace sumpwright::ui::canvas
