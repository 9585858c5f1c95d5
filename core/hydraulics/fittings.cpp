#include "core/hydraulics/fittings.hpp"

#include <cmath>

#include "core/base/ensure.hpp"
#include "core/hydraulics/friction.hpp"

namespace sumpwright::hydraulics
{
namespace
{

constexpr double metresPerInch = 0.0254;

struct Hooper { // K = first/Re + far (1 + 1/bore[in])
    double first;
    double far;
};

struct Darby { // K = first/Re + far (1 + sizing / nominal[in]^0.3)
    double first;
    double far;
    double sizing;
};

struct Crane { // K = lengths fT + fixed
    double lengths;
    double fixed;
};

struct Row {
    FittingKind kind;
    std::string_view id;
    double byDefault;
    std::optional<Hooper> hooper;
    std::optional<Darby> darby;
    std::optional<Crane> crane;
};

constexpr auto none = std::nullopt;

// In the order of FittingKind. Swing check: Crane's straight-seat type; foot valve: poppet with strainer;
// rounded entry: radius 0.05 of the bore; strainer: clean.
constexpr std::array<Row, allFittingKinds.size()> rows = {{
    {FittingKind::Elbow90, "elbow-90", 0.9, Hooper{800, 0.40}, Darby{800, 0.14, 4.0}, Crane{30, 0}},
    {FittingKind::Elbow90Sweep, "elbow-90-sweep", 0.4, Hooper{800, 0.20}, Darby{800, 0.071, 4.2}, Crane{14, 0}},
    {FittingKind::Elbow90Mitre, "elbow-90-mitre", 1.2, Hooper{1000, 1.15}, Darby{1000, 0.27, 4.0}, Crane{60, 0}},
    {FittingKind::Elbow45, "elbow-45", 0.4, Hooper{500, 0.20}, Darby{500, 0.071, 4.2}, Crane{16, 0}},
    {FittingKind::TeeRun, "tee-run", 0.4, Hooper{200, 0.10}, Darby{200, 0.091, 4.0}, Crane{20, 0}},
    {FittingKind::TeeBranch, "tee-branch", 1.3, Hooper{500, 0.70}, Darby{500, 0.274, 4.0}, Crane{60, 0}},
    {FittingKind::BallValve, "ball-valve", 0.1, Hooper{500, 0.15}, Darby{300, 0.017, 3.5}, Crane{3, 0}},
    {FittingKind::GateValve, "gate-valve", 0.2, Hooper{300, 0.10}, Darby{300, 0.037, 3.9}, Crane{8, 0}},
    {FittingKind::GlobeValve, "globe-valve", 7.5, Hooper{1500, 4.0}, Darby{1500, 1.7, 3.6}, Crane{340, 0}},
    {FittingKind::SwingCheck, "swing-check", 2.5, Hooper{1500, 1.5}, Darby{1500, 0.46, 4.0}, Crane{100, 0}},
    {FittingKind::SpringCheck, "spring-check", 6.0, Hooper{2000, 10}, Darby{2000, 2.85, 3.8}, Crane{600, 0}},
    {FittingKind::FootValve, "foot-valve", 9.0, none, none, Crane{420, 0}},
    {FittingKind::Union, "union", 0.06, none, none, none},
    {FittingKind::Strainer, "strainer", 2.0, none, none, none},
    {FittingKind::EntryFlush, "entry-flush", 0.5, none, none, Crane{0, 0.5}},
    {FittingKind::EntryReentrant, "entry-reentrant", 0.8, none, none, Crane{0, 0.78}},
    {FittingKind::EntryRounded, "entry-rounded", 0.3, none, none, none},
    {FittingKind::Exit, "exit", 1.0, none, none, Crane{0, 1.0}},
    {FittingKind::Barb, "barb", 1.1, none, none, none},
    {FittingKind::StrainerHalfClogged, "strainer-half-clogged", 8.0, none, none, none},
    {FittingKind::ReturnBend, "elbow-180", 1.5, Hooper{1000, 0.35}, Darby{1000, 0.23, 4.0}, Crane{50, 0}},
    {FittingKind::TankConnector, "tank-connector", 0.1, none, none, none},
    {FittingKind::Bushing, "bushing", 0.06, none, none, none},
    {FittingKind::EntryBellmouth, "entry-bellmouth", 0.15, none, none, none},
    {FittingKind::BallValveReduced, "ball-valve-reduced", 0.35, Hooper{1000, 0.25}, none, none},
    {FittingKind::ButterflyValve, "butterfly-valve", 0.8, Hooper{800, 0.25}, none, Crane{45, 0}},
    {FittingKind::AngleValve, "angle-valve", 3.5, Hooper{1000, 2.0}, Darby{1000, 0.69, 4.0}, none},
    {FittingKind::DiaphragmValve, "diaphragm-valve", 3.7, Hooper{1000, 2.0}, Darby{1000, 0.69, 4.9}, Crane{149, 0}},
    {FittingKind::SwingCheckStraight, "swing-check-straight", 1.3, none, none, Crane{50, 0}},
    {FittingKind::FootValveHinged, "foot-valve-hinged", 1.7, none, none, Crane{75, 0}},
}};

constexpr bool rowsInOrder()
{
    for (std::size_t i = 0; i < rows.size(); ++i)
        if (rows[i].kind != allFittingKinds[i] || static_cast<std::size_t>(rows[i].kind) != i)
            return false;
    return true;
}
static_assert(rowsInOrder());

constexpr std::array<std::string_view, 4> methodIds = {"default", "hooper", "darby", "crane"};

const Row& rowOf(FittingKind kind) { return rows[static_cast<std::size_t>(kind)]; }

base::Refusal notPositive(const char* place)
{
    return {"hydraulics.not-positive", place, "the value is not above zero", "a value above 0"};
}

// Crane's friction factor of complete turbulence in clean steel pipe: Colebrook at Re = 7.5e6 D[m] with the roughness
// of bare carbon steel after Farshad and Rieke 2006. Meets Crane's rounded table from 1/2 in to 24 in.
double craneTurbulentFactor(double bore)
{
    return frictionFactor(7.5e6 * bore, std::fmin(3.4126825352925e-5 * std::pow(bore, -1.0112), roughestComputed));
}

bool positive(double value) { return value > 0.0 && std::isfinite(value); }

base::Outcome<double> hooperCoefficient(const Hooper& row, const FittingFlow& flow)
{
    if (!positive(units::inMetres(flow.bore)))
        return notPositive("bore");
    if (!positive(flow.reynolds))
        return notPositive("reynolds");
    return row.first / flow.reynolds + row.far * (1.0 + metresPerInch / units::inMetres(flow.bore));
}

base::Outcome<double> darbyCoefficient(const Darby& row, const FittingFlow& flow)
{
    if (!positive(units::inMetres(flow.nominal)))
        return notPositive("nominal");
    if (!positive(flow.reynolds))
        return notPositive("reynolds");
    const double inches = units::inMetres(flow.nominal) / metresPerInch;
    return row.first / flow.reynolds + row.far * (1.0 + row.sizing / std::pow(inches, 0.3));
}

base::Outcome<double> craneCoefficient(const Crane& row, const FittingFlow& flow)
{
    if (row.lengths == 0.0)
        return row.fixed;
    if (!positive(units::inMetres(flow.bore)))
        return notPositive("bore");
    return row.fixed + row.lengths * craneTurbulentFactor(units::inMetres(flow.bore));
}

} // namespace

std::string_view idOf(FittingKind kind) { return rowOf(kind).id; }

std::optional<FittingKind> fittingFromId(std::string_view id)
{
    for (const Row& row : rows)
        if (row.id == id)
            return row.kind;
    return std::nullopt;
}

std::string_view idOf(LossMethod method) { return methodIds[static_cast<std::size_t>(method)]; }

std::optional<LossMethod> lossMethodFromId(std::string_view id)
{
    for (std::size_t i = 0; i < methodIds.size(); ++i)
        if (methodIds[i] == id)
            return static_cast<LossMethod>(i);
    return std::nullopt;
}

double defaultCoefficient(FittingKind kind) { return rowOf(kind).byDefault; }

base::Outcome<double> lossCoefficient(FittingKind kind, LossMethod method, const FittingFlow& flow)
{
    const Row& row = rowOf(kind);
    switch (method) {
    case LossMethod::Default:
        return row.byDefault;
    case LossMethod::Hooper:
        if (row.hooper)
            return hooperCoefficient(*row.hooper, flow);
        break;
    case LossMethod::Darby:
        if (row.darby)
            return darbyCoefficient(*row.darby, flow);
        break;
    case LossMethod::Crane:
        if (row.crane)
            return craneCoefficient(*row.crane, flow);
        break;
    }
    return base::Refusal{"hydraulics.no-coefficient", "method",
                         std::string(idOf(method)) + " has no value for " + std::string(row.id),
                         "method default, or another fitting"};
}

bool stopsBackflow(FittingKind kind)
{
    return kind == FittingKind::SwingCheck || kind == FittingKind::SpringCheck || kind == FittingKind::FootValve ||
           kind == FittingKind::SwingCheckStraight || kind == FittingKind::FootValveHinged;
}

units::Head openingHead(FittingKind kind)
{
    return kind == FittingKind::SpringCheck ? units::metresHead(0.1) : units::Head();
}

double bendCoefficient(units::Angle turn, FittingKind elbow)
{
    base::ensure(elbow == FittingKind::Elbow90 || elbow == FittingKind::Elbow90Sweep ||
                     elbow == FittingKind::Elbow90Mitre,
                 "a bend is one of the 90 degree elbows");
    const double right = rowOf(elbow).byDefault;
    const double half = right * rowOf(FittingKind::Elbow45).byDefault / rowOf(FittingKind::Elbow90).byDefault;
    const auto upToRight = [&](double rightAngles) {
        return rightAngles <= 0.5 ? 2.0 * rightAngles * half : half + (2.0 * rightAngles - 1.0) * (right - half);
    };
    const double rightAngles = std::fmin(std::fabs(units::inDegrees(turn)), 180.0) / 90.0;
    return rightAngles <= 1.0 ? upToRight(rightAngles) : right + upToRight(rightAngles - 1.0);
}

double restated(double k, units::Length statedFor, units::Length wanted)
{
    base::ensure(units::inMetres(statedFor) > 0.0, "a coefficient is stated for a bore");
    const double ratio = units::inMetres(wanted) / units::inMetres(statedFor);
    return k * ratio * ratio * ratio * ratio;
}

namespace
{
constexpr double ratedPressure = 1e5;  // Pa: Kv is stated at 1 bar
constexpr double ratedDensity = 999.1; // kg/m3: water of 15 degC
} // namespace

double coefficientOfFlowFactor(units::Flow atOneBar, units::Length bore)
{
    const double v = units::inMetresPerSecond(meanVelocity(atOneBar, bore));
    base::ensure(positive(v), "a flow factor is above zero");
    return 2.0 * ratedPressure / (ratedDensity * v * v);
}

units::Flow flowFactorOfCoefficient(double k, units::Length bore)
{
    base::ensure(positive(k), "a coefficient with a flow factor is above zero");
    return units::cubicMetresPerSecond(std::sqrt(2.0 * ratedPressure / (ratedDensity * k)) *
                                       units::inSquareMetres(boreArea(bore)));
}

double expansionCoefficient(units::Length smaller, units::Length larger)
{
    base::ensure(units::inMetres(smaller) > 0.0 && smaller <= larger, "a pipe widens");
    const double b = units::inMetres(smaller) / units::inMetres(larger);
    return (1.0 - b * b) * (1.0 - b * b);
}

double contractionCoefficient(units::Length larger, units::Length smaller)
{
    base::ensure(units::inMetres(smaller) > 0.0 && smaller <= larger, "a pipe narrows");
    const double b = units::inMetres(smaller) / units::inMetres(larger);
    const double b5 = b * b * b * b * b;
    const double jet = 1.0 + 0.622 * (1.0 - 0.215 * b * b - 0.785 * b5);
    return 0.0696 * (1.0 - b5) * jet * jet + (jet - 1.0) * (jet - 1.0);
}

double boreChangeCoefficient(units::Length upstream, units::Length downstream)
{
    return upstream < downstream ? expansionCoefficient(upstream, downstream)
                                 : contractionCoefficient(upstream, downstream);
}

double sumOfCoefficients(const std::vector<double>& coefficients)
{
    double sum = 0.0;
    for (const double k : coefficients)
        sum += k;
    return sum;
}

units::Head fittingLoss(double k, units::Velocity velocity)
{
    const double v = units::inMetresPerSecond(velocity);
    return units::metresHead(k * v * std::fabs(v) / (2.0 * units::standardGravity));
}

} // namespace sumpwright::hydraulics
