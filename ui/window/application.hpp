// Application: the Qt application of the program, dressed, with numbers read and written in the C way underneath.
#pragma once

#include <functional>

#include <QApplication>

namespace sumpwright::ui::window
{

class Application : public QApplication
{
    Q_OBJECT

public:
    Application(int& argc, char** argv, const QString& version);

    // A fault of the program inside an event is logged and told; the window and its plan stay.
    bool notify(QObject* receiver, QEvent* event) override;

Q_SIGNALS:
    void faultMet(const QString& what);
};

// Empty when a window can be opened; else why not, in one line. Ask before constructing an Application.
QString noDisplayReason();

} // namespace sumpwright::ui::window
