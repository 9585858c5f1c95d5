// Tables, code and worksheets speak of the same things: fittings, coefficients, sources.
#include <cmath>
#include <filesystem>
#include <fstream>
#include <regex>

#include "core/hydraulics/fittings.hpp"
#include "core/hydraulics/pump_curve.hpp"
#include "core/hydraulics/valve_opening.hpp"
#include "core/units/measures.hpp"
#include "tests/core/worksheets/asking.hpp"

using namespace sumpwright;
using hydraulics::LossMethod;

namespace
{

const hydraulics::FittingFlow anyFlow{units::millimetres(27.2), units::millimetres(25.4), 12000.0};

double inches(units::Length length) { return units::inMillimetres(length) / 25.4; }

double hooper(const catalogue::HooperCoefficients& c)
{
    return c.k1 / anyFlow.reynolds + c.kInfinity * (1.0 + 1.0 / inches(anyFlow.bore));
}

double darby(const catalogue::DarbyCoefficients& c)
{
    return c.k1 / anyFlow.reynolds + c.ki * (1.0 + c.kd / std::pow(inches(anyFlow.nominal), 0.3));
}

double crane(const catalogue::CraneCoefficient& c)
{
    if (c.plainK)
        return c.multiple;
    const auto ballValve = hydraulics::lossCoefficient(hydraulics::FittingKind::BallValve, LossMethod::Crane, anyFlow);
    return c.multiple * *ballValve / 3.0; // Crane: a full-bore ball valve is 3 times the friction factor
}

template <class Coefficients>
void expectSame(const std::string& id, LossMethod method, const std::optional<Coefficients>& row,
                double (*k)(const Coefficients&))
{
    const auto computed = hydraulics::lossCoefficient(*hydraulics::fittingFromId(id), method, anyFlow);
    ASSERT_EQ(computed.ok(), row.has_value()) << id << " " << hydraulics::idOf(method);
    if (!row)
        return;
    EXPECT_NEAR(*computed, k(*row), 1e-12 * *computed) << id << " " << hydraulics::idOf(method);
}

} // namespace

TEST(TablesAndCode, KnowTheSameFittingsWithTheSameCoefficients)
{
    const auto tables = catalogue::Catalogue::builtIn();
    EXPECT_EQ(tables->fittings().size(), hydraulics::allFittingKinds.size());
    for (const catalogue::Fitting& row : tables->fittings()) {
        const auto kind = hydraulics::fittingFromId(row.id);
        ASSERT_TRUE(kind.has_value()) << row.id;
        EXPECT_EQ(row.defaultK, hydraulics::defaultCoefficient(*kind)) << row.id;
        EXPECT_EQ(row.cracking.value_or(units::Head()), hydraulics::openingHead(*kind)) << row.id;
        EXPECT_EQ(row.valve == catalogue::ValveKind::Check, hydraulics::stopsBackflow(*kind)) << row.id;
        expectSame(row.id, LossMethod::Hooper, row.hooper, hooper);
        expectSame(row.id, LossMethod::Darby, row.darby, darby);
        expectSame(row.id, LossMethod::Crane, row.crane, crane);
    }
}

TEST(TablesAndCode, KnowTheSameOpeningsOfValves)
{
    int points = 0;
    for (const catalogue::Fitting& row : catalogue::Catalogue::builtIn()->fittings()) {
        const auto throttle = hydraulics::throttleOf(*hydraulics::fittingFromId(row.id));
        ASSERT_EQ(throttle.has_value(), !row.openings.empty()) << row.id;
        for (const catalogue::OpeningPoint& point : row.openings) {
            const auto loss = hydraulics::throttlingLoss(*throttle, 1.0 - point.fractionClosed);
            EXPECT_NEAR(loss->added, point.addedK, 1e-9 * point.addedK) << row.id << " " << point.fractionClosed;
            ++points;
        }
        if (throttle) {
            EXPECT_TRUE(hydraulics::throttlingLoss(*throttle, 1.0 - row.shutFrom)->closed) << row.id;
            EXPECT_FALSE(hydraulics::throttlingLoss(*throttle, 1.0 - row.shutFrom + 0.01)->closed) << row.id;
        }
    }
    EXPECT_EQ(points, 13 + 13 + 7 + 8);
}

TEST(TablesAndCode, EveryPumpOfTheTableHasACurve)
{
    for (const catalogue::Pump& pump : catalogue::Catalogue::builtIn()->pumps()) {
        std::vector<hydraulics::PumpPoint> points;
        for (const catalogue::PumpPoint& point : pump.points)
            points.push_back({point.flow, point.head});
        EXPECT_TRUE(hydraulics::PumpCurve::fromPoints(points).ok()) << pump.id;
    }
}

TEST(Sources, OfEveryWorksheetAndEveryAnswerAreKnown)
{
    const auto tables = catalogue::Catalogue::builtIn();
    for (const worksheets::Worksheet& sheet : worksheets::allWorksheets())
        for (const std::string& key : sheet.sources)
            EXPECT_TRUE(tables->source(key).ok()) << sheet.id << " " << key;
    for (const auto& [id, texts] : tests::goodQuestions()) {
        const auto answer = tests::ask(id, texts);
        ASSERT_TRUE(answer.ok()) << id << " " << base::oneLine(answer.refusal());
        EXPECT_FALSE(answer->sources.empty()) << id;
        for (const std::string& key : answer->sources)
            EXPECT_TRUE(tables->source(key).ok()) << id << " " << key;
    }
}

// "Key: iso-2533." and "Keys: a, b." at the head of a header name sources of resources/sources.json.
TEST(Sources, NamedByTheHeadersOfTheCoreAreKnown)
{
    const auto tables = catalogue::Catalogue::builtIn();
    const std::regex line("^//.*Keys?: ([a-z0-9, -]+)");
    const std::regex word("[a-z][a-z0-9-]+");
    int named = 0;
    for (const auto& file : std::filesystem::recursive_directory_iterator(SUMPWRIGHT_SOURCE "/core")) {
        if (file.path().extension() != ".hpp")
            continue;
        std::ifstream text(file.path());
        std::smatch match;
        for (std::string head; std::getline(text, head) && head.rfind("//", 0) == 0;) {
            if (!std::regex_search(head, match, line))
                continue;
            const std::string list = match[1];
            for (auto key = std::sregex_iterator(list.begin(), list.end(), word); key != std::sregex_iterator();
                 ++key) {
                EXPECT_TRUE(tables->source(key->str()).ok()) << file.path().filename() << ": " << key->str();
                ++named;
            }
        }
    }
    EXPECT_GT(named, 10);
}
