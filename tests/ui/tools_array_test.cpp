// Copies in rows and columns.
#include "tests/ui/canvas_stage.hpp"

#include <QApplication>
#include <QLabel>
#include <QLineEdit>

#include <algorithm>

#include "ui/tools/array_tool.hpp"

namespace sumpwright::test
{

class Array : public CanvasStage
{
protected:
    void SetUp() override
    {
        CanvasStage::SetUp();
        toolbox.activate("place.media-bed");
        drag(at(1.0, 1.0), at(2.2, 2.0)); // 1.2 x 1.0 m around 1.6, 1.5
        ASSERT_EQ(plan().vessels.size(), 1U);
    }
    ui::tools::ArrayTool& tool() { return static_cast<ui::tools::ArrayTool&>(toolbox.tool("place.array")); }
    void enter(QLineEdit* field, const char* text)
    {
        field->setFocus();
        field->selectAll();
        QTest::keyClicks(field, QString::fromLatin1(text));
        QTest::keyClick(field, Qt::Key_Return);
    }
};

TEST_F(Array, IsTypedAndTakenByKeyboardInOneStep)
{
    toolbox.activate("place.array");
    ASSERT_TRUE(tool().columnsField()->hasFocus());
    EXPECT_EQ(document.shown().vessels.size(), 2U) << "what is offered shows at once";
    EXPECT_EQ(tool().acrossField()->text().toStdString(), units::format(units::metres(1.8)))
        << "1.2 m and 0.6 m to walk between";
    enter(tool().columnsField(), "3");
    enter(tool().rowsField(), "2");
    enter(tool().acrossField(), "150 cm");
    enter(tool().upField(), "-1.25 m"); // down the sheet
    EXPECT_EQ(document.shown().vessels.size(), 6U);
    EXPECT_EQ(steps(), 1) << "nothing is done yet";
    ASSERT_TRUE(view.hasFocus());
    key(Qt::Key_Return);
    ASSERT_EQ(plan().vessels.size(), 6U);
    EXPECT_EQ(steps(), 2);
    EXPECT_TRUE(isAt(vessel("B6").centre, 1.6 + 2 * 1.5, 1.5 - 1.25)) << "tags of their own, row by row";
    EXPECT_EQ(document.selection().size(), 6U);
    EXPECT_EQ(toolbox.active(), "select");
    EXPECT_FALSE(document.previewing());
}

TEST_F(Array, IsTakenByAClickAndGivenBackByEsc)
{
    toolbox.activate("place.array");
    view.setFocus();
    key(Qt::Key_Escape);
    EXPECT_EQ(toolbox.active(), "select");
    EXPECT_FALSE(document.previewing());
    EXPECT_EQ(plan().vessels.size(), 1U);
    EXPECT_EQ(steps(), 1);
    toolbox.activate("place.array");
    click(8.0, 6.0);
    EXPECT_EQ(plan().vessels.size(), 2U);
    EXPECT_EQ(steps(), 2);
}

TEST_F(Array, RefusesNonsenseBesideTheFieldAndKeepsWhatWasShown)
{
    toolbox.activate("place.array");
    for (const char* wrong : {"0", "-2", "1.5", "many", "401"}) {
        enter(tool().columnsField(), wrong);
        EXPECT_TRUE(tool().columnsField()->hasFocus()) << wrong;
        EXPECT_EQ(document.shown().vessels.size(), 2U) << wrong;
    }
    enter(tool().acrossField(), "3 kg");
    EXPECT_TRUE(tool().acrossField()->hasFocus());
    enter(tool().columnsField(), "1"); // with one row: no copy
    EXPECT_EQ(document.shown().vessels.size(), 1U);
    key(Qt::Key_Return);
    EXPECT_EQ(plan().vessels.size(), 1U);
    EXPECT_EQ(toolbox.active(), "place.array") << "refused: to be mended";
    enter(tool().rowsField(), "2");
    key(Qt::Key_Return);
    EXPECT_EQ(plan().vessels.size(), 2U);
}

TEST_F(Array, FieldsStayInsideANarrowPlanAndSoDoesWhatIsWrong)
{
    toolbox.activate("place.array");
    const auto inside = [this](const QWidget& field) {
        const QRect place(field.mapTo(&view, QPoint()), field.size());
        return view.viewport()->geometry().contains(place) && field.width() > 20;
    };
    for (const int width : {1000, 420}) {
        view.resize(width, 500);
        QApplication::processEvents();
        for (const auto* field : {tool().columnsField(), tool().rowsField(), tool().acrossField(), tool().upField()})
            EXPECT_TRUE(inside(*field)) << width;
    }
    enter(tool().acrossField(), "3 kg");
    QApplication::processEvents();
    const auto* strip = tool().acrossField()->parentWidget();
    const auto labels = strip->findChildren<QLabel*>();
    const auto message = std::find_if(labels.begin(), labels.end(), [](const QLabel* label) {
        return label->isVisible() && label->text().contains(QStringLiteral("3 kg"));
    });
    ASSERT_NE(message, labels.end());
    EXPECT_TRUE(inside(**message));
    EXPECT_GE((*message)->height(), (*message)->heightForWidth((*message)->width())) << "no line of it is cut";
}

TEST_F(Array, OfNothingOrOnAReadOnlyPlanSaysSo)
{
    document.select({});
    toolbox.activate("place.array");
    EXPECT_NE(said.find("Select what is to be copied"), std::string::npos) << said;
    QApplication::processEvents();
    EXPECT_EQ(toolbox.active(), "select");
    document.setReadOnly(true);
    document.select({idOf(plan(), "B1")});
    toolbox.activate("place.array");
    EXPECT_NE(said.find("read-only"), std::string::npos) << said;
    QApplication::processEvents();
    EXPECT_EQ(toolbox.active(), "select");
}

TEST_F(Array, SaysWhichRunsAreLeftBehind)
{
    open(samplePlan());
    document.select({idOf(plan(), "B1"), idOf(plan(), "R2")});
    toolbox.activate("place.array");
    view.setFocus();
    key(Qt::Key_Return);
    EXPECT_EQ(plan().vessels.size(), samplePlan().vessels.size() + 1);
    EXPECT_NE(said.find("Not copied"), std::string::npos) << said;
}

} // namespace sumpwright::test
