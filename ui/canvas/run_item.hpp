// RunItem: a pipe run at its true outside diameter with its centre line; service told by the dash of that line; flow
// arrows, bends, valves, vertical legs; broken where another run crosses above, dashed where it lies below a vessel.
#pragma once

#include <memory>

#include "ui/canvas/element_item.hpp"
#include "ui/canvas/run_line.hpp"

namespace sumpwright::ui::canvas
{

// What the surroundings do to a run.
struct RunSurroundings {
    std::vector<Break> breaks;
    std::vector<Stretch> hidden;
    friend bool operator==(const RunSurroundings&, const RunSurroundings&) = default;
};

class RunItem final : public ElementItem
{
public:
    using Pointer = std::shared_ptr<const plan::Run>;
    RunItem(Pointer run, const Drawing& drawing);
    void show(Pointer run);
    void setSurroundings(RunSurroundings surroundings);
    void drawingChanged() override;

    const Pointer& run() const { return m_run; }
    const RunLine& line() const { return m_line; }
    const std::vector<Stretch>& stretches() const { return m_stretches; }
    const RunSurroundings& surroundings() const { return m_surroundings; }
    // Against the drawn direction where the network says so.
    bool flowsBackwards() const;
    // Distance along the line of the middle of its longest visible straight piece, and that piece's length.
    struct Straight {
        double middle = 0.0;
        double length = 0.0;
    };
    std::vector<Straight> straights() const; // longest first
    QString description() const override;    // with what the results say of it
    double fittingSize() const;              // of a drawn valve along the pipe, scene; it is 0.6 as high

protected:
    QPainterPath outline() const override { return m_path; }
    bool isLine() const override { return true; }
    double margin() const override;
    void draw(QPainter& painter, const Ink& ink) const override;

private:
    void refresh();
    void drawBody(QPainter& painter, const Ink& ink) const;
    void drawStretch(QPainter& painter, const Ink& ink, const QPainterPath& path, bool hidden) const;
    void drawSockets(QPainter& painter, const Ink& ink) const;
    void drawMarks(QPainter& painter, const Ink& ink) const;
    QColor fill(const Ink& ink) const;
    void drawArrows(QPainter& painter, const Ink& ink) const;
    void drawVerticals(QPainter& painter, const Ink& ink) const;
    void drawFittings(QPainter& painter, const Ink& ink) const;
    void drawEnds(QPainter& painter, const Ink& ink) const;

    Pointer m_run;
    RunLine m_line;
    RunSurroundings m_surroundings;
    std::vector<Stretch> m_stretches;
    QPainterPath m_path;
};

} // namespace sumpwright::ui::canvas
