// The legs that meet at a tee: where each points, its bore, and whether the water comes in by it.
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <vector>

#include "core/assessment/end_losses.hpp"
#include "core/base/id.hpp"

namespace sumpwright::assessment
{

struct TeeLeg {
    std::size_t run = 0;
    std::size_t end = 0;          // 0 the run's start, 1 its end
    std::array<double, 3> away{}; // unit direction from the tee into the leg; zero for a run without length
    units::Length bore;
    bool incoming = false;                 // water comes to the tee through this leg
    std::optional<double> lossCoefficient; // overridden
};

struct TeeLegs {
    base::Id tee;
    std::vector<TeeLeg> legs;
};

// By tee id; legs in the order of the runs.
std::vector<TeeLegs> teeLegsOf(const std::vector<RunEnds>& runs);

// What a leg does at its tee.
enum class LegPart { single, straight, branch };
std::vector<LegPart> partsOf(const std::vector<TeeLeg>& legs);
// The turn the water makes from one leg into the other, 0 straight on.
units::Angle turnBetween(const TeeLeg& a, const TeeLeg& b);

} // namespace sumpwright::assessment
