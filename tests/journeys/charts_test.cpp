// Every side chart read by keys alone, value by value, and its exported numbers, against what the program prints for
// the same file as `assess --json`: the window and the command line may not tell two stories.
#include <array>
#include <cmath>
#include <map>
#include <utility>

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <QAccessible>
#include <QApplication>
#include <QFile>
#include <QFileDialog>
#include <QKeyEvent>
#include <QLineEdit>
#include <QMenu>
#include <QProcess>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>
#include <QWindow>

#include "core/units/measures.hpp"
#include "core/units/parse.hpp"
#include "ui/charts/chart_panel.hpp"
#include "ui/document/view_settings.hpp"
#include "ui/window/main_window.hpp"
#include "ui/window/workplace.hpp"

namespace sumpwright::tests
{
namespace
{

using Json = nlohmann::json;
using Values = std::vector<double>; // SI, in the order they are read aloud
using Told = std::map<std::string, Values>;

struct Spoken { // SI
    double value;
    double rounding; // half a step of the last digit that counts
    bool operator==(const Spoken&) const = default;
};
using Heard = std::map<std::string, std::vector<Spoken>>;

// The text one step of its last digit further: of the third that counts, since results have three, or of the last.
std::string nextOf(std::string text)
{
    std::size_t last = std::string::npos;
    int counting = 0;
    for (std::size_t i = 0; i < text.size() && counting < 3; ++i) {
        const bool digit = text[i] >= '0' && text[i] <= '9';
        if (digit && (counting > 0 || text[i] != '0'))
            ++counting;
        if (digit)
            last = i;
        else if (last != std::string::npos && text[i] >= 'A' && text[i] <= 'z')
            break; // the unit
    }
    text.at(last) = static_cast<char>(text.at(last) == '9' ? '8' : text.at(last) + 1);
    return text;
}

double first(const Json& json) { return json.at("value").get<double>(); }

bool solved(const Json& json) { return json.value("status", "") == "solved"; }

Told waterOf(const Json& json)
{
    const std::map<std::string, std::string> parts{{"fish_tank", "Fish tanks"},
                                                   {"sump", "Sump"},
                                                   {"media_bed", "Grow beds"},
                                                   {"raft_bed", "Grow beds"},
                                                   {"settler", "Settlers"}};
    const std::map<std::string, std::string> states{
        {"running_least", "Beds flooded"}, {"running_most", "Beds drained"}, {"pump_stopped", "Pump stopped"}};
    Told told;
    for (const auto& [key, name] : states) {
        std::map<std::string, double> sums;
        for (const Json& vessel : json.at("vessels"))
            if (solved(vessel.at("water").at(key)))
                sums[parts.at(vessel.at("kind"))] += first(vessel.at("water").at(key).at("volume"));
        sums["Pipes"] = first(json.at("water").at(key).at("in_pipes"));
        sums["Spilled"] = first(json.at("water").at(key).at("spilled"));
        for (const auto& [part, volume] : sums)
            if (volume > 0.0)
                told[name + " – " + part] = {volume};
    }
    return told;
}

Told headOf(const Json& json)
{
    Told told;
    for (const Json& step : json.at("pumps").at(0).at("head_path").at("steps")) {
        const std::string name = step.at("name"), tag = name.substr(name.rfind(' ') + 1), kind = step.at("kind");
        const std::string what = kind == "lift"       ? "Lift to " + tag + " – Lift"
                                 : kind == "friction" ? tag + " – Pipe friction"
                                                      : tag + " – Fittings and outlet";
        auto& values = told[what];
        values.resize(1);
        values[0] += first(step.at("head"));
    }
    std::erase_if(told, [](const auto& entry) { return entry.second[0] <= 0.0; });
    return told;
}

// Several readings share a name here: they are told in the order of the flow.
Told dutyOf(const Json& json)
{
    const Json& pump = json.at("pumps").at(0);
    Told told;
    const Json& duty = pump.at("duty").at("least");
    told["Duty point"] = {first(duty.at("flow")), first(duty.at("head"))};
    for (const auto& [name, end] :
         {std::pair{"Fouled, coldest water", "fouled_cold"}, {"New, warmest water", "new_warm"}})
        told[name] = {first(pump.at("season").at(end).at("flow")), first(pump.at("season").at(end).at("head"))};
    const auto add = [&](const std::string& name, const Json& curve, double highest) {
        for (std::size_t i = 0; i < curve.at("flow").at("values").size(); ++i) {
            if (curve.at("head").at("values").at(i).get<double>() > highest)
                continue; // off the sheet
            told[name].push_back(curve.at("flow").at("values").at(i));
            told[name].push_back(curve.at("head").at("values").at(i));
        }
    };
    add("Pump", pump.at("pump_curve"), 1e9);
    add("Pipework", pump.at("system_curve"), first(pump.at("shut_off")));
    return told;
}

Told floorOf(const Json& json)
{
    const std::map<std::string, std::string> kinds{{"fish_tank", "Fish tank"},
                                                   {"sump", "Sump"},
                                                   {"media_bed", "Grow bed"},
                                                   {"raft_bed", "Grow bed"},
                                                   {"settler", "Settler"}};
    Told told;
    for (const Json& vessel : json.at("vessels"))
        for (const auto& [key, name] :
             std::map<std::string, std::string>{{"to_rim", "to the rim"}, {"beds_flooded", "beds flooded, running"}}) {
            const Json& load = vessel.at("load").at(key);
            if (solved(load))
                told[kinds.at(vessel.at("kind")) + " " + vessel.at("tag").get<std::string>() + ", " + name] = {
                    first(load.at("under_footprint")), first(load.at("weight"))};
        }
    return told;
}

Json assess(const QString& path)
{
    QProcess program;
    program.start(QStringLiteral(SUMPWRIGHT_PROGRAM), {QStringLiteral("assess"), path, QStringLiteral("--json")});
    EXPECT_TRUE(program.waitForFinished(30000));
    EXPECT_EQ(program.exitCode(), 0);
    return Json::parse(program.readAllStandardOutput().toStdString());
}

// The fields of a table as RFC 4180 has it; none here holds a line break.
std::vector<QStringList> rowsOf(const QString& csv)
{
    std::vector<QStringList> rows;
    for (const QString& line : csv.split(QStringLiteral("\r\n"), Qt::SkipEmptyParts)) {
        QStringList fields{QString()};
        bool quoted = false;
        for (const QChar c : line) {
            if (c == u'"')
                quoted = !quoted;
            else if (c == u',' && !quoted)
                fields << QString();
            else
                fields.back() += c;
        }
        rows.push_back(fields);
    }
    return rows;
}

struct Side {
    Qt::Key key; // with Alt
    const char* question;
    Told (*expected)(const Json&);
};

void PrintTo(const Side& side, std::ostream* out) { *out << side.question; }

class ChartByKeys : public testing::TestWithParam<Side>
{
protected:
    ChartByKeys() : work(folder.filePath(QStringLiteral("state"))), window(work)
    {
        plan = folder.filePath(QStringLiteral("shed.sumpwright"));
        EXPECT_TRUE(
            QFile::copy(QStringLiteral(SUMPWRIGHT_SOURCE "/resources/examples/community_shed.sumpwright"), plan));
        QFile::setPermissions(plan, QFile::ReadOwner | QFile::WriteOwner);
        window.resize(1600, 1000);
        window.show();
        window.start(plan);
        EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
        settle();
    }

    void settle()
    {
        EXPECT_TRUE(QTest::qWaitFor([this] { return work.document.assessment() && !work.document.stale(); }, 20000));
    }
    void press(Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier)
    {
        QTest::keyClick(window.windowHandle(), key, with);
    }
    ui::charts::ChartPanel& panel() const
    {
        for (QWidget* at = QApplication::focusWidget(); at; at = at->parentWidget())
            if (auto* found = qobject_cast<ui::charts::ChartPanel*>(at))
                return *found;
        throw std::logic_error("the keyboard is in no chart");
    }
    // What a screen reader is given for the chart with the keyboard.
    static QString spoken()
    {
        return QAccessible::queryAccessibleInterface(QApplication::focusWidget())->text(QAccessible::Description);
    }

    double si(const std::string& text) const
    {
        const auto& style = work.document.view().numberStyle();
        if (const auto volume = units::parse<units::Volume>(text, style))
            return units::inCubicMetres(*volume);
        if (const auto head = units::parse<units::Head>(text, style))
            return units::inMetresHead(*head);
        if (const auto flow = units::parse<units::Flow>(text, style))
            return units::inCubicMetresPerSecond(*flow);
        if (const auto force = units::parse<units::Force>(text, style))
            return units::inNewtons(*force);
        if (const auto pressure = units::parse<units::GroundPressure>(text, style))
            return 1e3 * units::inKilopascals(*pressure);
        ADD_FAILURE() << "no quantity: " << text;
        return std::nan("");
    }

    // "Name: 12 L", "Name: 5 890 L/h at 1.82 m", "Name: 11.0 kPa (34.6 kN in all)", "Name: 0.06 m in 3 fittings".
    void hear(const QString& reading, Heard& heard) const
    {
        const qsizetype colon = reading.indexOf(QStringLiteral(": "));
        ASSERT_GT(colon, 0) << reading.toStdString();
        QString rest = reading.mid(colon + 2);
        const qsizetype in = rest.indexOf(QStringLiteral(" in "));
        if (in > 0 && !rest.contains(u'('))
            rest.truncate(in);
        rest.replace(QStringLiteral(" at "), QStringLiteral("|")).replace(QStringLiteral(" ("), QStringLiteral("|"));
        rest.remove(QStringLiteral(" in all)"));
        for (const QString& value : rest.split(u'|'))
            heard[reading.left(colon).toStdString()].push_back(
                {si(value.toStdString()), 0.5 * std::fabs(si(nextOf(value.toStdString())) - si(value.toStdString()))});
    }

    Heard readAll()
    {
        Heard heard;
        press(Qt::Key_Home);
        const int count = static_cast<int>(panel().readings().size());
        QString start = panel().readOut();
        for (int i = 0; i < count; ++i) {
            EXPECT_EQ(panel().readOut(), spoken());
            hear(panel().readOut(), heard);
            press(Qt::Key_Right);
        }
        EXPECT_EQ(panel().readOut(), start) << "the walk comes round to its start";
        press(Qt::Key_Left);
        EXPECT_EQ(panel().readIndex(), count - 1);
        press(Qt::Key_Escape);
        EXPECT_TRUE(panel().readOut().isEmpty());
        return heard;
    }

    static void expectSame(const Heard& shown, const Told& computed)
    {
        for (const auto& [name, values] : computed)
            EXPECT_TRUE(shown.contains(name)) << "not read: " << name;
        for (const auto& [name, values] : shown) {
            const auto found = computed.find(name);
            ASSERT_NE(found, computed.end()) << "read, but not computed: " << name;
            ASSERT_EQ(values.size(), found->second.size()) << name;
            for (std::size_t i = 0; i < values.size(); ++i)
                EXPECT_NEAR(values[i].value, found->second[i], 1.0001 * values[i].rounding) << name;
        }
    }

    // Shift and F10, the entry wanted by the arrow, a name typed into the box that asks for one.
    void saveNumbers(const QString& path)
    {
        // Keys are posted: what they do may open a loop of events of its own, and no timer fires again from inside
        // itself.
        const auto post = [](QWidget* to, int key, const QString& text = QString(), Qt::KeyboardModifiers with = {}) {
            QCoreApplication::postEvent(to, new QKeyEvent(QEvent::KeyPress, key, with, text));
            QCoreApplication::postEvent(to, new QKeyEvent(QEvent::KeyRelease, key, with, text));
        };
        bool typed = false;
        QTimer hands;
        QObject::connect(&hands, &QTimer::timeout, &window, [&] {
            if (auto* menu = qobject_cast<QMenu*>(QApplication::activePopupWidget())) {
                const bool there =
                    menu->activeAction() && menu->activeAction()->text().startsWith(QStringLiteral("Save numbers"));
                post(menu, there ? Qt::Key_Return : Qt::Key_Down);
            } else if (qobject_cast<QFileDialog*>(QApplication::activeModalWidget()) && QApplication::focusWidget()) {
                QWidget* line = QApplication::focusWidget();
                auto* name = qobject_cast<QLineEdit*>(line); // the name offered may come late, over what was typed
                if (name ? name->text() != path : !std::exchange(typed, true)) {
                    post(line, Qt::Key_A, QString(), Qt::ControlModifier);
                    for (const QChar c : path)
                        post(line, 0, QString(c));
                }
                post(line, Qt::Key_Return); // the first may close a list of names
            }
        });
        hands.start(30);
        press(Qt::Key_F10, Qt::ShiftModifier);
        EXPECT_TRUE(QTest::qWaitFor([&] { return QFile::exists(path); }, 5000)) << "nothing was saved";
    }

    QTemporaryDir folder;
    ui::window::Workplace work;
    ui::window::MainWindow window;
    QString plan;
};

TEST_P(ChartByKeys, ReadsAloudWhatAssessPrints)
{
    press(GetParam().key, Qt::AltModifier);
    ASSERT_EQ(panel().question(), QString::fromUtf8(GetParam().question));
    const Told computed = GetParam().expected(assess(plan));
    ASSERT_FALSE(computed.empty());
    expectSame(readAll(), computed);
}

// A field of the form, found by Tab, is typed into; what is read afterwards is what the saved file gives.
TEST_P(ChartByKeys, FollowsAnEditTypedIntoAField)
{
    press(GetParam().key, Qt::AltModifier);
    const Heard before = readAll();
    const base::Id sump = [&] {
        for (const auto& vessel : work.document.committed().vessels)
            if (vessel->kind == plan::VesselKind::sump)
                return vessel->id;
        return base::Id{};
    }();
    press(Qt::Key_F6); // to the plan, then over its elements
    for (int i = 0; i < 8 && QApplication::focusWidget() != window.centralWidget()->focusWidget(); ++i)
        press(Qt::Key_F6);
    press(Qt::Key_Escape);
    for (int i = 0; i < 80 && work.document.selection() != std::vector{sump}; ++i)
        press(Qt::Key_N);
    ASSERT_EQ(work.document.selection(), std::vector{sump});
    press(Qt::Key_Return); // its properties
    QLineEdit* field = nullptr;
    for (int i = 0; i < 80 && !field; ++i) {
        auto* line = qobject_cast<QLineEdit*>(QApplication::focusWidget());
        if (line && line->accessibleName().contains(QStringLiteral("Level while running"), Qt::CaseInsensitive))
            field = line;
        else
            press(Qt::Key_Tab);
    }
    ASSERT_TRUE(field);
    press(Qt::Key_A, Qt::ControlModifier);
    QTest::keyClicks(field, QStringLiteral("-0.30 m"));
    press(Qt::Key_Return);
    settle();
    press(Qt::Key_S, Qt::ControlModifier);
    EXPECT_FALSE(window.isWindowModified());
    press(GetParam().key, Qt::AltModifier);
    const Heard after = readAll();
    EXPECT_NE(after, before);
    expectSame(after, GetParam().expected(assess(plan)));
}

TEST_P(ChartByKeys, ExportsItsNumbersInFull)
{
    press(GetParam().key, Qt::AltModifier);
    const QString path = folder.filePath(QStringLiteral("numbers.csv"));
    saveNumbers(path);
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const auto rows = rowsOf(QString::fromUtf8(file.readAll()));
    ASSERT_GT(rows.size(), 2u);
    // Every number, with the unit of its column, is among those computed: to the last digit the file has.
    std::vector<double> computed;
    for (const auto& [name, values] : GetParam().expected(assess(plan)))
        computed.insert(computed.end(), values.begin(), values.end());
    std::size_t found = 0;
    for (std::size_t row = 2; row < rows.size(); ++row)
        for (qsizetype column = 0; column < rows[row].size(); ++column) {
            const QString unit = rows[1][column];
            if (unit.isEmpty())
                continue;
            const std::string text = (rows[row][column] + u' ' + unit).toStdString();
            const double value = si(text);
            const bool known = std::any_of(computed.begin(), computed.end(), [&](double each) {
                return std::fabs(each - value) <= 1e-9 * std::fabs(each) + 1e-15;
            });
            // The system curve may leave the sheet of the chart; the table holds all of it.
            EXPECT_TRUE(known || rows[row][0] == QStringLiteral("Pipework")) << text;
            found += known ? 1 : 0;
        }
    EXPECT_GE(found, computed.size());
}

INSTANTIATE_TEST_SUITE_P(All, ChartByKeys,
                         testing::Values(Side{Qt::Key_1, "Where is the water?", waterOf},
                                         Side{Qt::Key_2, "Where does the head go?", headOf},
                                         Side{Qt::Key_3, "What does the pump do?", dutyOf},
                                         Side{Qt::Key_4, "What does the floor carry?", floorOf}),
                         [](const auto& each) {
                             return std::string(std::array{"Water", "Head", "DutyPoint", "Floor"}[each.index]);
                         });

} // namespace
} // namespace sumpwright::tests
