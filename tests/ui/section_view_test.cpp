// The pane of levels in the window: its axis, its selection, its letters, its modes and what is remembered of them.
#include <QComboBox>

#include "core/plan/edits/vertex.hpp"
#include "tests/ui/levels_fixture.hpp"
#include "ui/canvas/scene_point.hpp"
#include "ui/document/view_settings.hpp"
#include "ui/section/level_ruler.hpp"

namespace sumpwright::tests
{
namespace
{

using plan::LevelKind;
using ui::section::Mode;

QStringList lettersOf(ui::section::LevelView& view)
{
    QStringList texts;
    for (const auto& placed : view.labels()) {
        const auto& wish = view.wishes()[placed.wish];
        for (const auto& line : wish.texts[wish.spots[placed.spot].text].lines)
            for (const auto& span : line)
                texts << span.text;
    }
    return texts;
}

class LevelPane : public LevelsWindow
{
protected:
    double screenXOfPlan(plan::Point place)
    {
        const auto& plan = window.planView();
        return plan.viewport()->mapToGlobal(QPoint()).x() +
               plan.viewportTransform().map(ui::canvas::toScene(place)).x();
    }
    double screenXOfPane(units::Length along)
    {
        return view().viewport()->mapToGlobal(QPoint()).x() + view().sheet().x(along);
    }
    void expectLettersApart(const std::string& where)
    {
        repaint();
        const auto& labels = view().labels();
        for (std::size_t i = 0; i < labels.size(); ++i) {
            EXPECT_TRUE(view().sheet().room.contains(labels[i].rect)) << where;
            for (std::size_t j = i + 1; j < labels.size(); ++j)
                EXPECT_FALSE(labels[i].rect.adjusted(0.5, 0.5, -0.5, -0.5).intersects(labels[j].rect))
                    << where << ": " << lettersOf(view()).join(u'|').toStdString();
        }
    }
};

TEST_F(LevelPane, StandsUnderThePlanPlaceForPlace)
{
    open();
    const plan::Point places[] = {{units::metres(0.0), units::metres(0.0)}, {units::metres(7.8), units::metres(4.0)}};
    const auto expectAlike = [&](const char* when) {
        for (const plan::Point& place : places)
            EXPECT_NEAR(screenXOfPlan(place), screenXOfPane(place.x), 0.51) << when;
        EXPECT_NEAR(view().sheet().scale, window.planView().zoom() * 1000.0, 1e-9) << when;
    };
    expectAlike("at first");
    window.planView().zoomAbout({200, 100}, 1.6);
    expectAlike("after zooming");
    window.planView().panBy({130, 40});
    expectAlike("after panning");
    window.resize(1200, 860);
    QTest::qWait(50);
    expectAlike("after a change of size");
}

TEST_F(LevelPane, IsTrueToScaleUnlessItSaysSo)
{
    open();
    EXPECT_DOUBLE_EQ(view().sheet().tall(), view().sheet().scale);
    for (const int times : {2, 5}) {
        panel().setHeights(times);
        EXPECT_DOUBLE_EQ(view().sheet().tall(), times * view().sheet().scale);
    }
    panel().setHeights(3); // not offered
    EXPECT_DOUBLE_EQ(view().sheet().tall(), view().sheet().scale);
}

TEST_F(LevelPane, AClickSelectsInThePlanAndTheSelectionOfThePlanIsNamedHere)
{
    open();
    const auto& tank = *plan().vessels.find(idOf("T1"));
    const QPoint inside = view().sheet().at(tank.centre.x - units::metres(0.8), tank.baseLevel + units::metres(0.6)).toPoint();
    click(inside);
    EXPECT_EQ(document().selection(), std::vector{tank.id});
    document().select({idOf("B6")});
    repaint();
    EXPECT_TRUE(lettersOf(view()).join(u'|').contains(QStringLiteral("rim")))
        << lettersOf(view()).join(u'|').toStdString();
    click(view().sheet().room.topRight().toPoint() + QPoint(-3, 3));
    EXPECT_TRUE(document().selection().empty());
    show(Mode::section);
    const auto& section = view().sectionPage().path();
    ASSERT_TRUE(section);
    const auto& profile = section->vessels.front().profile;
    click(view().sheet().at(profile.left + units::metres(0.1), profile.base + units::metres(0.3)).toPoint());
    EXPECT_EQ(document().selection(), std::vector{idOf("S1")});
}

TEST_F(LevelPane, LettersNeverCoverOneAnother)
{
    for (const char* example : {"community_shed", "back_garden"})
        for (const QSize size : {QSize(1366, 768), QSize(1920, 1080)}) {
            open(example, size.width(), size.height());
            for (const Mode mode : {Mode::elevation, Mode::section}) {
                show(mode);
                for (const int heights : {1, 5}) {
                    panel().setHeights(heights);
                    document().select({});
                    expectLettersApart(example);
                    for (const auto& vessel : plan().vessels) {
                        document().select({vessel->id});
                        expectLettersApart(std::string(example) + ", " + vessel->tag);
                    }
                    for (const auto& run : plan().runs) {
                        document().select({run->id});
                        expectLettersApart(std::string(example) + ", " + run->tag);
                    }
                }
            }
        }
}

TEST_F(LevelPane, TheSectionSaysWhatARunThatRisesWants)
{
    open();
    show(Mode::section);
    EXPECT_FALSE(lettersOf(view()).join(u'|').contains(QStringLiteral("rises")));
    const auto& drain = *plan().runs.find(idOf("R24")); // -0.06 m to -0.12 m over 1.55 m
    ASSERT_EQ(drain.vertices.size(), 3U);
    ASSERT_TRUE(document().commit(plan::setVertexLevel(drain.id, 1, units::elevationMetres(-0.22))));
    repaint();
    // 100 mm up; at 1 in 100 it should fall 15.5 mm.
    EXPECT_TRUE(lettersOf(view()).join(u'|').contains(QStringLiteral("rises 100 mm, needs 116 mm more fall")))
        << lettersOf(view()).join(u'|').toStdString();
}

TEST_F(LevelPane, TheSectionFollowsTheWayThatIsChosen)
{
    open();
    show(Mode::section);
    auto* ways = panel().findChild<QComboBox*>();
    ASSERT_TRUE(ways && ways->count() == 7) << (ways ? ways->count() : -1); // the tank and six beds
    const int bed = ways->findText(QStringLiteral("P1 to B6"));
    ASSERT_GE(bed, 0);
    ways->setCurrentIndex(bed);
    Q_EMIT ways->activated(bed);
    repaint();
    ASSERT_TRUE(view().sectionPage().path());
    EXPECT_EQ(view().sectionPage().path()->way.stops.front().vessel, idOf("B6"));
    EXPECT_TRUE(view().sectionPage().path()->way.closed);
    ASSERT_TRUE(document().commit(plan::setLevel(levelOf("B6", LevelKind::rim), units::elevationMetres(0.95))));
    repaint();
    EXPECT_EQ(view().sectionPage().path()->way.stops.front().vessel, idOf("B6")); // stays
}

TEST_F(LevelPane, SaysWhatIsMissingWhereThereIsNothingToDraw)
{
    show(Mode::elevation);
    EXPECT_FALSE(view().page().empty().isEmpty());
    placeTank();
    repaint();
    EXPECT_TRUE(view().page().empty().isEmpty());
    show(Mode::section);
    EXPECT_TRUE(view().page().empty().contains(QStringLiteral("pump")));
    for (const Qt::Key each : {Qt::Key_Right, Qt::Key_Return, Qt::Key_Up, Qt::Key_Home, Qt::Key_Plus})
        key(each);
    repaint();
}

TEST_F(LevelPane, KeysShowAndHideItInEitherMode)
{
    open();
    EXPECT_TRUE(command("view.elevation")->isChecked());
    QTest::keyClick(&window, Qt::Key_F12, Qt::ShiftModifier);
    EXPECT_EQ(panel().mode(), Mode::section);
    EXPECT_TRUE(command("view.section")->isChecked());
    EXPECT_FALSE(command("view.elevation")->isChecked());
    EXPECT_TRUE(view().hasFocus());
    QTest::keyClick(&window, Qt::Key_F12, Qt::ShiftModifier);
    EXPECT_TRUE(panel().visibleRegion().isEmpty());
    EXPECT_FALSE(command("view.section")->isChecked());
    QTest::keyClick(&window, Qt::Key_F12);
    QTest::qWait(30);
    EXPECT_FALSE(panel().visibleRegion().isEmpty());
    EXPECT_EQ(panel().mode(), Mode::elevation);
}

TEST_F(LevelPane, IsFoundAgainAsItWasLeft)
{
    open();
    show(Mode::section);
    panel().setHeights(2);
    window.close();
    ui::window::Workplace again(state());
    ui::window::MainWindow second(again);
    EXPECT_EQ(second.panels().levels().mode(), Mode::section);
    EXPECT_EQ(second.panels().levels().heights(), 2);
    EXPECT_TRUE(second.commands().find("view.section")->isChecked());
}

TEST_F(LevelPane, TellsAssistiveTechnologyWhatItShowsAndWhereTheKeysAre)
{
    open();
    EXPECT_TRUE(view().accessibleDescription().contains(QStringLiteral("fish tank T1")));
    click(at(levelOf("T1", LevelKind::lip)));
    EXPECT_TRUE(view().accessibleDescription().contains(QStringLiteral("overflow")))
        << view().accessibleDescription().toStdString();
    show(Mode::section);
    EXPECT_EQ(view().accessibleName(), QStringLiteral("Section along the water"));
}

TEST(LevelRuler, WritesLevelsInTheReadersUnit)
{
    ui::canvas::Figures figures;
    const auto texts = [&](double low, double high, double tall) {
        QStringList list;
        for (const auto& tick : ui::section::levelTicks(low, high, tall, figures))
            if (tick.main)
                list << tick.text;
        return list.join(u' ');
    };
    EXPECT_EQ(texts(-0.6, 1.1, 70.0), QString::fromUtf8("\u22120.5 \u00B10.0 +0.5 +1.0"));
    EXPECT_EQ(texts(-0.3, 0.3, 200.0), QString::fromUtf8("\u22120.2 \u00B10.0 +0.2"));
    figures.system = units::UnitSystem::us;
    EXPECT_EQ(texts(-0.4, 0.7, 100.0), QString::fromUtf8("\u22121 \u00B10 +1 +2")); // feet
}

} // namespace
} // namespace sumpwright::tests
