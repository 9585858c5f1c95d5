// Loss coefficients K of fittings: h = K v^2 / (2 g), v in the pipe the K is stated for. K is a ratio, never negative.
// The default K holds for 15 to 60 mm plastic fittings; Hooper, Darby and Crane are the published correlations.
// Sources: Hooper 1981, Darby 2001, Crane TP-410; default values are our own choice among them.
// Keys: hooper-1981, darby-2001, crane-tp410, fitting-defaults.
#pragma once

#include <array>
#include <optional>
#include <string_view>
#include <vector>

#include "core/base/outcome.hpp"
#include "core/units/measures.hpp"

namespace sumpwright::hydraulics
{

enum class FittingKind {
    Elbow90,
    Elbow90Sweep,
    Elbow90Mitre,
    Elbow45,
    TeeRun,
    TeeBranch,
    BallValve,
    GateValve,
    GlobeValve,
    SwingCheck,
    SpringCheck,
    FootValve,
    Union,
    Strainer,
    EntryFlush,
    EntryReentrant,
    EntryRounded,
    Exit,
    Barb,
    StrainerHalfClogged,
    ReturnBend,
    TankConnector,
    Bushing,
    EntryBellmouth,
    BallValveReduced,
    ButterflyValve,
    AngleValve,
    DiaphragmValve,
    SwingCheckStraight,
    FootValveHinged,
};

constexpr std::array<FittingKind, 30> allFittingKinds = {
    FittingKind::Elbow90,
    FittingKind::Elbow90Sweep,
    FittingKind::Elbow90Mitre,
    FittingKind::Elbow45,
    FittingKind::TeeRun,
    FittingKind::TeeBranch,
    FittingKind::BallValve,
    FittingKind::GateValve,
    FittingKind::GlobeValve,
    FittingKind::SwingCheck,
    FittingKind::SpringCheck,
    FittingKind::FootValve,
    FittingKind::Union,
    FittingKind::Strainer,
    FittingKind::EntryFlush,
    FittingKind::EntryReentrant,
    FittingKind::EntryRounded,
    FittingKind::Exit,
    FittingKind::Barb,
    FittingKind::StrainerHalfClogged,
    FittingKind::ReturnBend,
    FittingKind::TankConnector,
    FittingKind::Bushing,
    FittingKind::EntryBellmouth,
    FittingKind::BallValveReduced,
    FittingKind::ButterflyValve,
    FittingKind::AngleValve,
    FittingKind::DiaphragmValve,
    FittingKind::SwingCheckStraight,
    FittingKind::FootValveHinged,
};

std::string_view idOf(FittingKind kind); // "elbow-90", as in catalogue, files and command line
std::optional<FittingKind> fittingFromId(std::string_view id);

enum class LossMethod { Default, Hooper, Darby, Crane };

std::string_view idOf(LossMethod method); // "default", "hooper", "darby", "crane"
std::optional<LossMethod> lossMethodFromId(std::string_view id);

// The flow a fitting sees. The default method looks at none of it.
struct FittingFlow {
    units::Length bore;
    units::Length nominal; // nominal size, read by Darby
    double reynolds = 0.0; // in the bore, read by Hooper and Darby; above 0
};

// K of the fitting, fully open. Refusals: "hydraulics.no-coefficient" where the method has no value for this fitting,
// "hydraulics.not-positive" (place "bore", "nominal" or "reynolds").
base::Outcome<double> lossCoefficient(FittingKind kind, LossMethod method, const FittingFlow& flow);
double defaultCoefficient(FittingKind kind);

bool stopsBackflow(FittingKind kind);      // non-return and foot valves
units::Head openingHead(FittingKind kind); // head a spring holds the valve shut with; 0 for all but the spring check

// K of a drawn change of direction of any size, 0 to 180 degrees, as the elbow kind given (90 degree kinds only).
// Straight lines through 0, 4/9 of the elbow's K at 45 degrees and the elbow's K at 90; a turn above 90 counts as an
// elbow plus the rest. For Elbow90 that is 0, 0.4 and 0.9. An estimate.
double bendCoefficient(units::Angle turn, FittingKind elbow = FittingKind::Elbow90);

// K stated for one bore, restated for another: K2 = K1 (D2/D1)^4.
double restated(double k, units::Length statedFor, units::Length wanted);

// A valve's flow factor Kv, stated as the flow it passes at 1 bar, as K on the velocity in the bore, and back:
// K = 2 x 1 bar / (density v^2) with water of 15 degC. Key: flow-factor. Promises: bore, flow and k above 0.
double coefficientOfFlowFactor(units::Flow atOneBar, units::Length bore);
units::Flow flowFactorOfCoefficient(double k, units::Length bore);

// Sudden changes of bore, K on the velocity in the SMALLER pipe. Borda-Carnot; Rennels and Hudson 2012.
double expansionCoefficient(units::Length smaller, units::Length larger);
double contractionCoefficient(units::Length larger, units::Length smaller);
// Either of them, by the direction of flow; 0 for equal bores.
double boreChangeCoefficient(units::Length upstream, units::Length downstream);

// Coefficients that all count the velocity in the same bore add up.
double sumOfCoefficients(const std::vector<double>& coefficients);

units::Head fittingLoss(double k, units::Velocity velocity);

} // namespace sumpwright::hydraulics
