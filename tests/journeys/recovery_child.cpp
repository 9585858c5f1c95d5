#include "tests/journeys/recovery_child.hpp"

#include <cstdio>
#include <string>

#include <QElapsedTimer>
#include <QTest>

#include "core/plan/edits/place.hpp"
#include "ui/canvas/plan_view.hpp"
#include "ui/window/application.hpp"
#include "ui/window/commands.hpp"
#include "ui/window/main_window.hpp"
#include "ui/window/workplace.hpp"

namespace sumpwright::tests
{

int editUntilKilled(int argc, char** argv)
{
    if (argc != 5)
        return 2;
    const QString state = QString::fromLocal8Bit(argv[2]);
    const QString plan = QString::fromLocal8Bit(argv[3]);
    const int savesEvery = std::atoi(argv[4]);
    ui::window::Application application(argc, argv, QStringLiteral("test"));
    ui::window::Workplace work(state);
    ui::window::MainWindow window(work);
    window.show();
    if (!QTest::qWaitForWindowExposed(&window))
        return 3;
    window.start(plan == QStringLiteral("-") ? QString() : plan);
    if (work.document.committed().vessels.empty()) {
        plan::VesselWish wish;
        wish.centre = {units::metres(firstPlace), units::metres(2.0)};
        work.document.commit(plan::placeVessel(wish));
    }
    window.activateWindow();
    window.planView().setFocus();
    QTest::keyClick(&window.planView(), Qt::Key_A, Qt::ControlModifier); // select all
    for (int edit = 1;; ++edit) {
        QTest::keyClick(&window.planView(), Qt::Key_Right);
        if (savesEvery > 0 && edit % savesEvery == 0)
            QTest::keyClick(&window, Qt::Key_S, Qt::ControlModifier);
        const double x = units::inMetres(work.document.committed().vessels.begin()->get()->centre.x);
        const QElapsedTimer now = [] {
            QElapsedTimer clock;
            clock.start();
            return clock;
        }();
        std::printf("%ld %lld\n", std::lround((x - firstPlace) / 0.1),
                    static_cast<long long>(now.msecsSinceReference()));
        std::fflush(stdout);
        QTest::qWait(5);
    }
}

} // namespace sumpwright::tests
