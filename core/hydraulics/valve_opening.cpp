#include "core/hydraulics/valve_opening.hpp"

#include <array>
#include <cmath>
#include <span>

namespace sumpwright::hydraulics
{
namespace
{

struct Row {
    double closed; // degrees, or part of the lift
    double k;
};

struct Table {
    std::span<const Row> rows;
    double travel;   // closed reading of a shut valve
    double removeAt; // closed reading from which the link is gone
};

constexpr std::array<Row, 13> ball = {{{5, 0.05},
                                       {10, 0.29},
                                       {15, 0.75},
                                       {20, 1.56},
                                       {25, 3.10},
                                       {30, 5.47},
                                       {35, 9.68},
                                       {40, 17.3},
                                       {45, 31.2},
                                       {50, 52.6},
                                       {55, 106},
                                       {60, 206},
                                       {65, 486}}};
constexpr std::array<Row, 7> gate = {
    {{0.125, 0.07}, {0.25, 0.26}, {0.375, 0.81}, {0.5, 2.06}, {0.625, 5.52}, {0.75, 17.0}, {0.875, 97.8}}};
constexpr std::array<Row, 8> butterfly = {
    {{5, 0.24}, {10, 0.52}, {20, 1.54}, {30, 3.91}, {40, 10.8}, {50, 32.6}, {60, 118}, {70, 751}}};

Table tableOf(ThrottleKind kind)
{
    switch (kind) {
    case ThrottleKind::Ball:
        return {ball, 90.0, 80.0};
    case ThrottleKind::Gate:
        return {gate, 1.0, 0.95};
    case ThrottleKind::Butterfly:
        return {butterfly, 90.0, 80.0};
    }
    return {ball, 90.0, 80.0};
}

double added(const Table& table, double closed)
{
    if (closed <= table.rows.front().closed)
        return table.rows.front().k * closed / table.rows.front().closed;
    std::size_t next = 1;
    while (next + 1 < table.rows.size() && table.rows[next].closed < closed)
        ++next;
    const Row& a = table.rows[next - 1];
    const Row& b = table.rows[next];
    return a.k * std::pow(b.k / a.k, (closed - a.closed) / (b.closed - a.closed));
}

} // namespace

base::Outcome<ValveLoss> throttlingLoss(ThrottleKind kind, double opening)
{
    if (!(opening >= 0.0 && opening <= 1.0))
        return base::Refusal{"hydraulics.opening-out-of-range", "opening", "the opening is no part of 1",
                             "0 (closed) to 1 (open)"};
    const Table table = tableOf(kind);
    const double closed = table.travel * (1.0 - opening);
    constexpr double rounding = 1e-9;
    if (closed >= table.removeAt - rounding)
        return ValveLoss{true, 0.0, false};
    return ValveLoss{false, added(table, closed), closed > table.rows.back().closed + rounding};
}

std::optional<ThrottleKind> throttleOf(FittingKind kind)
{
    if (kind == FittingKind::BallValve || kind == FittingKind::BallValveReduced)
        return ThrottleKind::Ball;
    if (kind == FittingKind::ButterflyValve)
        return ThrottleKind::Butterfly;
    if (kind == FittingKind::GateValve)
        return ThrottleKind::Gate;
    return std::nullopt;
}

} // namespace sumpwright::hydraulics
