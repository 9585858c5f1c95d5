// Degenerate drawing, and gestures broken off in the middle, by mouse and keys: no crash, no text that is no number,
// and undo brings back every byte of the file.
#include <array>
#include <functional>

#include <QProcess>

#include "tests/journeys/watched_window.hpp"

namespace sumpwright::tests
{
namespace
{

using units::inMetres;

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
                tank = {inMetres(vessel->centre.x), inMetres(vessel->centre.y)};
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

TEST_F(BadDrawing, PipesOfNoLengthAreNotDrawn)
{
    press(Qt::Key_I);
    for (int i = 0; i < 3; ++i) {
        mouseDown(1.0, 0.3);
        mouseUp(1.0, 0.3);
    }
    press(Qt::Key_Return);
    EXPECT_FALSE(drawn());
    expectSoundAndUndone("a pipe on one spot");
    press(Qt::Key_I);
    press(Qt::Key_Right); // calls the crosshair
    for (int i = 0; i < 4; ++i)
        press(Qt::Key_Return);
    EXPECT_FALSE(drawn());
    expectSoundAndUndone("a pipe on one spot, by keys");
}

TEST_F(BadDrawing, PipeFromARunOntoItselfIsSoundOrRefused)
{
    const plan::Plan before = work.document.committed();
    for (const auto& run : before.runs) {
        const auto& a = run->vertices.front().at;
        const auto& b = run->vertices.back().at;
        const double x = 0.5 * (inMetres(a.x) + inMetres(b.x));
        const double y = 0.5 * (inMetres(a.y) + inMetres(b.y));
        press(Qt::Key_I);
        for (const QPointF& at : {QPointF(x, y), QPointF(x + 0.3, y + 0.3), QPointF(x, y)}) {
            mouseDown(at.x(), at.y());
            mouseUp(at.x(), at.y());
        }
        press(Qt::Key_Return);
        expectSoundAndUndone("a pipe from and to " + run->tag);
        if (HasFailure())
            return;
    }
}

TEST_F(BadDrawing, VesselOutsideTheFloorIsSound)
{
    const QPointF outside(-0.6, -0.4);
    press(Qt::Key_T);
    mouseDown(outside.x(), outside.y());
    mouseUp(outside.x(), outside.y());
    EXPECT_TRUE(drawn());
    expectSoundAndUndone("a tank outside the floor");
}

TEST_F(BadDrawing, VesselOnAnotherIsSound)
{
    press(Qt::Key_T);
    mouseDown(tank.x(), tank.y());
    mouseUp(tank.x(), tank.y());
    expectSoundAndUndone("a tank in a tank");
}

// Corner to corner by the crosshair, one millimetre apart; then by a field.
TEST_F(BadDrawing, VesselOfOneMillimetreIsSoundOrRefused)
{
    press(Qt::Key_R);
    press(Qt::Key_Right);
    press(Qt::Key_Return);
    press(Qt::Key_Right, Qt::ControlModifier);
    press(Qt::Key_Up, Qt::ControlModifier);
    press(Qt::Key_Return);
    expectSoundAndUndone("a tank of one millimetre, drawn");
    for (const char* name : {"Diameter", "Length", "Width", "Wall height"}) {
        keys.select(QStringLiteral("B1"));
        QWidget* field = keys.named(QString::fromLatin1(name));
        if (!field)
            continue;
        keys.goTo(*field);
        press(Qt::Key_A, Qt::ControlModifier);
        paste(QStringLiteral("1 mm"));
        press(Qt::Key_Return);
        expectSound(name);
        press(Qt::Key_Escape);
        keys.backToPlan();
        expectSoundAndUndone(std::string("one millimetre of ") + name);
    }
}

struct Gesture {
    const char* name;
    Qt::Key tool;
    bool onTank;
    bool held; // the button stays down while it lasts
};

const Gesture gestures[] = {
    {"Move", Qt::Key_S, true, true},       {"Frame", Qt::Key_S, false, true},   {"RoundTank", Qt::Key_T, false, true},
    {"Rectangle", Qt::Key_R, false, true}, {"Bed", Qt::Key_B, false, true},     {"Pipe", Qt::Key_I, true, false},
    {"Floor", Qt::Key_A, false, false},    {"Wall", Qt::Key_W, false, false},   {"Door", Qt::Key_D, false, false},
    {"Dimension", Qt::Key_K, true, false}, {"Measure", Qt::Key_M, true, false}, {"Sump", Qt::Key_U, false, true},
};

struct Break {
    const char* name;
    Qt::Key key;
    Qt::KeyboardModifiers with;
};

const Break breaks[] = {
    {"Esc", Qt::Key_Escape, Qt::NoModifier},    {"Undo", Qt::Key_Z, Qt::ControlModifier},
    {"Delete", Qt::Key_Delete, Qt::NoModifier}, {"All", Qt::Key_A, Qt::ControlModifier},
    {"Save", Qt::Key_S, Qt::ControlModifier},   {"OtherTool", Qt::Key_W, Qt::NoModifier},
    {"NextPart", Qt::Key_F6, Qt::NoModifier},   {"Duplicate", Qt::Key_D, Qt::ControlModifier},
    {"NextThing", Qt::Key_N, Qt::NoModifier},   {"Turn", Qt::Key_R, Qt::ControlModifier},
};

class BrokenGesture : public BadDrawing, public testing::WithParamInterface<Gesture>
{
protected:
    QPointF begin()
    {
        keys.backToPlan();
        const Gesture& gesture = GetParam();
        press(gesture.tool);
        const QPointF from = gesture.onTank ? tank + QPointF(0.13, 0.21) : QPointF(-0.3, -0.35);
        mouseDown(from.x(), from.y());
        if (!gesture.held)
            mouseUp(from.x(), from.y());
        for (int i = 1; i <= 3; ++i)
            mouseTo(from.x() + 0.15 * i, from.y() + 0.1 * i);
        return from + QPointF(0.45, 0.3);
    }
};

TEST_P(BrokenGesture, LeavesThePlanSoundWhateverBreaksIt)
{
    for (const Break& broken : breaks) {
        const std::string what = std::string(GetParam().name) + " broken by " + broken.name;
        const QPointF at = begin();
        press(broken.key, broken.with);
        if (broken.key == Qt::Key_Escape || broken.key == Qt::Key_S || broken.key == Qt::Key_Z) {
            EXPECT_FALSE(modified()) << what;
            EXPECT_EQ(bytesOf(path), saved) << what;
        }
        mouseTo(at.x() + 0.1, at.y() + 0.1);
        if (GetParam().held)
            mouseUp(at.x() + 0.1, at.y() + 0.1);
        if (broken.key == Qt::Key_Escape) {
            EXPECT_FALSE(modified()) << what << ": the release did something after all";
        }
        keys.backToPlan();
        expectSoundAndUndone(what);
        press(Qt::Key_S);
        if (HasFatalFailure())
            return;
    }
}
INSTANTIATE_TEST_SUITE_P(All, BrokenGesture, testing::ValuesIn(gestures),
                         [](const auto& each) { return std::string(each.param.name); });

TEST_F(BadDrawing, WhatAGestureHoldsMayBeDeletedAndUndoneMeanwhile)
{
    mouseDown(tank.x() + 0.13, tank.y() + 0.21); // selects the tank
    mouseUp(tank.x() + 0.13, tank.y() + 0.21);
    press(Qt::Key_Right); // a step to undo
    EXPECT_TRUE(modified());
    mouseDown(tank.x() + 0.13, tank.y() + 0.21);
    mouseTo(tank.x() + 0.3, tank.y() + 0.3);
    mouseTo(tank.x() + 0.5, tank.y() + 0.5);
    press(Qt::Key_Z, Qt::ControlModifier);
    mouseTo(tank.x() + 0.6, tank.y() + 0.5);
    press(Qt::Key_Delete);
    mouseTo(tank.x() + 0.7, tank.y() + 0.5);
    press(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    mouseUp(tank.x() + 0.7, tank.y() + 0.5);
    expectSoundAndUndone("delete and undo in a drag");
}

} // namespace
} // namespace sumpwright::tests
