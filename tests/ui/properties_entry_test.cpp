// One line of typed input: what it accepts, what it refuses and says, what Esc and leaving do, how many undo steps.
#include "tests/ui/panel_bench.hpp"

namespace sumpwright::tests
{
namespace
{

using EntryField = PanelBench;

TEST_F(EntryField, TakesSumsWithUnitsAsOneUndoStep)
{
    document.select({system.tank});
    const int before = steps();
    enter("Wall height, base to rim", QStringLiteral("0.5 m + 55 cm"));
    EXPECT_NEAR(units::inMetres(vesselNow(system.tank).wallHeight), 1.05, 1e-12);
    EXPECT_EQ(steps(), before + 1);
    EXPECT_EQ(shown("Wall height, base to rim"), "1.05 m");
    document.undoStack().undo();
    EXPECT_EQ(vesselNow(system.tank), system.vesselOf(system.tank));
}

TEST_F(EntryField, TakesABareNumberInTheUnitItShows)
{
    document.select({system.tank});
    enter("Wall thickness", QStringLiteral("8"));
    EXPECT_NEAR(units::inMillimetres(vesselNow(system.tank).wallThickness), 8.0, 1e-9);
    enter("Wall height, base to rim", QStringLiteral("1.1"));
    EXPECT_NEAR(units::inMetres(vesselNow(system.tank).wallHeight), 1.1, 1e-12);
}

TEST_F(EntryField, ShowsAndTakesUsUnits)
{
    document.view().setUnitSystem(units::UnitSystem::us);
    document.select({system.tank});
    enter("Wall height, base to rim", QStringLiteral("3 ft 6 in"));
    EXPECT_NEAR(units::inMetres(vesselNow(system.tank).wallHeight), 42 * 0.0254, 1e-12);
    EXPECT_EQ(shown("Wall height, base to rim"), "3.5 ft");
}

TEST_F(EntryField, RefusesAnotherKindBeneathTheFieldAndKeepsTheValue)
{
    document.select({system.tank});
    const auto before = now();
    const std::string old = shown("Wall height, base to rim");
    enter("Wall height, base to rim", QStringLiteral("3 kg"));
    EXPECT_EQ(now(), before);
    const std::string said = refusal("Wall height, base to rim");
    EXPECT_NE(said.find("Wall height, base to rim"), std::string::npos) << said; // where
    EXPECT_NE(said.find("mass"), std::string::npos) << said;                     // what
    EXPECT_NE(said.find("length"), std::string::npos) << said;                   // how to mend
    EXPECT_NE(said.find("It stays " + old), std::string::npos) << said;
    EXPECT_EQ(shown("Wall height, base to rim"), "3 kg"); // to be mended
    EXPECT_EQ(entry("Wall height, base to rim").line().accessibleDescription().toStdString(), said);
}

TEST_F(EntryField, EscGivesTheOldValueBackAndTakesTheRefusalAway)
{
    document.select({system.tank});
    const std::string old = shown("Wall height, base to rim");
    enter("Wall height, base to rim", QStringLiteral("3 kg"));
    ASSERT_FALSE(refusal("Wall height, base to rim").empty());
    QTest::keyClick(&entry("Wall height, base to rim").line(), Qt::Key_Escape);
    EXPECT_EQ(shown("Wall height, base to rim"), old);
    EXPECT_EQ(refusal("Wall height, base to rim"), "");
}

TEST_F(EntryField, LeavingHandsOverOnceAndARefusedTextGoesBackToTheValue)
{
    document.select({system.tank});
    const int before = steps();
    QLineEdit& line = typeInto("Wall height, base to rim", QStringLiteral("1.2 m"));
    QTest::keyClick(&line, Qt::Key_Tab);
    EXPECT_NEAR(units::inMetres(vesselNow(system.tank).wallHeight), 1.2, 1e-12);
    EXPECT_EQ(steps(), before + 1);
    QTest::keyClick(&typeInto("Wall height, base to rim", QStringLiteral("much")), Qt::Key_Tab);
    EXPECT_EQ(steps(), before + 1);
    EXPECT_EQ(shown("Wall height, base to rim"), "1.2 m");
    EXPECT_FALSE(refusal("Wall height, base to rim").empty()); // still told why
}

TEST_F(EntryField, WalkingThroughWithoutTypingMakesNoStep)
{
    document.view().setUnitSystem(units::UnitSystem::us); // shown rounded
    document.select({system.tank});
    const int before = steps();
    for (auto* field : panel.form()->findChildren<ui::properties::EntryField*>()) {
        field->line().setFocus(Qt::TabFocusReason);
        QTest::keyClick(&field->line(), Qt::Key_Return);
        QTest::keyClick(&field->line(), Qt::Key_Tab);
    }
    EXPECT_EQ(steps(), before);
    EXPECT_EQ(now(), system.plan);
}

TEST_F(EntryField, EveryEntryOfEveryFormRefusesNonsenseAndKeepsThePlan)
{
    for (const base::Id id : {base::Id{}, system.tank, system.sump, system.bedA, system.pump, system.main,
                              system.tankDrain, system.wall, system.line}) {
        document.select(id.valid() ? std::vector<base::Id>{id} : std::vector<base::Id>{});
        results();
        for (auto* field : panel.form()->findChildren<ui::properties::EntryField*>()) {
            const QString name = field->line().accessibleName();
            const bool words = name.startsWith(QStringLiteral("Tag")) || name == QStringLiteral("Name") ||
                               name == QStringLiteral("Client") || name == QStringLiteral("Designer");
            if (words || !field->isVisible())
                continue;
            for (const auto& nonsense : {"??", "nan", "1e999 m", "-inf", "3 furlong kg"}) {
                field->line().setFocus(Qt::TabFocusReason);
                field->line().selectAll();
                QTest::keyClicks(&field->line(), QString::fromLatin1(nonsense));
                QTest::keyClick(&field->line(), Qt::Key_Return);
                EXPECT_FALSE(field->refusalText().isEmpty()) << name.toStdString() << " took " << nonsense;
                QTest::keyClick(&field->line(), Qt::Key_Escape);
            }
        }
        EXPECT_EQ(now(), system.plan);
    }
}

TEST_F(EntryField, RefusesANumberWithTwoReadingsInGermanMarks)
{
    document.view().setNumberStyle(units::NumberStyle::ofDesktop(",", "."));
    document.select({system.tank});
    enter("Wall height, base to rim", QStringLiteral("1,15"));
    EXPECT_NEAR(units::inMetres(vesselNow(system.tank).wallHeight), 1.15, 1e-12);
    EXPECT_EQ(shown("Wall height, base to rim"), "1,15 m");
    const auto before = now();
    enter("Wall height, base to rim", QStringLiteral("1.150"));
    EXPECT_EQ(now(), before);
    const std::string said = refusal("Wall height, base to rim");
    EXPECT_NE(said.find("1,15"), std::string::npos) << said; // both readings are offered
    EXPECT_NE(said.find("1150"), std::string::npos) << said;
}

TEST_F(EntryField, WhatIsTypedSurvivesNewsFromThePlan)
{
    document.select({system.tank});
    typeInto("Wall height, base to rim", QStringLiteral("1.3"));
    document.commit(plan::setWallThickness({system.tank}, units::millimetres(7)));
    document.commit(plan::moveElements({system.bedA}, {units::metres(0.05), units::metres(0)}));
    EXPECT_EQ(shown("Wall height, base to rim"), "1.3");
    EXPECT_EQ(shown("Wall thickness"), "7 mm");
}

TEST_F(EntryField, UndoKeyBelongsToThePlanWhileNothingIsTyped)
{
    document.select({system.tank});
    QLineEdit& line = entry("Wall thickness").line();
    line.setFocus();
    QKeyEvent undo(QEvent::ShortcutOverride, Qt::Key_Z, Qt::ControlModifier);
    undo.ignore();
    QCoreApplication::sendEvent(&line, &undo);
    EXPECT_FALSE(undo.isAccepted());
    typeInto("Wall thickness", QStringLiteral("9"));
    undo.ignore();
    QCoreApplication::sendEvent(&line, &undo);
    EXPECT_TRUE(undo.isAccepted());
}

TEST_F(EntryField, ReadOnlyPlansCanBeReadButNotChanged)
{
    document.select({system.tank});
    document.setReadOnly(true);
    EXPECT_TRUE(entry("Wall thickness").line().isReadOnly());
    enter("Wall thickness", QStringLiteral("9"));
    EXPECT_EQ(now(), system.plan);
}

TEST_F(EntryField, FinishEntryCountsWhatIsTyped)
{
    document.select({system.tank});
    typeInto("Wall thickness", QStringLiteral("9"));
    panel.finishEntry();
    EXPECT_NEAR(units::inMillimetres(vesselNow(system.tank).wallThickness), 9.0, 1e-9);
}

} // namespace
} // namespace sumpwright::tests
