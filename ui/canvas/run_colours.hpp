// RunScale: what the runs are coloured by, in classes of one hue with their limits; and what marks a run besides.
// Velocity in classes of fixed limits (common practice, no source); head, the level of the hydraulic grade half-way
// along, in up to five classes of round numbers over what the plan has.
#pragma once

#include <QColor>
#include <QString>

#include <optional>
#include <vector>

#include "ui/canvas/figures.hpp"
#include "ui/canvas/ink.hpp"
#include "ui/style/palette.hpp"

namespace sumpwright::ui::canvas
{

enum class RunMeasure { nothing, velocity, head };
enum class RunMark { none, slow, surcharged };

inline constexpr units::Velocity slowBelow = units::metresPerSecond(0.3); // common practice, no source

// What the results say of one run, for its colour and its label. Absent: not computed.
struct RunFigures {
    std::optional<units::Velocity> velocity;
    std::optional<units::Elevation> gradeAtStart;
    std::optional<units::Elevation> gradeAtEnd;
    RunMark mark = RunMark::none;
    friend bool operator==(const RunFigures&, const RunFigures&) = default;
};

class RunScale
{
public:
    RunScale() = default; // colours nothing
    RunScale(RunMeasure measure, const std::vector<RunFigures>& runs);

    RunMeasure measure() const { return m_measure; }
    int classes() const { return static_cast<int>(m_limits.size()) + 1; }
    std::optional<int> classOf(const RunFigures& run) const; // 0 the least
    // "0.3 to 0.6 m/s"; the outermost are open.
    QString words(int which, const Figures& figures) const;
    friend bool operator==(const RunScale&, const RunScale&) = default;

private:
    QString limitText(std::size_t limit, const Figures& figures) const;

    RunMeasure m_measure = RunMeasure::nothing;
    std::vector<double> m_limits; // between the classes, m/s or metres above datum; ascending
};

// From faint to strong against the theme's paper; greyer where the results are stale.
QColor colourOfClass(const style::Theme& theme, int which, int classes, bool stale);

// What a run's label tells besides its flow: "0.57 m/s", "1.62 to 1.34 m", with the word for its mark; or empty.
QString figureText(RunMeasure measure, const RunFigures& run, const Figures& figures);

// A small ring (slow) or a bar across (runs full) on the pipe's centre line; `width` of the pipe.
void paintRunMark(QPainter& painter, const Ink& ink, RunMark mark, QPointF place, double turn, double width);

} // namespace sumpwright::ui::canvas
