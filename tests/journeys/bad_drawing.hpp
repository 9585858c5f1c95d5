// BadDrawing: the small example opened, drawn on badly, then saved, computed by the program itself, and undone to the
// last byte.
#pragma once

#include <string>

#include <QProcess>

#include "tests/journeys/watched_window.hpp"

namespace sumpwright::tests
{

class BadDrawing : public WatchedWindow
{
protected:
    void SetUp() override
    {
        path = openExample("back_garden");
        saved = bytesOf(path);
        press(Qt::Key_0, Qt::ControlModifier); // whole plan
        for (const auto& vessel : work.document.committed().vessels)
            if (vessel->kind == plan::VesselKind::fishTank)
                tank = {units::inMetres(vessel->centre.x), units::inMetres(vessel->centre.y)};
    }

    // The plan as it now stands is saved, read and computed by the program itself; then everything is undone.
    void expectSoundAndUndone(const std::string& after)
    {
        press(Qt::Key_Escape);
        press(Qt::Key_Escape);
        EXPECT_FALSE(work.document.previewing()) << after;
        settle();
        expectSound(after);
        press(Qt::Key_S, Qt::ControlModifier);
        EXPECT_FALSE(modified()) << after << strips().toStdString();
        QProcess program;
        program.start(QStringLiteral(SUMPWRIGHT_PROGRAM), {QStringLiteral("assess"), path});
        ASSERT_TRUE(program.waitForFinished(30000));
        EXPECT_EQ(program.exitStatus(), QProcess::NormalExit) << after;
        EXPECT_EQ(program.exitCode(), 0) << after << program.readAllStandardError().toStdString();
        for (int i = 0; i < 12; ++i)
            press(Qt::Key_Z, Qt::ControlModifier);
        press(Qt::Key_S, Qt::ControlModifier);
        EXPECT_EQ(bytesOf(path), saved) << after;
    }
    bool drawn() { return modified(); }

    QString path;
    QByteArray saved;
    QPointF tank;
};

} // namespace sumpwright::tests
