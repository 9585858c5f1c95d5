// ViewSettings: how the person wants to see things - unit system, number marks, light or dark. Session state: it is
// never undone and never marks the plan as modified.
#pragma once

#include <QObject>

#include "core/units/number_style.hpp"
#include "core/units/unit_system.hpp"

namespace sumpwright::ui::document
{

enum class SchemeChoice { light, dark, asDesktop };

class ViewSettings : public QObject
{
    Q_OBJECT

public:
    explicit ViewSettings(QObject* parent = nullptr); // units and number marks of the desktop

    units::UnitSystem unitSystem() const { return m_unitSystem; }
    void setUnitSystem(units::UnitSystem system);
    const units::NumberStyle& numberStyle() const { return m_numberStyle; }
    void setNumberStyle(const units::NumberStyle& style);
    SchemeChoice schemeChoice() const { return m_schemeChoice; }
    void setSchemeChoice(SchemeChoice choice);
    bool letterKeys() const { return m_letterKeys; } // the single-letter keys of the plan view work
    void setLetterKeys(bool on);

Q_SIGNALS:
    void changed();

private:
    units::UnitSystem m_unitSystem = units::UnitSystem::metric;
    units::NumberStyle m_numberStyle;
    SchemeChoice m_schemeChoice = SchemeChoice::asDesktop;
    bool m_letterKeys = true;
};

} // namespace sumpwright::ui::document
