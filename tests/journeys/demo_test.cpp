// The example plans drawn again in a real window, by the mouse and by the keys alone, saved, and compared with the
// examples' own files and with what the program computes from both.
#include <cmath>
#include <map>

#include <gtest/gtest.h>

#include <QApplication>
#include <QElapsedTimer>
#include <QFile>
#include <QLabel>
#include <QProcess>
#include <QTemporaryDir>

#include "tests/journeys/drawing.hpp"
#include "ui/window/main_window.hpp"
#include "ui/window/workplace.hpp"

namespace sumpwright::tests
{
namespace
{

using Json = nlohmann::json;

constexpr double onGrid = 0.02;    // m: a fifth of the grid step, for what a run is led to by pointing
constexpr double sameWater = 5e-3; // of flow, head and load: what those places may change

Json readFile(const QString& path)
{
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
    return Json::parse(file.readAll().toStdString());
}

Json assess(const QString& path)
{
    QProcess program;
    program.start(QStringLiteral(SUMPWRIGHT_PROGRAM), {QStringLiteral("assess"), path, QStringLiteral("--json")});
    EXPECT_TRUE(program.waitForFinished(30000));
    return Json::parse(program.readAllStandardOutput().toStdString());
}

// Without ids: what refers to an element by id names its tag, and lists are told by tags.
void gatherTags(const Json& node, std::map<int, std::string>& tags)
{
    if (node.is_object() && node.contains("id") && node.contains("tag"))
        tags[node["id"].get<int>()] = node["tag"].get<std::string>();
    for (const Json& child : node)
        if (child.is_structured())
            gatherTags(child, tags);
}

Json told(const Json& node, const std::map<int, std::string>& tags)
{
    if (node.is_array()) {
        Json list = Json::array();
        Json byTag = Json::object();
        for (const Json& child : node)
            if (child.is_object() && child.contains("tag"))
                byTag[child["tag"].get<std::string>()] = told(child, tags);
            else
                list.push_back(told(child, tags));
        return byTag.empty() ? list : byTag;
    }
    if (!node.is_object())
        return node;
    Json plain = Json::object();
    for (const auto& [key, value] : node.items()) {
        const bool refers = key == "vessel" || key == "port" || key == "tee" || key == "pump";
        if (refers && value.is_number())
            plain[key] = tags.at(value.get<int>());
        else if (key != "id")
            plain[key] = told(value, tags);
    }
    return plain;
}

Json substanceOf(const Json& plan)
{
    std::map<int, std::string> tags;
    gatherTags(plan, tags);
    return told(plan, tags);
}

void expectSame(const Json& drawn, const Json& wanted, const std::string& path)
{
    const bool pointed = path.find("/vertices") != std::string::npos || path.find("/tees/") == 0;
    if (wanted.is_structured()) {
        ASSERT_EQ(drawn.type_name(), std::string(wanted.type_name())) << path;
        EXPECT_EQ(drawn.size(), wanted.size()) << path << "\n" << drawn.dump() << "\n" << wanted.dump();
        const auto flat = wanted.items();
        for (const auto& [key, value] : flat) {
            const bool there = wanted.is_object() ? drawn.contains(key) : std::stoul(key) < drawn.size();
            EXPECT_TRUE(there) << path << "/" << key << " is missing";
            if (there)
                expectSame(wanted.is_object() ? drawn[key] : drawn[std::stoul(key)], value, path + "/" + key);
        }
        return;
    }
    if (wanted.is_string() && drawn.is_string()) {
        const QString a = QString::fromStdString(drawn.get<std::string>());
        const QString b = QString::fromStdString(wanted.get<std::string>());
        const double number = numberOf(b);
        if (!std::isnan(number))
            EXPECT_NEAR(numberOf(a), number, pointed ? onGrid : 1e-9) << path;
        else
            EXPECT_EQ(a.toStdString(), b.toStdString()) << path;
        return;
    }
    if (wanted.is_number() && drawn.is_number())
        EXPECT_NEAR(drawn.get<double>(), wanted.get<double>(), 1e-9) << path;
    else
        EXPECT_EQ(drawn, wanted) << path;
}

double value(const Json& json) { return json.at("value").get<double>(); }

double stoppedLevel(const Json& results)
{
    for (const Json& vessel : results.at("vessels"))
        if (vessel.at("kind") == "sump")
            return value(vessel.at("water").at("pump_stopped").at("level"));
    return std::nan("");
}

void expectSameNumbers(const Json& drawn, const Json& wanted)
{
    const auto near = [](double a, double b, const char* what) { EXPECT_NEAR(a, b, sameWater * std::fabs(b)) << what; };
    const auto duty = [](const Json& json) { return json.at("pumps").at(0).at("duty").at("least"); };
    near(value(duty(drawn).at("flow")), value(duty(wanted).at("flow")), "duty flow");
    near(value(duty(drawn).at("head")), value(duty(wanted).at("head")), "head");
    const auto rim = [](const Json& json) { return value(json.at("floor").at("to_rim").at("mass")); };
    near(rim(drawn), rim(wanted), "every vessel to its rim");
    EXPECT_NEAR(stoppedLevel(drawn), stoppedLevel(wanted), 1e-3) << "sump after pump stop";
}

// Counts what a mouse would send.
class MouseWatch final : public QObject
{
public:
    MouseWatch() { qApp->installEventFilter(this); }
    int seen = 0;

protected:
    bool eventFilter(QObject*, QEvent* event) override
    {
        const auto type = event->type();
        seen += type == QEvent::MouseButtonPress || type == QEvent::MouseMove || type == QEvent::Wheel ? 1 : 0;
        return false;
    }
};

struct Example {
    const char* file;
    std::vector<Stroke> (*strokes)();
};
void PrintTo(const Example& example, std::ostream* out) { *out << example.file; }

class Demo : public testing::TestWithParam<Example>
{
protected:
    Demo() : work(folder.filePath(QStringLiteral("state"))), window(work)
    {
        window.resize(1700, 1300);
        window.show();
        window.start({});
        EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
    }

    void draw(Hands& hands)
    {
        const QString example = QStringLiteral(SUMPWRIGHT_SOURCE "/resources/examples/") +
                                QString::fromLatin1(GetParam().file) + QStringLiteral(".sumpwright");
        const QString made = folder.filePath(QStringLiteral("drawn.sumpwright"));
        QElapsedTimer clock;
        clock.start();
        drawAll(hands, readFile(example), GetParam().strokes());
        hands.saveAs(made);
        RecordProperty("events", hands.events());
        RecordProperty("milliseconds", static_cast<int>(clock.elapsed()));
        std::printf("%s: %d events in %lld ms\n", GetParam().file, hands.events(),
                    static_cast<long long>(clock.elapsed()));
        expectSame(substanceOf(readFile(made)), substanceOf(readFile(example)), "");
        expectSameNumbers(assess(made), assess(example));
        if (HasFailure()) { // what it came to, beside the program
            window.grab().save(QStringLiteral("journey_failed.png"));
            QFile::remove(QStringLiteral("journey_failed.sumpwright"));
            QFile::copy(made, QStringLiteral("journey_failed.sumpwright"));
        }
    }

    QTemporaryDir folder;
    ui::window::Workplace work;
    ui::window::MainWindow window;
};

class DemoByMouse : public Demo
{
};

TEST_P(DemoByMouse, IsDrawnAgainFromAnEmptyPlan)
{
    const MouseWatch watch;
    MouseHands hands(window);
    draw(hands);
    EXPECT_GT(watch.seen, 100);
}

class DemoByKeyboard : public Demo
{
};

TEST_P(DemoByKeyboard, IsDrawnAgainFromAnEmptyPlan)
{
    const MouseWatch watch;
    KeyHands hands(window);
    draw(hands);
    EXPECT_EQ(watch.seen, 0);
}

const auto nameOf = [](const auto& each) { return std::string(each.param.file); };
const auto examples =
    testing::Values(Example{"back_garden", strokesOfBackGarden}, Example{"community_shed", strokesOfCommunityShed});
INSTANTIATE_TEST_SUITE_P(Example, DemoByMouse, examples, nameOf);
INSTANTIATE_TEST_SUITE_P(Example, DemoByKeyboard, examples, nameOf);

} // namespace
} // namespace sumpwright::tests
