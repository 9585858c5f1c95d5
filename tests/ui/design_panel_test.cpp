// The design help in the window: what it proposes is told in words, applied in one step and taken back in one; an
// answer about an earlier plan cannot be applied; bad entries are refused beside the form and change nothing.
#include <gtest/gtest.h>

#include <stdexcept>

#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QTableWidget>
#include <QTest>
#include <QUndoStack>

#include "core/plan/edits/port.hpp"
#include "core/plan/edits/site.hpp"
#include "tests/core/design/designing.hpp"
#include "ui/charts/readable_view.hpp"
#include "ui/design/design_panel.hpp"
#include "ui/design/pipe_page.hpp"
#include "ui/design/price_table.hpp"
#include "ui/design/pump_page.hpp"
#include "ui/design/trade_chart.hpp"
#include "ui/design/valve_page.hpp"
#include "ui/document/document.hpp"

namespace sumpwright::tests
{
namespace
{

using ui::design::DesignPage;
using ui::design::DesignPanel;
using ui::design::Question;

class DesignBench : public testing::Test
{
protected:
    explicit DesignBench(std::initializer_list<double> targets = {450, 300, 500, 400}) : m(targets)
    {
        m.drawn.changeSite([](plan::Site& site) { site.powerPrice = units::perKilowattHour(0.30); });
        document.reset(m.drawn.plan);
        panel.resize(560, 900);
        panel.show();
        EXPECT_TRUE(QTest::qWaitForWindowExposed(&panel));
        panel.activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&panel));
    }
    DesignPage& open(Question question)
    {
        panel.open(question);
        settle();
        return panel.page();
    }
    void settle()
    {
        EXPECT_TRUE(QTest::qWaitFor([this] { return !panel.page().working(); }, 60000));
    }
    QPushButton& button(const char* name) const
    {
        for (auto* each : panel.page().findChildren<QPushButton*>())
            if (each->accessibleName() == QString::fromLatin1(name))
                return *each;
        throw std::runtime_error(name);
    }
    template <class Widget> Widget& named(const char* name) const
    {
        for (auto* each : panel.page().findChildren<Widget*>())
            if (each->accessibleName() == QString::fromLatin1(name))
                return *each;
        throw std::runtime_error(name);
    }
    void type(const char* name, const QString& text)
    {
        auto& line = named<QLineEdit>(name);
        line.setFocus(Qt::TabFocusReason);
        line.selectAll();
        text.isEmpty() ? QTest::keyClick(&line, Qt::Key_Delete) : QTest::keyClicks(&line, text);
        QTest::keyClick(&line, Qt::Key_Return);
        settle();
    }
    double flowOf(base::Id run) const { return test::flowOf(document.committed(), run); }
    int steps() { return document.undoStack().index(); }

    test::ValvedM1 m;
    ui::document::Document document;
    DesignPanel panel{document, [] { return ui::text::DisplaySettings{}; }};
};

struct BareBench : DesignBench {
    BareBench() : DesignBench(std::initializer_list<double>{}) {}
};

TEST_F(DesignBench, SetsTheValvesInOneStepThatIsTakenBackInOne)
{
    DesignPage& page = open(Question::valves);
    EXPECT_TRUE(page.current());
    EXPECT_FALSE(page.sentence().isEmpty());
    auto& outlets = named<QTableWidget>("Outlets");
    ASSERT_EQ(outlets.rowCount(), 5); // the tank and four beds
    QTest::mouseClick(&button("Set these valves"), Qt::LeftButton);
    EXPECT_EQ(steps(), 1);
    EXPECT_NEAR(flowOf(m.bedBranches[0]), 450, 450 * 0.005);
    EXPECT_NEAR(flowOf(m.bedBranches[3]), 400, 400 * 0.005);
    settle(); // it asks itself again: nothing is left to do
    EXPECT_TRUE(page.current());
    EXPECT_FALSE(button("Set these valves").isEnabled());
    document.undoStack().undo();
    EXPECT_EQ(document.committed(), m.drawn.plan);
}

TEST_F(DesignBench, TellsEachOutletAsTheProposalHasIt)
{
    open(Question::valves);
    const auto& setting = *panel.valves().setting();
    auto& table = named<QTableWidget>("Outlets");
    for (int row = 0; row < table.rowCount(); ++row) {
        const auto& outlet = setting.outlets[static_cast<std::size_t>(row)];
        EXPECT_EQ(ui::text::breakable(table.item(row, 3)->text()),
                  ui::text::DisplaySettings{}.quantityText(outlet.after[setting.state]));
        EXPECT_FALSE(table.item(row, 4)->text().isEmpty());
    }
    EXPECT_EQ(named<QTableWidget>("Valves").rowCount(), 4);
}

TEST_F(DesignBench, AnAnswerAboutAnEarlierPlanCannotBeApplied)
{
    DesignPage& page = open(Question::valves);
    EXPECT_TRUE(button("Set these valves").isEnabled());
    ASSERT_TRUE(document.commit(plan::setTargetFlow({{m.beds[0], m.bedInlets[0]}}, units::litresPerHour(200))));
    EXPECT_FALSE(page.current());
    EXPECT_FALSE(button("Set these valves").isEnabled());
    EXPECT_TRUE(page.said().contains(QStringLiteral("has changed since"))) << page.said().toStdString();
    const plan::Plan before = document.committed();
    page.apply(); // however it is asked
    EXPECT_EQ(document.committed(), before);
    QTest::mouseClick(&button("Work it out"), Qt::LeftButton);
    settle();
    QTest::mouseClick(&button("Set these valves"), Qt::LeftButton);
    EXPECT_NEAR(flowOf(m.bedBranches[0]), 200, 1.0);
}

TEST_F(DesignBench, APlanThatIsOnlyReadIsNotChanged)
{
    open(Question::valves);
    document.setReadOnly(true);
    EXPECT_FALSE(button("Set these valves").isEnabled());
    panel.page().apply();
    EXPECT_EQ(document.committed(), m.drawn.plan);
}

TEST_F(DesignBench, GateTurnsAreCountedByThePerson)
{
    DesignPage& page = open(Question::valves);
    for (const char* bad : {"0", "-3", "1e9", "many"}) {
        type("Turns of a gate valve", QString::fromLatin1(bad));
        EXPECT_FALSE(page.said().isEmpty()) << bad;
    }
    type("Turns of a gate valve", QStringLiteral("8"));
    EXPECT_TRUE(page.said().isEmpty());
}

TEST_F(BareBench, SaysWhatIsMissingAndProposesNothing)
{
    DesignPage& page = open(Question::valves);
    EXPECT_TRUE(page.said().contains(QStringLiteral("target flow"))) << page.said().toStdString();
    EXPECT_TRUE(page.sentence().isEmpty());
    EXPECT_FALSE(button("Set these valves").isEnabled());
    document.reset(plan::Plan());
    for (const Question question : {Question::valves, Question::pump, Question::pipes}) {
        EXPECT_FALSE(open(question).said().isEmpty());
        EXPECT_TRUE(panel.page().sentence().isEmpty());
    }
}

TEST_F(BareBench, PutsTheChosenPumpIn)
{
    DesignPage& page = open(Question::pump);
    type("Wanted flow", QStringLiteral("2500 L/h"));
    auto& table = named<QTableWidget>("Pumps");
    ASSERT_EQ(table.rowCount(), 5);
    EXPECT_TRUE(table.item(0, 0)->text().startsWith(QStringLiteral("G4500")));
    EXPECT_FALSE(button("Put this pump in").isEnabled()); // it stands there already
    table.setFocus(Qt::TabFocusReason);
    QTest::keyClick(&table, Qt::Key_Down);
    EXPECT_TRUE(page.sentence().startsWith(QStringLiteral("G8000"))) << page.sentence().toStdString();
    QTest::mouseClick(&button("Put this pump in"), Qt::LeftButton);
    EXPECT_EQ(document.committed().pumps.find(m.pump)->modelId, "G8000");
    EXPECT_EQ(steps(), 1);
    document.undoStack().undo();
    EXPECT_EQ(document.committed(), m.drawn.plan);
}

TEST_F(BareBench, ABadEntryIsRefusedAndTheOneBeforeCounts)
{
    DesignPage& page = open(Question::pump);
    type("Wanted flow", QStringLiteral("2500 L/h"));
    const units::Flow wanted = panel.pump().ranking()->wanted;
    for (const char* bad : {"3 kg", "lots", "nan", "1e999 L/h", "--"}) {
        type("Wanted flow", QString::fromLatin1(bad));
        EXPECT_FALSE(page.said().isEmpty()) << bad;
        EXPECT_EQ(panel.pump().ranking()->wanted, wanted) << bad;
    }
    QTest::keyClick(&named<QLineEdit>("Wanted flow"), Qt::Key_Escape);
    EXPECT_EQ(named<QLineEdit>("Wanted flow").text(), QStringLiteral("2500 L/h"));
    EXPECT_TRUE(page.said().isEmpty());
    type("Wanted flow", QStringLiteral("-5 L/h")); // read, but no flow anybody could want
    EXPECT_FALSE(page.said().isEmpty());
    EXPECT_FALSE(panel.pump().ranking());
}

TEST_F(BareBench, WeighsPipeAgainstEnergyAndAppliesTheChoiceAtHand)
{
    DesignPage& page = open(Question::pipes);
    ASSERT_TRUE(panel.pipes().sizing()) << page.said().toStdString();
    const auto& sizing = *panel.pipes().sizing();
    auto& choices = named<QTableWidget>("Choices");
    EXPECT_EQ(choices.item(0, 0)->text(), QStringLiteral("Best"));
    auto* chart = page.findChild<ui::design::TradeChart*>();
    EXPECT_EQ(chart->readings().size(), sizing.tradeOff.size());
    auto* view = page.findChild<ui::charts::ReadableView*>();
    view->setFocus();
    QTest::keyClick(view, Qt::Key_Home);
    EXPECT_EQ(chart->readOut(), chart->readings().front().text);
    QTest::keyClick(view, Qt::Key_End);
    EXPECT_EQ(chart->readOut(), chart->readings().back().text);

    choices.setFocus(Qt::TabFocusReason);
    QTest::keyClick(&choices, Qt::Key_End, Qt::ControlModifier);
    const auto pipes = panel.pipes().atHand()->pipes;
    EXPECT_NE(pipes, sizing.best.pipes);
    QTest::mouseClick(&button("Use these pipes"), Qt::LeftButton);
    EXPECT_EQ(steps(), 1);
    for (std::size_t i = 0; i < pipes.size(); ++i)
        EXPECT_EQ(document.committed().runs.find(sizing.groups[i].runs.front())->pipeId, pipes[i]);
    document.undoStack().undo();
    EXPECT_EQ(document.committed(), m.drawn.plan);
}

TEST_F(BareBench, APriceIsTypedRefusedAndTakenBack)
{
    DesignPage& page = open(Question::pipes);
    auto& prices = named<QTableWidget>("Prices a metre");
    ASSERT_GT(prices.rowCount(), 3);
    EXPECT_EQ(prices.item(0, 2)->text(), QStringLiteral("assumed"));
    const QString assumed = prices.item(0, 1)->text();
    const std::size_t all = panel.pipes().sizing()->assumed.size();
    prices.item(0, 1)->setText(QStringLiteral("lots"));
    EXPECT_FALSE(page.said().isEmpty());
    EXPECT_EQ(prices.item(0, 1)->text(), assumed);
    prices.item(0, 1)->setText(QStringLiteral("-2"));
    EXPECT_EQ(prices.item(0, 1)->text(), assumed);
    prices.item(0, 1)->setText(QStringLiteral("9.50"));
    settle();
    EXPECT_EQ(prices.item(0, 2)->text(), QStringLiteral("typed"));
    EXPECT_EQ(panel.pipes().sizing()->assumed.size(), all - 1);
    prices.item(0, 1)->setText({});
    settle();
    EXPECT_EQ(prices.item(0, 1)->text(), assumed);
}

TEST(Asker, DeliversTheNewestAnswerOnlyAndTellsAFault)
{
    ui::design::Asker asker;
    QStringList told, faults;
    QObject::connect(&asker, &ui::design::Asker::faultMet, [&](const QString& what) { faults << what; });
    asker.ask([&told](const base::StopToken& stop) -> ui::design::Asker::Deliver {
        while (true)
            stop.checkpoint(); // until a newer one stops it
        return [&told] { told << QStringLiteral("old"); };
    });
    asker.ask([&told](const base::StopToken&) -> ui::design::Asker::Deliver {
        return [&told] { told << QStringLiteral("new"); };
    });
    EXPECT_TRUE(QTest::qWaitFor([&] { return !asker.busy(); }, 20000));
    EXPECT_EQ(told, QStringList{QStringLiteral("new")});
    asker.ask([](const base::StopToken&) -> ui::design::Asker::Deliver { throw std::runtime_error("of its own"); });
    EXPECT_TRUE(QTest::qWaitFor([&] { return !asker.busy(); }, 20000));
    EXPECT_EQ(faults, QStringList{QStringLiteral("of its own")});
    asker.ask([](const base::StopToken& stop) -> ui::design::Asker::Deliver {
        while (true)
            stop.checkpoint();
    });
    asker.stop();
    EXPECT_FALSE(asker.busy());
}

} // namespace
} // namespace sumpwright::tests
