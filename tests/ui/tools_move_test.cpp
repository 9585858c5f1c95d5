// Dragging and nudging every kind of thing drawn, several at once, and out of what they stand in.
#include "tests/ui/canvas_stage.hpp"

#include <QApplication>
#include <QUndoStack>

#include "core/plan/edits/draw_run.hpp"
#include "core/plan/edits/move.hpp"
#include "core/plan/edits/place.hpp"
#include "ui/canvas/element_item.hpp"
#include "ui/canvas/scene_point.hpp"

namespace sumpwright::test
{

class Move : public CanvasStage
{
protected:
    // Room around everything, so that each is picked and moved by itself.
    void SetUp() override
    {
        CanvasStage::SetUp();
        using plan::FixtureKind;
        plan::Plan made;
        const auto put = [&made](const plan::Edit& edit) {
            const base::Id id{made.nextId};
            made = applied(made, edit);
            return id;
        };
        wall = put(plan::placeFixture(FixtureKind::wall, at(0.5, 5.0), at(2.5, 5.0)));
        door = put(plan::placeFixture(FixtureKind::door, at(3.5, 5.0), at(4.4, 5.0)));
        post = put(plan::placeFixture(FixtureKind::post, at(6.0, 5.0), at(6.0, 5.0)));
        power = put(plan::placeFixture(FixtureKind::powerPoint, at(7.5, 5.0), at(7.5, 5.0)));
        note = put(plan::placeNote(at(0.5, 3.5), "Keep clear"));
        dimension = put(plan::placeDimension(at(4.0, 3.5), at(6.0, 3.5), units::metres(0.5)));
        sump = put(plan::placeVessel({plan::VesselKind::sump, at(1.5, 1.5), units::radians(0.0), {}, {}, {}}));
        other = put(plan::placeVessel({plan::VesselKind::sump, at(5.0, 1.5), units::radians(0.0), {}, {}, {}}));
        pump = put(plan::placePump(sump, at(1.7, 1.5), document.catalogue()->pumps().front().id));
        plan::RunWish wish;
        wish.pipeId = document.catalogue()->pipes().front().id;
        for (const auto& place : {at(7.5, 1.0), at(7.5, 3.0), at(9.0, 3.0)}) {
            plan::Vertex vertex;
            vertex.at = place;
            wish.vertices.push_back(vertex);
        }
        run = put(plan::drawRun(wish));
        open(made);
    }
    plan::Point placeOf(base::Id id) const { return plan::anchorOf(plan(), id); }
    plan::Point grip(base::Id id) const
    {
        if (id == dimension)
            return at(5.0, 4.0); // on its line, off its figure and ends
        if (id == run)
            return at(7.5, 2.0);
        return ui::canvas::toPlan(view.planScene().item(id)->extent().center());
    }

    base::Id wall, door, post, power, note, dimension, sump, other, pump, run;
};

TEST_F(Move, EveryKindIsDraggedAsOneStepAndComesBack)
{
    for (const auto id : {wall, door, post, power, note, dimension, pump, run, other}) {
        const auto name = view.planScene().item(id)->name().toStdString();
        const auto before = placeOf(id);
        const auto whole = plan();
        const auto from = grip(id);
        document.select({});
        drag(from, from + at(0.2, -0.2), Qt::ControlModifier); // Ctrl: no snapping, to the pixel
        EXPECT_EQ(steps(), 1) << name;
        EXPECT_TRUE(document.isSelected(id)) << name;
        EXPECT_NEAR(units::inMetres(placeOf(id).x - before.x), 0.2, 0.03) << name;
        EXPECT_NEAR(units::inMetres(placeOf(id).y - before.y), -0.2, 0.03) << name;
        document.undoStack().undo();
        EXPECT_EQ(plan(), whole) << name;
        document.reset(whole);
    }
}

TEST_F(Move, EveryKindIsNudgedByTheArrows)
{
    for (const auto id : {wall, door, post, power, note, dimension, pump, run, other}) {
        const auto name = view.planScene().item(id)->name().toStdString();
        const auto before = placeOf(id);
        document.select({id});
        key(Qt::Key_Left);
        key(Qt::Key_Up, Qt::ControlModifier);
        EXPECT_NEAR(units::inMetres(placeOf(id).x - before.x), -0.1, 1e-9) << name;
        EXPECT_NEAR(units::inMetres(placeOf(id).y - before.y), 0.001, 1e-9) << name;
    }
}

TEST_F(Move, SeveralSelectedThingsGoTogetherByDraggingOneOfThem)
{
    document.select({post, sump, note});
    const auto posts = placeOf(post);
    const auto notes = placeOf(note);
    const auto pumps = placeOf(pump);
    drag(at(1.2, 1.7), at(1.5, 1.9));
    EXPECT_EQ(steps(), 1);
    const auto by = placeOf(post) - posts;
    EXPECT_GT(units::inMetres(by.x), 0.2);
    EXPECT_TRUE(isAt(placeOf(note) - notes, units::inMetres(by.x), units::inMetres(by.y)));
    EXPECT_TRUE(isAt(placeOf(pump) - pumps, units::inMetres(by.x), units::inMetres(by.y)))
        << "a pump goes with its sump";
    EXPECT_EQ(document.selection().size(), 3U);
}

TEST_F(Move, APumpDraggedIntoAnotherVesselStandsThere)
{
    drag(grip(pump), at(5.2, 1.5));
    EXPECT_EQ((*plan().pumps.begin())->vessel, other);
    EXPECT_EQ(steps(), 1);
}

TEST_F(Move, ACornerOfARunIsDraggedAndAnInnerOneStaysSquareWithItsNeighbours)
{
    document.select({run});
    QApplication::processEvents();
    drag(at(7.5, 3.0), at(8.2, 3.03));
    const auto& vertices = plan().runs.find(run)->vertices;
    EXPECT_TRUE(isAt(vertices[1].at, 8.2, 3.0)) << "straight to the open end";
    EXPECT_TRUE(isAt(vertices[0].at, 7.5, 1.0));
    EXPECT_EQ(steps(), 1);
}

TEST_F(Move, ADragTakenOutOfThePlanDoesNothing)
{
    const auto whole = plan();
    const auto from = grip(other);
    press(units::inMetres(from.x), units::inMetres(from.y));
    moveTo(7.0, 2.0);
    moveTo(40.0, 2.0);
    EXPECT_TRUE(document.previewing());
    release(40.0, 2.0);
    EXPECT_EQ(plan(), whole);
    EXPECT_FALSE(document.previewing());
    EXPECT_EQ(steps(), 0);
    EXPECT_TRUE(document.isSelected(other));
}

} // namespace sumpwright::test
