// WindowState: what the window remembers from one run to the next - size, panels, folds, units, light or dark.
// A file "window.ini" in the state folder; nothing of a plan is in it.
#pragma once

#include <memory>

#include <QByteArray>
#include <QString>
#include <QStringList>

#include "core/units/unit_system.hpp"
#include "ui/document/view_settings.hpp"

QT_BEGIN_NAMESPACE
class QSettings;
QT_END_NAMESPACE

namespace sumpwright::ui::window
{

class WindowState
{
public:
    explicit WindowState(const QString& stateFolder);
    ~WindowState();

    QByteArray geometry() const;
    void setGeometry(const QByteArray& geometry);
    QByteArray layout() const; // of the panels; empty: never arranged
    void setLayout(const QByteArray& layout);
    QStringList foldedCharts() const;
    void setFoldedCharts(const QStringList& ids);
    bool section() const; // the pane of levels shows the section, not the elevation
    void setSection(bool on);
    int heights() const; // how many times larger it draws heights
    void setHeights(int times);
    document::SchemeChoice schemeChoice() const;
    void setSchemeChoice(document::SchemeChoice choice);
    units::UnitSystem unitSystem(units::UnitSystem otherwise) const;
    void setUnitSystem(units::UnitSystem system);
    bool letterKeys() const;
    void setLetterKeys(bool on);
    QString lastFolder() const;
    void setLastFolder(const QString& folder);

private:
    std::unique_ptr<QSettings> m_settings;
};

} // namespace sumpwright::ui::window
