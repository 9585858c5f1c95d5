// The site sketch in the site's form: there while a sketch lies under the plan; its strength and turn are typed.
#include "core/plan/edits/underlay.hpp"
#include "tests/ui/panel_bench.hpp"

namespace sumpwright::tests
{
namespace
{

class SketchForm : public PanelBench
{
protected:
    bool offered(const char* name)
    {
        for (const auto* each : panel.form()->findChildren<QLineEdit*>())
            if (each->accessibleName() == QString::fromUtf8(name) && each->isVisible())
                return true;
        return false;
    }
    void lay()
    {
        plan::Underlay sketch;
        sketch.fileName = "shed.png";
        ASSERT_TRUE(document.commit(plan::setUnderlay(sketch)));
    }
};

TEST_F(SketchForm, IsThereOnlyWhileASketchLiesUnderThePlan)
{
    document.commit(plan::removeUnderlay());
    EXPECT_FALSE(offered("Strength"));
    lay();
    EXPECT_TRUE(offered("Strength"));
    document.commit(plan::removeUnderlay());
    EXPECT_FALSE(offered("Strength"));
}

TEST_F(SketchForm, StrengthIsOneStepAndStaysWithThePlan)
{
    lay();
    EXPECT_EQ(shown("Strength"), "50 %");
    const int before = steps();
    enter("Strength", QStringLiteral("25"));
    EXPECT_DOUBLE_EQ(now().underlay->opacity, 0.25);
    EXPECT_EQ(steps(), before + 1);
    EXPECT_TRUE(document.undoStack().undoText().contains(QStringLiteral("opacity")))
        << document.undoStack().undoText().toStdString();
    document.undoStack().undo();
    EXPECT_DOUBLE_EQ(now().underlay->opacity, 0.5);
    EXPECT_EQ(shown("Strength"), "50 %");
}

TEST_F(SketchForm, RefusesAStrengthThatCannotBeDrawn)
{
    lay();
    for (const char* typed : {"0", "130 %", "-5", "strong"}) {
        enter("Strength", QString::fromLatin1(typed));
        EXPECT_NE(refusal("Strength"), "") << typed;
        EXPECT_DOUBLE_EQ(now().underlay->opacity, 0.5) << typed;
    }
}

TEST_F(SketchForm, TurnIsTyped)
{
    lay();
    enter("Turn", QStringLiteral("12 deg"));
    EXPECT_NEAR(units::inDegrees(now().underlay->turn), 12.0, 1e-9);
}

} // namespace
} // namespace sumpwright::tests
