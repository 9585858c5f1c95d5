#include "ui/document/view_settings.hpp"

#include <QLocale>

namespace sumpwright::ui::document
{

ViewSettings::ViewSettings(QObject* parent) : QObject(parent)
{
    const QLocale locale;
    m_unitSystem =
        locale.measurementSystem() == QLocale::ImperialUSSystem ? units::UnitSystem::us : units::UnitSystem::metric;
    m_numberStyle =
        units::NumberStyle::ofDesktop(locale.decimalPoint().toStdString(), locale.groupSeparator().toStdString());
}

void ViewSettings::setUnitSystem(units::UnitSystem system)
{
    if (m_unitSystem == system)
        return;
    m_unitSystem = system;
    Q_EMIT changed();
}

void ViewSettings::setNumberStyle(const units::NumberStyle& style)
{
    if (m_numberStyle == style)
        return;
    m_numberStyle = style;
    Q_EMIT changed();
}

void ViewSettings::setSchemeChoice(SchemeChoice choice)
{
    if (m_schemeChoice == choice)
        return;
    m_schemeChoice = choice;
    Q_EMIT changed();
}

void ViewSettings::setLetterKeys(bool on)
{
    if (m_letterKeys == on)
        return;
    m_letterKeys = on;
    Q_EMIT changed();
}

} // namespace sumpwright::ui::document
