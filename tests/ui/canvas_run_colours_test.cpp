// What the runs are coloured by: classes, words, marks, labels and the printed scale.
#include "ui/canvas/run_colours.hpp"

#include <QImage>

#include "core/engine/engine.hpp"
#include "core/storage/file.hpp"
#include "core/storage/plan_text.hpp"
#include "tests/ui/canvas_stage.hpp"
#include "ui/canvas/label_layer.hpp"
#include "ui/canvas/label_wishes.hpp"
#include "ui/canvas/render_plan.hpp"
#include "ui/canvas/run_scale_plate.hpp"

namespace sumpwright::test
{

using namespace ui::canvas;
namespace style = ui::style;

namespace
{
RunFigures at(double metresPerSecond)
{
    RunFigures run;
    run.velocity = units::metresPerSecond(metresPerSecond);
    return run;
}

RunFigures between(double start, double end)
{
    RunFigures run;
    run.gradeAtStart = units::elevationMetres(start);
    run.gradeAtEnd = units::elevationMetres(end);
    return run;
}

plan::Plan example(const char* name)
{
    const auto text =
        storage::readFile(std::string(SUMPWRIGHT_SOURCE "/resources/examples/") + name + ".sumpwright", 10'000'000);
    return storage::loadText(*text)->plan;
}

QString allWords(const PlanScene& scene)
{
    QString words;
    for (const auto& label : scene.labels().shown())
        for (const auto& line : label.text.lines)
            for (const auto& span : line)
                words += span.text + QLatin1Char('|');
    return words;
}
} // namespace

TEST(RunScale, SortsVelocitiesIntoFixedClasses)
{
    const RunScale scale(RunMeasure::velocity, {});
    EXPECT_EQ(scale.classes(), 5);
    EXPECT_EQ(scale.classOf(at(0.1)), 0);
    EXPECT_EQ(scale.classOf(at(0.3)), 1) << "a limit belongs to the class above it";
    EXPECT_EQ(scale.classOf(at(0.9)), 2);
    EXPECT_EQ(scale.classOf(at(5.0)), 4);
    EXPECT_FALSE(scale.classOf({})) << "not computed";
    EXPECT_FALSE(RunScale().classOf(at(1.0)));
}

TEST(RunScale, TellsItsClassesInTheReadersUnits)
{
    const RunScale scale(RunMeasure::velocity, {});
    const Figures metric{units::UnitSystem::metric, units::NumberStyle::point()};
    const Figures us{units::UnitSystem::us, units::NumberStyle::point()};
    EXPECT_TRUE(scale.words(0, metric).contains(QStringLiteral("0.3"))) << scale.words(0, metric).toStdString();
    EXPECT_TRUE(scale.words(1, metric).contains(QStringLiteral("0.6")));
    EXPECT_TRUE(scale.words(4, metric).contains(QStringLiteral("1.5")));
    EXPECT_TRUE(scale.words(4, us).contains(QStringLiteral("ft/s"))) << scale.words(4, us).toStdString();
}

TEST(RunScale, CutsHeadsAtRoundNumbersIntoFiveClassesAtMost)
{
    const Figures metric{units::UnitSystem::metric, units::NumberStyle::point()};
    for (const auto& [low, high] : {std::pair(0.83, 1.97), {-0.4, 12.0}, {1.0, 1.0}, {1.004, 1.011}, {0.0, 0.05}}) {
        const RunScale scale(RunMeasure::head, {between(low, low), between(high, high)});
        EXPECT_LE(scale.classes(), 5) << low << " to " << high;
        EXPECT_EQ(scale.classOf(between(low, low)), 0);
        EXPECT_EQ(scale.classOf(between(high, high)), scale.classes() - 1) << low << " to " << high;
        if (high - low > 1.0) {
            EXPECT_GE(scale.classes(), 3) << low << " to " << high;
        }
        for (int i = 0; i < scale.classes(); ++i)
            EXPECT_FALSE(scale.words(i, metric).isEmpty());
    }
    EXPECT_EQ(RunScale(RunMeasure::head, {}).classes(), 1);
}

TEST(RunColours, RiseInStrengthAgainstThePaperOfBothThemes)
{
    for (const auto scheme : {style::Scheme::light, style::Scheme::dark}) {
        const auto& theme = style::theme(scheme);
        double former = 1.0;
        for (int i = 0; i < 5; ++i) {
            const double contrast = style::contrast(colourOfClass(theme, i, 5, false), theme.paper);
            EXPECT_GT(contrast, former * 1.1) << i;
            former = contrast;
        }
        EXPECT_GT(former, 7.0);
        const QColor stale = colourOfClass(theme, 3, 5, true), fresh = colourOfClass(theme, 3, 5, false);
        EXPECT_LT(stale.hsvSaturation(), fresh.hsvSaturation() / 2);
    }
}

TEST(RunColours, TellSlowAndFullRunsInWords)
{
    const Figures metric{units::UnitSystem::metric, units::NumberStyle::point()};
    RunFigures run = at(0.12);
    run.mark = RunMark::slow;
    EXPECT_TRUE(figureText(RunMeasure::velocity, run, metric).endsWith(QStringLiteral("slow")));
    run.mark = RunMark::surcharged;
    EXPECT_TRUE(figureText(RunMeasure::head, run, metric).contains(QStringLiteral("full")));
    EXPECT_TRUE(figureText(RunMeasure::nothing, run, metric).isEmpty());
    EXPECT_TRUE(figureText(RunMeasure::head, between(1.62, 1.34), metric).contains(QStringLiteral("1.34")));
}

class CanvasRunColours : public CanvasStage
{
};

TEST_F(CanvasRunColours, WriteTheirFigureBesideTheFlowAndKeepLabelsApart)
{
    for (const char* name : {"community_shed", "back_garden"}) {
        const auto drawn = example(name);
        PlanScene scene(document.catalogue());
        scene.showPlan(drawn);
        scene.showWater(waterViewOf(*engine::assess(drawn, document.catalogue()), false));
        scene.setPixel(6.0);
        scene.relabel();
        EXPECT_FALSE(allWords(scene).contains(QStringLiteral("m/s")));
        for (const auto measure : {RunMeasure::velocity, RunMeasure::head}) {
            scene.setRunMeasure(measure);
            for (const double pixel : {4.0, 6.0, 9.0, 15.0}) {
                scene.setPixel(pixel);
                scene.relabel();
                const auto& labels = scene.labels().shown();
                for (std::size_t i = 0; i < labels.size(); ++i)
                    for (std::size_t j = i + 1; j < labels.size(); ++j)
                        EXPECT_FALSE(labels[i].rect.intersects(labels[j].rect)) << name << " at " << pixel;
            }
            scene.setPixel(5.0);
            scene.relabel();
            EXPECT_EQ(allWords(scene).contains(QStringLiteral("m/s")), measure == RunMeasure::velocity) << name;
        }
        scene.setPixel(farPixel + 1.0);
        scene.relabel();
        for (const auto& label : scene.labels().shown())
            EXPECT_EQ(drawn.runs.find(label.element), nullptr) << "far out no run is labelled";
    }
}

TEST_F(CanvasRunColours, PrintTheirScaleOnThePictureInBothThemes)
{
    const auto drawn = example("community_shed");
    const auto results = engine::assess(drawn, document.catalogue());
    for (const auto scheme : {style::Scheme::light, style::Scheme::dark}) {
        const auto picture = [&](RunMeasure measure) {
            QImage image(1600, 1131, QImage::Format_RGB32);
            QPainter painter(&image);
            RenderOptions options;
            options.theme = &style::theme(scheme);
            options.legend = true;
            options.runMeasure = measure;
            renderPlan(drawn, document.catalogue(), results.get(), painter, QRectF(0, 0, 1600, 1131), options);
            return image;
        };
        const QImage plain = picture(RunMeasure::nothing), coloured = picture(RunMeasure::velocity);
        EXPECT_NE(plain, coloured);
        const auto count = [&](const QImage& image) { // of pixels in the colour of any scale's highest class
            int found = 0;
            for (int classes = 2; classes <= 6; ++classes) {
                const QColor strongest = colourOfClass(style::theme(scheme), classes - 1, classes, false);
                int here = 0;
                for (int y = 0; y < image.height(); ++y)
                    for (int x = 0; x < image.width(); ++x)
                        here += image.pixel(x, y) == strongest.rgb() ? 1 : 0;
                found = std::max(found, here);
            }
            return found;
        };
        EXPECT_GT(count(coloured), count(plain) + 200) << "its swatch at least";
    }
}

TEST_F(CanvasRunColours, ShowOnTheViewWithTheStateTheyAreOf)
{
    open(samplePlan());
    settings.setRunMeasure(RunMeasure::velocity);
    const auto& drawing = view.planScene().drawing();
    EXPECT_TRUE(drawing.coloursRuns());
    EXPECT_TRUE(runScaleTitle(drawing).contains(QStringLiteral("least flow")));
    EXPECT_GT(runScaleSize(drawing).height(), 5 * 15.0);
    settings.setRunMeasure(RunMeasure::nothing);
    EXPECT_TRUE(runScaleSize(drawing).isEmpty());
}

} // namespace sumpwright::test
