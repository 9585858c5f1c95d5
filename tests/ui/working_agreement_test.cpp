// Every number of the two examples that offers its working, in forms, charts and the strip of figures: the worksheet
// that opens gives the same number to the last digit shown.
#include <iostream>
#include <map>

#include <QRegularExpression>

#include "core/assessment/working.hpp"
#include "core/plan/edits/site.hpp"
#include "core/plan/run_ends.hpp"
#include "core/worksheets/worksheet.hpp"
#include "tests/ui/window_fixture.hpp"
#include "ui/charts/chart_panel.hpp"
#include "ui/charts/signs.hpp"
#include "ui/document/document.hpp"
#include "ui/document/view_settings.hpp"
#include "ui/properties/form.hpp"
#include "ui/properties/properties_panel.hpp"
#include "ui/properties/result_field.hpp"
#include "ui/window/panels.hpp"
#include "ui/worksheets/worksheet_panel.hpp"

namespace sumpwright::tests
{
namespace
{

using ui::properties::ResultField;

// How the window may write a value.
struct Written {
    const ui::text::DisplaySettings& display;
    std::string currency;

    QStringList operator()(const std::string& word) const { return {QString::fromStdString(word)}; }
    QStringList operator()(double ratio) const
    {
        return {display.ratioText(ratio), display.percentText(ratio), display.ratioText(ratio, 2),
                display.percentText(ratio, 2)};
    }
    template <class Kind> QStringList operator()(const Kind& value) const
    {
        units::Look look;
        look.currency = currency;
        units::Look small = look;
        small.smallInMillimetres = true; // 959 mm is 0.959 m
        return {display.quantityText(value, look), display.quantityText(value, small)};
    }
};

class Agreement : public OpenWindow, public testing::WithParamInterface<const char*>
{
protected:
    Agreement()
    {
        work.document.view().setNumberStyle(units::NumberStyle::point());
        const QString path = QStringLiteral(SUMPWRIGHT_SOURCE "/resources/examples/%1.sumpwright");
        EXPECT_TRUE(window.files().openPath(path.arg(QString::fromLatin1(GetParam()))));
        settle();
    }
    void settle()
    {
        EXPECT_TRUE(QTest::qWaitFor([&] { return work.document.assessment() && !work.document.stale(); }, 20000));
        QTest::qWait(1);
    }
    ui::text::DisplaySettings display() const
    {
        return {work.document.view().unitSystem(), work.document.view().numberStyle()};
    }

    // Every number in the words stands among the answers or the inputs of the worksheet.
    void expectSame(QString words, const assessment::Working& working, const std::string& where)
    {
        std::vector<worksheets::InputText> inputs;
        for (const auto& input : working.inputs)
            inputs.push_back({input.name, input.value});
        const auto sheet = worksheets::findWorksheet(working.worksheet);
        ASSERT_TRUE(sheet.ok()) << where;
        const auto answer = worksheets::answer(**sheet, inputs, *work.document.catalogue());
        ASSERT_TRUE(answer.ok()) << where << ": " << base::oneLine(answer.refusal());
        ASSERT_TRUE(answer->output(working.output)) << where << " has no " << working.output;
        const auto shown = display();
        QStringList known;
        for (const auto* values : {&answer->outputs, &answer->inputs})
            for (const auto& named : *values)
                known << std::visit(Written{shown, work.document.committed().site->currency}, named.value);
        std::sort(known.begin(), known.end(), [](const QString& a, const QString& b) { return a.size() > b.size(); });
        const QString before = words;
        for (const QString& text : known)
            words.remove(text);
        EXPECT_FALSE(words.contains(QRegularExpression(QStringLiteral("\\d"))))
            << where << ": \"" << before.toStdString() << "\" is not all given by " << working.worksheet << ": "
            << words.toStdString() << " is left";
        ++compared;
        ++perWorksheet[working.worksheet];
    }

    // What is no value: a source behind the coefficient, the code behind a live load.
    QString valuesIn(QString words) const
    {
        words.replace(u'\u00a0', u' ');
        if (words.startsWith(QStringLiteral("K ")) || words.contains(QStringLiteral(" in all, each K ")))
            return words.section(QStringLiteral(": "), 0, 0);
        if (const auto& comparison = work.document.assessment()->floor->comparison)
            words.remove(QString::fromStdString(comparison->code));
        return words;
    }

    // A tag is no value.
    QString withoutTags(QString words) const
    {
        for (const auto& run : work.document.committed().runs) {
            for (const auto& valve : run->valves)
                words.remove(QString::fromStdString(valve.tag));
            words.remove(QRegularExpression(QStringLiteral("\\b%1\\b").arg(QString::fromStdString(run->tag))));
        }
        return words;
    }

    // Depths and levels of gravity water come from an energy line stepped along the runs, and the course of a pump stop
    // from an integration over time: no single formula stands behind them.
    bool standsOnManySteps(const std::string& of, const QString& words) const
    {
        const plan::Plan& plan = work.document.committed();
        for (const auto& tee : plan.tees) {
            const auto meetings = plan::meetingsAt(plan, tee->id);
            if (tee->tag == of)
                return std::all_of(meetings.begin(), meetings.end(), [&](const plan::Meeting& meeting) {
                    return plan.runs.find(meeting.run)->service == plan::Service::gravity;
                });
        }
        return words.startsWith(QStringLiteral("up to ")) || words.startsWith(QStringLiteral("full, under pressure")) ||
               words.contains(QStringLiteral("(estimate)"));
    }

    // The form on view: each result with a button is pressed, those without are named.
    void askForm(const std::string& of)
    {
        auto& panel = window.panels().properties();
        for (auto* field : panel.form()->findChildren<ResultField*>()) {
            if (field->isHidden())
                continue;
            const std::string where = of + ", " + field->shownText().toStdString();
            if (!field->workingButton() || field->workingButton()->isHidden()) {
                if (!standsOnManySteps(of, field->shownText()) &&
                    withoutTags(field->shownText()).contains(QRegularExpression(QStringLiteral("[1-9]"))))
                    without << QString::fromStdString(where);
                continue;
            }
            std::optional<assessment::Working> handed;
            const auto link = QObject::connect(field, &ResultField::workingWanted, [&](const auto& w) { handed = w; });
            field->workingButton()->click();
            QObject::disconnect(link);
            ASSERT_TRUE(handed) << where;
            expectSame(valuesIn(field->shownText()), *handed, where);
            expectInWindow(*handed, where);
        }
    }

    // The worksheet that has opened shows the result.
    void expectInWindow(const assessment::Working& working, const std::string& where)
    {
        auto* sheet = window.findChild<ui::worksheets::WorksheetPanel*>();
        const auto answer = sheet->answer();
        ASSERT_TRUE(answer) << where << ": the window's worksheet has no answer";
        ASSERT_EQ(answer->worksheet, working.worksheet) << where;
        const auto* output = answer->output(working.output);
        ASSERT_TRUE(output) << where;
        const QString wanted = QString::fromStdString(worksheets::shown(output->value, display().numbers));
        EXPECT_TRUE(sheet->answerText().contains(QString(wanted).replace(QChar(0x202f), u' ')))
            << where << "\n"
            << sheet->answerText().toStdString();
    }

    int compared = 0;
    QStringList without;
    std::map<std::string, int> perWorksheet;
};

TEST_P(Agreement, OfEveryResultOfEveryForm)
{
    const plan::Plan& plan = work.document.committed();
    std::vector<base::Id> ids;
    for (const auto& each : plan.vessels)
        ids.push_back(each->id);
    for (const auto& each : plan.pumps)
        ids.push_back(each->id);
    for (const auto& each : plan.runs)
        ids.push_back(each->id);
    for (const auto& each : plan.tees)
        ids.push_back(each->id);
    for (const base::Id id : ids) {
        work.document.select({id});
        QTest::qWait(1);
        askForm(plan::tagOf(plan, id));
        if (HasFatalFailure())
            return;
    }
    work.document.select({});
    command("check.site")->trigger();
    askForm("site");
    command("check.datum")->trigger();
    askForm("floor");
    std::cout << GetParam() << ": " << compared << " results compared with their worksheets:";
    for (const auto& [id, count] : perWorksheet)
        std::cout << ' ' << id << ' ' << count;
    std::cout << "\n  without a working: " << without.join(QStringLiteral("; ")).toStdString() << '\n';
    EXPECT_GT(compared, 100);
    EXPECT_GE(perWorksheet.size(), 12u);
    EXPECT_TRUE(without.isEmpty()) << without.join(u'\n').toStdString();
}

TEST_P(Agreement, OfTheLiveLoad)
{
    command("check.datum")->trigger();
    for (const auto& use : work.document.catalogue()->liveLoads()) {
        ASSERT_TRUE(work.document.commit(plan::setFloorUse(use.id)));
        settle();
        askForm("floor, " + use.id);
    }
    EXPECT_EQ(perWorksheet["live-load"], static_cast<int>(work.document.catalogue()->liveLoads().size()));
}

TEST_P(Agreement, OfEveryValueReadInTheCharts)
{
    ASSERT_TRUE(work.document.commit(plan::setFloorUse(work.document.catalogue()->liveLoads().front().id)));
    settle();
    QStringList unread;
    const auto panels = window.findChildren<ui::charts::ChartPanel*>();
    EXPECT_EQ(panels.size(), 4);
    for (const char* id : {"check.water", "check.head", "check.duty", "check.floor"}) {
        command(id)->trigger();
        QTest::qWait(20);
    }
    for (auto* each : panels) {
        auto& panel = *each;
        panel.refresh();
        ASSERT_TRUE(panel.working()) << panel.question().toStdString() << ": of its figure";
        for (int i = 0; i < static_cast<int>(panel.readings().size()); ++i) {
            panel.read(i);
            const QString text = panel.readOut();
            const auto working = panel.working();
            if (!working) {
                unread << text;
                continue;
            }
            static const QRegularExpression counted(QStringLiteral(" in \\d+ fittings?$"));
            expectSame(text.section(QStringLiteral(": "), -1).remove(counted), *working, text.toStdString());
        }
        panel.read(-1);
    }
    for (const QString& text : unread) // the whole network stands behind each of them
        EXPECT_TRUE(text.startsWith(QStringLiteral("Pipework"))) << text.toStdString();
    EXPECT_GT(compared, 50);
}

TEST_P(Agreement, OfTheFiguresInTheStrip)
{
    const auto results = work.document.assessment();
    int figures = 0;
    for (const auto& sign : ui::charts::signsOf(*results, nullptr, display())) {
        if (sign.id == QLatin1String("findings"))
            continue;
        const auto working = ui::charts::workingOfSign(*results, sign.id);
        ASSERT_TRUE(working) << sign.id.toStdString();
        expectSame(sign.value, *working, sign.id.toStdString());
        ++figures;
        command(("working." + sign.id.toStdString()).c_str())->trigger();
        expectInWindow(*working, sign.id.toStdString());
    }
    EXPECT_EQ(figures, 4);
}

INSTANTIATE_TEST_SUITE_P(Examples, Agreement, testing::Values("community_shed", "back_garden"),
                         [](const auto& each) { return std::string(each.param); });

} // namespace
} // namespace sumpwright::tests
