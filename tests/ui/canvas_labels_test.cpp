// Letters never cover each other, keep off lines where they can, and keep their place.
#include "tests/ui/canvas_stage.hpp"

#include <QApplication>

#include "core/engine/engine.hpp"
#include "core/plan/edits/move.hpp"
#include "core/storage/file.hpp"
#include "core/storage/plan_text.hpp"
#include "ui/canvas/dimension_item.hpp"
#include "ui/canvas/label_layer.hpp"
#include "ui/canvas/label_wishes.hpp"
#include "ui/canvas/scene_point.hpp"

namespace sumpwright::test
{

using namespace ui::canvas;

namespace
{
LabelWish wishAt(std::uint64_t id, std::vector<QPointF> spots, int priority = 0)
{
    LabelWish wish;
    wish.element = base::Id{id};
    wish.priority = priority;
    LabelText text;
    text.size = QSizeF(40.0, 15.0);
    wish.texts = {text};
    for (const auto& spot : spots)
        wish.spots.push_back({0, spot});
    return wish;
}

int overlaps(const std::vector<LabelLayer::Shown>& labels)
{
    int found = 0;
    for (std::size_t i = 0; i < labels.size(); ++i)
        for (std::size_t j = i + 1; j < labels.size(); ++j)
            found += labels[i].rect.intersects(labels[j].rect) ? 1 : 0;
    return found;
}
} // namespace

TEST(LabelPlacement, GivesTheSecondLabelItsSecondSpot)
{
    const auto placed = placeLabels({wishAt(1, {{0, 0}}), wishAt(2, {{10, 0}, {0, 100}})}, Clutter(64.0), 1.0);
    ASSERT_EQ(placed.size(), 2U);
    EXPECT_EQ(placed[0].spot, 0U);
    EXPECT_EQ(placed[1].spot, 1U);
}

TEST(LabelPlacement, LeavesOutWhatFindsNoFreeSpot)
{
    const auto placed = placeLabels({wishAt(1, {{0, 0}}, 1), wishAt(2, {{10, 0}}, 0)}, Clutter(64.0), 1.0);
    ASSERT_EQ(placed.size(), 1U);
    EXPECT_EQ(placed[0].wish, 1U) << "the one of lower priority number is placed first";
}

TEST(LabelPlacement, PrefersASpotThatCoversNoLine)
{
    Clutter clutter(64.0);
    clutter.add({QLineF(-500.0, 0.0, 500.0, 0.0)}, cover::edge);
    const auto placed = placeLabels({wishAt(1, {{0, 0}, {0, 60}})}, clutter, 1.0);
    ASSERT_EQ(placed.size(), 1U);
    EXPECT_EQ(placed[0].spot, 1U);
}

TEST(LabelPlacement, GivesOutSpotsThatCoverNothingFirst)
{
    Clutter clutter(64.0);
    clutter.add({QLineF(-500.0, 0.0, 500.0, 0.0)}, cover::mark);
    const auto placed = placeLabels({wishAt(1, {{0, 6}}, 0), wishAt(2, {{0, 14}}, 1)}, clutter, 1.0);
    ASSERT_EQ(placed.size(), 1U);
    EXPECT_EQ(placed[0].wish, 1U) << "the other would have covered the line, and this one's place";
}

TEST(LabelPlacement, LeavesADispensableLabelOutRatherThanCoverAPipe)
{
    Clutter clutter(64.0);
    clutter.add({QLineF(-500.0, 0.0, 500.0, 0.0)}, cover::mark);
    auto wish = wishAt(1, {{0, 0}});
    EXPECT_EQ(placeLabels({wish}, clutter, 1.0).size(), 1U);
    wish.dispensable = true;
    EXPECT_TRUE(placeLabels({wish}, clutter, 1.0).empty());
}

TEST(LabelPlacement, CoversAPipeWithItsShortestTextOnly)
{
    auto wish = wishAt(1, {{0, 0}});
    wish.texts.push_back(wish.texts.front());
    wish.texts.back().size = QSizeF(16.0, 15.0);
    wish.spots.push_back({1, {0, 0}, 0.0, 16});
    Clutter clutter(64.0);
    clutter.add({QLineF(-500.0, 0.0, 500.0, 0.0)}, cover::mark);
    const auto placed = placeLabels({wish}, clutter, 1.0);
    ASSERT_EQ(placed.size(), 1U);
    EXPECT_EQ(placed[0].spot, 1U);
}

TEST(LabelPlacement, WeighsAThingOnceHoweverManyStrokesItHasAndByItsWidth)
{
    Clutter clutter(64.0);
    clutter.add({QLineF(0.0, 0.0, 5.0, 0.0), QLineF(5.0, 0.0, 10.0, 0.0)}, 7);
    EXPECT_EQ(clutter.costOf(QRectF(-1.0, -1.0, 12.0, 2.0)), 7);
    EXPECT_EQ(clutter.costOf(QRectF(-1.0, 4.0, 12.0, 2.0)), 0);
    clutter.add({QLineF(0.0, 0.0, 10.0, 0.0)}, 5, 4.5);
    EXPECT_EQ(clutter.costOf(QRectF(-1.0, 4.0, 12.0, 2.0)), 5);
}

TEST(LabelPlacement, KeepsTheFormerSpotWhileItIsAsGood)
{
    const std::map<LabelKey, std::size_t> former{{{base::Id{1}, 0}, 2}};
    const auto placed = placeLabels({wishAt(1, {{0, 0}, {0, 60}, {0, 120}})}, Clutter(64.0), 1.0, former);
    ASSERT_EQ(placed.size(), 1U);
    EXPECT_EQ(placed[0].spot, 2U);
}

TEST(LabelPlacement, GrowsWithThePixelAndTurnsWithTheLetters)
{
    LabelText text;
    text.size = QSizeF(40.0, 15.0);
    const auto lying = roomOf(text, {0, {0, 0}, 0.0}, 10.0);
    EXPECT_NEAR(lying.width(), 440.0, 1e-9);
    const auto standing = roomOf(text, {0, {0, 0}, -90.0}, 10.0);
    EXPECT_NEAR(standing.height(), lying.width(), 1e-9);
}

class CanvasLabels : public CanvasStage
{
};

namespace
{
bool crosses(const QRectF& rect, const QLineF& line)
{
    const QPointF corners[] = {rect.topLeft(), rect.topRight(), rect.bottomRight(), rect.bottomLeft()};
    for (int i = 0; i < 4; ++i)
        if (line.intersects(QLineF(corners[i], corners[(i + 1) % 4])) == QLineF::BoundedIntersection)
            return true;
    return rect.contains(line.p1());
}

// Labels that lie on the centre line of a pipe or on a dimension line, found without the placement's own look-up.
std::vector<std::string> coveringALine(const PlanScene& scene)
{
    std::vector<QLineF> lines;
    for (const auto& run : scene.plan().runs)
        for (std::size_t i = 0; i + 1 < run->vertices.size(); ++i)
            lines.emplace_back(toScene(run->vertices[i].at), toScene(run->vertices[i + 1].at));
    for (const auto& line : scene.plan().dimensions)
        lines.push_back(dimensionLine(toScene(line->from), toScene(line->to), toScene(line->offset)));
    std::vector<std::string> covering;
    for (const auto& label : scene.labels().shown())
        if (std::any_of(lines.begin(), lines.end(), [&](const QLineF& line) { return crosses(label.rect, line); }))
            covering.push_back(label.text.lines.front().front().text.toStdString());
    return covering;
}
} // namespace

TEST_F(CanvasLabels, OfTheExamplesLieOnNoPipeAndOnNoDimensionLine)
{
    for (const char* name : {"community_shed", "back_garden"}) {
        const std::string path = std::string(SUMPWRIGHT_SOURCE "/resources/examples/") + name + ".sumpwright";
        const auto text = storage::readFile(path, 10'000'000);
        ASSERT_TRUE(text.ok());
        const auto loaded = storage::loadText(*text);
        ASSERT_TRUE(loaded.ok());
        PlanScene scene(document.catalogue());
        scene.showPlan(loaded->plan);
        scene.showWater(waterViewOf(*engine::assess(loaded->plan, document.catalogue()), false));
        for (const double pixel : {4.0, 6.0, 7.5, 9.0, 11.0, 13.0, 15.0}) { // of half a screen to a large one
            scene.setPixel(pixel);
            scene.relabel();
            EXPECT_GT(scene.labels().shown().size(), loaded->plan.runs.size()) << name << " at " << pixel;
            for (const auto& label : coveringALine(scene))
                ADD_FAILURE() << label << " of " << name << " at " << pixel << " mm per pixel";
        }
    }
}

TEST_F(CanvasLabels, NeverCoverEachOtherAtAnyZoom)
{
    PlanScene scene(document.catalogue());
    const auto sample = samplePlan();
    scene.showPlan(sample);
    scene.showWater(waterViewOf(*engine::assess(sample, document.catalogue()), false));
    std::size_t most = 0;
    for (double pixel = 1.0; pixel < 60.0; pixel *= 1.5) {
        scene.setPixel(pixel);
        scene.relabel();
        EXPECT_EQ(overlaps(scene.labels().shown()), 0) << "at " << pixel << " mm per pixel";
        most = std::max(most, scene.labels().shown().size());
    }
    EXPECT_GT(most, 25U) << "tags of vessels, runs and fixtures are written at some zoom";
}

TEST_F(CanvasLabels, FarOutNameVesselsWhereThereIsRoomAndPipesOnlyWhenChosen)
{
    PlanScene scene(document.catalogue());
    const auto sample = samplePlan();
    scene.showPlan(sample);
    const auto labelled = [&scene](base::Id id) {
        const auto& shown = scene.labels().shown();
        return std::any_of(shown.begin(), shown.end(), [id](const auto& label) { return label.element == id; });
    };
    const auto run = idOf(sample, "R1");
    scene.setPixel(farPixel - 0.5);
    scene.relabel();
    EXPECT_TRUE(labelled(run));
    scene.setPixel(farPixel + 0.5);
    scene.relabel();
    for (const auto& each : sample.runs)
        EXPECT_FALSE(labelled(each->id)) << each->tag;
    EXPECT_TRUE(labelled(idOf(sample, "T1")));
    EXPECT_EQ(coveringALine(scene), std::vector<std::string>());
    scene.choose({run});
    scene.relabel();
    EXPECT_TRUE(labelled(run));
}

TEST_F(CanvasLabels, TellLevelVolumeAndFlowOfTheAssessment)
{
    PlanScene scene(document.catalogue());
    const auto sample = samplePlan();
    const auto assessment = engine::assess(sample, document.catalogue());
    scene.showPlan(sample);
    scene.setPixel(6.0);
    scene.relabel();
    const auto textOf = [&scene](base::Id id) {
        QString all;
        for (const auto& label : scene.labels().shown())
            if (label.element == id)
                for (const auto& line : label.text.lines)
                    for (const auto& span : line)
                        all += span.text + QLatin1Char('|');
        return all.toStdString();
    };
    const auto tank = idOf(sample, "T1");
    EXPECT_EQ(textOf(tank), "T1|") << "nothing is guessed before there are results";
    scene.showWater(waterViewOf(*assessment, false));
    scene.relabel();
    const auto& water = assessment::find(assessment->water->vessels, tank)->water[assessment::WaterState::runningLeast];
    ASSERT_TRUE(water.ok());
    EXPECT_NE(textOf(tank).find(units::format(water->level)), std::string::npos) << textOf(tank);
    EXPECT_NE(textOf(tank).find(units::format(water->volume)), std::string::npos) << textOf(tank);
    const auto main = idOf(sample, "R1");
    const auto& flow = assessment::find(assessment->flow->runs, main)->flow[assessment::RunningState::least];
    ASSERT_TRUE(flow.ok());
    EXPECT_NE(textOf(main).find(units::format(flow->flow)), std::string::npos) << textOf(main);
}

TEST_F(CanvasLabels, AreMarkedStaleWhileTheResultsBelongToAnOlderPlan)
{
    PlanScene scene(document.catalogue());
    const auto sample = samplePlan();
    scene.showPlan(sample);
    scene.setPixel(6.0);
    scene.showWater(waterViewOf(*engine::assess(sample, document.catalogue()), true));
    scene.relabel();
    int stale = 0;
    for (const auto& label : scene.labels().shown())
        for (const auto& line : label.text.lines)
            for (const auto& span : line) {
                EXPECT_NE(span.kind, SpanKind::result);
                stale += span.kind == SpanKind::staleResult ? 1 : 0;
            }
    EXPECT_GT(stale, 10);
}

TEST_F(CanvasLabels, StayWhereTheyAreWhenSomethingFarAwayMoves)
{
    PlanScene scene(document.catalogue());
    const auto sample = samplePlan();
    scene.showPlan(sample);
    scene.setPixel(9.0);
    scene.relabel();
    const auto before = scene.labels().shown();
    scene.showPlan(applied(sample, plan::moveElements({idOf(sample, "PP1")}, at(0.3, 0.0))));
    scene.relabel();
    std::size_t kept = 0;
    for (const auto& label : scene.labels().shown())
        kept += std::find(before.begin(), before.end(), label) != before.end() ? 1U : 0U;
    EXPECT_GE(kept + 1, before.size());
}

} // namespace sumpwright::test
