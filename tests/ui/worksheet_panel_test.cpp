// The worksheets in the window: a fresh question asks quietly, a bad text is refused with its place and the value
// before stays, units are written as on a screen, lists come and go as text.
#include <gtest/gtest.h>

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>

#include "core/assessment/working.hpp"
#include "core/worksheets/worksheet.hpp"
#include "tests/core/worksheets/asking.hpp"
#include "ui/document/document.hpp"
#include "ui/style/palette.hpp"
#include "ui/text/refusals.hpp"
#include "ui/text/units_on_screen.hpp"
#include "ui/worksheets/worksheet_panel.hpp"

namespace sumpwright::tests
{
namespace
{

using ui::text::unitsOnScreen;
using ui::worksheets::WorksheetPanel;

class WorksheetBench : public testing::Test
{
protected:
    WorksheetBench()
    {
        panel.resize(420, 900);
        panel.show();
        EXPECT_TRUE(QTest::qWaitForWindowExposed(&panel));
        panel.activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&panel));
    }
    void choose(const std::string& id)
    {
        const auto& all = worksheets::allWorksheets();
        for (std::size_t i = 0; i < all.size(); ++i)
            if (all[i].id == id)
                panel.findChild<QComboBox*>()->setCurrentIndex(static_cast<int>(i));
    }
    QLineEdit& line(const char* name) const
    {
        for (auto* each : panel.findChildren<QLineEdit*>())
            if (each->accessibleName() == QString::fromUtf8(name))
                return *each;
        throw std::runtime_error(name);
    }
    void type(const char* name, const QString& text, bool enter = true)
    {
        QLineEdit& field = line(name);
        field.setFocus(Qt::TabFocusReason);
        field.selectAll();
        text.isEmpty() ? QTest::keyClick(&field, Qt::Key_Delete) : QTest::keyClicks(&field, text);
        if (enter)
            QTest::keyClick(&field, Qt::Key_Return);
    }
    // The line under the form; null while it is not shown.
    QLabel* said() const
    {
        auto* label = panel.findChild<QLabel*>(QStringLiteral("said"));
        return label && label->isVisible() ? label : nullptr;
    }
    std::string words() const { return said() ? said()->text().toStdString() : std::string(); }
    bool isFault() const
    {
        return said() && said()->palette().color(QPalette::WindowText) == ui::style::themeOf(panel).fault;
    }

    units::NumberStyle numbers = units::NumberStyle::point();
    ui::document::Document document;
    WorksheetPanel panel{document, [this] { return ui::text::DisplaySettings{units::UnitSystem::metric, numbers}; }};
};

TEST_F(WorksheetBench, AFreshQuestionIsNoRefusalButSaysWhatItNeeds)
{
    for (const auto& sheet : worksheets::allWorksheets()) {
        choose(sheet.id);
        SCOPED_TRACE(sheet.id);
        EXPECT_FALSE(isFault()) << words();
        if (panel.answer())
            continue;
        EXPECT_FALSE(words().empty()) << "neither an answer nor what is needed";
        for (const auto& input : sheet.inputs)
            if (input.required && input.ifAbsent.empty() && input.choices.empty()) {
                QString name = QString::fromStdString(input.name);
                EXPECT_NE(words().find(name.replace(u'_', u' ').toStdString()), std::string::npos) << words();
            }
        for (auto* field : panel.findChildren<QLineEdit*>())
            EXPECT_TRUE(field->accessibleDescription().isEmpty());
    }
}

TEST_F(WorksheetBench, ItAsksForWhatIsLeftUntilItCanAnswer)
{
    choose("pipe-content");
    EXPECT_EQ(words(), "Still needed: bore, length.");
    type("bore", QStringLiteral("25 mm"));
    EXPECT_EQ(words(), "Still needed: length.");
    type("length", QStringLiteral("1 m"), false); // answers without Enter
    ASSERT_TRUE(panel.answer());
    EXPECT_EQ(words(), "");
    EXPECT_TRUE(panel.answerText().contains(QStringLiteral("0.491 L"))) << panel.answerText().toStdString();
    type("length", {});
    EXPECT_FALSE(panel.answer());
    EXPECT_EQ(words(), "Still needed: length.");
    EXPECT_FALSE(isFault());
}

TEST_F(WorksheetBench, ABadTextIsRefusedAndTheValueBeforeStays)
{
    choose("pipe-content");
    type("bore", QStringLiteral("25 mm"));
    type("length", QStringLiteral("2 m"));
    const QString answer = panel.answerText();
    for (const char* bad : {"lots", "3 kg", "-1 m", "20 km", "1 m 2", "nan", "1,5 m"}) {
        type("length", QString::fromLatin1(bad), false);
        EXPECT_FALSE(isFault()) << bad << ": still being typed";
        QTest::keyClick(&line("length"), Qt::Key_Return);
        SCOPED_TRACE(words());
        EXPECT_TRUE(isFault()) << bad;
        EXPECT_EQ(words().rfind("length", 0), 0u) << "its place";
        EXPECT_NE(words().find("It stays 2 m."), std::string::npos);
        EXPECT_EQ(line("length").accessibleDescription().toStdString(), words());
        EXPECT_EQ(panel.answer()->inputs.size(), 2u);
        EXPECT_NE(panel.answerText(), QString()) << bad;
        QTest::keyClick(&line("length"), Qt::Key_Escape);
        EXPECT_EQ(line("length").text(), QStringLiteral("2 m"));
        EXPECT_EQ(words(), "");
        EXPECT_TRUE(line("length").accessibleDescription().isEmpty());
        EXPECT_EQ(panel.answerText(), answer);
    }
}

TEST_F(WorksheetBench, LeavingAFieldHandsItsTextOver)
{
    choose("pipe-content");
    type("bore", QStringLiteral("25 mm"));
    type("length", QStringLiteral("2 kg"), false);
    QTest::keyClick(&line("length"), Qt::Key_Tab);
    EXPECT_TRUE(isFault());
    EXPECT_NE(words().find("It stays empty."), std::string::npos) << words();
}

TEST_F(WorksheetBench, WhatDoesNotGoTogetherIsRefusedAtOneOfThem)
{
    choose("fitting-loss");
    type("bore", QStringLiteral("25 mm"));
    type("angle", QStringLiteral("37 deg"));
    EXPECT_TRUE(panel.answer());
    for (auto* box : panel.findChildren<QComboBox*>())
        if (const int at = box->findText(QStringLiteral("ball-valve")); at >= 0)
            box->setCurrentIndex(at);
    EXPECT_TRUE(isFault());
    EXPECT_FALSE(panel.answer());
    EXPECT_EQ(words().rfind("angle", 0), 0u) << words();
    type("angle", {});
    EXPECT_TRUE(panel.answer());
    EXPECT_FALSE(isFault());
}

TEST_F(WorksheetBench, UnitsAreWrittenAsOnAScreenAndCanBeTypedSo)
{
    choose("water-properties");
    type("temperature", QStringLiteral("25 °C"));
    ASSERT_TRUE(panel.answer());
    type("temperature", QStringLiteral("60 degC"));
    EXPECT_TRUE(isFault());
    EXPECT_FALSE(panel.answerText().contains(QStringLiteral("degC")));
    EXPECT_NE(words().find("40 °C"), std::string::npos) << words();
    EXPECT_EQ(words().find("degC", words().find("It stays")), std::string::npos) << words();
    choose("pipe-friction");
    EXPECT_EQ(line("temperature").placeholderText(), QStringLiteral("20 °C"));
    for (const auto& [id, texts] : goodQuestions()) {
        assessment::Working working{id, {}, {}, {}};
        for (const auto& input : texts)
            working.inputs.push_back({input.name, input.text});
        panel.open(working);
        ASSERT_TRUE(panel.answer()) << id << ": " << words();
        EXPECT_FALSE(panel.answerText().contains(QStringLiteral("deg"))) << panel.answerText().toStdString();
    }
}

TEST_F(WorksheetBench, UnitsOnScreenAreReadTheSame)
{
    EXPECT_EQ(unitsOnScreen(QStringLiteral("20 degC, 5 degF")), QStringLiteral("20 °C, 5 °F"));
    EXPECT_EQ(unitsOnScreen(QStringLiteral("degC (°C), K, degF (°F)")), QStringLiteral("°C, K, °F"));
    EXPECT_EQ(unitsOnScreen(QStringLiteral("37 deg")), QStringLiteral("37°"));
    EXPECT_EQ(unitsOnScreen(QStringLiteral("1.2 m2; 3 m3/s; kg/m3; bed m2: 4 L")),
              QStringLiteral("1.2 m²; 3 m³/s; kg/m³; bed m2: 4 L"));
    EXPECT_EQ(unitsOnScreen(QStringLiteral("degree")), QStringLiteral("degree"));
}

// As the person's desktop writes numbers; names in a list keep their points.
TEST_F(WorksheetBench, AWorkingIsFilledInTheDesktopsNumberStyle)
{
    numbers = units::NumberStyle::ofDesktop(",", ".");
    panel.open({"water-total", "total", {{"vessels", "bed 1.2: 0.5 L; 2.5 L"}}, {}});
    EXPECT_EQ(line("vessels").text(), QStringLiteral("bed 1.2: 0,5 L; 2,5 L"));
    ASSERT_TRUE(panel.answer()) << words();
    EXPECT_TRUE(panel.answerText().contains(QStringLiteral("3,00 L"))) << panel.answerText().toStdString();
}

TEST_F(WorksheetBench, ALongNumberOfThePlanCountsInFullAndIsShownShort)
{
    panel.open({"static-lift", "lift", {{"from", "0.15000000000000002 m"}, {"to", "12.3456789012 m"}}, {}});
    EXPECT_EQ(line("from").text(), QStringLiteral("0.15 m"));
    EXPECT_EQ(line("to").text(), QStringLiteral("12.3457 m"));
    EXPECT_EQ(worksheets::numberOf(panel.answer()->output("lift")->value), 12.3456789012 - 0.15000000000000002);
    QTest::keyClick(&line("to"), Qt::Key_Return); // nothing was typed
    EXPECT_EQ(worksheets::numberOf(panel.answer()->output("lift")->value), 12.3456789012 - 0.15000000000000002);
    EXPECT_TRUE(panel.answerText().contains(QStringLiteral("to = 12.3456789012 m"))) << "copied in full";
    type("to", QStringLiteral("12.3457 m "));
    EXPECT_NEAR(worksheets::numberOf(panel.answer()->output("lift")->value), 12.1957, 1e-12);
    panel.open({"sum-k", "sum_k", {{"coefficients", "exit: 1; elbow-90: 0.90000000000000002; 3*0.00012345678"}}, {}});
    EXPECT_EQ(line("coefficients").text(), QStringLiteral("exit: 1; elbow-90: 0.9; 3*0.000123457"));
}

TEST_F(WorksheetBench, OpenedFromAResultItSaysSoUntilAnotherQuestionIsChosen)
{
    const auto origin = [this] {
        for (auto* label : panel.findChildren<QLabel*>())
            if (label->isVisible() && label->text().startsWith(QStringLiteral("Filled with the numbers of the plan")))
                return label->text();
        return QString();
    };
    EXPECT_TRUE(origin().isEmpty());
    panel.open({"pipe-content", "volume", {{"bore", "25 mm"}, {"length", "1 m"}}, {}});
    EXPECT_FALSE(origin().isEmpty());
    EXPECT_FALSE(origin().contains(QStringLiteral("one pipe")));
    panel.open({"pump-duty",
                "flow",
                {{"pump", "G4500"}, {"static_head", "1 m"}, {"bore", "27.2 mm"}, {"length", "6 m"}},
                "network-as-one-pipe"});
    EXPECT_TRUE(origin().contains(QStringLiteral("one pipe")));
    choose("sum-k");
    EXPECT_TRUE(origin().isEmpty());
}

} // namespace
} // namespace sumpwright::tests
