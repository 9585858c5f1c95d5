// The forms: which one is shown, what its entries do to plan and results, several elements at once.
#include "core/plan/edits/own_parts.hpp"
#include "tests/ui/panel_bench.hpp"
#include "ui/properties/dimension_form.hpp"
#include "ui/properties/fixture_form.hpp"
#include "ui/properties/floor_form.hpp"
#include "ui/properties/multi_form.hpp"
#include "ui/properties/note_form.hpp"
#include "ui/properties/pump_form.hpp"
#include "ui/properties/run_form.hpp"
#include "ui/properties/site_form.hpp"
#include "ui/properties/tee_form.hpp"
#include "ui/properties/vessel_form.hpp"

namespace sumpwright::tests
{
namespace
{

using namespace ui::properties;
using Properties = PanelBench;

template <class Wanted> bool shows(PropertiesPanel& panel) { return qobject_cast<Wanted*>(panel.form()) != nullptr; }

TEST_F(Properties, ShowTheFormOfWhatIsChosen)
{
    EXPECT_TRUE(shows<SiteForm>(panel));
    panel.showFloor();
    EXPECT_TRUE(shows<FloorForm>(panel));
    document.select({system.tank});
    EXPECT_TRUE(shows<VesselForm>(panel));
    document.select({system.bedA, system.sump});
    EXPECT_TRUE(shows<VesselForm>(panel));
    document.select({system.pump});
    EXPECT_TRUE(shows<PumpForm>(panel));
    document.select({system.main});
    EXPECT_TRUE(shows<RunForm>(panel));
    document.select({(*now().tees.begin())->id});
    EXPECT_TRUE(shows<TeeForm>(panel));
    document.select({system.wall});
    EXPECT_TRUE(shows<FixtureForm>(panel));
    document.select({system.note});
    EXPECT_TRUE(shows<NoteForm>(panel));
    document.select({system.line});
    EXPECT_TRUE(shows<DimensionForm>(panel));
    document.select({system.tank, system.main});
    EXPECT_TRUE(shows<MultiForm>(panel));
    document.select({});
    EXPECT_TRUE(shows<FloorForm>(panel)); // as it was left
    panel.showSite();
    EXPECT_TRUE(shows<SiteForm>(panel));
}

TEST_F(Properties, DeletingWhatIsChosenLeavesASoundForm)
{
    document.select({system.tank});
    document.commit(plan::deleteElements({system.tank}));
    EXPECT_TRUE(shows<SiteForm>(panel));
    document.undoStack().undo();
    document.select({system.tank, system.bedA});
    document.commit(plan::deleteElements({system.bedA}));
    EXPECT_TRUE(shows<VesselForm>(panel));
    EXPECT_EQ(panel.form()->chosen().ids, std::vector<base::Id>{system.tank});
}

TEST_F(Properties, MoveAndTurnByNumber)
{
    document.select({system.bedA});
    const int before = steps();
    enter("x, to the right", QStringLiteral("4.2"));
    enter("Turn", QStringLiteral("15 deg"));
    EXPECT_NEAR(units::inMetres(vesselNow(system.bedA).centre.x), 4.2, 1e-12);
    EXPECT_NEAR(units::inMetres(vesselNow(system.bedA).centre.y), 3.0, 1e-12);
    EXPECT_NEAR(units::inDegrees(vesselNow(system.bedA).turn), 15.0, 1e-9);
    EXPECT_EQ(steps(), before + 2);
}

TEST_F(Properties, ShowWhatDiffersAsMixedAndSetItForAllInOneStep)
{
    document.commit(plan::setWallHeight({system.bedB}, units::metres(0.45)));
    document.select({system.bedA, system.bedB});
    EXPECT_EQ(shown("Wall height, base to rim"), "");
    EXPECT_EQ(entry("Wall height, base to rim").line().placeholderText().toStdString(), "mixed");
    EXPECT_NE(shown("Wall thickness"), ""); // the same in both
    const int before = steps();
    enter("Wall height, base to rim", QStringLiteral("0.5"));
    for (const auto bed : {system.bedA, system.bedB})
        EXPECT_NEAR(units::inMetres(vesselNow(bed).wallHeight), 0.5, 1e-12);
    EXPECT_EQ(steps(), before + 1);
    document.undoStack().undo();
    EXPECT_EQ(entry("Wall height, base to rim").line().placeholderText().toStdString(), "mixed");
}

TEST_F(Properties, AnEntryOverSeveralKeepsWhatElseDiffers)
{
    document.commit(plan::setShape({system.bedB}, plan::RectangleShape{units::metres(1.4), units::metres(0.9)}));
    const auto widthOfA = plan::frameOf(vesselNow(system.bedA).shape).width;
    document.select({system.bedA, system.bedB});
    enter("Length, outside", QStringLiteral("1.3"));
    EXPECT_EQ(plan::frameOf(vesselNow(system.bedA).shape).width, widthOfA);
    EXPECT_NEAR(units::inMetres(plan::frameOf(vesselNow(system.bedB).shape).width), 0.9, 1e-12);
    EXPECT_NEAR(units::inMetres(plan::frameOf(vesselNow(system.bedB).shape).length), 1.3, 1e-12);
}

TEST_F(Properties, MixedKindsMoveTogetherInOneStep)
{
    document.select({system.tank, system.wall});
    const int before = steps();
    enter("y, up the sheet", QStringLiteral("7.5"));
    EXPECT_NEAR(units::inMetres(vesselNow(system.tank).centre.y), 7.5, 1e-12);
    EXPECT_NEAR(units::inMetres(now().fixtures.find(system.wall)->from.y), 7.5, 1e-12);
    EXPECT_EQ(steps(), before + 1);
}

TEST_F(Properties, TheLevelOfTheSumpMovesTheWater)
{
    document.select({system.sump});
    const auto before = assessment::find(results()->water->vessels, system.sump)
                            ->water[assessment::WaterState::runningMost]
                            .value()
                            .level;
    const auto raised = units::inMetres(before) + 0.04;
    enter("Level while running, beds drained", QString::number(raised, 'f', 3) + QStringLiteral(" m"));
    EXPECT_EQ(refusal("Level while running, beds drained"), "");
    const auto after = assessment::find(results()->water->vessels, system.sump)
                           ->water[assessment::WaterState::runningMost]
                           .value()
                           .level;
    EXPECT_NEAR(units::inMetres(after), raised, 1e-3);
    bool told = false; // and the form says so beside the entry
    for (auto* field : panel.form()->findChildren<ResultField*>())
        told = told || field->shownText().contains(QString::number(raised, 'f', 3));
    EXPECT_TRUE(told);
}

TEST_F(Properties, AnEmptiedOptionalEntryIsAbsentAgain)
{
    panel.showSite();
    enter("Altitude", QStringLiteral("300"));
    EXPECT_NEAR(units::inMetres(now().site->altitude.value()), 300.0, 1e-9);
    enter("Altitude", {});
    EXPECT_FALSE(now().site->altitude);
    EXPECT_EQ(entry("Altitude").line().placeholderText().toStdString(), "not given");
}

TEST_F(Properties, DrawAFloorByItsSizes)
{
    document.reset({});
    panel.showFloor();
    enter("Length, along x", QStringLiteral("5"));
    enter("Width, along y", QStringLiteral("8"));
    ASSERT_EQ(now().floor->outline.size(), 4u);
    EXPECT_NEAR(units::inSquareMetres(plan::areaOf(*now().floor)), 40.0, 1e-9);
    enter("Corner 3, x", QStringLiteral("4.5"));
    EXPECT_NEAR(units::inMetres(now().floor->outline[2].x), 4.5, 1e-12);
}

TEST_F(Properties, AChoiceIsOneStepAndKeepsThePersonsPlace)
{
    document.select({system.bedB});
    const int before = steps();
    choose("Kind", QStringLiteral("Settler"));
    EXPECT_EQ(vesselNow(system.bedB).kind, plan::VesselKind::settler);
    EXPECT_EQ(steps(), before + 1);
    ASSERT_TRUE(QApplication::focusWidget());
    EXPECT_EQ(QApplication::focusWidget()->accessibleName().toStdString(), "Kind"); // in the form made anew
}

TEST_F(Properties, TheWheelScrollsAndNeverChoosesOrSteps)
{
    document.select({system.bedB});
    QComboBox& box = choice("Kind");
    box.setFocus();
    QWheelEvent wheel({5, 5}, box.mapToGlobal(QPointF(5, 5)), {}, {0, -120}, Qt::NoButton, Qt::NoModifier,
                      Qt::NoScrollPhase, false);
    QCoreApplication::sendEvent(&box, &wheel);
    EXPECT_EQ(now(), system.plan);
}

TEST_F(Properties, AddAndRemoveAPort)
{
    document.select({system.tank});
    const std::size_t before = vesselNow(system.tank).ports.size();
    const auto press = [&](const QString& name) {
        for (auto* button : panel.form()->findChildren<QPushButton*>())
            if (button->accessibleName().startsWith(name) && button->isVisible())
                return QTest::keyClick(button, Qt::Key_Space);
        ADD_FAILURE() << "no button " << name.toStdString();
    };
    press(QStringLiteral("Add inlet"));
    ASSERT_EQ(vesselNow(system.tank).ports.size(), before + 1);
    EXPECT_EQ(panel.form()->findChildren<ui::properties::EntryField*>().isEmpty(), false);
    const auto tag = vesselNow(system.tank).ports.back().tag;
    press(QStringLiteral("Remove, inlet ") + QString::fromStdString(tag));
    EXPECT_EQ(vesselNow(system.tank).ports.size(), before);
}

TEST_F(Properties, AnOwnCurveIsEditedPointByPoint)
{
    document.select({system.pump});
    choose("Pump", QStringLiteral("Own curve"));
    const auto& pump = [this]() -> const plan::Pump& { return *now().pumps.find(system.pump); };
    ASSERT_GE(pump().ownCurve.size(), 2u);
    const auto lastFlow = pump().ownCurve[1].flow;
    enter("Point 1, head", QStringLiteral("5 m"));
    EXPECT_NEAR(units::inMetresHead(pump().ownCurve[0].head), 5.0, 1e-12);
    EXPECT_EQ(pump().ownCurve[1].flow, lastFlow);
    const auto before = now();
    enter("Point 2, head", QStringLiteral("7 m")); // rises
    EXPECT_EQ(now(), before);
    EXPECT_FALSE(refusal("Point 2, head").empty());
}

TEST_F(Properties, APumpMayHaveTheTwoNumbersOfItsBoxAndATwin)
{
    document.commit(plan::setRunningLevel({system.sump}, units::elevationMetres(0.55)));
    document.select({system.pump});
    choose("Pump", QStringLiteral("Two numbers"));
    const auto& pump = [this]() -> const plan::Pump& { return *now().pumps.find(system.pump); };
    ASSERT_TRUE(pump().twoNumbers);
    enter("Head at no flow", QStringLiteral("3.2 m"));
    enter("Flow at no head", QStringLiteral("4500 L/h"));
    EXPECT_NEAR(units::inMetresHead(pump().ownCurve.front().head), 3.2, 1e-12);
    EXPECT_NEAR(units::inLitresPerHour(pump().ownCurve.back().flow), 4500.0, 1e-9);
    enter("Electrical input", QStringLiteral("70 W"));
    EXPECT_TRUE(pump().twoNumbers);
    enter("Head at no flow", QStringLiteral("-1 m"));
    EXPECT_FALSE(refusal("Head at no flow").empty());
    EXPECT_NEAR(units::inMetresHead(results()->pumps->pumps.front().shutOff), 3.2, 1e-9);
    choose("Units", QStringLiteral("Two in a row"));
    EXPECT_EQ(pump().arrangement, plan::PumpArrangement::twoInSeries);
    EXPECT_NEAR(units::inMetresHead(results()->pumps->pumps.front().shutOff), 6.4, 1e-9);
}

TEST_F(Properties, ChoicesFollowTheOwnPartsOfThePlan)
{
    document.select({system.main});
    const int before = choice("Pipe").count();
    plan::OwnPipe hose;
    hose.id = "own-hose";
    hose.name = "Green hose";
    hose.outsideDiameter = units::millimetres(32);
    hose.bore = units::millimetres(25.4);
    ASSERT_TRUE(document.commit(plan::putOwnPart(hose)));
    ASSERT_EQ(choice("Pipe").count(), before + 1);
    choose("Pipe", QStringLiteral("Green hose (own)"));
    EXPECT_EQ(now().runs.find(system.main)->pipeId, "own-hose");
}

TEST_F(Properties, ShowWorkingHandsOverTheNumbersOfTheResult)
{
    document.select({system.main});
    results();
    std::vector<assessment::Working> asked;
    QObject::connect(&panel, &PropertiesPanel::workingWanted,
                     [&](const assessment::Working& working) { asked.push_back(working); });
    for (auto* field : panel.form()->findChildren<ResultField*>())
        if (auto* button = field->workingButton(); button && button->isVisible())
            QTest::keyClick(button, Qt::Key_Space);
    ASSERT_FALSE(asked.empty());
    EXPECT_TRUE(std::any_of(asked.begin(), asked.end(), [](const assessment::Working& working) {
        return working.worksheet == "pipe-friction" && !working.inputs.empty();
    }));
}

TEST_F(Properties, StaleResultsAreMarkedAndComeBackCurrent)
{
    document.select({system.pump});
    results();
    const auto marked = [&] {
        int count = 0;
        for (auto* field : panel.form()->findChildren<ResultField*>())
            count += field->shownText().endsWith(QStringLiteral("(stale)"));
        return count;
    };
    EXPECT_EQ(marked(), 0);
    document.commit(plan::setPumpSpeed({system.pump}, 0.9));
    ASSERT_TRUE(document.stale()); // nothing could arrive without the event loop
    panel.form()->refreshResults();
    EXPECT_GT(marked(), 0);
    results();
    EXPECT_EQ(marked(), 0);
}

} // namespace
} // namespace sumpwright::tests
