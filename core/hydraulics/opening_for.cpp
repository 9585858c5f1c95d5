#include "core/hydraulics/opening_for.hpp"

namespace sumpwright::hydraulics
{
namespace
{

// The opening between `low` and 1 at which `isOpenEnough` turns true; it holds at 1 and, once true, stays so.
template <class Question> double turningPoint(double low, Question&& isOpenEnough)
{
    double high = 1.0;
    for (int halving = 0; halving < 60; ++halving) {
        const double middle = (low + high) / 2.0;
        (isOpenEnough(middle) ? high : low) = middle;
    }
    return high;
}

} // namespace

double leastOpening(ThrottleKind kind)
{
    constexpr double hair = 1e-4;
    return hair + turningPoint(0.0, [kind](double opening) { return !throttlingLoss(kind, opening)->closed; });
}

double mostAdded(ThrottleKind kind) { return throttlingLoss(kind, leastOpening(kind))->added; }

double openingFor(ThrottleKind kind, double added)
{
    if (added <= 0.0)
        return 1.0;
    const double least = leastOpening(kind);
    if (added >= throttlingLoss(kind, least)->added)
        return least;
    return turningPoint(least, [=](double opening) { return throttlingLoss(kind, opening)->added <= added; });
}

} // namespace sumpwright::hydraulics
