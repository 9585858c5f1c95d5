// Leading a run onto another one: straight, straight below its start, on the grid, by typed lengths and places.
#include "tests/ui/canvas_stage.hpp"

#include <QLineEdit>

#include "core/plan/edits/place.hpp"
#include "core/plan/edits/run.hpp"
#include "ui/tools/pipe_tool.hpp"

namespace sumpwright::test
{

class Tee : public CanvasStage
{
protected:
    void SetUp() override
    {
        CanvasStage::SetUp();
        plan::VesselWish tank{plan::VesselKind::fishTank,           at(2.0, 5.0), units::radians(0.0),
                              plan::RoundShape{units::metres(1.4)}, {},           {}};
        open(applied({}, plan::placeVessel(tank)));
        for (const auto& port : vessel("T1").ports)
            if (port.kind == plan::PortKind::lip)
                lip = plan::placeOf(vessel("T1"), port);
        toolbox.activate("place.run");
    }
    double lipX() const { return units::inMetres(lip.x); }
    double lipY() const { return units::inMetres(lip.y); }
    const plan::Tee& tee() const { return **plan().tees.begin(); }

    plan::Point lip;
};

TEST_F(Tee, OfARunStraightBelowItsStartIsMet)
{
    click(0.5, lipY()); // a drain under the tank's lip, at 0.1 m
    click(6.0, lipY());
    key(Qt::Key_Return);
    click(lipX(), lipY());
    click(lipX() + 0.03, lipY() - 0.02); // the hand is never quite there
    ASSERT_EQ(plan().tees.size(), 1U);
    EXPECT_TRUE(isAt(tee().at, lipX(), lipY()));
    const plan::Run* down = nullptr;
    for (const auto& each : plan().runs)
        if (std::holds_alternative<plan::PortEnd>(each->from))
            down = each.get();
    ASSERT_TRUE(down);
    ASSERT_EQ(down->vertices.size(), 2U) << "one vertical leg, no stub aside";
    EXPECT_DOUBLE_EQ(units::inMetres(down->vertices.back().level), 0.1);
}

TEST_F(Tee, OfTheOtherServiceIsNotOffered)
{
    click(0.5, 2.0); // a main across the way down
    click(6.0, 2.0);
    key(Qt::Key_Return);
    const base::Id main = (*plan().runs.begin())->id;
    ASSERT_TRUE(document.commit(plan::setRunService({main}, plan::Service::pressure)));
    toolbox.activate("place.run");
    click(lipX(), lipY());
    click(lipX(), 2.0); // a corner right over the main
    EXPECT_TRUE(plan().tees.empty());
    EXPECT_EQ(plan().runs.size(), 1U) << "the overflow's pipe goes on";
    key(Qt::Key_Escape);
    ASSERT_TRUE(document.commit(plan::setRunService({main}, plan::Service::gravity)));
    toolbox.activate("place.run");
    click(lipX(), lipY());
    click(lipX(), 2.0);
    EXPECT_EQ(plan().tees.size(), 1U);
}

TEST_F(Tee, LiesWhereTheStraightLegMeetsTheOtherRun)
{
    click(0.5, 0.5);
    click(8.0, 0.5);
    key(Qt::Key_Return);
    click(6.0, 4.0);
    click(6.04, 0.52);
    ASSERT_EQ(plan().tees.size(), 1U);
    EXPECT_TRUE(isAt(tee().at, 6.0, 0.5));
}

TEST_F(Tee, OfARunThatStartsThereLiesOnTheGrid)
{
    click(0.5, 0.5);
    click(8.0, 0.5);
    key(Qt::Key_Return);
    click(3.02, 0.53);
    click(3.0, 4.0);
    key(Qt::Key_Return);
    ASSERT_EQ(plan().tees.size(), 1U);
    EXPECT_TRUE(isAt(tee().at, 3.0, 0.5));
}

TEST_F(Tee, CtrlHeldPutsItWhereThePointerIs)
{
    click(0.5, 0.5);
    click(8.0, 0.5);
    key(Qt::Key_Return);
    click(3.04, 0.5, Qt::ControlModifier);
    EXPECT_TRUE(plan().tees.empty());
    EXPECT_NEAR(units::inMetres(static_cast<ui::tools::PipeTool&>(toolbox.tool("place.run")).sketch().last().x), 3.04,
                0.01);
}

TEST_F(Tee, CrosshairGoesAlongWithALengthTyped)
{
    key(Qt::Key_Right); // calls the crosshair
    key(Qt::Key_Return);
    key(Qt::Key_Right);
    type("2.35");
    key(Qt::Key_Return);
    key(Qt::Key_Up);
    type("1.15");
    key(Qt::Key_Return);
    key(Qt::Key_Return); // on the same place: the end
    ASSERT_EQ(plan().runs.size(), 1U);
    const auto& vertices = run("R1").vertices;
    ASSERT_EQ(vertices.size(), 3U);
    const auto& start = vertices[0].at;
    EXPECT_TRUE(isAt(vertices[1].at, units::inMetres(start.x) + 2.35, units::inMetres(start.y)));
    EXPECT_TRUE(isAt(vertices[2].at, units::inMetres(start.x) + 2.35, units::inMetres(start.y) + 1.15));
}

TEST_F(Tee, StartsAtAPlaceTyped)
{
    type("1.85x0");
    EXPECT_NE(said.find("1.85"), std::string::npos) << said;
    key(Qt::Key_Return); // the crosshair goes there, nothing starts yet
    EXPECT_FALSE(static_cast<ui::tools::PipeTool&>(toolbox.tool("place.run")).busy());
    key(Qt::Key_Return);
    EXPECT_TRUE(isAt(static_cast<ui::tools::PipeTool&>(toolbox.tool("place.run")).sketch().last(), 1.85, 0.0));
}

TEST_F(Tee, APlaceOfOneNumberIsToldToBeNone)
{
    type("1.85");
    key(Qt::Key_Return);
    EXPECT_NE(said.find("no place"), std::string::npos) << said;
    key(Qt::Key_Backspace);
    type("x2 m");
    key(Qt::Key_Return);
    key(Qt::Key_Return);
    EXPECT_TRUE(isAt(static_cast<ui::tools::PipeTool&>(toolbox.tool("place.run")).sketch().last(), 1.8, 2.0));
}

} // namespace sumpwright::test
