// Runs the journeys: real windows, driven by mouse and key events. Offscreen unless a platform is chosen. Started with
// --edit-until-killed it is the victim of the recovery journeys instead.
#include <gtest/gtest.h>

#include <QTemporaryDir>

#include "tests/journeys/recovery_child.hpp"
#include "ui/window/application.hpp"

int main(int argc, char** argv)
{
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    // Menus and boxes open loops of events inside one another; under GLib a timer of the outer one may then sleep on.
    qputenv("QT_NO_GLIB", "1");
    if (argc > 1 && std::string_view(argv[1]) == sumpwright::tests::childFlag)
        return sumpwright::tests::editUntilKilled(argc, argv);
    testing::InitGoogleTest(&argc, argv);
    const QTemporaryDir home;
    qputenv("XDG_STATE_HOME", home.filePath(QStringLiteral("state")).toUtf8());
    qputenv("XDG_CONFIG_HOME", home.filePath(QStringLiteral("config")).toUtf8());
    sumpwright::ui::window::Application application(argc, argv, QStringLiteral("test"));
    QObject::connect(&application, &sumpwright::ui::window::Application::faultMet,
                     [](const QString& what) { ADD_FAILURE() << "fault inside an event: " << what.toStdString(); });
    return RUN_ALL_TESTS();
}
