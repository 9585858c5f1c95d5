#include <gtest/gtest.h>

#include "tests/support/edited_plan.hpp"

using namespace sumpwright;
using namespace sumpwright::plan;
using test::at;

namespace
{

units::Elevation level(double metres) { return units::elevationMetres(metres); }

struct Ports : test::SmallSystem {
    PortRef bedLip{bedA, portOf(bedA, PortKind::lip)};
    PortRef bedInlet{bedA, portOf(bedA, PortKind::inlet)};
    const Port& port(PortRef ref) const { return *findPort(vesselOf(ref.vessel), ref.port); }
};

} // namespace

TEST(AddPort, TagsPortsInsideTheirVessel)
{
    Ports system;
    const base::Id second = system.apply(addPort(system.bedA, PortKind::lip, at(0, 0.3), level(0.9)));
    const base::Id side = system.apply(addPort(system.bedA, PortKind::sideOutlet, at(1, 0), level(0.7)));
    EXPECT_EQ(findPort(system.vesselOf(system.bedA), second)->tag, "L2");
    EXPECT_EQ(findPort(system.vesselOf(system.bedA), side)->tag, "O1");
    EXPECT_EQ(system.refusalOf(addPort(system.bedA, PortKind::lip, at(0, 0.3), level(1.0))), "plan.lip-above-rim");
    EXPECT_EQ(system.refusalOf(addPort(system.bedA, PortKind::lip, at(0, 0.3), level(0.6))), "plan.lip-below-bottom");
    EXPECT_EQ(system.refusalOf(addPort(system.bedA, PortKind::inlet, at(3, 0), level(1.0))), "plan.port-outside");
    EXPECT_EQ(system.refusalOf(addPort(system.bedA, PortKind::inlet, at(0, 0), level(0.1))), "plan.port-below-base");
}

TEST(RemovePorts, OpensTheRunThatMetIt)
{
    Ports system;
    system.apply(removePorts({system.bedLip}));
    EXPECT_TRUE(std::holds_alternative<OpenEnd>(system.runOf(system.drainA).from));
    EXPECT_EQ(system.refusalOf(removePorts({system.bedLip})), "plan.no-such-element");
}

TEST(PortLevel, CarriesTheRunAndIsSetOnMany)
{
    Ports system;
    const PortRef other{system.bedB, system.portOf(system.bedB, PortKind::lip)};
    system.apply(setPortLevel({system.bedLip, other}, level(0.82)));
    EXPECT_EQ(system.port(system.bedLip).level, level(0.82));
    EXPECT_EQ(system.runOf(system.drainA).vertices.front().level, level(0.82));
    EXPECT_EQ(system.runOf(system.drainB).vertices.front().level, level(0.82));
}

TEST(PortOffset, CarriesTheRunAndMustStayInside)
{
    Ports system;
    system.apply(setPortOffset(system.bedLip, at(0.5, 0.2)));
    EXPECT_EQ(system.runOf(system.drainA).vertices.front().at, at(5.0, 3.2));
    EXPECT_EQ(system.refusalOf(setPortOffset(system.bedLip, at(1.5, 0.2))), "plan.port-outside");
}

TEST(PortKind, DropsDrainLevelWithTheLip)
{
    Ports system;
    ASSERT_TRUE(system.port(system.bedLip).drainLevel);
    system.apply(setPortKind({system.bedLip}, PortKind::sideOutlet));
    EXPECT_FALSE(system.port(system.bedLip).drainLevel);
}

TEST(Screen, BelongsToAnOutletAndLeavesSomethingOpen)
{
    Ports system;
    system.apply(setOpenFraction({system.bedLip}, 0.6));
    EXPECT_EQ(*system.port(system.bedLip).openFraction, 0.6);
    EXPECT_EQ(system.refusalOf(setOpenFraction({system.bedInlet}, 0.6)), "plan.not-an-outlet");
    EXPECT_EQ(system.refusalOf(setOpenFraction({system.bedLip}, 0.0)), "plan.out-of-range");
    EXPECT_EQ(system.refusalOf(setOpenFraction({system.bedLip}, 1.1)), "plan.out-of-range");
    system.apply(setPortKind({system.bedLip}, PortKind::inlet));
    EXPECT_FALSE(system.port(system.bedLip).openFraction);
}

TEST(DrainAndVent, BelongToLipAndInlet)
{
    Ports system;
    system.apply(setDrainLevel({system.bedLip}, level(0.65)));
    system.apply(setVentLevel({system.bedInlet}, level(1.1)));
    system.apply(setPortBore({system.bedLip, system.bedInlet}, units::millimetres(40)));
    EXPECT_EQ(system.refusalOf(setDrainLevel({system.bedInlet}, level(0.65))), "plan.not-a-lip");
    EXPECT_EQ(system.refusalOf(setVentLevel({system.bedLip}, level(0.65))), "plan.not-an-inlet");
    EXPECT_EQ(system.refusalOf(setDrainLevel({system.bedLip}, level(0.95))), "plan.drain-level-outside");
    EXPECT_EQ(system.refusalOf(setVentLevel({system.bedInlet}, level(0.9))), "plan.vent-below-mouth");
    EXPECT_EQ(system.refusalOf(setPortBore({system.bedLip}, units::metres(0))), "plan.out-of-range");
}

TEST(TargetFlow, BelongsToAnInletAndIsNeverNegative)
{
    Ports system;
    const units::Flow wanted = units::litresPerHour(600);
    system.apply(setTargetFlow({system.bedInlet}, wanted));
    EXPECT_EQ(system.port(system.bedInlet).targetFlow, wanted);
    system.apply(setTargetFlow({system.bedInlet}, units::Flow())); // "shut" is a target too
    EXPECT_EQ(system.refusalOf(setTargetFlow({system.bedLip}, wanted)), "plan.not-an-inlet");
    EXPECT_EQ(system.refusalOf(setTargetFlow({system.bedInlet}, -wanted)), "plan.out-of-range");
    EXPECT_EQ(system.refusalOf(setTargetFlow({system.bedInlet}, units::litresPerHour(2e6))), "plan.out-of-range");
    EXPECT_EQ(system.refusalOf(setTargetFlow({system.bedInlet}, units::Flow() / 0.0)), "plan.not-finite");
}

TEST(TargetFlow, GoesWithTheInlet)
{
    Ports system;
    system.apply(setTargetFlow({system.bedInlet}, units::litresPerHour(600)));
    system.apply(setPortLevel({system.bedInlet}, level(0.8)));
    system.apply(setPortKind({system.bedInlet}, PortKind::sideOutlet));
    EXPECT_FALSE(system.port(system.bedInlet).targetFlow);
}

TEST(Pump, HasEitherModelOrOwnCurve)
{
    test::SmallSystem system;
    const std::vector<CurvePoint> curve{{units::litresPerHour(0), units::metresHead(3)},
                                        {units::litresPerHour(2000), units::metresHead(2)},
                                        {units::litresPerHour(4000), units::metresHead(0)}};
    system.apply(setPumpCurve({system.pump}, curve, units::watts(55)));
    EXPECT_TRUE(system.plan.pumps.find(system.pump)->modelId.empty());
    system.apply(setPumpModel({system.pump}, "G2500"));
    EXPECT_TRUE(system.plan.pumps.find(system.pump)->ownCurve.empty());
    EXPECT_FALSE(system.plan.pumps.find(system.pump)->ownPower);
}

TEST(Pump, RefusesCurvesNoPumpHas)
{
    const test::SmallSystem system;
    const auto refused = [&](std::vector<std::pair<double, double>> points) {
        std::vector<CurvePoint> curve;
        for (const auto& [flow, head] : points)
            curve.push_back({units::litresPerHour(flow), units::metresHead(head)});
        return system.refusalOf(setPumpCurve({system.pump}, curve, {}));
    };
    EXPECT_EQ(refused({{0, 3}}), "plan.curve-count");
    EXPECT_EQ(refused({{100, 3}, {200, 2}}), "plan.curve-start");
    EXPECT_EQ(refused({{0, 3}, {0, 2}}), "plan.curve-flow");
    EXPECT_EQ(refused({{0, 3}, {100, 3}}), "plan.curve-head");
    EXPECT_EQ(refused({{0, 3}, {100, -1}}), "plan.out-of-range");
    EXPECT_EQ(refused({{0, std::nan("")}, {100, 1}}), "plan.not-finite");
}

TEST(Pump, TakesSpeedDepthOutletAndRest)
{
    test::SmallSystem system;
    system.apply(setPumpSpeed({system.pump}, 0.8));
    system.apply(setLeastDepth({system.pump}, units::millimetres(80)));
    system.apply(setPumpRunning({system.pump}, false));
    system.apply(setPumpOutlet({system.pump}, level(0.3)));
    EXPECT_EQ(system.refusalOf(setPumpSpeed({system.pump}, 0)), "plan.out-of-range");
    EXPECT_EQ(system.refusalOf(setPumpSpeed({system.pump}, 1.6)), "plan.out-of-range");
    EXPECT_EQ(system.refusalOf(setPumpOutlet({system.pump}, level(-1))), "plan.port-below-base");
    for (const auto& run : system.plan.runs)
        if (std::holds_alternative<PumpEnd>(run->from)) {
            EXPECT_EQ(run->vertices.front().level, level(0.3));
        }
}

TEST(Pump, StandsInAnotherVesselAndItsRunFollows)
{
    test::SmallSystem system;
    system.apply(standPump(system.pump, system.tank, at(1.4, 7.1)));
    EXPECT_EQ(system.plan.pumps.find(system.pump)->vessel, system.tank);
    for (const auto& run : system.plan.runs)
        if (std::holds_alternative<PumpEnd>(run->from)) {
            EXPECT_EQ(run->vertices.front().at, at(1.4, 7.1));
        }
    EXPECT_EQ(system.refusalOf(standPump(system.pump, system.tank, at(9, 9))), "plan.pump-outside");
}
