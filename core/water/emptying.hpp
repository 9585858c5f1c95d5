// How long a vessel with upright walls takes to empty through a hole, while some water still comes in.
// Levels are heights of the water over the middle of the hole, up positive; flow C sqrt(h) with
// C = coefficient x hole area x sqrt(2 g); the level falls as area dh/dt = inflow - C sqrt(h), solved in closed form.
// Valid: constant free area (plan area x porosity in a medium), level above the hole by more than its bore, nothing
// holding the water back behind the hole. Source: Torricelli's law; coefficient 0.61 of a sharp hole, textbooks.
// Key: torricelli.
#pragma once

#include <optional>

#include "core/units/measures.hpp"

namespace sumpwright::water
{

constexpr double sharpHoleCoefficient = 0.61;

struct Emptying {
    units::Area area; // of the free water surface
    units::Area hole;
    double coefficient = sharpHoleCoefficient; // 1 / sqrt(sum K) for a pipe with constant K
    units::Flow inflow;                        // 0 or more

    units::Flow flowAt(units::Length level) const; // through the hole; 0 at or below it
    units::Length restingLevel() const;            // at which as much comes in as goes out
    // From one level down to another; 0 where `from` is no higher. None: the inflow holds the water above `to`.
    // Area, hole and coefficient above 0: promises of the caller.
    std::optional<units::Time> timeFor(units::Length from, units::Length to) const;
};

} // namespace sumpwright::water
