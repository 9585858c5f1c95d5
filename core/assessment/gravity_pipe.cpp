#include "core/assessment/gravity_pipe.hpp"

#include <algorithm>

namespace sumpwright::assessment
{
namespace
{

// The stretch at whose upper end a fitting counts, by its place on the run as drawn.
std::size_t stretchOf(const DrawnRun& run, const FittingLoss& loss, bool forward)
{
    const std::size_t count = run.stretches.size();
    if (loss.place == FittingPlace::vertex)
        return std::min(forward ? loss.vertex : std::max<std::size_t>(loss.vertex, 1) - 1, count - 1);
    if (loss.place == FittingPlace::station) {
        units::Length passed;
        for (std::size_t i = 0; i < count; ++i) {
            passed += run.stretches[i].length;
            if (passed >= loss.station * run.length)
                return i;
        }
        return count - 1;
    }
    return forward ? 0 : count - 1;
}

} // namespace

hydraulics::GravityPipe gravityPipeOf(const DrawnRun& run, bool forward)
{
    hydraulics::GravityPipe pipe;
    pipe.bore = run.bore;
    pipe.roughness = run.roughness;
    pipe.endK = 0.0;
    const DrawnEnd& first = forward ? run.from : run.to;
    pipe.fromLip = first.kind == EndKind::vessel && first.portKind == plan::PortKind::lip;
    const units::Length radius = 0.5 * run.bore;
    for (const Stretch& stretch : run.stretches)
        pipe.reaches.push_back({stretch.length, (forward ? stretch.start : stretch.end) - radius,
                                (forward ? stretch.end : stretch.start) - radius, 0.0});
    if (pipe.reaches.empty())
        pipe.reaches.push_back({units::Length(), first.level - radius, first.level - radius, 0.0});
    else
        for (const FittingLoss& loss : run.fittings) {
            const bool last = loss.place == (forward ? FittingPlace::end : FittingPlace::start);
            (last ? pipe.endK : pipe.reaches[stretchOf(run, loss, forward)].k) += loss.k * loss.count;
        }
    if (!forward)
        std::reverse(pipe.reaches.begin(), pipe.reaches.end());
    return pipe;
}

} // namespace sumpwright::assessment
