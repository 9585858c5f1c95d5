// The words of the plan file for what the program keeps as an enum.
#pragma once

#include <array>
#include <cstddef>
#include <string_view>
#include <utility>

#include "core/plan/plan.hpp"

namespace sumpwright::storage::words
{

template <class Enum, std::size_t N> using Words = std::array<std::pair<Enum, std::string_view>, N>;

inline constexpr Words<plan::PipeCondition, 3> pipeCondition{{{plan::PipeCondition::asNew, "as-new"},
                                                              {plan::PipeCondition::inService, "in-service"},
                                                              {plan::PipeCondition::fouled, "fouled"}}};
inline constexpr Words<plan::FixtureKind, 4> fixtureKind{{{plan::FixtureKind::wall, "wall"},
                                                          {plan::FixtureKind::door, "door"},
                                                          {plan::FixtureKind::post, "post"},
                                                          {plan::FixtureKind::powerPoint, "power-point"}}};
inline constexpr Words<plan::VesselKind, 5> vesselKind{{{plan::VesselKind::fishTank, "fish-tank"},
                                                        {plan::VesselKind::sump, "sump"},
                                                        {plan::VesselKind::mediaBed, "media-bed"},
                                                        {plan::VesselKind::raftBed, "raft-bed"},
                                                        {plan::VesselKind::settler, "settler"}}};
inline constexpr Words<plan::PortKind, 3> portKind{
    {{plan::PortKind::inlet, "inlet"}, {plan::PortKind::lip, "lip"}, {plan::PortKind::sideOutlet, "side-outlet"}}};
inline constexpr Words<plan::StandKind, 3> standKind{
    {{plan::StandKind::flat, "flat"}, {plan::StandKind::legs, "legs"}, {plan::StandKind::blocks, "blocks"}}};
inline constexpr Words<plan::PumpArrangement, 3> pumpArrangement{
    {{plan::PumpArrangement::one, "one"},
     {plan::PumpArrangement::twoParallel, "two-parallel"},
     {plan::PumpArrangement::twoInSeries, "two-in-series"}}};
inline constexpr Words<plan::OwnFittingKind, 6> ownFittingKind{
    {{plan::OwnFittingKind::fitting, "fitting"},
     {plan::OwnFittingKind::ballValve, "ball-valve"},
     {plan::OwnFittingKind::gateValve, "gate-valve"},
     {plan::OwnFittingKind::butterflyValve, "butterfly-valve"},
     {plan::OwnFittingKind::globeValve, "globe-valve"},
     {plan::OwnFittingKind::nonReturnValve, "non-return-valve"}}};
inline constexpr Words<plan::Service, 2> service{
    {{plan::Service::pressure, "pressure"}, {plan::Service::gravity, "gravity"}}};

// In the order of plan::Shape.
inline constexpr Words<std::size_t, 3> shape{{{0, "round"}, {1, "rectangle"}, {2, "caged"}}};

template <class Enum, std::size_t N> std::string_view wordOf(Enum value, const Words<Enum, N>& words)
{
    for (const auto& [candidate, word] : words)
        if (candidate == value)
            return word;
    return {};
}

} // namespace sumpwright::storage::words
