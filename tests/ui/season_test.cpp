// What the year makes of the duty point, where a person sees it: pump form, site form, strip of figures, chart.
#include <algorithm>

#include <QAreaSeries>
#include <QChart>
#include <QLineSeries>

#include "core/assessment/season_result.hpp"
#include "tests/ui/panel_bench.hpp"
#include "ui/charts/duty_panel.hpp"
#include "ui/charts/readable_view.hpp"
#include "ui/charts/sign_button.hpp"
#include "ui/charts/signs.hpp"
#include "ui/properties/pump_form.hpp"
#include "ui/properties/site_form.hpp"
#include "ui/style/palette.hpp"

namespace sumpwright::tests
{
namespace
{

using namespace ui::properties;
using assessment::YearEnd;

// Numbers are kept beside their units on screen.
QString plain(QString words) { return words.replace(QChar(QChar::Nbsp), QChar(QChar::Space)); }

class YearOnScreen : public PanelBench
{
protected:
    YearOnScreen() // so much water that both beds can flood
    {
        document.commit(plan::setRunningLevel({system.sump}, units::elevationMetres(0.55)));
    }
    const assessment::PumpSeason& season() { return *assessment::find(results()->season->pumps, system.pump); }
    ui::text::DisplaySettings display() const { return {document.view().unitSystem(), document.view().numberStyle()}; }
    QString shownFlow(YearEnd end) { return display().quantityText(season().duty[end]->flow); }
    QString factIn(QWidget& form, const QString& piece)
    {
        for (const auto* field : form.findChildren<ResultField*>())
            if (plain(field->shownText()).contains(piece))
                return plain(field->shownText());
        return {};
    }
};

TEST_F(YearOnScreen, TheSiteFormTakesTheColdestAndTheWarmestWater)
{
    panel.showSite();
    const double designed = units::inMetresHead(season().duty[YearEnd::fouledCold]->head);
    enter("Coldest water in the year", QStringLiteral("4 degC"));
    enter("Warmest water in the year", QStringLiteral("29 degC"));
    EXPECT_EQ(now().site->coldestWater, units::celsius(4.0));
    EXPECT_EQ(results()->season->water[YearEnd::newWarm], units::celsius(29.0));
    EXPECT_NE(units::inMetresHead(season().duty[YearEnd::fouledCold]->head), designed);
    enter("Warmest water in the year", QStringLiteral("3 degC"));
    EXPECT_NE(refusal("Warmest water in the year"), "");
    EXPECT_EQ(now().site->warmestWater, units::celsius(29.0));
}

TEST_F(YearOnScreen, ThePumpFormTellsBothEnds)
{
    document.commit(plan::setColdestWater(units::celsius(4.0)));
    results();
    document.select({system.pump});
    for (const YearEnd end : assessment::bothYearEnds) {
        const QString fact = factIn(*panel.form(), shownFlow(end));
        EXPECT_TRUE(fact.startsWith(QStringLiteral("about "))) << fact.toStdString();
        EXPECT_TRUE(fact.contains(display().quantityText(results()->season->water[end]))) << fact.toStdString();
    }
    EXPECT_NE(shownFlow(YearEnd::fouledCold), shownFlow(YearEnd::newWarm));
}

TEST_F(YearOnScreen, TheFigureOfTheDutyTellsTheSpanOnAsking)
{
    const auto all = ui::charts::signsOf(*results(), nullptr, display());
    const auto duty =
        std::find_if(all.begin(), all.end(), [](const auto& sign) { return sign.id == QLatin1String("duty"); });
    ASSERT_NE(duty, all.end());
    const QString span = QStringLiteral("through the year about %1 to %2")
                             .arg(shownFlow(YearEnd::fouledCold), shownFlow(YearEnd::newWarm));
    EXPECT_EQ(duty->detail.toStdString(), span.toStdString());
    ui::charts::SignButton button(nullptr);
    button.show(*duty, false);
    EXPECT_TRUE(button.accessibleName().endsWith(span));
    EXPECT_TRUE(button.toolTip().startsWith(QStringLiteral("Through the year")));
}

TEST_F(YearOnScreen, TheChartShadesTheBandAndReadsItsEnds)
{
    results();
    ui::charts::DutyPanel chart(document, [this] { return display(); });
    chart.resize(500, 400);
    chart.show();
    chart.refresh();
    const auto series = chart.findChild<ui::charts::ReadableView*>()->chart()->series();
    const auto band =
        std::find_if(series.begin(), series.end(), [](auto* each) { return qobject_cast<QAreaSeries*>(each); });
    ASSERT_NE(band, series.end());
    const auto points = qobject_cast<QAreaSeries*>(*band)->upperSeries()->points();
    ASSERT_EQ(points.size(), 2);
    EXPECT_NEAR(points[0].x(), units::inLitresPerHour(season().duty[YearEnd::fouledCold]->flow), 1e-6);
    EXPECT_NEAR(points[1].x(), units::inLitresPerHour(season().duty[YearEnd::newWarm]->flow), 1e-6);
    int read = 0;
    for (const auto& reading : chart.readings())
        read += plain(reading.text).contains(QStringLiteral("coldest water: ")) ||
                plain(reading.text).contains(QStringLiteral("warmest water: "));
    EXPECT_EQ(read, 2);
    EXPECT_TRUE(plain(chart.sentence()).contains(shownFlow(YearEnd::fouledCold)));
    document.commit(plan::setPumpRunning({system.pump}, false));
    results();
    chart.refresh();
    EXPECT_FALSE((*band)->isVisible());
}

} // namespace
} // namespace sumpwright::tests
