#include "ui/document/view_settings.hpp"

namespace sumpwright::ui::document
{

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
