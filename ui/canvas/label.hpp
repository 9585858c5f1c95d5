// Label: letters beside an element, in one or more lines of spans; and the wish where it may stand.
#pragma once

#include <QPointF>
#include <QSizeF>
#include <QString>

#include <vector>

#include "core/base/id.hpp"
#include "ui/canvas/ink.hpp"

namespace sumpwright::ui::canvas
{

enum class SpanKind { tag, words, result, staleResult };
struct LabelSpan {
    QString text;
    SpanKind kind = SpanKind::words;
    bool levelMark = false; // a level triangle before the text
    friend bool operator==(const LabelSpan&, const LabelSpan&) = default;
};
using LabelLine = std::vector<LabelSpan>;

struct LabelText {
    std::vector<LabelLine> lines;
    QSizeF size; // pixels
    friend bool operator==(const LabelText&, const LabelText&) = default;
};
LabelText layOut(std::vector<LabelLine> lines);
// Around the origin, in pixels.
void paintLabel(QPainter& painter, const Ink& ink, const LabelText& label);

struct LabelSpot {
    std::size_t text = 0; // which of the wish's texts, fullest first
    QPointF centre;       // scene
    double turn = 0.0;    // degrees clockwise
    int cost = 0;         // how much worse than the best; see `cover` for what covering something costs
};

struct LabelWish {
    base::Id element;
    int part = 0;     // tells several labels of one element apart
    int priority = 0; // low is placed first
    std::vector<LabelText> texts;
    std::vector<LabelSpot> spots; // of equal cost the earlier one
    bool dispensable = false;     // left out rather than cover a pipe, a line or a sign
};

} // namespace sumpwright::ui::canvas
