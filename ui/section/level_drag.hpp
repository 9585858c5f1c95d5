// LevelDrag: one level under the pointer - lined up with the levels of others, else on the level grid; or typed.
// Always from the plan as it was when the drag began. Metres above datum.
#pragma once

#include <QString>

#include <optional>
#include <vector>

#include "ui/canvas/figures.hpp"
#include "ui/section/page.hpp"

QT_BEGIN_NAMESPACE
class QKeyEvent;
QT_END_NAMESPACE

namespace sumpwright::ui::section
{

struct LevelRules {
    bool snapping = true;
    units::Length step = units::millimetres(10.0);
    units::Length reach = units::millimetres(20.0); // to the level of another element
};

// The nearest whole step.
units::Elevation toStep(units::Elevation level, units::Length step);

class LevelDrag
{
public:
    // `grabbed`: the level the pointer stood at when it took hold.
    LevelDrag(const LevelHandle& handle, units::Elevation grabbed, const std::vector<LevelMark>& marks);

    const LevelHandle& handle() const { return m_handle; }
    void moveTo(units::Elevation pointer, const LevelRules& rules);
    bool key(const QKeyEvent& event); // typed while dragging; true: taken
    // What is meant now: the level typed where it reads as one, else where the pointer is.
    units::Elevation level(const canvas::Figures& figures) const;
    const QString& typed() const { return m_typed; }
    const std::optional<LevelMark>& guide() const { return m_guide; } // lined up with this

private:
    LevelHandle m_handle;
    units::Length m_off; // of the level above the pointer
    std::vector<LevelMark> m_marks;
    units::Elevation m_level;
    std::optional<LevelMark> m_guide;
    QString m_typed;
};

} // namespace sumpwright::ui::section
