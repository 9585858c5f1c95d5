// Degenerate drawing by mouse and keys: no crash, no text that is no number, and undo brings back every byte of the
// file.
#include "tests/journeys/bad_drawing.hpp"

namespace sumpwright::tests
{
namespace
{

using units::inMetres;

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

} // namespace
} // namespace sumpwright::tests
