// Snapping: the place meant by a place pointed at.
#include <gtest/gtest.h>

#include "tests/ui/canvas_sample.hpp"
#include "tests/ui/canvas_stage.hpp"
#include "ui/tools/pipe_sketch.hpp"
#include "ui/tools/snap.hpp"
#include "ui/tools/typed_lengths.hpp"

#include <QKeyEvent>

namespace sumpwright::test
{

using namespace ui::tools;
using ui::canvas::CueKind;

namespace
{
SnapRules rules(double reach = 0.05)
{
    SnapRules made;
    made.reach = units::metres(reach);
    return made;
}

QKeyEvent typed(QChar letter) { return QKeyEvent(QEvent::KeyPress, Qt::Key_unknown, Qt::NoModifier, QString(letter)); }

void typeInto(TypedLengths& lengths, const char* text)
{
    for (const QChar letter : QString::fromLatin1(text)) {
        const auto event = typed(letter);
        EXPECT_TRUE(lengths.key(event)) << letter.toLatin1();
    }
}
} // namespace

TEST(Snap, PutsAPlaceOnTheGrid)
{
    const auto found = snap({}, at(1.234, 0.777), rules());
    EXPECT_EQ(found.at, at(1.2, 0.8));
    ASSERT_TRUE(found.cue.has_value());
    EXPECT_EQ(found.cue->kind, CueKind::grid);
}

TEST(Snap, LeavesThePlaceWhereSnappingIsOff)
{
    auto off = rules();
    off.on = false;
    EXPECT_EQ(snap(samplePlan(), at(1.234, 0.777), off).at, at(1.234, 0.777));
    EXPECT_FALSE(snap(samplePlan(), at(1.234, 0.777), off).cue.has_value());
}

TEST(Snap, GivesWholeGridStepsWithoutBinaryDust)
{
    for (int i = -300; i <= 300; ++i)
        EXPECT_EQ(units::inMetres(toStep(units::metres(i * 0.1 + 0.013), units::metres(0.1))),
                  std::stod(std::to_string(i / 10.0)))
            << i;
}

TEST(Snap, PrefersCornersOverEdgesAndNamesThem)
{
    const auto sample = samplePlan(); // bed B2: 1.2 x 1.6 m around 7.8, 4.8
    const auto corner = snap(sample, at(8.37, 5.57), rules());
    EXPECT_TRUE(isAt(corner.at, 8.4, 5.6));
    EXPECT_EQ(corner.cue->kind, CueKind::vertex);
    EXPECT_NE(corner.cue->name.toStdString().find("B2"), std::string::npos);
    const auto edge = snap(sample, at(7.55, 5.63), rules());
    EXPECT_TRUE(isAt(edge.at, 7.55, 5.6));
    EXPECT_EQ(edge.cue->kind, CueKind::edge);
    const auto centre = snap(sample, at(7.82, 4.79), rules());
    EXPECT_EQ(centre.cue->kind, CueKind::centre);
    EXPECT_TRUE(isAt(centre.at, 7.8, 4.8));
}

TEST(Snap, LeavesOutWhatIsMoved)
{
    const auto sample = samplePlan();
    auto without = rules();
    without.leftOut = {idOf(sample, "B2")};
    EXPECT_EQ(snap(sample, at(8.37, 5.57), without).cue->kind, CueKind::grid);
}

TEST(Snap, LeadsAPipeToPortsPumpsTeesAndOntoRuns)
{
    const auto sample = samplePlan();
    auto connecting = rules(0.08);
    connecting.connections = true;
    const auto freeInlet = snap(sample, at(0.62, 2.42), connecting); // the sump's own inlet, met by no run
    ASSERT_TRUE(std::holds_alternative<plan::AtPort>(freeInlet.target));
    EXPECT_EQ(std::get<plan::AtPort>(freeInlet.target).vessel, idOf(sample, "S1"));
    const auto tee = snap(sample, at(3.02, 3.26), connecting);
    EXPECT_TRUE(std::holds_alternative<plan::AtTee>(tee.target));
    const auto onto = snap(sample, at(8.2, 3.27), connecting);
    ASSERT_TRUE(std::holds_alternative<plan::OntoRun>(onto.target));
    EXPECT_EQ(std::get<plan::OntoRun>(onto.target).run, idOf(sample, "R5"));
    // The header's tees stand at whole thousandths of its way, so it lies a millimetre or so aslant: by hand, the foot
    // of the perpendicular on its straight line.
    const auto& header = sample.runs.find(idOf(sample, "R5"))->vertices;
    const auto along = header.back().at - header.front().at;
    const auto off = at(8.2, 3.27) - header.front().at;
    const double dx = units::inMetres(along.x);
    const double dy = units::inMetres(along.y);
    const double share = (units::inMetres(off.x) * dx + units::inMetres(off.y) * dy) / (dx * dx + dy * dy);
    const double x = units::inMetres(header.front().at.x) + share * dx;
    const double y = units::inMetres(header.front().at.y) + share * dy;
    EXPECT_NEAR(y, 3.25, 0.002);
    EXPECT_TRUE(isAt(onto.at, x, y));
    const auto place = plan::placeOf(sample, onto.target);
    ASSERT_TRUE(place.has_value());
    EXPECT_TRUE(isAt(place->at, x, y)) << "the station is where the cue was";
}

TEST(Snap, OffersOnlyConnectionsThatAreFree)
{
    const auto sample = samplePlan();
    for (const auto& connection : connectionsOf(sample)) {
        EXPECT_FALSE(connection.name.isEmpty());
        if (const auto* port = std::get_if<plan::AtPort>(&connection.target)) {
            EXPECT_EQ(plan::runAtPort(sample, port->vessel, port->port), nullptr);
        }
        EXPECT_FALSE(std::holds_alternative<plan::AtPump>(connection.target)) << "the only pump has its run";
    }
}

TEST(TypedLengths, ReadTwoLengthsWithUnits)
{
    const ui::canvas::Figures figures;
    TypedLengths lengths(2);
    typeInto(lengths, "1.25x600mm");
    EXPECT_DOUBLE_EQ(units::inMetres(*lengths.length(0, figures)), 1.25);
    EXPECT_DOUBLE_EQ(units::inMetres(*lengths.length(1, figures)), 0.6);
    lengths.clear();
    EXPECT_TRUE(lengths.empty());
    EXPECT_FALSE(lengths.length(0, figures).has_value());
}

TEST(TypedLengths, TakeNoLettersBeforeANumberAndNoNonsense)
{
    const ui::canvas::Figures figures;
    TypedLengths lengths(2);
    EXPECT_FALSE(lengths.key(typed(u'm')));
    EXPECT_FALSE(lengths.key(typed(u'x')));
    typeInto(lengths, "0");
    EXPECT_FALSE(lengths.length(0, figures).has_value()) << "no length is 0";
    const ui::canvas::Figures us{units::UnitSystem::us, {}};
    lengths.clear();
    typeInto(lengths, "4");
    EXPECT_NEAR(units::inMetres(*lengths.length(0, us)), 4.0 * 0.3048, 1e-12) << "a bare number is feet there";
}

TEST(PipeSketch, KeepsItsLevelUntilAVerticalLegChangesIt)
{
    PipeSketch sketch;
    EXPECT_FALSE(sketch.setLevel(units::elevationMetres(1.0)));
    plan::Vertex start;
    start.level = units::elevationMetres(0.3);
    sketch.begin(plan::Nowhere{}, start);
    sketch.addCorner(at(1, 0));
    EXPECT_DOUBLE_EQ(units::inMetres(sketch.level()), 0.3);
    sketch.setLevel(units::elevationMetres(1.2));
    sketch.setLevel(units::elevationMetres(1.4)); // corrected: one leg, not two
    sketch.addCorner(at(1, 2));
    ASSERT_EQ(sketch.vertices().size(), 4U);
    EXPECT_EQ(sketch.vertices()[2].at, at(1, 0));
    EXPECT_DOUBLE_EQ(units::inMetres(sketch.vertices()[2].level), 1.4);
    EXPECT_DOUBLE_EQ(units::inMetres(sketch.vertices()[3].level), 1.4);
    EXPECT_TRUE(sketch.dropLast());
    EXPECT_TRUE(sketch.dropLast()) << "the corner goes with the leg that stands on it";
    EXPECT_EQ(sketch.vertices().size(), 1U);
    EXPECT_FALSE(sketch.dropLast());
}

TEST(PipeSketch, PutsTheNextLegStraightOrAslantWithinReach)
{
    PipeSketch sketch;
    plan::Vertex start;
    start.at = at(1, 1);
    sketch.begin(plan::Nowhere{}, start);
    const auto reach = units::metres(0.05);
    EXPECT_EQ(sketch.aligned(at(3.0, 1.04), reach), at(3.0, 1.0));
    EXPECT_EQ(sketch.aligned(at(0.97, 4.0), reach), at(1.0, 4.0));
    EXPECT_TRUE(isAt(sketch.aligned(at(2.0, 2.03), reach), 2.015, 2.015));
    EXPECT_EQ(sketch.aligned(at(3.0, 1.5), reach), at(3.0, 1.5));
}

} // namespace sumpwright::test
