// Gestures broken off in the middle, by keys, by the right button, by another window, by closing: no crash, nothing
// half done stays, and undo brings back every byte of the file.
#include <QWidget>

#include "tests/journeys/bad_drawing.hpp"
#include "ui/canvas/overlay.hpp"

namespace sumpwright::tests
{
namespace
{

enum class Start { pointer, sizeHandle, turnHandle, vertexHandle, noteWords, levelField, levelOnPlan };

struct Gesture {
    const char* name;
    Qt::Key tool;
    bool onTank;
    bool held; // the button stays down while it lasts
    Start start = Start::pointer;
};

const Gesture gestures[] = {
    {"Move", Qt::Key_S, true, true},
    {"Frame", Qt::Key_S, false, true},
    {"RoundTank", Qt::Key_T, false, true},
    {"Rectangle", Qt::Key_R, false, true},
    {"Bed", Qt::Key_B, false, true},
    {"Pipe", Qt::Key_I, true, false},
    {"Floor", Qt::Key_A, false, false},
    {"Wall", Qt::Key_W, false, false},
    {"Door", Qt::Key_D, false, false},
    {"Dimension", Qt::Key_K, true, false},
    {"Measure", Qt::Key_M, true, false},
    {"Sump", Qt::Key_U, false, true},
    {"SizeHandle", Qt::Key_S, true, true, Start::sizeHandle},
    {"TurnHandle", Qt::Key_S, true, true, Start::turnHandle},
    {"VertexHandle", Qt::Key_S, true, true, Start::vertexHandle},
    {"Pump", Qt::Key_P, true, true},
    {"Post", Qt::Key_O, true, true},
    {"NoteWords", Qt::Key_X, false, false, Start::noteWords},
    {"LevelField", Qt::Key_I, false, false, Start::levelField},
    {"LevelOnPlan", Qt::Key_S, true, false, Start::levelOnPlan},
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
    // The handle of what is selected, as it is shown on the plan.
    QPointF handle(ui::canvas::HandleKind kind, std::size_t nth)
    {
        for (const auto& each : window.planView().overlay().handles)
            if (each.kind == kind && nth-- == 0)
                return {each.at.x() / 1000.0, -each.at.y() / 1000.0};
        ADD_FAILURE() << "no such handle";
        return {};
    }
    void click(QPointF at)
    {
        mouseDown(at.x(), at.y());
        mouseUp(at.x(), at.y());
    }

    QPointF placeOf(const Gesture& gesture)
    {
        using ui::canvas::HandleKind;
        switch (gesture.start) {
        case Start::sizeHandle:
            keys.select(QStringLiteral("S1"));
            return handle(HandleKind::corner, 2);
        case Start::turnHandle:
            keys.select(QStringLiteral("T1"));
            return handle(HandleKind::turn, 0);
        case Start::vertexHandle:
            keys.select(QStringLiteral("R1"));
            return handle(HandleKind::vertex, 1);
        case Start::levelOnPlan:
            keys.select(QStringLiteral("R1"));
            press(Qt::Key_L);
            return tank;
        case Start::pointer:
        case Start::noteWords:
        case Start::levelField:
            break;
        }
        return gesture.onTank ? tank + QPointF(0.13, 0.21) : QPointF(-0.3, -0.35);
    }

    QPointF begin()
    {
        keys.backToPlan();
        const Gesture& gesture = GetParam();
        press(gesture.tool);
        const QPointF from = placeOf(gesture);
        if (gesture.start == Start::levelOnPlan) {
            keys.typeWords(QStringLiteral("1.2"));
            return from;
        }
        mouseDown(from.x(), from.y());
        if (!gesture.held)
            mouseUp(from.x(), from.y());
        for (int i = 1; i <= 3; ++i)
            mouseTo(from.x() + 0.15 * i, from.y() + 0.1 * i);
        if (gesture.start == Start::levelField)
            press(Qt::Key_L);
        if (gesture.start != Start::pointer && !gesture.held)
            keys.typeWords(QStringLiteral("1.2"));
        return from + QPointF(0.45, 0.3);
    }
    void letGo(QPointF at)
    {
        mouseTo(at.x() + 0.1, at.y() + 0.1);
        if (GetParam().held)
            mouseUp(at.x() + 0.1, at.y() + 0.1);
    }
    void expectNothingDone(const std::string& what)
    {
        EXPECT_FALSE(modified()) << what;
        EXPECT_EQ(bytesOf(path), saved) << what;
    }
    void finish(const std::string& what)
    {
        keys.backToPlan();
        expectSoundAndUndone(what);
        press(Qt::Key_S);
    }
};

TEST_P(BrokenGesture, LeavesThePlanSoundWhateverBreaksIt)
{
    for (const Break& broken : breaks) {
        const std::string what = std::string(GetParam().name) + " broken by " + broken.name;
        const QPointF at = begin();
        press(broken.key, broken.with);
        if (broken.key == Qt::Key_Escape || broken.key == Qt::Key_S || broken.key == Qt::Key_Z)
            expectNothingDone(what);
        letGo(at);
        if (broken.key == Qt::Key_Escape) {
            EXPECT_FALSE(modified()) << what << ": the release did something after all";
        }
        finish(what);
        if (HasFatalFailure())
            return;
    }
}

TEST_P(BrokenGesture, LeavesNothingWhenTheRightButtonBreaksIt)
{
    const std::string what = std::string(GetParam().name) + " broken by the right button";
    const QPointF at = begin();
    rightPress(at.x(), at.y());
    EXPECT_FALSE(work.document.previewing()) << what;
    letGo(at);
    // Words and levels typed are kept where a person points elsewhere; nothing else of one click is finished.
    const bool typed = GetParam().start == Start::noteWords || GetParam().start == Start::levelOnPlan;
    EXPECT_EQ(modified(), typed) << what;
    EXPECT_TRUE(boxTexts.isEmpty()) << boxTexts.join(u'\n').toStdString();
    finish(what);
}

TEST_P(BrokenGesture, OutlastsAnotherWindowInFront)
{
    const std::string what = std::string(GetParam().name) + " while another window came in front";
    const QPointF at = begin();
    {
        QWidget other;
        other.resize(200, 100);
        other.show();
        other.activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&other)) << what;
        QTest::keyClick(other.windowHandle(), Qt::Key_Escape); // not the plan's
    }
    window.activateWindow();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&window)) << what;
    expectNothingDone(what);
    letGo(at);
    finish(what);
}

// Nothing is half done: the window goes at once, or, where something was finished by it, asks first and stays.
TEST_P(BrokenGesture, ClosingMeanwhileLeavesTheFileAlone)
{
    const std::string what = std::string(GetParam().name) + " broken by closing";
    const QPointF at = begin();
    leavingBoxes([&] { press(Qt::Key_Q, Qt::ControlModifier); });
    EXPECT_FALSE(work.document.previewing()) << what;
    EXPECT_EQ(bytesOf(path), saved) << what;
    EXPECT_EQ(window.isVisible(), modified()) << what;
    EXPECT_EQ(boxTexts.size(), modified() ? 1 : 0) << what;
    if (!window.isVisible())
        return;
    window.activateWindow();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
    letGo(at);
    finish(what);
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

// A letter ends a chain of walls or a pipe with what is finished and takes its tool.
TEST_F(BadDrawing, ALetterEndsAChainAndTakesItsTool)
{
    const auto click = [this](double x, double y) {
        mouseDown(x, y);
        mouseUp(x, y);
    };
    const auto& plan = [this]() -> const plan::Plan& { return work.document.committed(); };
    const auto fixtures = plan().fixtures.size();
    const auto runs = plan().runs.size();
    press(Qt::Key_W);
    click(0.3, -0.4);
    click(2.0, -0.4);
    mouseTo(3.0, -0.4);
    press(Qt::Key_I); // a pipe now
    EXPECT_EQ(plan().fixtures.size(), fixtures + 1);
    click(0.3, -0.8);
    click(2.0, -0.8);
    mouseTo(2.0, -0.6);
    keys.typeWords(QStringLiteral("0.2m")); // m: metres, not the tool that measures
    press(Qt::Key_Return);
    press(Qt::Key_S);
    ASSERT_EQ(plan().runs.size(), runs + 1);
    const auto& drawn = **std::prev(plan().runs.end());
    EXPECT_EQ(drawn.vertices.size(), 3U);
    EXPECT_NEAR(units::inMetres(plan::lengthOf(drawn)), 1.9, 1e-6);
    mouseDown(tank.x() + 0.13, tank.y() + 0.21);
    mouseUp(tank.x() + 0.13, tank.y() + 0.21);
    EXPECT_EQ(keys.shownIn(QStringLiteral("Tag")), QStringLiteral("T1")) << "the select tool picks";
    expectSoundAndUndone("chains ended by letters");
}

} // namespace
} // namespace sumpwright::tests
