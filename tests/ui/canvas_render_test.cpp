// The drawing on paper and in pictures: true scale, real line widths, nothing of the screen.
#include "tests/ui/canvas_stage.hpp"

#include <QBuffer>
#include <QImage>
#include <QPainter>
#include <QRegularExpression>
#include <QSvgGenerator>

#include "core/engine/engine.hpp"
#include "core/plan/edits/floor.hpp"
#include "ui/canvas/legend.hpp"
#include "ui/canvas/render_plan.hpp"

namespace sumpwright::test
{

using namespace ui::canvas;

namespace
{
QImage picture(const plan::Plan& plan, QSize size, const RenderOptions& options, double* denominator = nullptr)
{
    QImage image(size, QImage::Format_RGB32);
    image.fill(Qt::magenta);
    QPainter painter(&image);
    const double used =
        renderPlan(plan, catalogue::Catalogue::builtIn(), nullptr, painter, QRectF(QPointF(), QSizeF(size)), options);
    if (denominator)
        *denominator = used;
    return image;
}

// First and last column of pixels, on one row, as dark as ink.
std::pair<int, int> inkedSpan(const QImage& image, int row)
{
    std::pair<int, int> span{-1, -1};
    for (int x = 0; x < image.width(); ++x) {
        if (image.pixelColor(x, row).lightness() > 120)
            continue;
        if (span.first < 0)
            span.first = x;
        span.second = x;
    }
    return span;
}
} // namespace

TEST(RenderPlan, DrawsOneMetreAtOneToFiftyAsTwentyMillimetres)
{
    const auto floorOnly = applied({}, plan::setOutline({at(0, 0), at(4, 0), at(4, 3), at(0, 3)}));
    RenderOptions options;
    options.unit = 300.0 / 96.0; // 300 dots an inch
    options.denominator = 50.0;
    options.furniture = false;
    const auto image = picture(floorOnly, QSize(2000, 1600), options);
    const auto span = inkedSpan(image, 800);
    const double millimetres = (span.second - span.first) / 300.0 * 25.4;
    EXPECT_NEAR(millimetres, 80.0, 0.8) << "4 m at 1:50, the edge line's own width left aside";
}

TEST(RenderPlan, FitsThePlanAndSaysTheScale)
{
    double denominator = 0.0;
    const auto image = picture(samplePlan(), QSize(1400, 1000), {}, &denominator);
    EXPECT_GT(denominator, 10.0);
    EXPECT_LT(denominator, 60.0);
    const auto& paper = ui::style::theme(ui::style::Scheme::light).paper;
    for (const QPoint edge : {QPoint(2, 500), QPoint(1397, 500), QPoint(700, 2)})
        EXPECT_EQ(image.pixelColor(edge), paper) << "the drawing keeps off the edge";
}

TEST(RenderPlan, IsTheSameTwiceAndDiffersByTheme)
{
    RenderOptions dark;
    dark.theme = &ui::style::theme(ui::style::Scheme::dark);
    const auto sample = samplePlan();
    EXPECT_EQ(picture(sample, QSize(900, 600), {}), picture(sample, QSize(900, 600), {}));
    EXPECT_NE(picture(sample, QSize(900, 600), {}), picture(sample, QSize(900, 600), dark));
}

TEST(RenderPlan, SvgKeepsTextAsTextAndGivesLinesAWidth)
{
    QBuffer buffer;
    QSvgGenerator svg;
    svg.setOutputDevice(&buffer);
    svg.setSize(QSize(1200, 800));
    svg.setViewBox(QRect(0, 0, 1200, 800));
    QPainter painter(&svg);
    const auto sample = samplePlan();
    const auto assessment = engine::assess(sample, catalogue::Catalogue::builtIn());
    RenderOptions options;
    options.legend = true;
    renderPlan(sample, catalogue::Catalogue::builtIn(), assessment.get(), painter, QRectF(0, 0, 1200, 800), options);
    painter.end();
    const QString text = QString::fromUtf8(buffer.data());
    EXPECT_TRUE(text.contains(QLatin1String(">T1<")));
    EXPECT_TRUE(text.contains(QLatin1String("non-return valve")));
    EXPECT_FALSE(text.contains(QLatin1String("nan")));
    EXPECT_FALSE(text.contains(QLatin1String("non-scaling-stroke"))) << "a cosmetic pen would thin out on paper";
}

TEST(RenderPlan, EmptyPlanGivesPaperAndNoCrash)
{
    const auto image = picture({}, QSize(400, 300), {});
    EXPECT_EQ(image.pixelColor(200, 150), ui::style::theme(ui::style::Scheme::light).paper);
    picture({}, QSize(1, 1), {});
}

TEST(Legend, NamesEverySymbolOnceAndPaintsEachWithinItsRow)
{
    std::set<QString> meanings;
    for (const auto& row : legendRows()) {
        EXPECT_TRUE(meanings.insert(row.meaning).second) << row.meaning.toStdString();
        QImage image(60, 60, QImage::Format_RGB32);
        image.fill(Qt::white);
        QPainter painter(&image);
        painter.translate(30.0, 30.0);
        row.paint(painter, Ink{&ui::style::theme(ui::style::Scheme::light), 1.0});
        painter.end();
        bool inside = false;
        for (int x = 0; x < 60; ++x)
            for (int y = 0; y < 60; ++y) {
                if (image.pixelColor(x, y) == QColor(Qt::white))
                    continue;
                inside = true;
                EXPECT_TRUE(x >= 8 && x <= 52 && y >= 18 && y <= 42)
                    << row.meaning.toStdString() << " at " << x << "," << y;
            }
        EXPECT_TRUE(inside) << row.meaning.toStdString() << " is blank";
    }
}

} // namespace sumpwright::test
