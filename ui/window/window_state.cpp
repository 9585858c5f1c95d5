#include "ui/window/window_state.hpp"

#include <QDir>
#include <QSettings>

namespace sumpwright::ui::window
{

namespace
{

const QString light = QStringLiteral("light");
const QString dark = QStringLiteral("dark");
const QString us = QStringLiteral("us");
const QString metric = QStringLiteral("metric");

} // namespace

WindowState::WindowState(const QString& stateFolder)
    : m_settings(
          std::make_unique<QSettings>(QDir(stateFolder).filePath(QStringLiteral("window.ini")), QSettings::IniFormat))
{
}

WindowState::~WindowState() = default;

QByteArray WindowState::geometry() const { return m_settings->value(QStringLiteral("geometry")).toByteArray(); }
void WindowState::setGeometry(const QByteArray& geometry)
{
    m_settings->setValue(QStringLiteral("geometry"), geometry);
}

QByteArray WindowState::layout() const { return m_settings->value(QStringLiteral("layout")).toByteArray(); }
void WindowState::setLayout(const QByteArray& layout) { m_settings->setValue(QStringLiteral("layout"), layout); }

QStringList WindowState::foldedCharts() const
{
    return m_settings->value(QStringLiteral("folded_charts")).toStringList();
}
void WindowState::setFoldedCharts(const QStringList& ids)
{
    m_settings->setValue(QStringLiteral("folded_charts"), ids);
}

bool WindowState::section() const { return m_settings->value(QStringLiteral("section"), false).toBool(); }
void WindowState::setSection(bool on) { m_settings->setValue(QStringLiteral("section"), on); }
int WindowState::heights() const { return m_settings->value(QStringLiteral("heights"), 1).toInt(); }
void WindowState::setHeights(int times) { m_settings->setValue(QStringLiteral("heights"), times); }

document::SchemeChoice WindowState::schemeChoice() const
{
    const QString word = m_settings->value(QStringLiteral("colours")).toString();
    if (word == light)
        return document::SchemeChoice::light;
    if (word == dark)
        return document::SchemeChoice::dark;
    return document::SchemeChoice::asDesktop;
}

void WindowState::setSchemeChoice(document::SchemeChoice choice)
{
    QString word;
    switch (choice) {
    case document::SchemeChoice::light:
        word = light;
        break;
    case document::SchemeChoice::dark:
        word = dark;
        break;
    case document::SchemeChoice::asDesktop:
        word = QStringLiteral("desktop");
        break;
    }
    m_settings->setValue(QStringLiteral("colours"), word);
}

units::UnitSystem WindowState::unitSystem(units::UnitSystem otherwise) const
{
    const QString word = m_settings->value(QStringLiteral("units")).toString();
    if (word == us)
        return units::UnitSystem::us;
    return word == metric ? units::UnitSystem::metric : otherwise;
}

void WindowState::setUnitSystem(units::UnitSystem system)
{
    m_settings->setValue(QStringLiteral("units"), system == units::UnitSystem::us ? us : metric);
}

bool WindowState::letterKeys() const { return m_settings->value(QStringLiteral("letter_keys"), true).toBool(); }
void WindowState::setLetterKeys(bool on) { m_settings->setValue(QStringLiteral("letter_keys"), on); }

QString WindowState::lastFolder() const
{
    const QString folder = m_settings->value(QStringLiteral("last_folder")).toString();
    return !folder.isEmpty() && QDir(folder).exists() ? folder : QDir::homePath();
}
void WindowState::setLastFolder(const QString& folder) { m_settings->setValue(QStringLiteral("last_folder"), folder); }

} // namespace sumpwright::ui::window
