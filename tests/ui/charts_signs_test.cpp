// The strip of vital signs keeps still while a gesture lasts, in any width and in long units.
#include <gtest/gtest.h>

#include <QTest>

#include "tests/support/edited_plan.hpp"
#include "ui/charts/sign_button.hpp"
#include "ui/charts/vital_signs.hpp"
#include "ui/document/view_settings.hpp"

namespace
{

using namespace sumpwright;
using ui::charts::SignButton;

class SignStrip : public testing::Test
{
protected:
    SignStrip()
    {
        document.view().setNumberStyle(units::NumberStyle::point());
        document.view().setUnitSystem(units::UnitSystem::us);
        document.reset(system.plan);
        strip.show();
        results();
    }
    void results()
    {
        ASSERT_TRUE(QTest::qWaitFor([this] { return document.assessment() && !document.stale(); }, 20000));
    }
    // The height the strip asks for, and where each sign is.
    QList<QRect> places()
    {
        QTest::qWait(1);
        QList<QRect> all{QRect(0, 0, strip.width(), strip.heightForWidth(strip.width()))};
        for (const auto* button : strip.findChildren<SignButton*>())
            all << (button->isVisible() ? button->geometry() : QRect());
        return all;
    }
    bool anyWorse()
    {
        for (const auto* button : strip.findChildren<SignButton*>())
            if (!button->sign().worse.isEmpty())
                return true;
        return false;
    }

    test::SmallSystem system;
    ui::document::Document document;
    ui::charts::VitalSigns strip{
        document, [this] {
            return ui::text::DisplaySettings{document.view().unitSystem(), document.view().numberStyle()};
        }};
};

TEST_F(SignStrip, KeepsHeightAndPlacesInEveryWidthWhileAGestureLasts)
{
    int worse = 0;
    for (int width = 260; width < 1300; width += 40) {
        strip.resize(width, strip.heightForWidth(width));
        const auto before = places();
        for (const double height : {0.9, 1.3, 2.6, 0.35}) { // the sump: more load; then too low for its level
            ASSERT_FALSE(document.preview(plan::setWallHeight({system.sump}, units::metres(height))));
            results();
            EXPECT_EQ(places(), before) << width << " px, sump " << height << " m";
            worse += anyWorse() ? 1 : 0;
        }
        document.dropPreview();
        results();
        EXPECT_EQ(places(), before) << width;
    }
    EXPECT_GT(worse, 20);
}

TEST_F(SignStrip, KeepsThePlaceOfASignThatIsGoneForAWhile)
{
    strip.resize(700, strip.heightForWidth(700));
    const auto before = places();
    ASSERT_FALSE(document.preview(plan::setRunningLevel({system.sump}, std::nullopt)));
    results();
    EXPECT_EQ(places(), before);
    bool dash = false;
    for (const auto* button : strip.findChildren<SignButton*>())
        dash = dash || button->sign().value == ui::text::absentText();
    EXPECT_TRUE(dash) << "no level, no duty point";
    document.dropPreview();
    results();
    ASSERT_TRUE(document.commit(plan::setRunningLevel({system.sump}, std::nullopt)));
    results();
    EXPECT_NE(places(), before) << "for good it is absent";
}

TEST_F(SignStrip, ShowsEverySignWhole)
{
    for (const int width : {300, 620, 1200}) {
        strip.resize(width, strip.heightForWidth(width));
        places();
        for (const auto* button : strip.findChildren<SignButton*>())
            EXPECT_GE(button->width(), button->sizeHint().width()) << button->sign().value.toStdString();
    }
}

} // namespace
