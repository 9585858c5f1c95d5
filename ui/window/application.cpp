#include "ui/window/application.hpp"

#include <clocale>
#include <exception>

#include "ui/style/plain_style.hpp"
#include "ui/window/log_file.hpp"

namespace sumpwright::ui::window
{

Application::Application(int& argc, char** argv, const QString& version) : QApplication(argc, argv)
{
    setApplicationName(QStringLiteral("sumpwright"));
    setApplicationDisplayName(QStringLiteral("Sumpwright"));
    setApplicationVersion(version);
    setDesktopFileName(QStringLiteral("sumpwright"));
    std::setlocale(LC_NUMERIC, "C"); // QApplication took the desktop's; files and strtod need the point
    style::dress(style::desktopScheme());
}

bool Application::notify(QObject* receiver, QEvent* event)
{
    try {
        return QApplication::notify(receiver, event);
    } catch (const std::exception& fault) {
        const QString what = QString::fromUtf8(fault.what());
        writeLog(QStringLiteral("fault: ") + what);
        Q_EMIT faultMet(what);
        return true;
    }
}

QString noDisplayReason()
{
    const auto has = [](const char* name) { return !qEnvironmentVariableIsEmpty(name); };
    if (has("DISPLAY") || has("WAYLAND_DISPLAY") || has("QT_QPA_PLATFORM"))
        return {};
    return QStringLiteral("no display to open a window on (neither DISPLAY nor WAYLAND_DISPLAY is set); "
                          "'sumpwright assess PLAN' and 'sumpwright --picture FILE.png PLAN' work without one");
}

} // namespace sumpwright::ui::window
