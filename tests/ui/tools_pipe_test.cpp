// Drawing pipe runs: connecting, splitting, levels, keys.
#include "tests/ui/canvas_stage.hpp"

#include <QApplication>
#include <QComboBox>
#include <QLineEdit>
#include <QUndoStack>

#include "core/plan/edits/place.hpp"
#include "core/plan/edits/target.hpp"
#include "ui/canvas/scene_point.hpp"
#include "ui/tools/connecting.hpp"
#include "ui/tools/pipe_tool.hpp"
#include "ui/tools/snap.hpp"

namespace sumpwright::test
{

class Pipe : public CanvasStage
{
protected:
    void SetUp() override
    {
        CanvasStage::SetUp();
        plan::Plan simple;
        plan::VesselWish tank{plan::VesselKind::fishTank,           at(2.0, 5.0), units::radians(0.0),
                              plan::RoundShape{units::metres(1.4)}, {},           {}};
        plan::VesselWish sump{plan::VesselKind::sump, at(5.0, 2.0), units::radians(0.0), {}, {}, {}};
        simple = applied(simple, plan::placeVessel(tank));
        simple = applied(simple, plan::placeVessel(sump));
        simple = applied(simple,
                         plan::placePump(idOf(simple, "S1"), at(5.2, 2.1), document.catalogue()->pumps().front().id));
        open(simple);
        toolbox.activate("place.run");
    }
    plan::Point freePort(const char* tag, plan::PortKind kind)
    {
        for (const auto& port : vessel(tag).ports)
            if (port.kind == kind && !plan::runAtPort(plan(), vessel(tag).id, port.id))
                return plan::placeOf(vessel(tag), port);
        ADD_FAILURE() << "no free port on " << tag;
        return {};
    }
    void clickAt(plan::Point place) { click(units::inMetres(place.x), units::inMetres(place.y)); }
    ui::tools::PipeTool& tool() { return static_cast<ui::tools::PipeTool&>(toolbox.tool("place.run")); }
};

TEST_F(Pipe, LeadsFromPumpToInletByClicksInOneStep)
{
    const auto inlet = freePort("T1", plan::PortKind::inlet);
    hover(5.22, 2.08);
    ASSERT_TRUE(view.overlay().cue.has_value());
    EXPECT_EQ(view.overlay().cue->kind, ui::canvas::CueKind::pump);
    click(5.22, 2.08);
    click(6.5, 2.1);
    click(6.5, units::inMetres(inlet.y));
    EXPECT_EQ(steps(), 0);
    clickAt(inlet);
    ASSERT_EQ(plan().runs.size(), 1U);
    EXPECT_EQ(steps(), 1);
    const auto& drawn = run("R1");
    EXPECT_TRUE(std::holds_alternative<plan::PumpEnd>(drawn.from));
    ASSERT_TRUE(std::holds_alternative<plan::PortEnd>(drawn.to));
    EXPECT_EQ(std::get<plan::PortEnd>(drawn.to).vessel, idOf(plan(), "T1"));
    EXPECT_EQ(drawn.service, plan::Service::pressure);
    EXPECT_TRUE(document.catalogue()->pipe(drawn.pipeId).ok());
    EXPECT_TRUE(document.isSelected(drawn.id));
    EXPECT_FALSE(tool().busy());
}

TEST_F(Pipe, LeadsByOneDragFromPortToPort)
{
    const auto lip = freePort("T1", plan::PortKind::lip);
    const auto inlet = freePort("S1", plan::PortKind::inlet);
    drag(lip, inlet);
    ASSERT_EQ(plan().runs.size(), 1U);
    EXPECT_EQ(run("R1").service, plan::Service::gravity);
    EXPECT_EQ(steps(), 1);
}

TEST_F(Pipe, StandsStraightWithinReachAndOnTheGrid)
{
    click(0.5, 0.5);
    hover(3.21, 0.56);
    ASSERT_TRUE(view.overlay().cue.has_value());
    click(3.21, 0.56);
    doubleClick(3.24, 3.02);
    ASSERT_EQ(plan().runs.size(), 1U);
    const auto& vertices = run("R1").vertices;
    ASSERT_EQ(vertices.size(), 3U);
    EXPECT_TRUE(isAt(vertices[1].at, 3.2, 0.5));
    EXPECT_TRUE(isAt(vertices[2].at, 3.2, 3.0));
    EXPECT_TRUE(std::holds_alternative<plan::OpenEnd>(run("R1").to));
}

TEST_F(Pipe, SplitsTheRunItIsLedOnto)
{
    click(0.5, 0.5);
    doubleClick(8.0, 0.5);
    toolbox.activate("place.run");
    click(6.0, 4.0);
    click(6.0, 0.52);
    EXPECT_EQ(plan().tees.size(), 1U);
    EXPECT_EQ(plan().runs.size(), 3U);
    EXPECT_EQ(steps(), 2) << "splitting is part of the same step";
    EXPECT_TRUE(isAt((*plan().tees.begin())->at, 6.0, 0.5));
    document.undoStack().undo();
    EXPECT_EQ(plan().runs.size(), 1U);
    EXPECT_TRUE(plan().tees.empty());
}

TEST_F(Pipe, MakesAnInletWhereItEndsInsideAVessel)
{
    const auto ports = vessel("T1").ports.size();
    click(6.0, 5.0);
    click(4.0, 5.2);
    click(2.3, 5.3);
    key(Qt::Key_Return);
    ASSERT_EQ(plan().runs.size(), 1U);
    EXPECT_EQ(vessel("T1").ports.size(), ports + 1);
    ASSERT_TRUE(std::holds_alternative<plan::PortEnd>(run("R1").to));
    const auto* made = plan::findPort(vessel("T1"), std::get<plan::PortEnd>(run("R1").to).port);
    ASSERT_NE(made, nullptr);
    EXPECT_EQ(made->kind, plan::PortKind::inlet);
    EXPECT_GT(made->level, plan::rimLevel(vessel("T1"))) << "a free outlet above the rim";
    EXPECT_EQ(steps(), 1);
}

TEST_F(Pipe, TypedLevelMakesAVerticalLeg)
{
    click(0.5, 0.5);
    click(2.0, 0.5);
    key(Qt::Key_L);
    ASSERT_TRUE(tool().levelField()->hasFocus());
    QTest::keyClicks(tool().levelField(), QStringLiteral("1.2 m"));
    QTest::keyClick(tool().levelField(), Qt::Key_Return);
    EXPECT_TRUE(view.hasFocus()) << "Enter gives the keyboard back to the plan";
    EXPECT_TRUE(plan().runs.empty()) << "it is the field's Enter, not the one that ends the run";
    click(2.0, 2.5);
    key(Qt::Key_Return);
    ASSERT_EQ(plan().runs.size(), 1U);
    const auto& vertices = run("R1").vertices;
    ASSERT_EQ(vertices.size(), 4U);
    EXPECT_DOUBLE_EQ(units::inMetres(vertices[1].level), 0.1);
    EXPECT_TRUE(isAt(vertices[2].at, 2.0, 0.5));
    EXPECT_DOUBLE_EQ(units::inMetres(vertices[2].level), 1.2);
    EXPECT_DOUBLE_EQ(units::inMetres(vertices[3].level), 1.2);
}

TEST_F(Pipe, ALevelThatIsNoneIsRefusedBesideTheField)
{
    click(0.5, 0.5);
    key(Qt::Key_L);
    QTest::keyClicks(tool().levelField(), QStringLiteral("3 kg"));
    QTest::keyClick(tool().levelField(), Qt::Key_Return);
    EXPECT_TRUE(tool().levelField()->hasFocus());
    EXPECT_DOUBLE_EQ(units::inMetres(tool().sketch().level()), 0.1) << "the old level stays";
    QTest::keyClick(tool().levelField(), Qt::Key_Escape);
    EXPECT_TRUE(view.hasFocus());
}

TEST_F(Pipe, TypedLengthFixesTheNextLeg)
{
    click(0.5, 0.5);
    hover(3.0, 0.5);
    type("2.35");
    key(Qt::Key_Return);
    key(Qt::Key_Return);
    ASSERT_EQ(plan().runs.size(), 1U);
    EXPECT_TRUE(isAt(run("R1").vertices.back().at, 2.85, 0.5));
}

TEST_F(Pipe, BackspaceDropsTheLastCornerAndEscTheRun)
{
    click(0.5, 0.5);
    click(2.0, 0.5);
    click(2.0, 2.0);
    EXPECT_EQ(tool().sketch().vertices().size(), 3U);
    key(Qt::Key_Backspace);
    EXPECT_EQ(tool().sketch().vertices().size(), 2U);
    key(Qt::Key_Escape);
    EXPECT_FALSE(tool().busy());
    EXPECT_EQ(toolbox.active(), "place.run");
    EXPECT_EQ(steps(), 0);
    EXPECT_TRUE(plan().runs.empty());
}

TEST_F(Pipe, IsDrawnByKeyboardAloneFromConnectionToConnection)
{
    for (int i = 0; i < 12; ++i) { // J walks over the connections until the pump is reached
        key(Qt::Key_J);
        if (said.find("P1") != std::string::npos)
            break;
    }
    ASSERT_NE(said.find("P1"), std::string::npos) << said;
    key(Qt::Key_Return);
    ASSERT_TRUE(tool().busy());
    for (int i = 0; i < 12; ++i)
        key(Qt::Key_Right);
    key(Qt::Key_Return); // a corner
    for (int i = 0; i < 12; ++i) {
        key(Qt::Key_J);
        if (said.find("inlet") != std::string::npos && said.find("T1") != std::string::npos)
            break;
    }
    key(Qt::Key_Return);
    ASSERT_EQ(plan().runs.size(), 1U);
    EXPECT_TRUE(std::holds_alternative<plan::PumpEnd>(run("R1").from));
    EXPECT_TRUE(std::holds_alternative<plan::PortEnd>(run("R1").to));
}

TEST_F(Pipe, ASecondRunAtTheSamePortIsNotOffered)
{
    const auto lip = freePort("T1", plan::PortKind::lip);
    drag(lip, freePort("S1", plan::PortKind::inlet));
    ASSERT_EQ(plan().runs.size(), 1U);
    for (const auto& connection : ui::tools::connectionsOf(plan()))
        EXPECT_GT(units::inMetres(plan::distanceBetween(connection.at, lip)), 1e-3);
}

TEST_F(Pipe, ServiceAndPipeChosenInTheFieldsAreTaken)
{
    tool().serviceChoice()->setCurrentIndex(2);
    tool().pipeChoice()->setCurrentIndex(3);
    const auto wanted = document.catalogue()->pipes()[2].id;
    click(0.5, 0.5);
    click(2.0, 0.5);
    key(Qt::Key_Return);
    ASSERT_EQ(plan().runs.size(), 1U);
    EXPECT_EQ(run("R1").service, plan::Service::gravity);
    EXPECT_EQ(run("R1").pipeId, wanted);
}

TEST_F(Pipe, ConnectJoinsTwoSelectedThingsWithoutDragging)
{
    document.select({idOf(plan(), "T1"), idOf(plan(), "P1")});
    toolbox.connectSelected();
    ASSERT_EQ(plan().runs.size(), 1U);
    EXPECT_TRUE(std::holds_alternative<plan::PumpEnd>(run("R1").from));
    EXPECT_EQ(run("R1").service, plan::Service::pressure);
    document.select({idOf(plan(), "S1"), idOf(plan(), "T1")});
    toolbox.connectSelected();
    ASSERT_EQ(plan().runs.size(), 2U);
    const auto* from = std::get_if<plan::PortEnd>(&run("R2").from);
    ASSERT_NE(from, nullptr);
    EXPECT_EQ(from->vessel, idOf(plan(), "T1")) << "from the higher lip to the lower vessel, whatever was picked first";
    EXPECT_EQ(run("R2").service, plan::Service::gravity);
    EXPECT_EQ(steps(), 2);
}

TEST_F(Pipe, ConnectSaysWhyItCannot)
{
    document.select({idOf(plan(), "T1")});
    toolbox.connectSelected();
    EXPECT_NE(said.find("two things"), std::string::npos) << said;
    EXPECT_EQ(steps(), 0);
}

} // namespace sumpwright::test
