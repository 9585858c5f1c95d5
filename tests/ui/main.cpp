// Runs the window's tests: offscreen unless a platform is chosen, and with a state folder of their own.
#include <gtest/gtest.h>

#include <QTemporaryDir>

#include "ui/window/application.hpp"

int main(int argc, char** argv)
{
    testing::InitGoogleTest(&argc, argv);
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    const QTemporaryDir home;
    qputenv("XDG_STATE_HOME", home.filePath(QStringLiteral("state")).toUtf8());
    qputenv("XDG_CONFIG_HOME", home.filePath(QStringLiteral("config")).toUtf8());
    sumpwright::ui::window::Application application(argc, argv, QStringLiteral("test"));
    QObject::connect(&application, &sumpwright::ui::window::Application::faultMet, [&application](const QString& what) {
        if (!application.property("faultExpected").toBool())
            ADD_FAILURE() << "fault inside an event: " << what.toStdString();
    });
    return RUN_ALL_TESTS();
}
