// ViewSettings: how the person wants the window - light or dark, letter keys. Session state: never undone, never
// marks the plan as modified. Units and number marks are in text::DisplaySettings.
#pragma once

#include <QObject>

namespace sumpwright::ui::document
{

enum class SchemeChoice { light, dark, asDesktop };

class ViewSettings : public QObject
{
    Q_OBJECT

public:
    explicit ViewSettings(QObject* parent = nullptr) : QObject(parent) {}

    SchemeChoice schemeChoice() const { return m_schemeChoice; }
    void setSchemeChoice(SchemeChoice choice);
    bool letterKeys() const { return m_letterKeys; } // the single-letter keys of the plan view work
    void setLetterKeys(bool on);

Q_SIGNALS:
    void changed();

private:
    SchemeChoice m_schemeChoice = SchemeChoice::asDesktop;
    bool m_letterKeys = true;
};

} // namespace sumpwright::ui::document
