// The design help on an example plan, once by the mouse and once by the keys: targets typed at two beds, the valves set
// for them, a pump put in and taken out again, each in one step; what the beds then get is read from the results.
#include <gtest/gtest.h>

#include <QAbstractButton>
#include <QTest>
#include <QUndoStack>

#include "core/design/outlet.hpp"
#include "tests/journeys/watched_window.hpp"
#include "ui/design/design_panel.hpp"
#include "ui/document/document.hpp"
#include "ui/window/panels.hpp"

namespace sumpwright::tests
{
namespace
{

class DesignJourney : public WatchedWindow, public testing::WithParamInterface<bool>
{
protected:
    DesignJourney() : mouse(window), hands(GetParam() ? static_cast<Hands&>(mouse) : static_cast<Hands&>(keys)) {}

    void aim(const QString& bed, const QString& flow)
    {
        hands.select(bed);
        hands.enter(QStringLiteral("Target flow, *I1"), flow);
        settle();
    }
    ui::design::DesignPage& page() { return window.panels().design().page(); }
    void waitForAnswer()
    {
        EXPECT_TRUE(QTest::qWaitFor([this] { return !page().working() && page().current(); }, 60000))
            << page().said().toStdString();
    }
    double flowInto(const std::string& bed)
    {
        settle();
        const auto results = work.document.assessment();
        for (const auto& outlet : sumpwright::design::outletsOf(results->plan))
            if (plan::tagOf(results->plan, outlet.port.vessel) == bed)
                return units::inLitresPerHour(
                    sumpwright::design::flowOf(outlet, *results->flow, assessment::RunningState::least).value_or(units::Flow()));
        return -1.0;
    }

    MouseHands mouse;
    Hands& hands;
};

TEST_P(DesignJourney, TwoBedsGetTheFlowTheyWereMeantToHave)
{
    openExample("back_garden");
    settle();
    aim(QStringLiteral("B1"), QStringLiteral("500 L/h"));
    aim(QStringLiteral("B2"), QStringLiteral("350 L/h"));
    const plan::Plan asked = work.document.committed();
    hands.command("design.valves");
    waitForAnswer();
    hands.push(QStringLiteral("Set these valves"));
    EXPECT_NEAR(flowInto("B1"), 500, 2.5);
    EXPECT_NEAR(flowInto("B2"), 350, 1.75);
    expectSound("valves set");
    hands.command("edit.undo");
    EXPECT_EQ(work.document.committed(), asked);
    hands.command("edit.redo");
    EXPECT_NEAR(flowInto("B1"), 500, 2.5);
}

TEST_P(DesignJourney, APumpAndPipesAreProposedAndTakenBack)
{
    openExample("back_garden");
    settle();
    const plan::Plan before = work.document.committed();
    hands.command("design.pump");
    waitForAnswer();
    expectSound("pumps ranked");
    hands.command("design.pipes");
    waitForAnswer();
    expectSound("pipes weighed");
    hands.push(QStringLiteral("Use these pipes"));
    EXPECT_NE(work.document.committed(), before);
    EXPECT_EQ(work.document.undoStack().index(), 1);
    hands.command("edit.undo");
    EXPECT_EQ(work.document.committed(), before);
}

INSTANTIATE_TEST_SUITE_P(ByBothHands, DesignJourney, testing::Bool(),
                         [](const auto& hand) { return hand.param ? "ByMouse" : "ByKeys"; });

} // namespace
} // namespace sumpwright::tests
