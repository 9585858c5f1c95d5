#include <set>

#include <gtest/gtest.h>

#include <QApplication>
#include <QLabel>

#include "ui/style/palette.hpp"
#include "ui/style/plain_style.hpp"
#include "ui/style/series.hpp"
#include "ui/style/type.hpp"

namespace sumpwright::ui::style
{
namespace
{

class Colours : public testing::TestWithParam<Scheme>
{
protected:
    const Theme& t = theme(GetParam());
};

// The least ratios are those of WCAG 2.1: 1.4.3 (text) and 1.4.11 (what is not text).
constexpr double text = 4.5;
constexpr double lines = 3.0;

TEST(Contrast, AgreesWithPublishedRatios)
{
    EXPECT_NEAR(contrast(Qt::black, Qt::white), 21.0, 1e-9); // WCAG 2.1: black on white
    // #767676 is widely given as the lightest grey that reaches 4.5:1 on white (from memory).
    EXPECT_GE(contrast(QColor(0x767676), Qt::white), text);
    EXPECT_LT(contrast(QColor(0x777777), Qt::white), text);
    EXPECT_DOUBLE_EQ(contrast(Qt::white, Qt::black), contrast(Qt::black, Qt::white));
}

TEST_P(Colours, TextReadsOnEveryGround)
{
    for (const QColor& ground : {t.paper, t.panel, t.field, t.notice, t.floor})
        for (const QColor& ink : {t.ink, t.quiet, t.stale, t.accent, t.good, t.caution, t.fault})
            EXPECT_GE(contrast(ink, ground), text) << ink.name().toStdString() << " on " << ground.name().toStdString();
    EXPECT_GE(contrast(t.onAccent, t.accent), text);
    EXPECT_GE(contrast(t.ink, t.selectionWash), text);
    EXPECT_GE(contrast(t.ink, t.water), text);
    EXPECT_GE(contrast(t.ink, t.medium), text);
    EXPECT_GE(contrast(t.ink, t.shell), text);
}

TEST_P(Colours, LinesShowOnEveryGround)
{
    for (const QColor& ground : {t.paper, t.panel, t.field})
        for (const QColor& line : {t.faint, t.waterLine, t.selection, t.snap, t.wall})
            EXPECT_GE(contrast(line, ground), lines)
                << line.name().toStdString() << " on " << ground.name().toStdString();
    for (const QColor& fill : {t.water, t.medium, t.shell, t.floor})
        EXPECT_GE(contrast(t.selection, fill), lines) << fill.name().toStdString();
}

TEST_P(Colours, SeriesDifferInDashAndMarkerAndShowOnPaper)
{
    std::set<QList<qreal>> dashes;
    std::set<Marker> markers;
    for (int i = 0; i < seriesCount; ++i) {
        const SeriesStyle series = seriesStyle(t, i);
        dashes.insert(series.dash);
        markers.insert(series.marker);
        EXPECT_FALSE(series.colourName.isEmpty());
        EXPECT_GE(contrast(series.line, t.paper), lines) << series.colourName.toStdString();
        EXPECT_FALSE(markerPath(series.marker, 8).isEmpty());
    }
    EXPECT_EQ(dashes.size(), static_cast<std::size_t>(seriesCount));
    EXPECT_EQ(markers.size(), static_cast<std::size_t>(seriesCount));
}

TEST_P(Colours, FillsHaveAnOutlineThatShows)
{
    for (int i = 0; i < fillCount; ++i) {
        const FillStyle fill = fillStyle(t, i);
        EXPECT_GE(contrast(fill.outline, t.paper), lines);
        EXPECT_FALSE(brushOf(fill).style() == Qt::NoBrush);
    }
}

TEST_P(Colours, LoadScaleRisesAndItsNumbersRead)
{
    double before = 0.0;
    for (int i = 0; i <= 10; ++i) {
        const QColor shade = loadShade(t, i / 10.0);
        const double against = contrast(shade, t.paper);
        EXPECT_GE(against, before);
        EXPECT_GE(contrast(inkOn(t, shade), shade), text) << i;
        before = against;
    }
    EXPECT_EQ(loadShade(t, -1.0), loadShade(t, 0.0));
    EXPECT_EQ(loadShade(t, 2.0), loadShade(t, 1.0));
}

INSTANTIATE_TEST_SUITE_P(BothSchemes, Colours, testing::Values(Scheme::light, Scheme::dark),
                         [](const auto& chosen) { return chosen.param == Scheme::dark ? "Dark" : "Light"; });

TEST(Dress, TurnsWidgetsDarkAndBackAtRunTime)
{
    QLabel label;
    label.show();
    dress(Scheme::dark);
    QApplication::processEvents();
    EXPECT_EQ(themeOf(label).scheme, Scheme::dark);
    EXPECT_EQ(label.palette().color(QPalette::WindowText), theme(Scheme::dark).ink);
    dress(Scheme::light);
    QApplication::processEvents();
    EXPECT_EQ(themeOf(label).scheme, Scheme::light);
}

TEST(Type, HasTwoSizes)
{
    EXPECT_DOUBLE_EQ(bodyFont().pointSizeF(), strongFont().pointSizeF());
    EXPECT_GT(titleFont().pointSizeF(), bodyFont().pointSizeF());
    EXPECT_FALSE(face().isEmpty());
}

} // namespace
} // namespace sumpwright::ui::style
