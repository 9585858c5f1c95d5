// Words: every edit of the core has a name, subjects are named as people name them, refusals say where, what, how.
#include <filesystem>
#include <fstream>
#include <regex>
#include <set>
#include <sstream>

#include <QLocale>

#include "core/report/sentences.hpp"
#include "tests/support/edited_plan.hpp"
#include "ui/document/view_settings.hpp"
#include "ui/text/display.hpp"
#include "ui/text/findings.hpp"
#include "ui/text/names.hpp"
#include "ui/text/refusals.hpp"
#include "ui/text/subject.hpp"
#include "ui/text/undo_names.hpp"

namespace sumpwright::tests
{
namespace
{

using namespace ui::text;

std::set<std::string> intentsIn(const char* folder)
{
    std::set<std::string> intents;
    const std::regex intent("\"(edit\\.[a-z-]+)\"");
    for (const auto& file : std::filesystem::directory_iterator(std::string(SUMPWRIGHT_SOURCE) + folder)) {
        std::ifstream in(file.path());
        std::stringstream text;
        text << in.rdbuf();
        const std::string words = text.str();
        for (std::sregex_iterator at(words.begin(), words.end(), intent), end; at != end; ++at)
            intents.insert((*at)[1]);
    }
    return intents;
}

TEST(UndoNames, KnowEveryIntentOfTheCore)
{
    const auto intents = intentsIn("/core/plan/edits");
    EXPECT_GT(intents.size(), 60u);
    for (const auto& intent : intents)
        EXPECT_TRUE(knowsIntent(intent)) << intent;
    EXPECT_FALSE(knowsIntent("edit.nothing-of-ours"));
}

TEST(UndoNames, NameTheElement)
{
    const test::SmallSystem system;
    const auto named = [&](const plan::Edit& edit) { return editName(edit, system.plan).toStdString(); };
    EXPECT_EQ(named(plan::moveElements({system.bedB}, {})), "Move grow bed B2");
    EXPECT_EQ(named(plan::moveElements({system.bedA, system.bedB}, {})), "Move 2 grow beds");
    EXPECT_EQ(named(plan::deleteElements({system.tank, system.main})), "Delete 2 elements");
    plan::VesselWish wish;
    wish.kind = plan::VesselKind::raftBed;
    wish.centre = test::at(4.5, 7.5);
    EXPECT_EQ(named(plan::placeVessel(wish)), "Place raft bed B3"); // as the plan after it names it
    EXPECT_EQ(named(plan::setAltitude(std::nullopt)), "Change altitude");
}

TEST(Words, KeepANumberAndItsUnitInOneLine)
{
    const QString words = QStringLiteral("3 617 L/h at 0.997 m, 22 % of 5 US gal/min");
    const QString kept = unbroken(words);
    for (const char* part : {"3 617\u00a0L/h", "0.997\u00a0m,", "22\u00a0%", "5\u00a0US\u00a0gal/min", " at ", "% of"})
        EXPECT_TRUE(kept.contains(QString::fromUtf8(part))) << part;
    EXPECT_EQ(breakable(kept), words);
    EXPECT_EQ(unbroken(QString()), QString());
}

TEST(Subjects, NameEndsByTheirPorts)
{
    const test::SmallSystem system;
    const auto& run = system.runOf(system.tankDrain);
    EXPECT_EQ(endName(system.plan, run.from).toStdString(), "fish tank T1, overflow L1");
    EXPECT_EQ(endName(system.plan, system.runOf(system.drainA).from).toStdString(), "grow bed B1, standpipe L1");
    EXPECT_EQ(endName(system.plan, system.runOf(system.drainB).to).toStdString(), "open end");
    EXPECT_EQ(subject(system.plan, base::Id{9999}).toStdString(), "element");
}

assessment::Assessment resultsOf(const plan::Plan& plan)
{
    assessment::Assessment results;
    results.plan = plan;
    results.catalogue = catalogue::Catalogue::builtIn();
    return results;
}

TEST(FindingSentences, AreFilledForEveryFindingOfTheCore)
{
    const test::SmallSystem system;
    const auto results = resultsOf(system.plan);
    const DisplaySettings display{units::UnitSystem::metric, units::NumberStyle::point()};
    int told = 0;
    for (const auto& sentence : report::findingSentences()) {
        assessment::Finding finding;
        finding.id = std::string(sentence.id);
        finding.elements = {system.bedA, system.bedB};
        finding.value = units::metres(0.45);
        finding.limit = units::metres(0.6);
        const QString message = findingWords(finding, results, display).message;
        EXPECT_FALSE(message.contains(u'{') || message.contains(u'}')) << message.toStdString();
        EXPECT_NE(message.toStdString(), finding.id);
        ++told;
    }
    EXPECT_GT(told, 40);
}

TEST(FindingSentences, UseTheWindowsNamesAndThePersonsUnits)
{
    const test::SmallSystem system;
    assessment::Finding finding;
    finding.id = "layout.aisle";
    finding.elements = {system.bedA, system.bedB};
    finding.value = units::metres(0.3048);
    finding.limit = units::metres(0.6096);
    finding.mend = "widen-aisle";
    const DisplaySettings us{units::UnitSystem::us, units::NumberStyle::point()};
    const auto words = findingWords(finding, resultsOf(system.plan), us);
    const std::string message = words.message.toStdString();
    EXPECT_NE(message.find("grow bed B1 and grow bed B2"), std::string::npos) << message;
    EXPECT_NE(message.find("1.00 ft, less than 2.00 ft"), std::string::npos) << message;
    EXPECT_FALSE(words.advice.isEmpty());
    EXPECT_EQ(words.source.toStdString(), "common practice, no source");
    finding.value = units::metres(0.2);
    const auto inOneUnit = [&](const DisplaySettings& display) {
        const auto text = findingWords(finding, resultsOf(system.plan), display).message.toStdString();
        return text.substr(text.find("there are"));
    };
    EXPECT_EQ(inOneUnit(us), "there are 0.656 ft, less than 2.00 ft.");
    EXPECT_EQ(inOneUnit({units::UnitSystem::metric, units::NumberStyle::point()}),
              "there are 200 mm, less than 610 mm.");
    finding.limit = units::metres(1.2);
    EXPECT_EQ(inOneUnit({units::UnitSystem::metric, units::NumberStyle::point()}),
              "there are 0.200 m, less than 1.200 m.");
}

TEST(FindingSentences, NameAllElementsTheyHoldFor)
{
    const test::SmallSystem system;
    assessment::Finding finding;
    finding.id = "floor.legs";
    finding.elements = {system.bedA, system.bedB};
    finding.alike = 2;
    const DisplaySettings display{units::UnitSystem::metric, units::NumberStyle::point()};
    EXPECT_EQ(findingWords(finding, resultsOf(system.plan), display).message.toStdString(),
              "Grow beds B1 and B2 stand on legs or piers; real legs do not share evenly.");
    EXPECT_EQ(allSubjects(system.plan, {system.bedA, system.tank}).toStdString(), "grow bed B1 and fish tank T1");
    EXPECT_EQ(allSubjects(system.plan, {system.bedA}).toStdString(), "grow bed B1");
    test::SmallSystem many;
    many.vessel(plan::VesselKind::mediaBed, 3.0, 8.0);
    std::vector<base::Id> beds;
    for (const auto& vessel : many.plan.vessels)
        if (vessel->kind == plan::VesselKind::mediaBed)
            beds.push_back(vessel->id);
    EXPECT_EQ(allSubjects(many.plan, beds).toStdString(), "grow beds B1 to B3");
    beds.push_back(many.note);
    EXPECT_EQ(allSubjects(many.plan, beds).toStdString(), "grow bed B1, grow bed B2, grow bed B3 and note");
}

TEST(Refusals, SayWhereWhatAndHowToMend)
{
    const base::Refusal inText{"units.wrong-kind", "character 3", "this is a mass", "m, cm, mm"};
    EXPECT_EQ(sentenceOf(inText, QStringLiteral("Depth")).toStdString(),
              "Depth: this is a mass (at character 3). Accepted: m, cm, mm.");
    const base::Refusal inPlan{"plan.lip", "T1, wall height", "the lip lies above the rim", ""};
    EXPECT_EQ(sentenceOf(inPlan, QStringLiteral("Wall height")).toStdString(),
              "T1, wall height: the lip lies above the rim.");
}

TEST(Display, TakesTheMarksOfTheLocale)
{
    const QLocale usual;
    QLocale::setDefault(QLocale(QLocale::German, QLocale::Germany));
    const ui::document::ViewSettings view;
    QLocale::setDefault(usual);
    const DisplaySettings german{units::UnitSystem::metric, view.numberStyle()};
    EXPECT_EQ(german.entryText(units::metres(1.25)).toStdString(), "1,25 m");
    EXPECT_FALSE(german.read<units::Length>(QStringLiteral("1.250 m")).ok());
    EXPECT_EQ(german.quantityText(std::optional<units::Length>()), absentText());
}

TEST(Display, WritesRatiosForEntriesWithoutTrailingZeros)
{
    const DisplaySettings point{units::UnitSystem::metric, units::NumberStyle::point()};
    EXPECT_EQ(point.ratioEntryText(1.7).toStdString(), "1.7");
    EXPECT_EQ(point.ratioEntryText(4.0).toStdString(), "4");
    EXPECT_EQ(point.ratioEntryText(100.0).toStdString(), "100");
    EXPECT_EQ(point.percentEntryText(0.45).remove(u'\u202f').remove(u'\u00a0').remove(u' ').toStdString(), "45%");
    const DisplaySettings german{units::UnitSystem::metric, units::NumberStyle::ofDesktop(",", ".")};
    EXPECT_EQ(german.ratioEntryText(0.25).toStdString(), "0,25");
}

TEST(Display, ReadsBackWhatItShowsInBothSystemsAndSeveralMarks)
{
    const std::vector<units::NumberStyle> styles{
        units::NumberStyle::point(), units::NumberStyle::ofDesktop(".", ","), units::NumberStyle::ofDesktop(",", "."),
        units::NumberStyle::ofDesktop(",", "\u202f"), units::NumberStyle::ofDesktop(".", "\u2019")};
    for (const auto system : {units::UnitSystem::metric, units::UnitSystem::us})
        for (const auto& style : styles)
            for (const double value : {0.006, 0.05, 0.6, 1.2, 2.345, 12.5, 1234.5}) {
                const DisplaySettings display{system, style};
                const QString shown = display.entryText(units::metres(value));
                const auto back = display.read<units::Length>(shown);
                ASSERT_TRUE(back.ok()) << shown.toStdString() << ": " << back.refusal().what;
                EXPECT_NEAR(units::inMetres(*back), value, 1e-4 * value) << shown.toStdString();
                const QString flow = display.entryText(units::litresPerHour(value * 1000));
                ASSERT_TRUE(display.read<units::Flow>(flow).ok()) << flow.toStdString();
            }
}

} // namespace
} // namespace sumpwright::tests
