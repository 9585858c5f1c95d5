#include <cstdlib>

#include <gtest/gtest.h>

#include <QFile>
#include <QImage>
#include <QTemporaryDir>

#include "core/engine/engine.hpp"
#include "core/plan/edits/place.hpp"
#include "core/storage/file.hpp"
#include "core/storage/plan_text.hpp"
#include "tests/support/child.hpp"
#include "ui/window/picture.hpp"

namespace sumpwright::tests
{
namespace
{

plan::Plan oneTank()
{
    plan::VesselWish wish;
    wish.centre = {units::metres(1.0), units::metres(2.0)};
    return plan::placeVessel(wish).apply(plan::Plan{}).value();
}

class Picture : public testing::Test
{
protected:
    QString file(const char* name) const { return folder.filePath(QString::fromLatin1(name)); }
    std::optional<base::Refusal> draw(const plan::Plan& plan, const char* name, int width = 800)
    {
        ui::window::PictureWish wish;
        wish.path = file(name);
        wish.width = width;
        return ui::window::writePicture(*engine::assess(plan, catalogue::Catalogue::builtIn()), wish);
    }
    std::string plan(const char* name, const std::string& text)
    {
        const std::string path = file(name).toStdString();
        EXPECT_FALSE(storage::writeFile(path, text));
        return path;
    }

    QTemporaryDir folder;
};

TEST_F(Picture, HoldsTheDrawingAtTheWidthAskedFor)
{
    ASSERT_FALSE(draw(oneTank(), "plan.png"));
    const QImage image(file("plan.png"));
    ASSERT_EQ(image.width(), 800);
    std::set<QRgb> colours;
    for (int y = 0; y < image.height(); y += 4)
        for (int x = 0; x < image.width(); x += 4)
            colours.insert(image.pixel(x, y));
    EXPECT_GT(colours.size(), 5u); // paper alone would be one
}

TEST_F(Picture, AsSvgKeepsTagsAsText)
{
    ASSERT_FALSE(draw(oneTank(), "plan.svg"));
    QFile svg(file("plan.svg"));
    ASSERT_TRUE(svg.open(QIODevice::ReadOnly));
    const QByteArray text = svg.readAll();
    EXPECT_TRUE(text.contains("<svg"));
    EXPECT_TRUE(text.contains("T1"));
}

TEST_F(Picture, RefusesAnEmptyPlanAnUnknownEndingAndASillyWidth)
{
    EXPECT_EQ(draw({}, "plan.png")->id, "picture.empty");
    EXPECT_EQ(draw(oneTank(), "plan.bmp")->id, "picture.ending");
    EXPECT_EQ(draw(oneTank(), "plan.png", 5)->id, "picture.width");
    EXPECT_EQ(draw(oneTank(), "no/such/folder/plan.png")->id, "picture.not-written");
    EXPECT_FALSE(QFile::exists(file("plan.png")));
}

TEST_F(Picture, IsWrittenByTheProgramWithoutADisplay)
{
    const std::string in = plan("plan.sumpwright", storage::saveText(oneTank()));
    unsetenv("DISPLAY");
    const ChildResult result = runProgram({"--picture", file("out.png").toStdString(), in});
    EXPECT_EQ(result.exitCode, 0) << result.errors;
    EXPECT_FALSE(QImage(file("out.png")).isNull());
}

TEST_F(Picture, ColoursTheRunsWhenAskedAndRefusesAnUnknownMeasure)
{
    const std::string in = SUMPWRIGHT_SOURCE "/resources/examples/community_shed.sumpwright";
    const std::string plain = file("plain.png").toStdString(), coloured = file("coloured.png").toStdString();
    EXPECT_EQ(runProgram({"--picture", plain, in}).exitCode, 0);
    EXPECT_EQ(runProgram({"--picture", coloured, "--runs-by", "velocity", in}).exitCode, 0);
    EXPECT_NE(QImage(QString::fromStdString(plain)), QImage(QString::fromStdString(coloured)));
    EXPECT_EQ(runProgram({"--picture", coloured, "--runs-by", "taste", in}).exitCode, 2);
}

TEST_F(Picture, OfABadPlanEndsWithTwoAndOneLine)
{
    for (const std::string& text : {std::string("{ not a plan"), std::string(), std::string("{}")}) {
        const ChildResult result =
            runProgram({"--picture", file("out.png").toStdString(), plan("bad.sumpwright", text)});
        EXPECT_EQ(result.exitCode, 2);
        EXPECT_EQ(std::count(result.errors.begin(), result.errors.end(), '\n'), 1) << result.errors;
        EXPECT_NE(result.errors.find("bad.sumpwright: "), std::string::npos) << result.errors;
    }
    EXPECT_EQ(runProgram({"--picture", file("out.png").toStdString(), file("absent").toStdString()}).exitCode, 2);
}

class DisplayServer : public testing::Test
{
protected:
    DisplayServer()
    {
        for (const char* name : {"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"}) {
            before.emplace_back(name, qgetenv(name));
            qunsetenv(name);
        }
        qputenv("XDG_STATE_HOME", folder.path().toUtf8());
    }
    ~DisplayServer() override
    {
        for (const auto& [name, value] : before)
            value.isNull() ? qunsetenv(name) : qputenv(name, value);
    }
    QTemporaryDir folder;
    std::vector<std::pair<const char*, QByteArray>> before;
};

TEST_F(DisplayServer, AbsentIsSaidInOneLineAndEndsWithOne)
{
    const ChildResult result = runProgram({});
    EXPECT_EQ(result.exitCode, 1);
    EXPECT_NE(result.errors.find("display"), std::string::npos) << result.errors;
    EXPECT_EQ(std::count(result.errors.begin(), result.errors.end(), '\n'), 1) << result.errors;
}

TEST_F(DisplayServer, ThatDoesNotAnswerIsSaidInOneLineAndEndsWithOne)
{
    qputenv("DISPLAY", ":97531");
    const ChildResult result = runProgram({});
    EXPECT_EQ(result.exitCode, 1);
    EXPECT_EQ(std::count(result.errors.begin(), result.errors.end(), '\n'), 1) << result.errors;
}

} // namespace
} // namespace sumpwright::tests
