// What each pump does in both running states, its curve and the curve of the pipework it feeds.
// Power W, energy and cost for 8 760 hours a year at the least-flow state. Source: common pump physics, rho g Q H.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/assessment/stage.hpp"
#include "core/assessment/states.hpp"
#include "core/units/measures.hpp"

namespace sumpwright::assessment
{

using FlowPerPower = decltype(units::Flow() / units::Power()); // the client's figure, read as L/h per W
constexpr double inLitresPerHourPerWatt(FlowPerPower v) { return v.value() * 3.6e6; }

struct CurveSample {
    units::Flow flow;
    units::Head head;
    friend bool operator==(const CurveSample&, const CurveSample&) = default;
};

struct PumpPower {
    units::Power hydraulic;
    units::Power electrical;
    double wireToWater = 0.0;
    FlowPerPower flowPerPower;
    units::Energy energyPerYear;
    std::optional<units::Money> costPerYear; // absent until a power price is given

    friend bool operator==(const PumpPower&, const PumpPower&) = default;
};

struct DutyPoint {
    units::Flow flow;
    units::Head head;
    double shareOfBoxFigure = 0.0; // flow over the flow at no head, which is printed on the box
    bool beyondCurve = false;      // asks for more flow than the curve holds
    Stage<PumpPower> power;        // not computed: no power known

    friend bool operator==(const DutyPoint&, const DutyPoint&) = default;
};

struct PumpResult {
    base::Id id;
    PerRunningState<Stage<DutyPoint>> duty;
    units::Flow boxFigure;              // flow at no head
    units::Head shutOff;                // head at no flow
    std::vector<CurveSample> pumpCurve; // ready to draw, ascending in flow; empty: no curve known
    // The head the pipework asks for when this pump's flow is imposed on the network, which then splits it anew
    // over all outlets; the other pumps run as they are. State of least flow; ascending in flow.
    Stage<std::vector<CurveSample>> systemCurve;

    friend bool operator==(const PumpResult&, const PumpResult&) = default;
};

struct PumpResults {
    std::vector<PumpResult> pumps; // by id
    friend bool operator==(const PumpResults&, const PumpResults&) = default;
};

} // namespace sumpwright::assessment
