#include "core/plan/edits/pump.hpp"

#include "core/plan/edits/draft.hpp"
#include "core/plan/tidy.hpp"

namespace sumpwright::plan
{

Edit setPumpModel(std::vector<base::Id> pumps, std::string modelId)
{
    return changeEach<Pump>("edit.pump-model", std::move(pumps), [modelId](Pump& pump) {
        pump.modelId = modelId;
        pump.ownCurve.clear();
        pump.twoNumbers = false;
        pump.ownPower.reset();
    });
}

Edit setPumpCurve(std::vector<base::Id> pumps, std::vector<CurvePoint> curve, std::optional<units::Power> input)
{
    return changeEach<Pump>("edit.pump-curve", std::move(pumps), [curve, input](Pump& pump) {
        pump.modelId.clear();
        pump.ownCurve = curve;
        pump.twoNumbers = false;
        pump.ownPower = input;
    });
}

Edit setPumpRatings(std::vector<base::Id> pumps, units::Head shutOff, units::Flow greatest,
                    std::optional<units::Power> input)
{
    return changeEach<Pump>("edit.pump-curve", std::move(pumps), [=](Pump& pump) {
        pump.modelId.clear();
        pump.ownCurve = {{units::Flow(), shutOff}, {greatest, units::Head()}};
        pump.twoNumbers = true;
        pump.ownPower = input;
    });
}

Edit setPumpArrangement(std::vector<base::Id> pumps, PumpArrangement arrangement)
{
    return setEach<Pump>("edit.pump-arrangement", std::move(pumps), &Pump::arrangement, arrangement);
}

Edit setPumpSpeed(std::vector<base::Id> pumps, double ratio)
{
    return setEach<Pump>("edit.pump-speed", std::move(pumps), &Pump::speed, ratio);
}

Edit setLeastDepth(std::vector<base::Id> pumps, std::optional<units::Length> depth)
{
    return setEach<Pump>("edit.least-depth", std::move(pumps), &Pump::leastDepth, depth);
}

Edit setPumpRunning(std::vector<base::Id> pumps, bool running)
{
    return setEach<Pump>("edit.pump-running", std::move(pumps), &Pump::running, running);
}

Edit setPumpOutlet(std::vector<base::Id> pumps, units::Elevation level)
{
    return setEach<Pump>("edit.pump-outlet", std::move(pumps), &Pump::outletLevel, level);
}

Edit standPump(base::Id pump, base::Id vessel, Point place)
{
    return makeEdit("edit.stand-pump", {pump}, [=](Draft& draft) {
        const Vessel& home = draft.the<Vessel>(vessel);
        draft.change<Pump>(pump, [&](Pump& changed) {
            if (changed.vessel != vessel)
                changed.outletLevel = tidy(insideBottom(home) + units::metres(0.25));
            changed.vessel = vessel;
            changed.offset = tidy(turned(place - home.centre, -home.turn));
        });
    });
}

} // namespace sumpwright::plan
