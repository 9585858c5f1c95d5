// What the window costs its own thread: a dragged bed from the mouse event to the end of painting - first the plan,
// then, when the results are in, charts and findings too; once more with the elevation and with the section in place of
// the findings - opening a plan, and the memory a plan takes.
//
// Targets: 16 ms (typical) and 33 ms (large) a frame, 95th percentile; 1 s to open; 250 and 600 MB. Times are of the
// window's thread alone (its CPU clock), which waits for nobody; "wall" holds the engine and the pacing of results too.
// Painted in memory, 1920 x 1080, by the software painter.
#include <fstream>
#include <string>

#include <benchmark/benchmark.h>

#include <QElapsedTimer>
#include <QFile>
#include <QMouseEvent>
#include <QTemporaryDir>
#include <QThread>

#include "tests/performance/measured_plan.hpp"
#include "tests/performance/spread.hpp"
#include "ui/canvas/plan_view.hpp"
#include "ui/canvas/scene_point.hpp"
#include "ui/window/application.hpp"
#include "ui/window/commands.hpp"
#include "ui/window/main_window.hpp"
#include "ui/window/workplace.hpp"

namespace sumpwright::performance
{
namespace
{

double residentMegabytes()
{
    std::ifstream status("/proc/self/status");
    for (std::string line; std::getline(status, line);)
        if (line.starts_with("VmRSS:"))
            return std::stod(line.substr(6)) / 1024.0;
    return 0.0;
}

class OpenPlan
{
public:
    explicit OpenPlan(Size size) : m_measured(measuredPlan(size)), m_work(m_folder.filePath("state")), m_window(m_work)
    {
        m_window.resize(1920, 1080);
        m_window.show();
        settle();
        const QString path = m_folder.filePath("measured.sumpwright");
        QFile file(path);
        if (file.open(QIODevice::WriteOnly))
            file.write(QByteArray::fromStdString(textOf(size)));
        file.close();
        QElapsedTimer clock;
        clock.start();
        m_window.start(path);
        waitForResults();
        m_openMilliseconds = static_cast<double>(clock.nsecsElapsed()) / 1e6;
    }

    bool opened() const { return m_work.document.assessment() && !m_work.document.committed().vessels.empty(); }
    double openMilliseconds() const { return m_openMilliseconds; }
    const plan::Plan& shown() const { return m_work.document.shown(); }

    void show(const char* command) // of a pane
    {
        m_window.commands().find(command)->trigger();
        settle();
        m_grip = {};
    }
    void press() { send(QEvent::MouseButtonPress, grip(), Qt::LeftButton); }
    void moveTo(QPoint offset) { send(QEvent::MouseMove, grip() + offset, Qt::LeftButton); }
    void release(QPoint offset)
    {
        send(QEvent::MouseButtonRelease, grip() + offset, Qt::NoButton);
        waitForResults();
    }
    static void settle() { QCoreApplication::processEvents(); } // posted paints included
    void waitForResults()
    {
        QElapsedTimer patience;
        patience.start();
        while (m_work.document.stale() && patience.elapsed() < 20'000) {
            QCoreApplication::processEvents();
            QThread::usleep(100); // takes no time of this thread's clock
        }
        settle();
    }

private:
    // Where the bed is held: at a corner, away from the pipes over its middle, and always the same place of the view.
    QPoint grip()
    {
        if (m_grip.isNull()) {
            const plan::Vessel& bed = *m_work.document.committed().vessels.find(m_measured.bed);
            const plan::RectangleShape frame = plan::frameOf(bed.shape);
            const plan::Point beside = plan::turned({frame.length * 0.43, frame.width * 0.43}, bed.turn);
            m_grip = view().mapFromScene(ui::canvas::toScene(bed.centre + beside));
        }
        return m_grip;
    }
    ui::canvas::PlanView& view() const { return m_window.planView(); }
    void send(QEvent::Type type, QPoint at, Qt::MouseButtons held)
    {
        QWidget* target = view().viewport();
        const Qt::MouseButton button = type == QEvent::MouseMove ? Qt::NoButton : Qt::LeftButton;
        QMouseEvent event(type, QPointF(at), QPointF(target->mapToGlobal(at)), button, held, Qt::NoModifier);
        QCoreApplication::sendEvent(target, &event);
    }

    QTemporaryDir m_folder;
    MeasuredPlan m_measured;
    ui::window::Workplace m_work;
    ui::window::MainWindow m_window;
    double m_openMilliseconds = 0.0;
    QPoint m_grip;
};

void dragFrame(benchmark::State& state, Size size, const char* pane)
{
    OpenPlan open(size);
    if (!open.opened())
        return state.SkipWithError("the plan did not open");
    if (*pane)
        open.show(pane);
    open.press();
    open.moveTo({12, 4});
    open.waitForResults();
    Spread plan, all, wall;
    int step = 0;
    for ([[maybe_unused]] auto _ : state) {
        const auto before = open.shown().vessels;
        const double start = threadMilliseconds();
        QElapsedTimer clock;
        clock.start();
        ++step;
        open.moveTo({20 + 30 * (step % 2), 4 + 5 * (step % 3)});
        OpenPlan::settle();
        plan.add(threadMilliseconds() - start);
        open.waitForResults();
        all.add(threadMilliseconds() - start);
        wall.add(static_cast<double>(clock.nsecsElapsed()) / 1e6);
        if (open.shown().vessels == before)
            return state.SkipWithError("the drag moved nothing");
    }
    open.release({20, 4});
    plan.tell(state, "plan_");
    all.tell(state, "frame_");
    wall.tell(state, "wall_");
}

void openPlan(benchmark::State& state, Size size)
{
    Spread wall;
    for ([[maybe_unused]] auto _ : state) {
        const OpenPlan open(size);
        if (!open.opened())
            return state.SkipWithError("the plan did not open");
        wall.add(open.openMilliseconds());
        state.SetIterationTime(open.openMilliseconds() / 1e3);
        state.counters["resident_MB"] = residentMegabytes();
    }
    wall.tell(state, "open_");
}

void addAll(Size size)
{
    const std::string name(nameOf(size));
    benchmark::RegisterBenchmark((name + "/open plan").c_str(), openPlan, size)
        ->UseManualTime()
        ->Iterations(3)
        ->Unit(benchmark::kMillisecond);
    for (const auto& [over, pane] : {std::pair{"", ""}, std::pair{" over the elevation", "view.elevation"},
                                     std::pair{" over the section", "view.section"}})
        benchmark::RegisterBenchmark((name + "/drag frame" + over).c_str(), dragFrame, size, pane)
            ->Iterations(100)
            ->Unit(benchmark::kMillisecond);
}

} // namespace
} // namespace sumpwright::performance

int main(int argc, char** argv)
{
    using namespace sumpwright;
    benchmark::Initialize(&argc, argv);
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    const QTemporaryDir home;
    qputenv("XDG_STATE_HOME", home.filePath("state").toUtf8());
    qputenv("XDG_CONFIG_HOME", home.filePath("config").toUtf8());
    ui::window::Application application(argc, argv, "measuring");
    performance::addAll(performance::Size::typical);
    performance::addAll(performance::Size::large);
    benchmark::RunSpecifiedBenchmarks();
}
