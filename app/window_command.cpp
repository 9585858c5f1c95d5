#include "app/window_command.hpp"

#include <iostream>

#include <QFile>
#include <QFileInfo>
#include <QGuiApplication>

#include "app/file_complaint.hpp"
#include "core/base/outcome.hpp"
#include "core/catalogue/catalogue.hpp"
#include "core/engine/engine.hpp"
#include "core/storage/file.hpp"
#include "core/storage/plan_text.hpp"
#include "ui/window/application.hpp"
#include "ui/window/log_file.hpp"
#include "ui/window/main_window.hpp"
#include "ui/window/picture.hpp"
#include "ui/window/workplace.hpp"

namespace sumpwright::app
{

namespace
{

using namespace sumpwright::ui;

constexpr int done = 0;
constexpr int faultOfProgram = 1;
constexpr int badInput = 2;

int refuse(const base::Refusal& refusal)
{
    std::cerr << "sumpwright: " << base::oneLine(refusal) << '\n';
    return badInput;
}

int refuseFile(const std::string& file, const base::Refusal& refusal)
{
    std::cerr << "sumpwright: " << fileComplaint(file, refusal) << '\n';
    return badInput;
}

QString asText(const std::string& argument) { return QFile::decodeName(QByteArray::fromStdString(argument)); }

int writePictureOf(const WindowRequest& request)
{
    const auto bytes = storage::readFile(request.plan, storage::largestPlanBytes);
    if (!bytes)
        return refuseFile(request.plan, bytes.refusal());
    const auto loaded = storage::loadText(*bytes);
    if (!loaded)
        return refuseFile(request.plan, loaded.refusal());
    const auto assessment = engine::assess(loaded->plan, catalogue::Catalogue::builtIn());
    window::PictureWish wish;
    wish.path = asText(request.picture);
    wish.planFolder = QFileInfo(asText(request.plan)).absolutePath();
    wish.scheme = request.dark ? style::Scheme::dark : style::Scheme::light;
    if (!request.runsBy.empty())
        wish.runMeasure = request.runsBy == "head" ? canvas::RunMeasure::head : canvas::RunMeasure::velocity;
    if (const auto refusal = window::writePicture(*assessment, wish))
        return refuse(*refusal);
    return done;
}

} // namespace

int runWindow(int argc, char** argv, const WindowRequest& request)
{
    const QString version = QStringLiteral(SUMPWRIGHT_VERSION);
    if (!request.picture.empty()) {
        if (request.plan.empty())
            return refuse({"picture.no-plan", "--picture", "no plan is named", "give the plan's file after it"});
        qputenv("QT_QPA_PLATFORM", "offscreen"); // needs no display
        if (!qEnvironmentVariableIsSet("QT_LOGGING_RULES"))
            qputenv("QT_LOGGING_RULES", "*=false"); // standard error is for the one line that says what is wrong
        window::Application application(argc, argv, version);
        return writePictureOf(request);
    }
    if (const QString reason = window::noDisplayReason(); !reason.isEmpty()) {
        std::cerr << "sumpwright: " << reason.toStdString() << '\n';
        return faultOfProgram;
    }
    const QString state = document::stateFolder();
    window::startLog(state);
    QGuiApplication::setHighDpiScaleFactorRoundingPolicy(Qt::HighDpiScaleFactorRoundingPolicy::PassThrough);
    window::Application application(argc, argv, version);
    window::Workplace workplace(state);
    window::MainWindow mainWindow(workplace);
    mainWindow.show();
    mainWindow.start(asText(request.plan));
    return application.exec();
}

} // namespace sumpwright::app
